using System.Globalization;
using System.Text;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>What a first version of a booklet is to be about.</summary>
/// <param name="Structure">What is made.</param>
/// <param name="StructureWord">How the booklet names it: its id, or the path of a file beside the booklet.</param>
/// <param name="Item">What goes inside.</param>
/// <param name="Papers">The papers it is printed on, by their ids.</param>
/// <param name="Stock">The first stock in a maker's words, with its weight and its sheet if they are said; null for a usual one.</param>
public sealed record DraftRequest(Structure Structure, string StructureWord, Item Item, IReadOnlyList<string> Papers, string? Stock)
{
    /// <summary>What the maker sets about the structure, each as it stands in a booklet: <c>sides: 8</c>.</summary>
    public IReadOnlyList<string> Sizes { get; init; } = [];

    /// <summary>Whether templates and figures are drawn from the inch column, and the item is said in inches.</summary>
    public bool InInches { get; init; }
}

/// <summary>
/// Writes the first version of a booklet: a folder that builds at once, with every step in plain words, and values and
/// figures in place. The maker goes on from there with words, not with numbers.
/// </summary>
public static class Draft
{
    /// <summary>The files of the booklet, by their paths within its folder.</summary>
    /// <param name="request">What it is about.</param>
    /// <param name="problems">Where it goes when the structure cannot be made for that item.</param>
    /// <returns>The files in order, or null after a problem.</returns>
    public static IReadOnlyList<(string Path, string Text)>? Write(DraftRequest request, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(problems);
        var stocks = DraftStocks.For(request.Structure, request.Stock, problems);
        if (Given(request, problems) is not { } given)
            return null;
        var model = request.Structure.Fit(
            new FitRequest
            {
                Ruler = request.InInches ? Ruler.SixteenthInches : Ruler.WholeMillimetres,
                Item = request.Item,
                ItemPlace = new Place("--item"),
                Given = given,
                Stocks = stocks.ToDictionary(stock => stock.Id, stock => stock.AsStock(), StringComparer.Ordinal),
            },
            problems);
        if (model is null || problems.HasErrors)
            return null;
        var used = model.Kit.Parts.Select(part => part.Stock).ToHashSet(StringComparer.Ordinal);
        stocks = [.. stocks.Where(stock => used.Contains(stock.Id)).Select(stock => stock.LargeEnough(model.Kit.Parts, request.InInches))];
        var files = new List<(string, string)> { ("booklet.md", FrontPage(request, model, stocks)) };
        files.AddRange(new DraftSteps(model, request.Item).Write());
        return files;
    }

    // Read as the lines of a booklet are, from an option that has no lines.
    private static SortedDictionary<string, GivenValue>? Given(DraftRequest request, Problems problems)
    {
        var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        foreach (var size in request.Sizes)
        {
            var place = new Place("--size");
            if (!size.Contains(':', StringComparison.Ordinal))
            {
                problems.Error(place, $"“{size}” does not say what to set.", "Write its name, a colon and its value, such as --size \"sides: 8\".");
                continue;
            }

            foreach (var (name, _, value) in YamlSource.Read(Spaced(size), place.File, problems)?.Entries ?? [])
            {
                if (request.Structure.ReadGiven(name, place, value, problems) is { } read)
                    given[name] = read with { Place = place };
            }
        }

        return problems.HasErrors ? null : given;
    }

    private static string Spaced(string size) => size.IndexOf(':', StringComparison.Ordinal) is var colon
        ? $"{size[..colon].Trim()}: {size[(colon + 1)..].Trim()}"
        : size;

