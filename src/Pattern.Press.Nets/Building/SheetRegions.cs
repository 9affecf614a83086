namespace Pattern.Press.Nets.Building;

/// <summary>The panels that the cells of a scored sheet run together to.</summary>
/// <param name="Regions">In reading order of their first cells.</param>
/// <param name="Root">The one that stays still.</param>
/// <param name="Splits">The cells split along a diagonal.</param>
internal sealed record SheetRegions(IReadOnlyList<Region> Regions, Region Root, IReadOnlyList<SplitCell> Splits)
{
    /// <summary>Finds them. When there are reasons it cannot be done they are added, and the result is not to be used.</summary>
    public static SheetRegions Of(ScoredSheet sheet, List<string> reasons) => new Finder(sheet, reasons).Find();

    private sealed class Finder
    {
        private readonly ScoredSheet sheet;
        private readonly List<string> reasons;
        private readonly double[] xs;
        private readonly double[] ys;

        // Two shares per cell: the whole cell or the half that has its upper side, and the half that has its lower side.
        private readonly int[] joined;

        public Finder(ScoredSheet sheet, List<string> reasons)
        {
            this.sheet = sheet;
            this.reasons = reasons;
            xs = Marks(sheet.Across);
            ys = Marks(sheet.Down);
            joined = [.. Enumerable.Range(0, 2 * Rows * Columns)];
        }

        private int Rows => sheet.Down.Count;

        private int Columns => sheet.Across.Count;

        public SheetRegions Find()
        {
            JoinEqualNeighbours();
            var splits = JoinHalves();
            if (reasons.Count > 0)
                return new SheetRegions([], null!, []);

            var found = new SortedDictionary<int, Region>();
            foreach (var group in Shares().GroupBy(share => Find(share.Index)))
            {
                var (_, row, column) = group.First();
                var cell = sheet.Cells[LetterAt(row, column)];
                var letter = cell.Diagonal?.Joins ?? LetterAt(row, column);
                var loops = LineWork.Border(group.SelectMany(share => Corners(share.Index).Edges));
                var region = new Region(letter, sheet.Cells[letter], row, column) { Outline = loops[0] };
                if (loops.Count > 1)
                    reasons.Add($"{region.Place} goes all the way round a hole; make it of two panels, or fill the hole.");
                found.Add(group.Key, region);
            }

            var roots = found.Values.Where(region => region.Letter == sheet.Root).ToArray();
            if (roots.Length > 1)
                reasons.Add($"The root “{sheet.Root}” is in {roots.Length} separate places of the map; it must be one panel.");
            return new SheetRegions(
                [.. found.Values],
                roots[0],
                [.. splits.Select(split => new SplitCell(
                    found[Find(split.Share)], found[Find(split.Share + 1)], split.Line, split.Fold))]);
        }

        private static double[] Marks(IReadOnlyList<Measure.Length> bands)
        {
            var marks = new double[bands.Count + 1];
            var at = Measure.Length.Zero;
            for (var i = 0; i < bands.Count; i++)
                marks[i + 1] = (at += bands[i]).Millimetres;
            return marks;
        }

        private IEnumerable<(int Row, int Column)> Cells() =>
            from row in Enumerable.Range(0, Rows) from column in Enumerable.Range(0, Columns) select (row, column);

        private IEnumerable<(int Index, int Row, int Column)> Shares()
        {
            foreach (var (row, column) in Cells().Where(cell => LetterAt(cell.Row, cell.Column) != SheetReading.Waste))
            {
                yield return (Share(row, column), row, column);
                if (DiagonalAt(row, column) is not null)
                    yield return (Share(row, column) + 1, row, column);
            }
        }

        private char LetterAt(int row, int column) =>
            row < 0 || row >= Rows || column < 0 || column >= Columns ? SheetReading.Waste : sheet.Map[row][column];

        private CellDiagonal? DiagonalAt(int row, int column) =>
            sheet.Cells.TryGetValue(LetterAt(row, column), out var cell) ? cell.Diagonal : null;

        private int Share(int row, int column) => 2 * ((row * Columns) + column);

        private int Find(int share)
        {
            while (joined[share] != share)
                share = joined[share];
            return share;
        }

        // The lower number stays, so that a panel goes by its first cell in reading order.
        private void Join(int a, int b)
        {
            (a, b) = (Find(a), Find(b));
            joined[Math.Max(a, b)] = Math.Min(a, b);
        }

        private void JoinEqualNeighbours()
        {
            foreach (var (row, column) in Cells())
            {
                var letter = LetterAt(row, column);
                if (letter == SheetReading.Waste || DiagonalAt(row, column) is not null)
                    continue;
                if (LetterAt(row, column + 1) == letter)
                    Join(Share(row, column), Share(row, column + 1));
                if (LetterAt(row + 1, column) == letter)
                    Join(Share(row, column), Share(row + 1, column));
            }
        }

