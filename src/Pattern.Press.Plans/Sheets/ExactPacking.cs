namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// The fewest sheets for a few rectangles, found by trying everything. Whatever edge-to-edge cuts part can be put
/// together again two by two, side by side or one below the other; so for every choice of rectangles the smallest blocks
/// are worked out from those of smaller choices, and a choice goes on one sheet when one of its blocks does.
/// </summary>
internal sealed class ExactPacking
{
    // How many ways to split choices in two are looked at; beyond this the search would be felt.
    private const long MostSplits = 60_000;

    private readonly long _width;
    private readonly long _height;
    private readonly List<(long Width, long Height, List<int> Items)> _kinds = [];
    private readonly IReadOnlyList<(long Width, long Height)> _items;
    private readonly bool _mayTurn;
    private int[] _weights = [];
    private List<Block>[] _blocks = [];

    private ExactPacking(IReadOnlyList<(long Width, long Height)> items, long width, long height, bool mayTurn)
    {
        (_items, _width, _height, _mayTurn) = (items, width, height, mayTurn);
        for (var i = 0; i < items.Count; i++)
        {
            var (w, h) = mayTurn ? (Math.Max(items[i].Width, items[i].Height), Math.Min(items[i].Width, items[i].Height)) : items[i];
            var kind = _kinds.FindIndex(kind => kind.Width == w && kind.Height == h);
            if (kind < 0)
                _kinds.Add((w, h, [i]));
            else
                _kinds[kind].Items.Add(i);
        }
    }

    /// <summary>The fewest sheets there can be, or null when there are too many choices to try.</summary>
    public static List<Packing.Part>? Fewest(IReadOnlyList<(long Width, long Height)> items, long width, long height, bool mayTurn)
    {
        var packing = new ExactPacking(items, width, height, mayTurn);
        var splits = 1L;
        foreach (var kind in packing._kinds)
        {
            splits *= (kind.Items.Count + 1L) * (kind.Items.Count + 2) / 2;
            if (splits > MostSplits)
                return null;
        }

        return packing.Sheets();
    }

    private List<Packing.Part> Sheets()
    {
        // A choice is a number whose digits say how many of each kind it takes.
        _weights = new int[_kinds.Count];
        var count = 1;
        for (var i = 0; i < _kinds.Count; i++)
        {
            _weights[i] = count;
            count *= _kinds[i].Items.Count + 1;
        }

        _blocks = new List<Block>[count];
        for (var choice = 1; choice < count; choice++)
            _blocks[choice] = Blocks(choice);

        // The sheet with the first rectangle that is left is chosen first, so no plan is looked at twice.
        var (fewest, first) = (new int[count], new int[count]);
        for (var choice = 1; choice < count; choice++)
        {
            fewest[choice] = int.MaxValue;
            var leading = _weights[Enumerable.Range(0, _kinds.Count).First(kind => Digit(choice, kind) > 0)];
            foreach (var part in Parts(choice - leading))
            {
                var sheet = part + leading;
                if (_blocks[sheet].Count == 0 || fewest[choice - sheet] + 1 >= fewest[choice])
                    continue;
                (fewest[choice], first[choice]) = (fewest[choice - sheet] + 1, sheet);
            }
        }

        var next = new int[_kinds.Count];
        var sheets = new List<Packing.Part>();
        for (var left = count - 1; left > 0; left -= first[left])
        {
            var sheet = new Packing.Part(0, 0, _width, _height);
            Lay(sheet, _blocks[first[left]][0], next);
            sheets.Add(sheet);
        }

        return sheets;
    }

    private int Digit(int choice, int kind) => choice / _weights[kind] % (_kinds[kind].Items.Count + 1);

    // Every choice within a choice, nothing and everything among them.
    private List<int> Parts(int choice)
    {
        var parts = new List<int> { 0 };
        for (var kind = 0; kind < _kinds.Count; kind++)
        {
            var most = Digit(choice, kind);
            var before = parts.Count;
            for (var n = 1; n <= most; n++)
            {
                for (var i = 0; i < before; i++)
                    parts.Add(parts[i] + (n * _weights[kind]));
            }
        }

        return parts;
    }

    private List<Block> Blocks(int choice)
    {
        var blocks = new List<Block>();
        for (var kind = 0; kind < _kinds.Count; kind++)
        {
            if (choice != _weights[kind])
                continue;
            Keep(blocks, new Block(_kinds[kind].Width, _kinds[kind].Height, Kind: kind));
            if (_mayTurn)
                Keep(blocks, new Block(_kinds[kind].Height, _kinds[kind].Width, Kind: kind));
            return blocks;
        }

        foreach (var part in Parts(choice))
        {
            if (part == 0 || part > choice - part)
                continue;
            foreach (var a in _blocks[part])
            {
                foreach (var b in _blocks[choice - part])
                {
                    Keep(blocks, new Block(a.Width + b.Width, Math.Max(a.Height, b.Height), a, b, Down: true));
                    Keep(blocks, new Block(Math.Max(a.Width, b.Width), a.Height + b.Height, a, b));
                }
            }
        }

        return blocks;
    }

    // Only blocks that fit a sheet and that no other is smaller than both ways.
    private void Keep(List<Block> blocks, Block block)
    {
        if (block.Width > _width || block.Height > _height)
            return;
        foreach (var other in blocks)
        {
            if (other.Width <= block.Width && other.Height <= block.Height)
                return;
        }

        blocks.RemoveAll(other => block.Width <= other.Width && block.Height <= other.Height);
        blocks.Add(block);
    }

    private void Lay(Packing.Part part, Block block, int[] next)
    {
        // The larger offcut stays whole.
        if ((part.Width - block.Width) * (decimal)part.Height >= (part.Height - block.Height) * (decimal)part.Width)
            part = Packing.Cut(Packing.Cut(part, down: true, block.Width), down: false, block.Height);
        else
            part = Packing.Cut(Packing.Cut(part, down: false, block.Height), down: true, block.Width);
        if (block is { First: { } first, Second: { } second })
        {
            Lay(Packing.Cut(part, block.Down, block.Down ? first.Width : first.Height), first, next);
            Lay(part.Second!, second, next);
            return;
        }

        part.Item = _kinds[block.Kind].Items[next[block.Kind]++];
        part.Turned = _items[part.Item].Width != part.Width;
    }

    private sealed record Block(long Width, long Height, Block? First = null, Block? Second = null, bool Down = false, int Kind = -1);
}
