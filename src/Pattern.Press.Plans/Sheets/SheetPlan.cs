using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Cutting;

namespace Pattern.Press.Plans.Sheets;

/// <summary>Equal rectangles wanted from a stock.</summary>
/// <param name="Name">What they are.</param>
/// <param name="Size">Their size; both sides above 0.</param>
/// <param name="Quantity">How many; 1 or more.</param>
/// <param name="Part">What they become, if it is a part of a kit.</param>
public sealed record WantedRectangle(string Name, Size Size, int Quantity, Part? Part = null);

/// <summary>How sheets may be cut.</summary>
public sealed record SheetOptions
{
    /// <summary>Whether rectangles may be turned by a quarter; not where a print or the grain has a direction.</summary>
    public bool MayTurn { get; init; } = true;

    /// <summary>What is cut off all round a sheet first, because its edges are not true; 0 or more.</summary>
    public Length Trim { get; init; }
}

/// <summary>
/// Rectangles laid out on sheets so that every cut runs from edge to edge of what is being cut, as a trimmer cuts. The
/// blade takes no width.
/// </summary>
public sealed record SheetPlan
{
    /// <summary>The size of each sheet.</summary>
    public required Size Sheet { get; init; }

    /// <summary>How they may be cut.</summary>
    public required SheetOptions Options { get; init; }

    /// <summary>The sheets, fullest first.</summary>
    public required IReadOnlyList<PlannedSheet> Sheets { get; init; }

    /// <summary>Rectangles that no sheet is large enough for; they are in none of the sheets.</summary>
    public required IReadOnlyList<Misfit> TooLarge { get; init; }

    /// <summary>No plan could do with fewer sheets.</summary>
    public required int LeastSheets { get; init; }

    /// <summary>
    /// The sheets that are cut differently, each with how many are cut like it, in the order of <see cref="Sheets"/>.
    /// </summary>
    public IReadOnlyList<(PlannedSheet Sheet, int Count)> Layouts =>
        [.. Sheets.GroupBy(sheet => sheet.Layout, StringComparer.Ordinal).Select(group => (group.First(), group.Count()))];

    /// <summary>The part of all sheets that becomes rectangles, 0 to 1; 0 when there are no sheets.</summary>
    public double Used =>
        Sheets.Count == 0 ? 0 : Sheets.SelectMany(sheet => sheet.Rectangles).Sum(r => r.Size.SquareMillimetres) / (Sheets.Count * Sheet.SquareMillimetres);

    /// <summary>
    /// A plan for rectangles from sheets of a stock: trimmed as the stock asks for unless the options say more, and not
    /// turned where its print or its grain has a direction.
    /// </summary>
    public static SheetPlan Make(IReadOnlyList<WantedRectangle> wanted, Stock stock, SheetOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(stock);
        options ??= new SheetOptions();
        return Make(
            wanted,
            stock.SheetAsCut,
            options with { MayTurn = options.MayTurn && stock.MayTurn, Trim = Length.Max(options.Trim, stock.Trim) });
    }

    /// <summary>Rectangles that no sheet of a stock is large enough for, without making a plan.</summary>
    public static IReadOnlyList<Misfit> TooLargeFor(Stock stock, IReadOnlyList<WantedRectangle> wanted)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return SheetPlanner.TooLarge(wanted, stock.SheetAsCut, new SheetOptions { MayTurn = stock.MayTurn, Trim = stock.Trim });
    }

    /// <summary>A plan for rectangles from sheets of one size.</summary>
    /// <exception cref="ArgumentException">A rectangle has no size or no quantity, or nothing is left of a trimmed sheet.</exception>
    public static SheetPlan Make(IReadOnlyList<WantedRectangle> wanted, Size sheet, SheetOptions options) =>
        SheetPlanner.Make(wanted, sheet, options);

    /// <summary>The rectangles of one stock of a cut list.</summary>
    public static IReadOnlyList<WantedRectangle> Wanted(CutGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return [.. group.Items.Select(item => new WantedRectangle(item.Part.Piece.Name, item.Size, item.Quantity, item.Part))];
    }
}

/// <summary>One sheet and its cuts.</summary>
/// <param name="Rectangles">What it gives, in reading order.</param>
/// <param name="Cuts">The whole sheet, taken apart.</param>
public sealed record PlannedSheet(IReadOnlyList<PlacedRectangle> Rectangles, SheetNode Cuts)
{
    /// <summary>What is left over, largest first, without what is trimmed off.</summary>
    public IReadOnlyList<SheetArea> Offcuts =>
        [.. Leaves(Cuts).OfType<OffcutNode>().Where(node => !node.IsTrim).Select(node => node.Area).OrderByDescending(area => area.Size.SquareMillimetres)];

