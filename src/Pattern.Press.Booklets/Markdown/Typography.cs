using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>
/// Turns what a keyboard has into what print uses: curly quotation marks and apostrophes, dashes, ellipses, and the
/// inch sign after a number.
/// </summary>
internal static class Typography
{
    private const char InchSign = '″';

    // Words that start with an apostrophe where one would expect an opening quotation mark.
    private static readonly string[] Clipped = ["tis", "twas", "til", "em", "cause", "n"];

    /// <summary>Adds the letters of a paragraph, improved, to others.</summary>
    public static void Improve(List<Letter> letters, List<Letter> result)
    {
        var (openDouble, openSingle) = (false, false);
        for (var i = 0; i < letters.Count; i++)
        {
            var letter = letters[i];
            if (letter.IsFixed)
            {
                result.Add(letter);
                continue;
            }

            var before = i > 0 ? letters[i - 1].Char : ' ';
            var after = Next(letters, i);
            switch (letter.Char)
            {
                case '"' when !openDouble && IsFigure(before):
                    result.Add(letter with { Char = InchSign });
                    break;
                case '"':
                    openDouble = Opens(before, after, openDouble);
                    result.Add(letter with { Char = openDouble ? '“' : '”' });
                    break;
                case '\'':
                    var opens = Opens(before, after, openSingle) && !char.IsLetterOrDigit(before) && !IsApostrophe(letters, i, after);
                    openSingle = opens || (openSingle && char.IsLetterOrDigit(after));
                    result.Add(letter with { Char = opens ? '‘' : '’' });
                    break;
                case '-' when Run(letters, i, '-') is var run and (2 or 3):
                    result.Add(letter with { Char = run == 2 ? '–' : '—' });
                    i += run - 1;
                    break;
                case '-' when Run(letters, i, '-') is var run and > 3:
                    result.AddRange(letters.GetRange(i, run));
                    i += run - 1;
                    break;
                case '-' when before == ' ' && after == ' ' && i > 0:
                case '-' when IsRange(letters, i):
                    result.Add(letter with { Char = '–' });
                    break;
                case '.' when Run(letters, i, '.') == 3:
                    result.Add(letter with { Char = '…' });
                    i += 2;
                    break;
                default:
                    result.Add(letter);
                    break;
            }
        }
    }

    private static char Next(List<Letter> letters, int i) => i + 1 < letters.Count ? letters[i + 1].Char : ' ';

    private static bool Opens(char before, char after, bool isOpen)
    {
        var startsHere = before == ' ' || before is '(' or '[' or '–' or '—' or '-' or '/' or '“' or '‘' or '"' or '\'';
        return startsHere && after != ' ' && !(isOpen && IsClosing(after));
    }

    private static bool IsClosing(char c) => c is '.' or ',' or ';' or ':' or '!' or '?' or ')' or ']';

    private static bool IsApostrophe(List<Letter> letters, int i, char after)
    {
        if (char.IsAsciiDigit(after))
            return true;
        var end = i + 1;
        while (end < letters.Count && char.IsLetter(letters[end].Char))
            end++;
        var word = string.Concat(letters.Skip(i + 1).Take(end - i - 1).Select(letter => letter.Char));
        return Clipped.Contains(word, StringComparer.OrdinalIgnoreCase);
    }

    private static bool IsFigure(char c) => char.IsAsciiDigit(c) || Measurements.IsFractionSign(c);

    private static int Run(List<Letter> letters, int i, char c)
    {
        var end = i;
        while (end < letters.Count && letters[end].Char == c && !letters[end].IsFixed)
            end++;
        return end - i;
    }

    // A dash between two numbers that stand alone, as in “3-4 minutes”; not in a date, a code, or a mixed fraction, where
    // a stroke follows.
    private static bool IsRange(List<Letter> letters, int i)
    {
        var (start, end) = (i, i + 1);
        while (start > 0 && char.IsAsciiDigit(letters[start - 1].Char))
            start--;
        while (end < letters.Count && char.IsAsciiDigit(letters[end].Char))
            end++;
        if (start == i || end == i + 1 || i - start > 3 || end - i - 1 > 3)
            return false;
        var before = start > 0 ? letters[start - 1].Char : ' ';
        var after = end < letters.Count ? letters[end].Char : ' ';
        var decimals = after is '.' && end + 1 < letters.Count && char.IsAsciiDigit(letters[end + 1].Char);
        return before is ' ' or '(' && !decimals && after is not ('/' or '-' or '⁄') && !char.IsLetter(after) && after != '_';
    }
}