    private static string FrontPage(DraftRequest request, Model model, IReadOnlyList<DraftStock> stocks)
    {
        var (structure, item) = (request.Structure, request.Item);
        var many = model.Kit.Assembly.Find(Assembly.Item) is { Places.Count: > 1 and var count } ? count : 1;
        var fits = many == 1 ? $"Made to fit {DraftWords.A(item.Name)}" : $"Made to fit {DraftWords.Number(many)} {DraftWords.Plural(item.Name)}";
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""
            ---
            title: {Quoted(structure.Title)}
            subtitle: {Quoted(fits)}
            maker: Your name
            licence: Write here what people may do with this booklet and with what they make from it.
            item:
              name: {Quoted(item.Name)}

            """);
        string Said(Length length) => request.InInches ? InInches(length) : Words(length);
        text.Append(item.Shape == ItemShape.Round
            ? $"  round: {Said(item.Width)}\n"
            : $"  width: {Said(item.Width)}\n  depth: {Said(item.Depth)}\n");
        text.Append(CultureInfo.InvariantCulture, $"  height: {Said(item.Height)}\nstructure: {request.StructureWord}\n");
        if (request.Sizes.Count > 0)
            text.Append("sizes:\n");
        foreach (var size in request.Sizes)
            text.Append(CultureInfo.InvariantCulture, $"  {Spaced(size)}\n");
        text.Append("stocks:\n");
        foreach (var stock in stocks)
            text.Append(stock.Written);
        text.Append(CultureInfo.InvariantCulture, $"papers: [{string.Join(", ", request.Papers)}]\n");
        if (request.InInches)
            text.Append("primary: imperial\n");
        text.Append("tools:\n");
        foreach (var tool in Tools(model))
            text.Append(CultureInfo.InvariantCulture, $"  - {Quoted(tool)}\n");
        var upwards = Upwards(item, model);
        text.Append("extras:\n");
        if (model.Kit.Parts.Any(part => part.Piece.GlueAreas.Count > 0 || part.Kind == PartKind.Mat))
            text.Append("  - double-sided tape, 6 mm (1/4 in) wide, or a glue that does not wrinkle paper\n");
        var things = many == 1 ? $"{DraftWords.Before(item.Name)}{{{{item.name}}}}," : $"{DraftWords.Number(many)} of these: {{{{item.name}}}}, each";
        var yours = many == 1 ? "yours" : "the largest of yours";
        text.Append(item.Shape == ItemShape.Round
            ? $"  - \"{things} no more than {{{{item.diameter}}}} across and {{{{item.height}}}} {upwards}; measure {yours} before you cut\"\n"
            : $"  - \"{things} no more than {{{{item.width}}}} by {{{{item.depth}}}} and {{{{item.height}}}} {upwards}; measure {yours} before you cut\"\n");
        text.Append("cautions:\n  - A craft knife is sharper than it looks. Stand up to cut, keep the steel ruler between the blade and your fingers, and put a cork on the knife when you stop.\n");
        foreach (var caution in model.Words.Cautions)
            text.Append(CultureInfo.InvariantCulture, $"  - {Quoted(caution)}\n");
        text.Append("---\n\n");
        text.Append(CultureInfo.InvariantCulture, $"{Suits(structure)} This one is made to fit {(many == 1 ? $"{DraftWords.Before(item.Name)}{{{{item.name}}}}" : $"{DraftWords.Number(many)} of these: {{{{item.name}}}}, each")} ");
        text.Append(item.Shape == ItemShape.Round
            ? $"{{{{item.diameter}}}} across and {{{{item.height}}}} {upwards}.\n\n"
            : upwards == "thick"
                ? "{{item.width}} by {{item.depth}} and {{item.height}} thick.\n\n"
                : "{{item.width}} wide, {{item.depth}} deep and {{item.height}} tall.\n\n");
        text.Append("Every size has been worked out, so there is nothing to calculate. Choose millimetres or inches, and stay with your choice to\nthe end. If you would rather trace than measure, print the full-size templates at the back.\n");
        return text.ToString();
    }

    // What lies on its side is long, and what is flat is thick.
    private static string Upwards(Item item, Model model) =>
        model.Kit.Assembly.Find(Assembly.Item) is { IsTipped: true } ? "long"
        : item.Height.Millimetres * 6 <= Math.Min(item.Width.Millimetres, item.Depth.Millimetres) ? "thick"
        : "tall";

    // How an item is measured is for those who choose a structure, not for those who make one.
    private static string Suits(Structure structure)
    {
        var parts = structure.Suits.TrimEnd('.').Split("; ").Where(part => !part.Contains("measured", StringComparison.Ordinal));
        return $"For {DraftWords.Lower(string.Join("; ", parts))}.";
    }

    private static IEnumerable<string> Tools(Model model)
    {
        yield return "cutting mat, steel ruler and craft knife";
        var pieces = model.Kit.Pieces.Select(part => part.Piece).ToList();
        if (pieces.Any(piece => piece.Folds.Count > 0))
            yield return "scoring board, or a ruler and a bone folder";
        yield return "pencil with a fine point, and an eraser";
        if (pieces.Any(piece => !DraftSteps.IsMeasured(piece) && piece.Folds.Count > 0))
            yield return "a pin, to prick through the template";
    }

    private static string InInches(Length length) => LengthFormat.Format(length, Ruler.SixteenthInches) is var said && LengthParser.Parse(said) == length ? said : Words(length);

    internal static string Words(Length length) => LengthFormat.Format(length, Ruler.WholeMillimetres) is var whole && LengthParser.Parse(whole) == length
        ? whole
        : string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.######} mm");

    internal static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
