namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>How a part of a measurement is set.</summary>
internal enum MeasurePartKind
{
    /// <summary>As it is.</summary>
    Plain,

    /// <summary>As a fraction.</summary>
    Fraction,

    /// <summary>The narrow space between a whole number and its fraction.</summary>
    FractionSpace,
}

/// <summary>Tells the fractions of a measurement from the rest of it.</summary>
internal static class MeasureParts
{
    /// <summary>The parts of a measurement such as <c>2 1/4 × 3 in</c>, in order.</summary>
    /// <param name="text">The measurement.</param>
    /// <param name="parts">Where the parts go; whatever was in it is lost.</param>
    public static void Of(ReadOnlySpan<char> text, List<(MeasurePartKind Kind, int Start, int End)> parts)
    {
        parts.Clear();
        var plain = 0;
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i]) || (i > 0 && (char.IsAsciiDigit(text[i - 1]) || text[i - 1] is '/' or '.' or ',')))
                continue;
            var end = FractionEnd(text, i);
            if (end < 0)
                continue;
            var hasWhole = i >= plain + 2 && text[i - 1] is ' ' or '\u00A0' or '\u202F' && char.IsAsciiDigit(text[i - 2]);
            AddPlain(hasWhole ? i - 1 : i);
            if (hasWhole)
                parts.Add((MeasurePartKind.FractionSpace, i - 1, i));
            parts.Add((MeasurePartKind.Fraction, i, end));
            plain = end;
            i = end - 1;
        }

        AddPlain(text.Length);

        void AddPlain(int end)
        {
            if (end > plain)
                parts.Add((MeasurePartKind.Plain, plain, end));
        }
    }

    /// <summary>Where the fraction that starts here ends, or −1 when none does: digits, a slash, digits, and no more.</summary>
    private static int FractionEnd(ReadOnlySpan<char> text, int start)
    {
        var slash = SkipDigits(text, start);
        if (slash >= text.Length || text[slash] is not ('/' or '\u2044'))
            return -1;
        var end = SkipDigits(text, slash + 1);
        return end > slash + 1 && (end == text.Length || text[end] != '/') ? end : -1;
    }

    private static int SkipDigits(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at;
    }
}