    /// <summary>Every cut in the order in which a trimmer can make them.</summary>
    public IReadOnlyList<CutNode> InOrder => [.. All(Cuts).OfType<CutNode>().OrderBy(cut => cut.Number)];

    /// <summary>The same cuts, gathered where the trimmer's stop stays where it is.</summary>
    public IReadOnlyList<CutOperation> Operations => CutOperation.Of(this);

    /// <summary>Alike for sheets that are cut alike into the same rectangles.</summary>
    internal string Layout => string.Join(';', All(Cuts).Select(node => node switch
    {
        CutNode cut => $"{(cut.Down ? 'd' : 'a')}{cut.At.Nanometres}",
        RectangleNode rectangle => $"{rectangle.Rectangle.Wanted.Name} {rectangle.Rectangle.Size}",
        _ => "-",
    }));

    private static IEnumerable<SheetNode> Leaves(SheetNode node) => All(node).Where(n => n is not CutNode);

    private static IEnumerable<SheetNode> All(SheetNode node)
    {
        yield return node;
        if (node is not CutNode cut)
            yield break;
        foreach (var part in All(cut.First).Concat(All(cut.Second)))
            yield return part;
    }
}

/// <summary>A rectangle's place on a sheet.</summary>
/// <param name="Wanted">Which.</param>
/// <param name="Left">From the left edge of the sheet.</param>
/// <param name="Top">From its top edge.</param>
/// <param name="Turned">Whether it lies turned by a quarter.</param>
public sealed record PlacedRectangle(WantedRectangle Wanted, Length Left, Length Top, bool Turned)
{
    /// <summary>Its size as it lies.</summary>
    public Size Size => Turned ? Wanted.Size.Turned : Wanted.Size;
}

/// <summary>A rectangle of a sheet.</summary>
/// <param name="Left">From the left edge of the sheet.</param>
/// <param name="Top">From its top edge.</param>
/// <param name="Size">Its size.</param>
public readonly record struct SheetArea(Length Left, Length Top, Size Size)
{
    /// <summary>Its right, from the left edge of the sheet.</summary>
    public Length Right => Left + Size.Width;

    /// <summary>Its bottom, from the top edge of the sheet.</summary>
    public Length Bottom => Top + Size.Height;
}

/// <summary>A part of a sheet: cut again, wanted, or left over.</summary>
/// <param name="Area">Where it is.</param>
public abstract record SheetNode(SheetArea Area);

/// <summary>A part that is cut in two from edge to edge.</summary>
/// <param name="Area">Where it is.</param>
/// <param name="Number">Which cut this is, from 1; a part's number is higher than that of the part it was cut from.</param>
/// <param name="Down">Whether the cut runs down (from top to bottom) rather than across.</param>
/// <param name="At">Where: from the left edge of the sheet when it runs down, else from its top edge.</param>
/// <param name="First">The part to the left of the cut or above it.</param>
/// <param name="Second">The other part.</param>
public sealed record CutNode(SheetArea Area, int Number, bool Down, Length At, SheetNode First, SheetNode Second) : SheetNode(Area)
{
    /// <summary>How far from the left or the top of the part that is cut: what the stop of a trimmer is set to.</summary>
    public Length Distance => At - (Down ? Area.Left : Area.Top);
}

/// <summary>A part that is wanted.</summary>
/// <param name="Area">Where it is.</param>
/// <param name="Rectangle">What it is.</param>
public sealed record RectangleNode(SheetArea Area, PlacedRectangle Rectangle) : SheetNode(Area);

/// <summary>A part that is left over.</summary>
/// <param name="Area">Where it is.</param>
/// <param name="IsTrim">Whether it is the untrue edge of the sheet.</param>
public sealed record OffcutNode(SheetArea Area, bool IsTrim) : SheetNode(Area);

/// <summary>A rectangle too large for a sheet, laid the way it is least too large.</summary>
/// <param name="Wanted">Which.</param>
/// <param name="Turned">Whether it is laid turned by a quarter.</param>
/// <param name="Room">What a sheet offers after trimming.</param>
/// <param name="TooWide">By how much it is wider than that; 0 if it is not.</param>
/// <param name="TooHigh">By how much it is higher than that; 0 if it is not.</param>
public sealed record Misfit(WantedRectangle Wanted, bool Turned, Size Room, Length TooWide, Length TooHigh);
