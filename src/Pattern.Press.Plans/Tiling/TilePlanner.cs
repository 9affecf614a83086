using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// Spreads a template over as few pages as a grid of tiles can, and among those plans takes the one that is easiest to
/// put together.
/// </summary>
/// <remarks>
/// The template is tried unturned and turned, the page upright and lying. A template that fits one page is never tiled.
/// Tiles of a row (or column) need not be the same size: where pages have room to spare, seams move away from folds that
/// run along them, from tabs and from small panels. Tiles without card on them are left out, so a row or column more than
/// the least can save pages; one more each way is tried.
/// </remarks>
public static class TilePlanner
{
    /// <summary>The plan with the fewest pages.</summary>
    /// <param name="part">What is drawn.</param>
    /// <param name="page">The page.</param>
    /// <param name="lap">What neighbouring tiles share for gluing, in millimetres; 0 or more.</param>
    /// <exception cref="TilePlanException">The page leaves no usable tile, or the lap is too wide for its tiles.</exception>
    public static TilePlan Plan(Part part, TemplatePage page, double lap)
    {
        ArgumentNullException.ThrowIfNull(part);
        var areas = DrawingArea.Of(page, lap);
        Grid? best = null;
        foreach (var turned in new[] { false, true })
        {
            var shape = new TemplateShape(part.Piece, turned);
            foreach (var area in areas)
            {
                var grid = Best(shape, area, lap, best?.Pages ?? int.MaxValue);

                // In order of preference, so a later plan has to be better, not as good.
                if (grid is not null && (best is null || grid.Pages < best.Pages || (grid.Pages == best.Pages && grid.Cost < best.Cost - 1e-6)))
                    best = grid;
            }
        }

        return Finish(part, best!, lap);
    }

    private static Grid? Best(TemplateShape shape, DrawingArea area, double lap, int atMost)
    {
        var across = new Seams(shape.Across, area.Width, lap);
        var down = new Seams(shape.Down, area.Height, lap);
        Grid? best = null;

        // Card reaches from side to side of a piece in one part, so a single row or column has no blank tile and no
        // further tile can save a page.
        var spare = across.Least > 1 && down.Least > 1 ? 1 : 0;
        for (var columns = across.Least; columns <= across.Least + spare; columns++)
        {
            for (var rows = down.Least; rows <= down.Least + spare; rows++)
            {
                if (across.Best(columns) is not { } seamsAcross || down.Best(rows) is not { } seamsDown)
                    continue;
                var plain = new Grid(shape, area, across, down, seamsAcross, seamsDown);
                best = Better(best, plain);
                if (columns > 1 && rows > 1)
                    best = Better(best, WithBlanks(plain, columns, rows, Math.Min(atMost, best!.Pages)));
            }
        }

        return best;
    }

    // Looks for the seams that leave most tiles blank, which can only be found close to corners, then frees the seams to
    // move to where they are least trouble while those tiles stay blank.
    private static Grid? WithBlanks(Grid plain, int columns, int rows, int atMost)
    {
        Grid? best = null;
        var fewest = atMost;
        var found = new List<Grid>();
        var waysDown = plain.Down.AtCorners(rows);
        foreach (var seamsAcross in plain.Across.AtCorners(columns))
        {
            foreach (var seamsDown in waysDown)
            {
                var pages = Grid.CountPages(plain.Shape, plain.Across.Tiles(seamsAcross), plain.Down.Tiles(seamsDown));
                if (pages > fewest || pages == columns * rows)
                    continue;
                if (pages < fewest)
                    found.Clear();
                fewest = pages;
                if (found.Count < 6)
                    found.Add(plain with { SeamsAcross = seamsAcross, SeamsDown = seamsDown });
            }
        }

        foreach (var start in found)
        {
            var grid = start;
            var blank = grid.Blank();
            for (var round = 0; round < 2; round++)
            {
                var strips = Occupied(grid.Shape, across: true, grid.Down.Tiles(grid.SeamsDown));
                var freed = grid.Across.Best(columns, (i, from, to) => StaysBlank(strips, j => blank[j, i], from, to));
                grid = grid with { SeamsAcross = freed ?? grid.SeamsAcross };
                strips = Occupied(grid.Shape, across: false, grid.Across.Tiles(grid.SeamsAcross));
                freed = grid.Down.Best(rows, (j, from, to) => StaysBlank(strips, i => blank[j, i], from, to));
                grid = grid with { SeamsDown = freed ?? grid.SeamsDown };
            }

            best = Better(best, grid);
        }

        return best;
    }

