namespace Pattern.Press.Plans.Tests.Sheets;

/// <summary>The fewest sheets for a handful of rectangles with whole sides, by trying every cut at every whole place.</summary>
internal sealed class ExhaustiveSheets(IReadOnlyList<(int Width, int Height)> items, int width, int height, bool mayTurn)
{
    private readonly Dictionary<(int Chosen, int Width, int Height), bool> _known = [];

    public int Fewest()
    {
        var everything = (1 << items.Count) - 1;
        var fewest = new int[everything + 1];
        for (var chosen = 1; chosen <= everything; chosen++)
        {
            fewest[chosen] = int.MaxValue;
            for (var sheet = chosen; sheet > 0; sheet = (sheet - 1) & chosen)
            {
                if (fewest[chosen ^ sheet] != int.MaxValue && Fits(sheet, width, height))
                    fewest[chosen] = Math.Min(fewest[chosen], fewest[chosen ^ sheet] + 1);
            }
        }

        return fewest[everything];
    }

    private bool Fits(int chosen, int w, int h)
    {
        if (chosen == 0)
            return true;
        if (_known.TryGetValue((chosen, w, h), out var known))
            return known;
        var fits = (chosen & (chosen - 1)) == 0 && One(items[int.TrailingZeroCount(chosen)], w, h);
        for (var part = (chosen - 1) & chosen; part > 0 && !fits; part = (part - 1) & chosen)
        {
            for (var at = 1; at < w && !fits; at++)
                fits = Fits(part, at, h) && Fits(chosen ^ part, w - at, h);
            for (var at = 1; at < h && !fits; at++)
                fits = Fits(part, w, at) && Fits(chosen ^ part, w, h - at);
        }

        return _known[(chosen, w, h)] = fits;
    }

    private bool One((int Width, int Height) item, int w, int h) =>
        (item.Width <= w && item.Height <= h) || (mayTurn && item.Height <= w && item.Width <= h);
}
