using System.Globalization;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads what a figure is to show, from a step's front matter or from a fenced container in the words.</summary>
public static class FigureReader
{
    /// <summary>The keys of a figure.</summary>
    public static IReadOnlyList<string> Keys { get; } = ["of", "show", "folded", "mats", "emphasise", "caption", "name"];

    /// <summary>The words for what a figure shows, in the order of <see cref="FigureShow"/>.</summary>
    public static IReadOnlyList<string> Shows { get; } =
        [.. Enum.GetNames<FigureShow>().Select(name => name.ToLowerInvariant())];

    /// <summary>Reads a figure.</summary>
    /// <param name="written">One word for what it shows, or the keys.</param>
    /// <param name="piece">The part it is of when it names none; null when there is none either.</param>
    /// <param name="problems">Where problems go.</param>
    public static FigureSource? Read(YamlItem written, string? piece, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(written);
        if (written.IsMap)
            return written.AsMap() is { } map ? Read(map, piece, problems) : null;
        return Show(written) is { } show ? Make(null, show, piece, [], "", written.Place, problems) : null;
    }

    /// <summary>The kinds of steps, each with the figure that it has when none is asked for.</summary>
    public static IReadOnlyList<(string Kind, FigureShow Show)> Kinds { get; } =
    [
        ("cut", FigureShow.Sheet), ("score", FigureShow.Scores), ("trim", FigureShow.Waste), ("fold", FigureShow.Folds), ("glue", FigureShow.Glue),
        ("decorate", FigureShow.Mats), ("assemble", FigureShow.Insert), ("finish", FigureShow.Finished),
    ];

    /// <summary>The figure of a step that says what is done in it but asks for none; null after noting problems.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="piece">The step's piece; null when it names none.</param>
    /// <param name="problems">Where problems go.</param>
    public static FigureSource? OfKind(YamlItem kind, string? piece, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (kind.AsChoice([.. Kinds.Select(known => known.Kind)]) is not { } word)
            return null;
        return Make(null, Kinds.First(known => known.Kind == word).Show, piece, [], "", kind.Place, problems) is { } figure ? figure with { IsByKind = true } : null;
    }

    /// <summary>Reads a figure from its keys.</summary>
    public static FigureSource? Read(YamlMap map, string? piece, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(map);
        var of = map.Find("of");
        var show = map.Find("show");
        var emphasise = map.Find("emphasise");
        var caption = map.Find("caption");
        var folded = map.Find("folded") is { } part ? Folded(part, problems) : 1;
        var mats = map.Find("mats")?.AsYesNo() == true;
        var name = map.Find("name") is { } given ? Name(given, problems) : "";
        map.RefuseTheRest();
        FigureShow? shown = show is null
            ? (of is null && piece is null ? FigureShow.Finished : FigureShow.Flat)
            : Show(show);
        return shown is { } what && Make(of, what, piece, emphasise?.AsWordsList(problems) ?? [], caption?.AsWords(problems) ?? "", map.Place, problems) is { } figure
            ? figure with { Folded = folded, HasMats = mats, Name = name }
            : null;
    }

    private static FigureShow? Show(YamlItem written) =>
        written.AsChoice(Shows) is { } word ? Enum.Parse<FigureShow>(word, ignoreCase: true) : null;

    private static string Name(YamlItem written, Problems problems)
    {
        var text = written.Scalar?.Trim() ?? "";
        if (text.Length > 0 && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
            return text;
        problems.Error(written.Place, $"“{written.Scalar}” cannot be the name of a figure.", "Names are small letters, figures and hyphens: “name: lid-waste”. Links to it are written [](#figure-lid-waste).");
        return "";
    }

    // A part of the way from flat to finished, as a percentage.
    private static double Folded(YamlItem written, Problems problems)
    {
        var text = written.Scalar?.Trim() ?? "";
        if (text.EndsWith('%') && int.TryParse(text.AsSpan(0, text.Length - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var percent) && percent is > 0 and <= 100)
            return percent / 100.0;
        problems.Error(written.Place, $"“{written.Scalar}” does not say how far it is folded.", "Write a percentage above 0, such as 60%.");
        return 1;
    }

    private static FigureSource? Make(YamlItem? of, FigureShow show, string? piece, IReadOnlyList<string> emphasise, string caption, Place place, Problems problems)
    {
        if (show is FigureShow.Finished or FigureShow.Closed or FigureShow.Open or FigureShow.Exploded)
        {
            if (of is null)
                return new FigureSource("", show, emphasise, caption, place);
            problems.Error(of.Place, $"“{Shows[(int)show]}” shows the whole thing, not one part of it.", "Leave “of” out, or write “show: folded”.");
            return null;
        }

        var subject = of is null ? piece : of.AsWords(problems);
        if (subject is not null)
            return new FigureSource(subject, show, emphasise, caption, of?.Place ?? place);
        if (of is null)
            problems.Error(place, "Which part the figure shows is missing.", "Write it as “of: base”, or name the step’s “piece”.");
        return null;
    }
}
