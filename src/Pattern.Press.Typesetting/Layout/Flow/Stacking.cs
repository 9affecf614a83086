namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>A strip and how far its top is below the top of the column.</summary>
internal readonly record struct PlacedStrip(Strip Strip, double Y, bool IsRepeated)
{
    public double Bottom => Y + Strip.Height;
}

/// <summary>How strips stand one below the other, with the grounds behind them.</summary>
internal static class Stacking
{
    /// <summary>The top of a strip that follows another, or that starts a column.</summary>
    public static double TopOf(Strip strip, PlacedStrip? above)
    {
        if (above is not { } previous)
            return PadAbove(strip.Frame, null);
        return previous.Bottom + PadBelow(previous.Strip.Frame, strip.Frame) + strip.Gap + PadAbove(strip.Frame, previous.Strip.Frame);
    }

    /// <summary>The room that the grounds behind a strip need below it if the column ends there.</summary>
    public static double PadBelow(Frame? frame, Frame? next)
    {
        var pad = 0.0;
        for (; frame is not null && !frame.Holds(next); frame = frame.Parent)
            pad += frame.PadBottom;
        return pad;
    }

    /// <summary>Stacks strips in a column of their own.</summary>
    public static (IReadOnlyList<PlacedStrip> Strips, double Height) Stack(IReadOnlyList<Strip> strips)
    {
        var placed = new List<PlacedStrip>(strips.Count);
        PlacedStrip? above = null;
        foreach (var strip in strips)
        {
            above = new PlacedStrip(strip, TopOf(strip, above), false);
            placed.Add(above.Value);
        }

        return (placed, above is { } last ? last.Bottom + PadBelow(last.Strip.Frame, null) : 0);
    }

    /// <summary>Draws strips and the grounds behind them, the column's top-left corner at a point.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="strips">The strips of the column.</param>
    /// <param name="left">Its left edge.</param>
    /// <param name="top">Its top.</param>
    /// <param name="before">The strip before the first one, on another page; null for none.</param>
    public static void Draw(PageCanvas canvas, IReadOnlyList<PlacedStrip> strips, double left, double top, Strip? before)
    {
        DrawFrames(canvas, strips, left, top, before);
        foreach (var placed in strips)
        {
            canvas.IsRepeating = placed.IsRepeated;
            placed.Strip.Place(canvas, left, top + placed.Y);
        }

        canvas.IsRepeating = false;
    }

    private static double PadAbove(Frame? frame, Frame? previous)
    {
        var pad = 0.0;
        for (; frame is not null && !frame.Holds(previous); frame = frame.Parent)
            pad += frame.PadTop;
        return pad;
    }

    private static void DrawFrames(PageCanvas canvas, IReadOnlyList<PlacedStrip> strips, double left, double top, Strip? before)
    {
        for (var i = 0; i < strips.Count; i++)
        {
            var previous = i > 0 ? strips[i - 1].Strip.Frame : null;
            var opened = new Stack<Frame>();
            for (var frame = strips[i].Strip.Frame; frame is not null && !frame.Holds(previous); frame = frame.Parent)
                opened.Push(frame);
            // Outer grounds first, inner ones over them.
            foreach (var frame in opened)
            {
                var end = i;
                while (end + 1 < strips.Count && frame.Holds(strips[end + 1].Strip.Frame))
                    end++;
                var start = strips[i].Y - PadAbove(strips[i].Strip.Frame, frame.Parent);
                var bottom = strips[end].Bottom + PadBelow(strips[end].Strip.Frame, frame.Parent);
                frame.Draw(canvas, left, top + start, top + bottom, i > 0 || !frame.Holds(before?.Frame));
            }
        }
    }
}
