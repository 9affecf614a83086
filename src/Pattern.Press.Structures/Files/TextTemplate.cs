using System.Globalization;
using System.Text;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>A sentence with formulas in double braces: <c>Make lid_depth at most {{wall_height}}.</c></summary>
internal sealed class TextTemplate
{
    private readonly IReadOnlyList<(string Words, Formula? Formula)> _parts;

    private TextTemplate(IReadOnlyList<(string, Formula?)> parts) => _parts = parts;

    /// <summary>Reads a sentence whose formulas give lengths.</summary>
    public static TextTemplate? Read(YamlItem item, FileReading reading)
    {
        if (item.AsText() is not { } text)
            return null;
        var parts = new List<(string, Formula?)>();
        for (var at = 0; at < text.Length;)
        {
            var open = text.IndexOf("{{", at, StringComparison.Ordinal);
            var close = open < 0 ? -1 : text.IndexOf("}}", open, StringComparison.Ordinal);
            if (open >= 0 && close < 0)
            {
                reading.Problems.Error(item.Place, "“{{” has no “}}” behind it.");
                return null;
            }

            if (open < 0)
            {
                parts.Add((text[at..], null));
                break;
            }

            var place = item.TextPlace;
            if (place.Column > 0)
                place = place with { Column = place.Column + open + 2 };
            if (reading.Formula(text[(open + 2)..close], place, Kind.Length) is not { } formula)
                return null;
            parts.Add((text[at..open], formula));
            at = close + 2;
        }

        return new TextTemplate(parts);
    }

    /// <summary>The sentence with the lengths in the ruler's units.</summary>
    public string Fill(Evaluation values)
    {
        var text = new StringBuilder();
        foreach (var (words, formula) in _parts)
        {
            text.Append(words);
            if (formula is not null)
                text.Append(CultureInfo.InvariantCulture, $"{LengthFormat.Format(formula.Evaluate(values).Length, values.Ruler)}");
        }

        return text.ToString();
    }
}
