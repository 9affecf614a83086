namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>What a cell wants: the columns it covers, and the narrowest and the most comfortable width of its words.</summary>
internal readonly record struct CellWish(int Column, int Span, double Min, double Max);

/// <summary>Widths of a table's columns from what is in them.</summary>
internal static class ColumnWidths
{
    // A table that nearly fills its column looks better when it fills it.
    private const double NearlyFull = 0.5;
    private const double Airy = 1.2;

    /// <summary>
    /// Shares out a width. If every cell can have its words on one line, columns are in proportion to that and the table
    /// is no wider than reads well; if not, short columns get that, and each long one its narrowest width and a share of the
    /// rest in proportion to what it lacks.
    /// </summary>
    /// <param name="columns">How many columns.</param>
    /// <param name="wishes">What the cells want, their padding included.</param>
    /// <param name="width">The width there is.</param>
    public static double[] Share(int columns, IReadOnlyList<CellWish> wishes, double width)
    {
        var min = new double[columns];
        var max = new double[columns];
        foreach (var wish in wishes)
        {
            if (wish.Span != 1)
                continue;
            min[wish.Column] = Math.Max(min[wish.Column], wish.Min);
            max[wish.Column] = Math.Max(max[wish.Column], wish.Max);
        }

        foreach (var wish in wishes)
        {
            if (wish.Span == 1)
                continue;
            Widen(min, wish.Column, wish.Span, wish.Min);
            Widen(max, wish.Column, wish.Span, wish.Max);
        }

        var (leastWidth, bestWidth) = (min.Sum(), max.Sum());
        if (bestWidth <= width)
        {
            var target = bestWidth >= width * NearlyFull ? width : bestWidth * Airy;
            var extra = (target - bestWidth) / columns;
            return [.. max.Select(best => best + extra)];
        }

        if (leastWidth >= width)
            return Cut(min, width);
        return Squeeze(min, max, width);
    }

    /// <summary>Columns of few words keep them on one line; those with much to say share what is left.</summary>
    private static double[] Squeeze(double[] min, double[] max, double width)
    {
        var widths = new double[min.Length];
        var isWide = new bool[min.Length];
        Array.Fill(isWide, true);
        var (left, wide, settled) = (width, min.Length, false);
        while (!settled)
        {
            settled = true;
            for (var i = 0; i < min.Length; i++)
            {
                var othersLeast = Enumerable.Range(0, min.Length).Where(other => isWide[other] && other != i).Sum(other => min[other]);
                if (!isWide[i] || max[i] > left / wide || left - max[i] < othersLeast)
                    continue;
                (widths[i], isWide[i], settled) = (max[i], false, false);
                (left, wide) = (left - max[i], wide - 1);
            }
        }

        var least = Enumerable.Range(0, min.Length).Where(i => isWide[i]).Sum(i => min[i]);
        var lacking = Enumerable.Range(0, min.Length).Where(i => isWide[i]).Sum(i => max[i] - min[i]);
        for (var i = 0; i < min.Length; i++)
        {
            if (isWide[i])
                widths[i] = min[i] + ((left - least) * (max[i] - min[i]) / lacking);
        }

        return widths;
    }

    // Only the widest columns lose something, so that what is said to have no room is what takes it from the others.
    private static double[] Cut(double[] min, double width)
    {
        var (left, count, most) = (width, min.Length, 0.0);
        foreach (var least in min.Order())
        {
            most = left / count;
            if (least > most)
                break;
            (left, count) = (left - least, count - 1);
        }

        return [.. min.Select(least => Math.Min(least, most))];
    }

    private static void Widen(double[] widths, int first, int span, double wanted)
    {
        var have = 0.0;
        for (var i = first; i < first + span; i++)
            have += widths[i];
        for (var i = first; i < first + span && have < wanted; i++)
            widths[i] += (wanted - have) / span;
    }
}