    private static IReadOnlyList<(double From, double To)>[] Occupied(TemplateShape shape, bool across, (double From, double To)[] strips) =>
        [.. strips.Select(strip => shape.Occupied(across, strip.From, strip.To))];

    private static bool StaysBlank(IReadOnlyList<(double From, double To)>[] occupied, Func<int, bool> blank, double from, double to)
    {
        for (var k = 0; k < occupied.Length; k++)
        {
            if (blank(k) && !TemplateShape.IsBlank(occupied[k], from, to))
                return false;
        }

        return true;
    }

    private static Grid? Better(Grid? a, Grid? b)
    {
        if (a is null || b is null)
            return a ?? b;
        return b.Pages < a.Pages || (b.Pages == a.Pages && b.Cost < a.Cost - 1e-6) ? b : a;
    }

    private static TilePlan Finish(Part part, Grid grid, double lap)
    {
        var across = grid.Across.Tiles(grid.SeamsAcross);
        var down = grid.Down.Tiles(grid.SeamsDown);
        var blank = grid.Blank();
        var tiles = new List<Tile>();
        for (var row = 0; row < down.Length; row++)
        {
            for (var column = 0; column < across.Length; column++)
            {
                if (blank[row, column])
                    continue;
                var (width, height) = (across[column].To - across[column].From, down[row].To - down[row].From);
                tiles.Add(new Tile(
                    row,
                    column,
                    across[column].From,
                    down[row].From,
                    width,
                    height,
                    grid.Area.Corner.X + ((grid.Area.Width - width) / 2),
                    grid.Area.Corner.Y + ((grid.Area.Height - height) / 2)));
            }
        }

        return new TilePlan
        {
            Part = part,
            Cut = part.Quantity,
            Turned = grid.Shape.Turned,
            Lying = grid.Area.Lying,
            AreaCorner = grid.Area.Corner,
            Area = (grid.Area.Width, grid.Area.Height),
            Lap = across.Length * down.Length == 1 ? 0 : lap,
            Tiles = tiles,
            Rows = down.Length,
            Columns = across.Length,
        };
    }

    private sealed record Grid(
        TemplateShape Shape,
        DrawingArea Area,
        Seams Across,
        Seams Down,
        double[] SeamsAcross,
        double[] SeamsDown)
    {
        public int Pages => CountPages(Shape, Across.Tiles(SeamsAcross), Down.Tiles(SeamsDown));

        public double Cost => Across.Cost(SeamsAcross) + Down.Cost(SeamsDown);

        public bool[,] Blank()
        {
            var (across, down) = (Across.Tiles(SeamsAcross), Down.Tiles(SeamsDown));
            var blank = new bool[down.Length, across.Length];
            for (var row = 0; row < down.Length; row++)
            {
                var occupied = Shape.Occupied(true, down[row].From, down[row].To);
                for (var column = 0; column < across.Length; column++)
                    blank[row, column] = TemplateShape.IsBlank(occupied, across[column].From, across[column].To);
            }

            return blank;
        }

        public static int CountPages(TemplateShape shape, (double From, double To)[] across, (double From, double To)[] down)
        {
            var pages = 0;
            foreach (var strip in down)
            {
                var occupied = shape.Occupied(true, strip.From, strip.To);
                foreach (var tile in across)
                    pages += TemplateShape.IsBlank(occupied, tile.From, tile.To) ? 0 : 1;
            }

            return pages;
        }
    }
}
