using System.Globalization;

namespace Pattern.Press.Conformance;

/// <summary>Checks the words that objects and content are written in: strings, names, numbers (ISO 19005-2, 6.1.6 and 6.1.13).</summary>
internal static class SyntaxCheck
{
    private const int LongestString = 32_767;
    private const int LongestName = 127;

    /// <summary>Runs the checks; returns the keywords found, in content the operators.</summary>
    public static List<string> Run(string text, string where, Findings findings)
    {
        var keywords = new List<string>();
        for (var at = 0; at < text.Length;)
        {
            switch (text[at])
            {
                case '%':
                    while (at < text.Length && text[at] is not ('\n' or '\r'))
                        at++;
                    break;
                case '(':
                    at = Literal(text, at, where, findings);
                    break;
                case '<' when at + 1 < text.Length && text[at + 1] == '<':
                    at += 2;
                    break;
                case '<':
                    at = Hexadecimal(text, at, where, findings);
                    break;
                case '/':
                    var name = Word(text, at + 1);
                    if (name.Length > LongestName)
                        findings.Report("A 6.1.13b", $"A name in {where} has {name.Length} characters.");
                    at += 1 + name.Length;
                    break;
                default:
                    var word = Word(text, at);
                    at += Math.Max(1, word.Length);
                    if (word.Length > 0)
                        CheckWord(word, where, keywords, findings);
                    break;
            }
        }

        return keywords;
    }

    private static void CheckWord(string word, string where, List<string> keywords, Findings findings)
    {
        if (!decimal.TryParse(word, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
            keywords.Add(word);
        else if (!word.Contains('.', StringComparison.Ordinal) && (number > int.MaxValue || number < int.MinValue))
            findings.Report("A 6.1.13c", $"The number {word} in {where} is too large.");
    }

    private static int Literal(string text, int start, string where, Findings findings)
    {
        var (depth, at) = (0, start);
        do
        {
            switch (text[at])
            {
                case '\\':
                    at++;
                    break;
                case '(':
                    depth++;
                    break;
                case ')':
                    depth--;
                    break;
                default:
                    break;
            }

            at++;
        }
        while (depth > 0 && at < text.Length);
        if (at - start - 2 > LongestString)
            findings.Report("A 6.1.13a", $"A string in {where} has {at - start - 2} bytes.");
        return at;
    }

    private static int Hexadecimal(string text, int start, string where, Findings findings)
    {
        var end = text.IndexOf('>', start);
        if (end < 0)
            end = text.Length - 1;
        var digits = text[(start + 1)..end].Where(c => !char.IsWhiteSpace(c)).ToList();
        if (digits.Count % 2 != 0 || !digits.All(char.IsAsciiHexDigit))
            findings.Report("A 6.1.6", $"The string <{string.Concat(digits.Take(20))}> in {where} is not made of pairs of digits.");
        if (digits.Count / 2 > LongestString)
            findings.Report("A 6.1.13a", $"A string in {where} has {digits.Count / 2} bytes.");
        return end + 1;
    }

    private static string Word(string text, int start)
    {
        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end]) && text[end] is not ('\0' or '(' or ')' or '<' or '>' or '[' or ']' or '{' or '}' or '/' or '%'))
            end++;
        return text[start..end];
    }
}
