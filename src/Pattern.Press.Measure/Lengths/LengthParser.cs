using System.Globalization;
using System.Text.RegularExpressions;

namespace Pattern.Press.Measure;

/// <summary>
/// Reads a length as a maker writes it: <c>58 mm</c>, <c>5.8 cm</c>, <c>2 1/4 in</c>, <c>2¼"</c>, <c>2-1/4"</c>,
/// <c>2.25 in</c>. The unit is never guessed.
/// </summary>
public static partial class LengthParser
{
    /// <summary>Reads a length.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="length">The length, or zero if it could not be read.</param>
    /// <param name="problem">What is wrong and what to write instead, as a sentence; empty when it could be read.</param>
    /// <returns>Whether it could be read.</returns>
    public static bool TryParse(string text, out Length length, out string problem)
    {
        length = Length.Zero;
        var plain = Simplify(text);
        var match = Pattern().Match(plain);
        if (!match.Success)
        {
            problem = plain.Contains(',', StringComparison.Ordinal)
                ? $"“{text}” uses a comma; write a point for decimals, such as 58.5 mm."
                : $"“{text}” is not a length; write a number and its unit, such as 58 mm or 2 1/4 in.";
            return false;
        }

        if (!match.Groups["unit"].Success)
        {
            problem = match.Groups["below"].Success
                ? $"“{text}” has no unit; write {plain} in."
                : $"“{text}” has no unit; write {plain} mm or {plain} in.";
            return false;
        }

        if (match.Groups["below"].Success && match.Groups["below"].Value.TrimStart('0').Length == 0)
        {
            problem = $"“{text}” divides by zero; write a fraction such as 2 1/4 in.";
            return false;
        }

        // MM and In are as clear as mm and in.
        var unit = match.Groups["unit"].Value.ToLowerInvariant();
        if (unit is "mm" or "cm" or "m" && match.Groups["below"].Success)
        {
            problem = $"“{text}” is a fraction of a metric unit; write it with a decimal point, such as 58.5 mm.";
            return false;
        }

        try
        {
            length = unit switch
            {
                "mm" => Length.FromMillimetres(Value(match)),
                "cm" => Length.FromMillimetres(Value(match) * 10),
                "m" => Length.FromMillimetres(Value(match) * 1000),
                _ => Length.FromInches(Value(match)),
            };
        }
        catch (OverflowException)
        {
            problem = $"“{text}” is far too long to be a length on paper.";
            return false;
        }

        problem = "";
        return true;
    }

    /// <summary>Reads a length that is known to be right, such as one in the program's own tables.</summary>
    /// <exception cref="FormatException">It is not a length; the message says what to write.</exception>
    public static Length Parse(string text) =>
        TryParse(text, out var length, out var problem) ? length : throw new FormatException(problem);

    private static decimal Value(Match match)
    {
        var value = match.Groups["whole"].Success ? Number(match.Groups["whole"].Value) : 0;
        if (match.Groups["above"].Success)
            value += Number(match.Groups["above"].Value) / Number(match.Groups["below"].Value);
        return match.Groups["sign"].Value is "-" ? -value : value;
    }

    // A number too long for a decimal overflows here, which the caller reports.
    private static decimal Number(string digits) => decimal.Parse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    // Fraction characters, curly marks, no-break spaces and the true minus sign, brought to what the pattern knows.
    private static string Simplify(string text)
    {
        var result = new System.Text.StringBuilder();
        foreach (var c in text)
        {
            switch (c)
            {
                case '\u00A0' or '\u202F' or '\u2009' or '\t':
                    result.Append(' ');
                    break;
                case '\u2212':
                    result.Append('-');
                    break;
                case '\u2044' or '\u2215':
                    result.Append('/');
                    break;
                case '″' or '”' or '“' or '\u02DD':
                    result.Append('"');
                    break;
                default:
                    if (VulgarFractions.TryGetValue(c, out var fraction))
                        result.Append(' ').Append(fraction).Append(' ');
                    else
                        result.Append(c);
                    break;
            }
        }

        return result.ToString().Trim();
    }

    private static readonly Dictionary<char, string> VulgarFractions = new()
    {
        ['¼'] = "1/4",
        ['½'] = "1/2",
        ['¾'] = "3/4",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
        ['⅓'] = "1/3",
        ['⅔'] = "2/3",
    };

    [GeneratedRegex("""^(?<sign>[-+])?\s*(?:(?<whole>[0-9]+)(?:\s+|-)(?<above>[0-9]+)\s*/\s*(?<below>[0-9]+)|(?<whole>[0-9]+(?:\.[0-9]+)?|\.[0-9]+)|(?<above>[0-9]+)\s*/\s*(?<below>[0-9]+))\s*(?<unit>mm|cm|m|inches|inch|in\.?|")?$""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
