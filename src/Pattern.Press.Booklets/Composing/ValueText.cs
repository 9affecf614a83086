using System.Globalization;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Sets values of the model in words: the primary column's first, the other column's in brackets after it. Each comes from
/// a fit of its own, so neither is a conversion of the other.
/// </summary>
/// <param name="primary">The ruler of the primary column.</param>
/// <param name="secondary">The ruler of the other column.</param>
/// <param name="phrases">The words between several values.</param>
internal sealed class ValueText(Ruler primary, Ruler secondary, PhraseBook phrases)
{
    /// <summary>A value in both columns.</summary>
    /// <param name="here">The primary fit's value.</param>
    /// <param name="there">The other fit's value, of the same kind; null leaves it out.</param>
    public IReadOnlyList<Inline> Both(Value here, Value? there) => Both(here, there, primary);

    /// <summary>A value in both columns, the one of a ruler first.</summary>
    /// <param name="here">The value on that ruler.</param>
    /// <param name="there">The other fit's value, of the same kind; null leaves it out.</param>
    /// <param name="first">The ruler.</param>
    /// <param name="inTable">Whether the second value may stand below the first, for want of room in a table's column.</param>
    public IReadOnlyList<Inline> Both(Value here, Value? there, Ruler first, bool inTable = false)
    {
        var inlines = new List<Inline>(One(here, first));
        if (there is null or NumberValue or FlagValue or WordValue)
            return inlines;
        // A value and what it is on the other ruler are read as one: no line ends between them.
        inlines.Add(new TextInline(inTable ? " " : "\u00A0"));
        inlines.AddRange(Bracketed(One(there, Other(first))));
        return inlines;
    }

    /// <summary>The ruler of the other column.</summary>
    public Ruler Other(Ruler ruler) => ruler == primary ? secondary : primary;

    /// <summary>A value in one column.</summary>
    public IReadOnlyList<Inline> One(Value value, Ruler ruler) => value switch
    {
        LengthValue { Length: var length } => [new MeasureInline(Length(length, ruler))],
        SizeValue { Size: var size } => [new MeasureInline(Size(size, ruler))],
        LengthListValue { Lengths: var lengths } => List(lengths, ruler),
        NumberValue { Number: var number } => [new TextInline(Point(number.ToString("0.###", CultureInfo.InvariantCulture)))],
        FlagValue { Flag: var flag } => [new TextInline(phrases[flag ? "answer.yes" : "answer.no"])],
        WordValue { Word: var word } => [new TextInline(word)],
        _ => throw new ArgumentException($"A {value.GetType().Name} cannot be set.", nameof(value)),
    };

    /// <summary>A length with its unit, as one string, as it is read off the ruler.</summary>
    public string Length(Length length, Ruler ruler) => Exact(ruler.Judged(length), ruler);

    /// <summary>A length that nobody measures with the ruler, such as the thickness of a card, with all its decimals.</summary>
    public string Exact(Length length, Ruler ruler) => Point(LengthFormat.Format(length, ruler));

    /// <summary>A size with its unit, as one string: <c>225 × 215 mm</c>.</summary>
    public string Size(Size size, Ruler ruler) => Point(LengthFormat.Format(new Size(ruler.Judged(size.Width), ruler.Judged(size.Height)), ruler));

    /// <summary>The size of a sheet as it is sold: by its name, in inches where it is whole in eighths, or in millimetres.</summary>
    public IReadOnlyList<Inline> Sold(Size sheet) => NameOf(sheet) is { } name ? [new TextInline(name)] : One(new SizeValue(sheet), SoldBy(sheet));

    /// <summary>The same as one string.</summary>
    public string SoldAs(Size sheet) => NameOf(sheet) ?? Size(sheet, SoldBy(sheet));

    private static string? NameOf(Size sheet) => PaperSize.All.FirstOrDefault(paper => paper.Size == sheet || paper.Size.Turned == sheet)?.Name;

    // Sheets are sold in sizes of one system.
    private Ruler SoldBy(Size sheet)
    {
        var eighths = new Ruler(UnitSystem.Imperial, Measure.Length.Inch / 8);
        return eighths.Marks(sheet.Width) && eighths.Marks(sheet.Height) ? eighths : primary.System == UnitSystem.Metric ? primary : secondary;
    }

    /// <summary>Two or three sides with their unit, as one string: <c>69 × 69 × 81 mm</c>.</summary>
    public string Sides(IReadOnlyList<Length> sides, Ruler ruler) =>
        Point(string.Concat(sides.SkipLast(1).Select(side => $"{LengthFormat.Number(side, ruler)} × ")) + LengthFormat.Format(sides[^1], ruler));

    // The unit is said once, at the end: 80, 144 and 160 mm.
    private IReadOnlyList<Inline> List(IReadOnlyList<Length> lengths, Ruler ruler)
    {
        if (lengths.Count == 0)
            return [new TextInline(phrases["measurements.none"])];
        IReadOnlyList<Inline> last = [new MeasureInline(Length(lengths[^1], ruler))];
        if (lengths.Count == 1)
            return last;
        var before = new List<Inline>();
        for (var i = 0; i < lengths.Count - 1; i++)
        {
            if (i > 0)
                before.Add(new TextInline(phrases["list.comma"]));
            before.Add(new MeasureInline(Point(LengthFormat.Number(ruler.Judged(lengths[i]), ruler))));
        }

        return phrases.Inlines(lengths.Count == 2 ? "list.two" : "list.many", ("first", before), ("last", last));
    }

    private static List<Inline> Bracketed(IReadOnlyList<Inline> inlines)
    {
        var result = new List<Inline>(inlines);
        result[0] = Around(result[0], "(", "");
        result[^1] = Around(result[^1], "", ")");
        return result;
    }

    private static Inline Around(Inline inline, string before, string after) => inline switch
    {
        MeasureInline measure => measure with { Text = before + measure.Text + after },
        TextInline text => text with { Text = before + text.Text + after },
        _ => inline,
    };

    /// <summary>A number written with a full stop, as the language writes it.</summary>
    public string Point(string text) => phrases.DecimalMark == "." ? text : text.Replace(".", phrases.DecimalMark, StringComparison.Ordinal);
}