        private List<(int Share, Edge Line, CellFold Fold)> JoinHalves()
        {
            var splits = new List<(int Share, Edge Line, CellFold Fold)>();
            var joins = new List<(int Half, int Panel)>();
            foreach (var (row, column) in Cells())
            {
                if (DiagonalAt(row, column) is not { } diagonal)
                    continue;
                if (DirectionAt(row, column, diagonal) is not { } direction)
                    continue;
                var falling = direction == DiagonalDirection.Falling;
                falls[(row, column)] = falling;
                var share = Share(row, column);
                var (above, below) = ((Row: row - 1, column), (Row: row + 1, column));
                var (left, right) = ((row, Column: column - 1), (row, Column: column + 1));
                var upper = PanelBeside(row, column, falling ? "upper right" : "upper left", diagonal.Joins, above, falling ? right : left);
                var lower = PanelBeside(row, column, falling ? "lower left" : "lower right", diagonal.Joins, below, falling ? left : right);
                if (upper is not { } first || lower is not { } second)
                    continue;
                if (first == second)
                {
                    reasons.Add($"Both halves of “{LetterAt(row, column)}” in row {row + 1}, band {column + 1} across, join the same “{diagonal.Joins}”; a diagonal folds two panels to each other.");
                    continue;
                }

                joins.Add((share, first));
                joins.Add((share + 1, second));
                splits.Add((share, falling
                    ? new Edge(new(xs[column], ys[row]), new(xs[column + 1], ys[row + 1]))
                    : new Edge(new(xs[column + 1], ys[row]), new(xs[column], ys[row + 1])), diagonal.Fold));
            }

            // Only now, so that which panel a half joins does not depend on which halves came before it.
            foreach (var (half, panel) in joins)
                Join(half, panel);
            return splits;
        }

        private readonly Dictionary<(int Row, int Column), bool> falls = [];

        private int? PanelBeside(int row, int column, string half, char letter, params ReadOnlySpan<(int Row, int Column)> neighbours)
        {
            var panels = new SortedSet<int>();
            foreach (var neighbour in neighbours)
            {
                if (LetterAt(neighbour.Row, neighbour.Column) == letter)
                    panels.Add(Find(Share(neighbour.Row, neighbour.Column)));
            }

            if (panels.Count == 1)
                return panels.Min;
            var place = $"The {half} half of “{LetterAt(row, column)}” in row {row + 1}, band {column + 1} across,";
            reasons.Add(panels.Count == 0
                ? $"{place} has no “{letter}” beside it to join."
                : $"{place} lies between two panels of “{letter}” and cannot join both.");
            return null;
        }

        private DiagonalDirection? DirectionAt(int row, int column, CellDiagonal diagonal)
        {
            if (diagonal.Direction is { } given)
                return given;
            var corners = new[] { (row, column), (row, column + 1), (row + 1, column + 1), (row + 1, column) }
                .Select((corner, order) => (Distance: DistanceToRoot(new(xs[corner.Item2], ys[corner.Item1])), Order: order))
                .Order().ToArray();
            if (corners[1].Distance - corners[0].Distance < LineWork.Tolerance)
            {
                reasons.Add($"No one corner of “{LetterAt(row, column)}” in row {row + 1}, band {column + 1} across, is nearest to the root “{sheet.Root}”; say whether its diagonal is falling or rising.");
                return null;
            }

            return corners[0].Order % 2 == 0 ? DiagonalDirection.Falling : DiagonalDirection.Rising;
        }

        private double DistanceToRoot(Point corner)
        {
            var nearest = double.PositiveInfinity;
            foreach (var (row, column) in Cells().Where(cell => LetterAt(cell.Row, cell.Column) == sheet.Root))
            {
                var inside = new Point(
                    Math.Clamp(corner.X, xs[column], xs[column + 1]), Math.Clamp(corner.Y, ys[row], ys[row + 1]));
                nearest = Math.Min(nearest, corner.DistanceTo(inside));
            }

            return nearest;
        }

        private Outline Corners(int share)
        {
            var (row, column) = (share / 2 / Columns, share / 2 % Columns);
            Point topLeft = new(xs[column], ys[row]);
            Point topRight = new(xs[column + 1], ys[row]);
            Point bottomRight = new(xs[column + 1], ys[row + 1]);
            Point bottomLeft = new(xs[column], ys[row + 1]);
            var upper = share % 2 == 0;
            if (!falls.TryGetValue((row, column), out var falling))
                return Outline.Through(topLeft, topRight, bottomRight, bottomLeft);
            return (falling, upper) switch
            {
                (true, true) => Outline.Through(topLeft, topRight, bottomRight),
                (true, false) => Outline.Through(topLeft, bottomRight, bottomLeft),
                (false, true) => Outline.Through(topLeft, topRight, bottomLeft),
                (false, false) => Outline.Through(topRight, bottomRight, bottomLeft),
            };
        }
    }
}
