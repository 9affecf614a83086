namespace Pattern.Press.Plans.Sheets;

/// <summary>One way of filling sheets: which free part a rectangle goes to, and how the rest of that part is cut.</summary>
internal sealed class Packing
{
    // Putting a rectangle in its place takes about as long as so many looks at free parts.
    private const int ItemLooks = 10;

    private readonly long _width;
    private readonly long _height;
    private readonly bool _mayTurn;
    private readonly FitRule _fit;
    private readonly SplitRule _split;
    private readonly SpareParts _parts;

    // Parts of one size are all as good as each other, so only the first of each is looked at.
    private readonly List<Alike> _free = [];
    private int _begun;

    public Packing(long width, long height, bool mayTurn, FitRule fit, SplitRule split, SpareParts parts) =>
        (_width, _height, _mayTurn, _fit, _split, _parts) = (width, height, mayTurn, fit, split, parts);

    public enum FitRule
    {
        LeastAreaLeft,
        LeastShortSideLeft,
        LeastLongSideLeft,
    }

    public enum SplitRule
    {
        LongerPartWhole,
        ShorterPartWhole,
        LargestPart,
        EvenParts,
        AlwaysAcross,
        AlwaysDown,
    }

    /// <summary>How many times a rectangle was held against a free part: the measure of the work.</summary>
    public long Looks { get; private set; }

    /// <summary>The sheets begun so far.</summary>
    public List<Part> Sheets { get; } = [];

    /// <summary>Puts rectangles on sheets in the given order. Each fits an empty sheet.</summary>
    public void Take(IReadOnlyList<(long Width, long Height)> items, IReadOnlyList<int> order, int atMost)
    {
        foreach (var item in order)
        {
            var (w, h) = items[item];
            if (!TakeFree(item, w, h))
            {
                if (Sheets.Count == atMost)
                {
                    Sheets.Clear();
                    return;
                }

                var sheet = _parts.Take(0, 0, _width, _height);
                Sheets.Add(sheet);
                Add(sheet);
                TakeFree(item, w, h);
            }
        }
    }

    /// <summary>Puts as many rectangles as it takes on one sheet, kind by kind.</summary>
    /// <param name="kinds">The kinds of rectangles.</param>
    /// <param name="order">In which order their turn comes.</param>
    /// <param name="most">How many of each there are.</param>
    /// <returns>How many of each it took.</returns>
    public int[] FillOne(IReadOnlyList<(long Width, long Height)> kinds, IReadOnlyList<int> order, IReadOnlyList<int> most)
    {
        var sheet = _parts.Take(0, 0, _width, _height);
        Sheets.Add(sheet);
        Add(sheet);
        var used = new int[kinds.Count];
        foreach (var kind in order)
        {
            while (used[kind] < most[kind] && TakeFree(kind, kinds[kind].Width, kinds[kind].Height))
                used[kind]++;
        }

        return used;
    }

    private bool TakeFree(int item, long w, long h)
    {
        var (best, turned, score, tie, since) = (-1, false, long.MaxValue, long.MaxValue, 0);
        Looks += _free.Count + ItemLooks;
        for (var i = 0; i < _free.Count; i++)
        {
            var part = _free[i].First;
            for (var turn = 0; turn < (_mayTurn && w != h ? 2 : 1); turn++)
            {
                var (dx, dy) = turn == 0 ? (part.Width - w, part.Height - h) : (part.Width - h, part.Height - w);
                if (dx < 0 || dy < 0)
                    continue;
                var (first, second) = _fit switch
                {
                    // Areas in square micrometres, which a long holds for any sheet up to metres.
                    FitRule.LeastAreaLeft => (Area(part) - Area(w, h), Math.Min(dx, dy)),
                    FitRule.LeastShortSideLeft => (Math.Min(dx, dy), Math.Max(dx, dy)),
                    _ => (Math.Max(dx, dy), Math.Min(dx, dy)),
                };
                if (first < score || (first == score && (second < tie || (second == tie && part.Since < since))))
                    (best, turned, score, tie, since) = (i, turn == 1, first, second, part.Since);
            }
        }

        if (best < 0)
            return false;
        var (width, height) = turned ? (h, w) : (w, h);
        Place(best, item, turned, width, height);
        return true;
    }

