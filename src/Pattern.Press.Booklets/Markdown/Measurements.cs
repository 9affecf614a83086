using System.Text;
using System.Text.RegularExpressions;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Finds the measurements that a maker typed in running words, so that they are set as such and never broken.</summary>
internal static partial class Measurements
{
    private const string FractionSigns = "¼½¾⅛⅜⅝⅞⅓⅔";
    private static readonly string[] Spelled = ["1/4", "1/2", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"];

    /// <summary>Whether a character is a whole fraction: ¼.</summary>
    public static bool IsFractionSign(char c) => FractionSigns.Contains(c, StringComparison.Ordinal);

    /// <summary>Whether a text is a measurement or a number and nothing else, so that it belongs in a column of figures.</summary>
    public static bool IsFigure(string text) => Figure().IsMatch(text.Trim());

    /// <summary>The letters with every measurement made one inline of its own.</summary>
    public static List<Letter> Gather(List<Letter> letters)
    {
        var text = string.Create(letters.Count, letters, static (span, all) =>
        {
            for (var i = 0; i < span.Length; i++)
                span[i] = all[i].Char;
        });
        var matches = Pattern().Matches(text);
        if (matches.Count == 0)
            return letters;
        var result = new List<Letter>(letters.Count);
        var position = 0;
        foreach (Match match in matches)
        {
            var taken = letters.GetRange(match.Index, match.Length);
            if (taken.Exists(letter => letter.Emphasis.HasFlag(Emphasis.Literal) || letter.Whole is not null))
                continue;
            var between = letters.GetRange(position, match.Index - position);
            // 6 mm (1/4 in): what a size is on the other ruler stays on its line.
            if (position > 0 && between is [{ Char: ' ' } space, { Char: '(' } bracket])
                between = [space with { Char = '\u00A0' }, bracket];
            result.AddRange(between);
            position = match.Index + match.Length;
            if (taken.TrueForAll(letter => letter.Emphasis == taken[0].Emphasis && letter.Link == taken[0].Link))
                result.Add(taken[0] with { Char = Letter.Atom, Whole = new MeasureInline(Plain(match.Value), taken[0].Emphasis) });
            else
                // Set in two ways, such as a bold number before its unit: it stays text, but does not part at its spaces.
                result.AddRange(taken.Select(letter => letter.Char == ' ' ? letter with { Char = '\u00A0' } : letter));
        }

        result.AddRange(letters.GetRange(position, letters.Count - position));
        return result;
    }

    /// <summary>A measurement as the program itself writes it: <c>2¼″</c> becomes <c>2 1/4 in</c>.</summary>
    public static string Plain(string text)
    {
        var spelled = new StringBuilder();
        foreach (var c in text)
        {
            if (FractionSigns.IndexOf(c, StringComparison.Ordinal) is >= 0 and var sign)
                spelled.Append(spelled.Length > 0 && char.IsAsciiDigit(spelled[^1]) ? " " : "").Append(Spelled[sign]);
            else
                spelled.Append(c is '\u00A0' or '\u202F' or '\u2009' ? ' ' : c == '⁄' ? '/' : c);
        }

        var plain = Spaces().Replace(spelled.ToString(), " ");
        plain = Cross().Replace(plain, " × ");
        plain = MixedDash().Replace(plain, "$1 $2");
        plain = Minus().Replace(plain, "−");
        plain = plain.Replace("g/m2", "g/m²", StringComparison.Ordinal);
        plain = UnitGap().Replace(plain, "$1 ");
        return plain.Replace("″", "in", StringComparison.Ordinal);
    }

    private const string Number = @"(?:\d+(?:[ \u00A0\u202F\u2009-]\d+)?[/⁄]\d+|\d*[¼½¾⅛⅜⅝⅞⅓⅔]|\d+[ \u00A0\u202F\u2009][¼½¾⅛⅜⅝⅞⅓⅔]|\d+(?:[.,]\d+)?)";
    private const string Gap = @"[ \u00A0\u202F\u2009]?";
    private const string Unit = @"(?:mm|cm|m|inches|inch|in|g/m2|g/m²|gsm|lb|kg|g|ml|min|°C|°F)(?![\p{L}\p{N}])|[″°]";

    // One measurement, or several joined by × or a dash with the unit after the last, or after each.
    [GeneratedRegex(@"(?<![\p{L}\p{N}.,/⁄_-])[-−±]?" + Number + "(?:" + Gap + "(?:" + Unit + "))?" +
        "(?:(?:" + Gap + "[x×]" + Gap + "|–)" + Number + "(?:" + Gap + "(?:" + Unit + "))?){0,2}" +
        "(?<=" + Gap + "(?:" + Unit + "))", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();

    [GeneratedRegex("^[-−±]?" + Number + "(?:" + Gap + "(?:" + Unit + "|%))?(?:" + Gap + "[x×]" + Gap + Number + "(?:" + Gap + "(?:" + Unit + "))?){0,2}$", RegexOptions.CultureInvariant)]
    private static partial Regex Figure();

    [GeneratedRegex(" +")]
    private static partial Regex Spaces();

    [GeneratedRegex(" ?[x×] ?")]
    private static partial Regex Cross();

    [GeneratedRegex(@"(\d)-(\d+/)")]
    private static partial Regex MixedDash();

    [GeneratedRegex("^-")]
    private static partial Regex Minus();

    [GeneratedRegex(@"(\d)(?=[\p{L}″])")]
    private static partial Regex UnitGap();
}
