using System.Globalization;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// Finds where lines may break, after the rules of Unicode Standard Annex #14 (revision for Unicode 15) that matter to
/// text in Latin letters. Four places are tailored, as the annex allows: no break before an em dash; none before a dash
/// between spaces, which belongs to the end of a line; none after a dash between two digits, for a range such as 3–5
/// reads as one number; and none between a whole number and its fraction.
/// </summary>
internal static class LineBreaks
{
    /// <summary>
    /// For each character, whether a line may break before it. The first is never true. A place after a line feed is
    /// always true; who asks can see from the character before that the break must be taken.
    /// </summary>
    public static bool[] Find(ReadOnlySpan<char> text)
    {
        var breaks = new bool[text.Length];
        Find(text, breaks);
        return breaks;
    }

    /// <summary>The same, into an array that is there already.</summary>
    /// <param name="text">The text.</param>
    /// <param name="breaks">As long as the text; whatever it held is overwritten.</param>
    public static void Find(ReadOnlySpan<char> text, Span<bool> breaks)
    {
        breaks.Clear();
        if (text.Length == 0)
            return;
        var before = ClassOf(text[0]);
        if (before == LineBreakClass.CM)
            before = LineBreakClass.AL; // LB10
        var beforeThat = LineBreakClass.BK;
        var afterSpace = before == LineBreakClass.SP;
        for (var i = 1; i < text.Length; i++)
        {
            var after = ClassOf(text[i]);
            if (after == LineBreakClass.CM && !afterSpace && before is not (LineBreakClass.BK or LineBreakClass.ZW))
                continue; // LB9: a mark is part of the letter it stands on
            if (after == LineBreakClass.CM)
                after = LineBreakClass.AL; // LB10
            breaks[i] = MayBreak(beforeThat, before, afterSpace, after) && !(afterSpace && (IsSpacedDash(text, i) || IsFractionOfNumber(text, i)));
            if (after == LineBreakClass.SP && before is not (LineBreakClass.BK or LineBreakClass.ZW))
            {
                afterSpace = true;
                continue;
            }

            beforeThat = afterSpace ? LineBreakClass.SP : before;
            before = after;
            afterSpace = after == LineBreakClass.SP;
        }
    }

    private static bool IsSpacedDash(ReadOnlySpan<char> text, int at) =>
        text[at] is '\u2013' or '\u2014' && (at + 1 == text.Length || text[at + 1] == ' ');

    /// <summary>Whether digits, a slash and digits begin here, one space behind another digit: the fraction of 2 1/4.</summary>
    private static bool IsFractionOfNumber(ReadOnlySpan<char> text, int at)
    {
        if (at < 2 || text[at - 1] != ' ' || !char.IsAsciiDigit(text[at - 2]))
            return false;
        if (text[at] is '¼' or '½' or '¾' or (>= '⅐' and <= '⅞'))
            return true;
        var slash = at;
        while (slash < text.Length && char.IsAsciiDigit(text[slash]))
            slash++;
        return slash > at && slash + 1 < text.Length && (text[slash] is '/' or '\u2044') && char.IsAsciiDigit(text[slash + 1]);
    }

    private static bool MayBreak(LineBreakClass beforeThat, LineBreakClass before, bool spaces, LineBreakClass after)
    {
        if (before == LineBreakClass.BK)
            return true; // LB4
        if (after is LineBreakClass.BK or LineBreakClass.SP or LineBreakClass.ZW)
            return false; // LB6, LB7
        if (before == LineBreakClass.ZW)
            return true; // LB8
        if (after == LineBreakClass.WJ || (before == LineBreakClass.WJ && !spaces))
            return false; // LB11
        if (before == LineBreakClass.GL && !spaces)
            return false; // LB12
        if (after == LineBreakClass.GL && !spaces && before is not (LineBreakClass.BA or LineBreakClass.HY or LineBreakClass.SP))
            return false; // LB12a
        if (after is LineBreakClass.CL or LineBreakClass.CP or LineBreakClass.EX or LineBreakClass.IS or LineBreakClass.SY)
            return false; // LB13
        if (before == LineBreakClass.OP)
            return false; // LB14
        if (before == LineBreakClass.QI)
            return false; // LB15a
        if (after == LineBreakClass.QF && !spaces)
            return false; // LB15b, LB19
        if (before == LineBreakClass.B2 && after == LineBreakClass.B2)
            return false; // LB17
        if (spaces)
            return true; // LB18
        if (after is LineBreakClass.QU or LineBreakClass.QI or LineBreakClass.QF || before is LineBreakClass.QU or LineBreakClass.QF)
            return false; // LB19
        if (after is LineBreakClass.BA or LineBreakClass.HY or LineBreakClass.B2 or LineBreakClass.IN)
            return false; // LB21, LB22, and the tailoring for em dashes
        if (before == LineBreakClass.HY && after is LineBreakClass.AL or LineBreakClass.NU && BeginsWord(beforeThat))
            return false; // LB20a: a hyphen that begins a word
        if (before == LineBreakClass.BA && after == LineBreakClass.NU && BeginsWord(beforeThat))
            return false; // the tailoring for ranges: a dash used as a minus
        if (before == LineBreakClass.BA && after == LineBreakClass.NU && beforeThat == LineBreakClass.NU)
            return false; // the tailoring for ranges
        return !Joined(before, after);
    }

