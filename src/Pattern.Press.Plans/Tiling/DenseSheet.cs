namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// A shared page that is filled wherever there is room: it keeps every largest free rectangle, and a block goes to the
/// corner of the one that it fills best. Takes more than rows do, and looks less tidy.
/// </summary>
internal sealed class DenseSheet : ISharedSheet
{
    private readonly DrawingArea _area;
    private readonly double _gap;
    private readonly List<(SharedBlock Block, double X, double Y)> _blocks = [];
    private List<Room> _free;

    public DenseSheet(DrawingArea area, double gap)
    {
        (_area, _gap) = (area, gap);

        // Each block brings a gap to its right and below; the last ones need none.
        _free = [new Room(0, 0, area.Width + gap, area.Height + gap)];
    }

    /// <inheritdoc/>
    public double Height => _blocks.Max(b => b.Y + b.Block.Height);

    /// <inheritdoc/>
    public bool TakeAmong(SharedBlock block) => _blocks.Count > 0 && Take(block);

    /// <inheritdoc/>
    public bool Take(SharedBlock block)
    {
        var (width, height) = (block.Width + _gap, block.Height + _gap);
        Room? best = null;
        var least = (double.MaxValue, double.MaxValue);
        foreach (var room in _free)
        {
            var (besides, below) = (room.Width - width, room.Height - height);
            if (besides < -1e-9 || below < -1e-9)
                continue;
            var left = (Math.Min(besides, below), Math.Max(besides, below));
            if (left.CompareTo(least) < 0)
                (best, least) = (room, left);
        }

        if (best is not { } place)
            return false;
        _blocks.Add((block, place.X, place.Y));
        var taken = new Room(place.X, place.Y, width, height);
        var free = _free.SelectMany(room => room.Without(taken)).Distinct().ToList();
        _free = [.. free.Where(room => !free.Exists(other => other != room && other.Holds(room)))];
        return true;
    }

    /// <inheritdoc/>
    public SharedPage Set()
    {
        var left = _area.Corner.X + ((_area.Width - _blocks.Max(b => b.X + b.Block.Width)) / 2);
        var top = _area.Corner.Y + ((_area.Height - Height) / 2);
        return new SharedPage(_area.Lying, [.. _blocks.OrderBy(b => b.Y).ThenBy(b => b.X).SelectMany(b => b.Block.At(left + b.X, top + b.Y))]);
    }

    private readonly record struct Room(double X, double Y, double Width, double Height)
    {
        public bool Holds(Room other) =>
            other.X >= X - 1e-9 && other.Y >= Y - 1e-9 && other.X + other.Width <= X + Width + 1e-9 && other.Y + other.Height <= Y + Height + 1e-9;

        // The largest rectangles left of it, up to four.
        public IEnumerable<Room> Without(Room taken)
        {
            const double Nothing = 1e-6;
            var (right, bottom, takenRight, takenBottom) = (X + Width, Y + Height, taken.X + taken.Width, taken.Y + taken.Height);
            if (taken.X >= right - Nothing || takenRight <= X + Nothing || taken.Y >= bottom - Nothing || takenBottom <= Y + Nothing)
            {
                yield return this;
                yield break;
            }

            if (taken.X > X + Nothing)
                yield return this with { Width = taken.X - X };
            if (takenRight < right - Nothing)
                yield return this with { X = takenRight, Width = right - takenRight };
            if (taken.Y > Y + Nothing)
                yield return this with { Height = taken.Y - Y };
            if (takenBottom < bottom - Nothing)
                yield return this with { Y = takenBottom, Height = bottom - takenBottom };
        }
    }
}