    private void Place(int index, int item, bool turned, long width, long height)
    {
        var part = Remove(index);
        var (dx, dy) = (part.Width - width, part.Height - height);
        var across = _split switch
        {
            // A cut across first leaves the part below as wide as the whole, and the other way round.
            SplitRule.LongerPartWhole => dx <= dy,
            SplitRule.ShorterPartWhole => dx > dy,
            SplitRule.LargestPart => Area(part.Width, dy) >= Area(dx, part.Height),
            SplitRule.EvenParts => Area(part.Width, dy) < Area(dx, part.Height),
            SplitRule.AlwaysAcross => true,
            _ => false,
        };
        var piece = across ? CutFree(CutFree(part, false, height), true, width) : CutFree(CutFree(part, true, width), false, height);
        piece.Item = item;
        piece.Turned = turned;
    }

    /// <summary>Cuts a part in two; what is wanted of it is the first, or the part itself when nothing is left over.</summary>
    public static Part Cut(Part part, bool down, long at, SpareParts? parts = null)
    {
        if (at == (down ? part.Width : part.Height))
            return part;
        part.Down = down;
        part.First = down ? Make(part.Left, part.Top, at, part.Height) : Make(part.Left, part.Top, part.Width, at);
        part.Second = down
            ? Make(part.Left + at, part.Top, part.Width - at, part.Height)
            : Make(part.Left, part.Top + at, part.Width, part.Height - at);
        return part.First;

        Part Make(long left, long top, long width, long height) => parts?.Take(left, top, width, height) ?? new Part(left, top, width, height);
    }

    private Part CutFree(Part part, bool down, long at)
    {
        var first = Cut(part, down, at, _parts);
        if (part.Second is { } second)
            Add(second);
        return first;
    }

    private void Add(Part part)
    {
        (part.Since, part.Next) = (++_begun, null);
        for (var i = 0; i < _free.Count; i++)
        {
            var (first, last) = (_free[i].First, _free[i].Last);
            if (first.Width != part.Width || first.Height != part.Height)
                continue;
            last.Next = part;
            _free[i] = new Alike(first, part);
            return;
        }

        _free.Add(new Alike(part, part));
    }

    private Part Remove(int index)
    {
        var (part, last) = (_free[index].First, _free[index].Last);
        if (part.Next is { } next)
        {
            _free[index] = new Alike(next, last);
        }
        else
        {
            _free[index] = _free[^1];
            _free.RemoveAt(_free.Count - 1);
        }

        return part;
    }

    private static long Area(Part part) => Area(part.Width, part.Height);

    private static long Area(long width, long height) => (width / 1000) * (height / 1000);

    // Free parts of one size, in the order in which they came up.
    private readonly record struct Alike(Part First, Part Last);

    /// <summary>A part of a sheet, in nanometres: cut in two, taken by an item, or free.</summary>
    internal sealed class Part
    {
        public Part(long left, long top, long width, long height) => Begin(left, top, width, height);

        public long Left { get; private set; }

        public long Top { get; private set; }

        public long Width { get; private set; }

        public long Height { get; private set; }

        public bool Down { get; set; }

        public Part? First { get; set; }

        public Part? Second { get; set; }

        /// <summary>The item that takes it, by its index, or −1.</summary>
        public int Item { get; set; }

        public bool Turned { get; set; }

        /// <summary>While it is free, when it came up: lower is earlier.</summary>
        public int Since { get; set; }

        /// <summary>While it is free, the next of its size.</summary>
        public Part? Next { get; set; }

        /// <summary>Makes it a free part, whatever it was before.</summary>
        public void Begin(long left, long top, long width, long height)
        {
            (Left, Top, Width, Height) = (left, top, width, height);
            (Down, First, Second, Item, Turned, Since, Next) = (false, null, null, -1, false, 0, null);
        }
    }

    /// <summary>Parts for one plan after the other: those of a plan that came to nothing serve the next.</summary>
    internal sealed class SpareParts
    {
        private readonly List<Part> _parts = [];
        private int _taken;

        /// <summary>A free part.</summary>
        public Part Take(long left, long top, long width, long height)
        {
            if (_taken == _parts.Count)
                _parts.Add(new Part(left, top, width, height));
            else
                _parts[_taken].Begin(left, top, width, height);
            return _parts[_taken++];
        }

        /// <summary>The parts taken so far are free for the next plan.</summary>
        public void TakeBack() => _taken = 0;

        /// <summary>The parts taken so far stay with their plan.</summary>
        public void Leave()
        {
            _parts.RemoveRange(0, _taken);
            _taken = 0;
        }
    }
}