    private static bool BeginsWord(LineBreakClass beforeHyphen) =>
        beforeHyphen is LineBreakClass.BK or LineBreakClass.SP or LineBreakClass.ZW or LineBreakClass.GL;

    /// <summary>LB23 to LB30: pairs that no break parts.</summary>
    private static bool Joined(LineBreakClass before, LineBreakClass after) => (before, after) switch
    {
        (LineBreakClass.AL, LineBreakClass.NU) or (LineBreakClass.NU, LineBreakClass.AL) => true, // LB23
        (LineBreakClass.PR, LineBreakClass.ID) or (LineBreakClass.ID, LineBreakClass.PO) => true, // LB23a
        (LineBreakClass.PR or LineBreakClass.PO, LineBreakClass.AL) => true, // LB24
        (LineBreakClass.AL, LineBreakClass.PR or LineBreakClass.PO) => true, // LB24
        (LineBreakClass.CL or LineBreakClass.CP or LineBreakClass.NU, LineBreakClass.PO or LineBreakClass.PR) => true, // LB25
        (LineBreakClass.PO or LineBreakClass.PR, LineBreakClass.OP or LineBreakClass.NU) => true, // LB25
        (LineBreakClass.HY or LineBreakClass.IS or LineBreakClass.NU or LineBreakClass.SY, LineBreakClass.NU) => true, // LB25
        (LineBreakClass.AL, LineBreakClass.AL) => true, // LB28
        (LineBreakClass.IS, LineBreakClass.AL) => true, // LB29
        (LineBreakClass.AL or LineBreakClass.NU, LineBreakClass.OP) => true, // LB30
        (LineBreakClass.CP, LineBreakClass.AL or LineBreakClass.NU) => true, // LB30
        _ => false,
    };

    private static LineBreakClass ClassOf(char c) => c switch
    {
        >= 'a' and <= 'z' or >= 'A' and <= 'Z' => LineBreakClass.AL,
        ' ' => LineBreakClass.SP,
        '\n' or '\u2028' or '\u2029' => LineBreakClass.BK,
        '\u200B' => LineBreakClass.ZW,
        '\u2060' or '\uFEFF' => LineBreakClass.WJ,
        '\u00A0' or '\u202F' or '\u2007' or '\u2011' => LineBreakClass.GL,
        '\u00AD' or '\u2012' or '\u2013' or '\t' or '|' => LineBreakClass.BA,
        >= '\u2000' and <= '\u200A' => LineBreakClass.BA,
        '-' or '\u2010' => LineBreakClass.HY,
        '\u2014' => LineBreakClass.B2,
        '}' => LineBreakClass.CL,
        ')' or ']' => LineBreakClass.CP,
        '(' or '[' or '{' or '¡' or '¿' or '‚' or '„' => LineBreakClass.OP,
        '"' or '\'' => LineBreakClass.QU,
        '“' or '‘' or '«' or '‹' => LineBreakClass.QI,
        '”' or '’' or '»' or '›' => LineBreakClass.QF,
        '!' or '?' => LineBreakClass.EX,
        ',' or '.' or ':' or ';' => LineBreakClass.IS,
        '/' => LineBreakClass.SY,
        '…' => LineBreakClass.IN,
        '+' or '±' or '−' or '$' or '£' or '€' or '¥' or '\\' or '№' => LineBreakClass.PR,
        '%' or '‰' or '°' or '′' or '″' or '¢' => LineBreakClass.PO,
        _ => ByCategory(c),
    };

    private static LineBreakClass ByCategory(char c)
    {
        if (c is >= '\u2E80' and <= '\uD7FF' or >= '\uF900' and <= '\uFAFF')
            return LineBreakClass.ID;
        if (char.IsLowSurrogate(c))
            return LineBreakClass.CM; // never parted from its first half
        return CharUnicodeInfo.GetUnicodeCategory(c) switch
        {
            UnicodeCategory.DecimalDigitNumber => LineBreakClass.NU,
            UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark => LineBreakClass.CM,
            UnicodeCategory.OpenPunctuation => LineBreakClass.OP,
            UnicodeCategory.ClosePunctuation => LineBreakClass.CL,
            UnicodeCategory.InitialQuotePunctuation => LineBreakClass.QI,
            UnicodeCategory.FinalQuotePunctuation => LineBreakClass.QF,
            _ => LineBreakClass.AL,
        };
    }
}
