using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Booklets.Templates;

/// <summary>The page of one tile.</summary>
internal sealed class TilePage(TemplateJob job, TilePlan plan, IReadOnlyList<Seam> seams, Tile tile)
{
    private const double MapWidth = 34;

    // Marks nearer to each other than this could share a letter at first sight.
    private const double CloseMarks = 9;

    // Where there is no room for letters of the usual size.
    private const double SmallLetter = 7;

    // The letter of a mark must not read as the last of the words along its seam.
    private static readonly double[] FromLetters = [2.5, 1.5, 0];

    // How far beside the seam and along it a mark's letter may stand, the best first.
    private static readonly (double Away, double Along)[] LetterPlaces =
    [
        (4.6, -2.8), (4.6, 2.8), (3.6, -4), (3.6, 4), (2.4, -5.6), (2.4, 5.6), (6, -2.8), (6, 2.8), (6.4, 0), (5, -4.8), (5, 4.8),
        (2.4, -6.3), (2.4, 6.3), (2, -6.5), (2, 6.5), (7.2, -3), (7.2, 3), (7.6, 0),
        .. Around(6), .. Around(6.8), .. Around(7.6),
    ];

    private static IEnumerable<(double Away, double Along)> Around(double far) =>
        Enumerable.Range(-5, 11).OrderBy(Math.Abs).Select(step => (far * Math.Cos(step * Math.PI / 12), far * Math.Sin(step * Math.PI / 12)));

    public FixedPage Make(int number, int count, string destination, string? bookmark, int level)
    {
        var frame = new PageFrame(job, plan.Lying);
        var (part, words) = (plan.Part, job.Words);
        var several = plan.Tiles.Count > 1;
        if (several)
        {
            var map = new Board();
            var (mapWidth, mapHeight) = TileMap.Draw(map, plan, tile, frame.Right, frame.Top + 0.5, Math.Min(MapWidth, (frame.Right - frame.Left) * 0.36), MapWidth, job.Styles);
            frame.LeaveRoom(mapWidth + 4, mapHeight + 2);
            frame.Heading(part.Piece.Name, words.Say("template.tile", ("tile", TileNames.Of(tile)), ("count", Count)));
            frame.Add(new FixedContent(null, map.Items));
        }
        else
        {
            frame.Heading(part.Piece.Name, words.Say("template.whole"));
        }

        var mine = seams.Where(seam => seam.First == tile || seam.Second == tile).ToArray();
        if (several)
            frame.Line(words.Say("template.place", ("row", TileNames.Row(tile)), ("column", TileNames.Column(tile))));
        foreach (var seam in mine)
            frame.Line(Joins(seam));
        frame.Line(Cut());
        frame.Names(part.Stock);
        frame.Line(words.Say(part.Piece.Waste.Count > 0 ? "template.sheet" : "template.size", ("size", job.SizeOf(part))));
        frame.Line(words.Say(part.Kind == PartKind.Mat ? "template.side_mat" : "template.side"));
        var drawing = Drawing(frame, mine, out var arrows);
        foreach (var arrow in arrows)
            frame.Line(arrow);
        frame.Foot(number, count);
        return frame.Finish([drawing], destination, bookmark, level);
    }

    private string Count => plan.Tiles.Count.ToString(CultureInfo.InvariantCulture);

    private string Cut()
    {
        var (count, stock) = (plan.Cut.ToString(CultureInfo.InvariantCulture), job.StockName(plan.Part));
        return job.Plan.Kits > 1
            ? job.Words.Say("template.cut_kits", ("count", count), ("stock", stock), ("kits", job.Plan.Kits.ToString(CultureInfo.InvariantCulture)))
            : job.Words.Say("template.cut", ("count", count), ("stock", stock));
    }

    private string Joins(Seam seam)
    {
        var first = seam.First == tile;
        var side = seam.Upright ? (first ? "right" : "left") : first ? "below" : "above";
        return job.Words.Say(
            "template.joins." + side,
            ("tile", TileNames.Of(first ? seam.Second : seam.First)),
            ("marks", AlternativeText.List(job.Words, seam.Marks.Select(mark => mark.Letter))));
    }

    private FixedContent Drawing(PageFrame frame, IReadOnlyList<Seam> mine, out IReadOnlyList<string> arrows)
    {
        var styles = job.Styles;
        var piece = plan.Part.Piece;
        var (x, y) = (tile.PageX - tile.X, tile.PageY - tile.Y);
        var shows = new Box(tile.PageX, tile.PageY, tile.PageX + tile.Width, tile.PageY + tile.Height);
        var placing = TemplatePainter.PlacingOf(piece, plan.Turned, x, y);
        var painter = new TemplatePainter(piece, placing, shows, styles, job.Words);
        var board = new Board();
        painter.DrawLines(board);
        painter.DrawSheet(board);
        foreach (var seam in mine)
            DrawSeam(board, seam, x, y, frame.Area);
        var stays = Stays(tile).Moved(x, y);

        // Beside the template there is free paper, but not beyond a seam.
        var open = new Box(
            mine.Any(seam => seam.Upright && seam.Second == tile) ? stays.Left : frame.Area.Left,
            mine.Any(seam => !seam.Upright && seam.Second == tile) ? stays.Top : frame.Area.Top,
            mine.Any(seam => seam.Upright && seam.First == tile) ? stays.Right : frame.Area.Right,
            mine.Any(seam => !seam.Upright && seam.First == tile) ? stays.Bottom : frame.Area.Bottom);

        foreach (var seam in mine)
            WriteLetters(board, seam, x, y, shows);
        foreach (var seam in mine)
            WriteAlong(board, seam, x, y, shows);
        arrows = [.. Arrows(painter, board, stays)];
        painter.DrawWords(board, stays, open, ShowsMostOf);
        painter.DrawGlue(board);
        painter.DrawWaste(board);
        return new FixedContent(Role.Figure, board.Items, job.Words.Say("alternative.template", ("piece", piece.Name), ("size", job.SizeOf(plan.Part)), ("tile", TileNames.Of(tile)), ("count", Count)))
        {
            Box = (frame.Area.Left, frame.Area.Top, frame.Area.Width, frame.Area.Height),
        };
    }

    // Where a stock or the folds of a piece have a direction, it is shown and said.
    private IEnumerable<string> Arrows(TemplatePainter painter, Board board, Box stays)
    {
        if (job.Stocks.TryGetValue(plan.Part.Stock, out var stock) && stock.OneWay)
        {
            if (painter.DrawTop(board, stays))
                yield return job.Words.Say("template.top");
        }
        else if (painter.DrawGrain(board, stays))
        {
            yield return job.Words.Say("template.grain");
        }
    }

    // What of a tile stays in sight when all are joined, in the template's millimetres.
    private Box Stays(Tile which)
    {
        var box = new Box(which.X, which.Y, which.X + which.Width, which.Y + which.Height);
        foreach (var seam in seams.Where(seam => seam.First == which))
            box = seam.Upright ? box with { Right = Math.Min(box.Right, seam.Line.From.X) } : box with { Bottom = Math.Min(box.Bottom, seam.Line.From.Y) };
        return box;
    }

    private bool ShowsMostOf(Panel panel)
    {
        var shape = Shape.Of(panel.Outline, TemplatePainter.PlacingOf(plan.Part.Piece, plan.Turned, 0, 0));
        return plan.Tiles.MaxBy(other => shape.Within(Stays(other))?.Area ?? 0) == tile;
    }

    private void DrawSeam(Board board, Seam seam, double x, double y, Box area)
    {
        var lines = job.Styles.Lines;
        if (seam.First == tile && seam.Lap is { } lap)
            board.Ground(new PathItem(Shape.Of(lap.Moved(x, y)).Path(), job.Styles.Palette.Tint, null));
        board.Line(OnPage(seam.Line, x, y), DrawingStrokes.Trim(lines));
        var stroke = new Stroke(lines.Dimension, lines.ThinWidth * 1.3);
        foreach (var mark in seam.Marks)
        {
            var centre = mark.At + new Point(x, y);
            RegistrationMark.Draw(board, centre, area, stroke);
        }
    }

    // Each page carries the letters on the side that stays in sight, beside the mark where no line is in the way.
    private void WriteLetters(Board board, Seam seam, double x, double y, Box shows)
    {
        var side = seam.First == tile ? -1 : 1;
        var close = seam.Marks.Count == 2 && seam.Marks[0].At.DistanceTo(seam.Marks[1].At) < CloseMarks;
        foreach (var mark in seam.Marks)
        {
            // Of two marks close to each other each has its letter on its far side.
            var outwards = close && mark == seam.Marks[1] ? -1 : 1;
            var centre = mark.At + new Point(x, y);
            (Label Label, Point At, bool Free)[] places =
            [
                .. from size in new[] { Math.Max(8, job.Styles.Scale.Drawing + 1), SmallLetter }
                   let label = Label.Of(mark.Letter, job.Styles.Text.Bold, size, job.Styles.Language)
                   from place in LetterPlaces
                   let at = centre + (seam.Upright ? new Point(side * place.Away, outwards * place.Along) : new Point(outwards * place.Along, side * place.Away))
                   let box = label.BoxAt(at.X, at.Y).Grown(0.2)
                   select (label, at, shows.Holds(box) && board.Room.IsFree(box)),
            ];
            var best = places.FirstOrDefault(place => place.Free, places[0]);
            board.Write(best.Label, best.At.X, best.At.Y, job.Styles.Palette.Text);
        }
    }

    // The trimmed page says so inside its line; the other one says what goes over its lap.
    private void WriteAlong(Board board, Seam seam, double x, double y, Box shows)
    {
        var first = seam.First == tile;
        var other = TileNames.Of(first ? seam.Second : seam.First);
        var key = plan.Lap <= 0 ? "template.butt" : first ? "template.lap" : "template.trim";
        // Both lie beyond the line as seen from the first page, which for an upright line drawn downwards is its left.
        var side = plan.Lap <= 0 && first ? (seam.Upright ? 1 : -1) : seam.Upright ? -1 : 1;
        var text = job.Words.Say(key, ("tile", other));
        foreach (var ends in FromLetters)
        {
            if (AlongLine.Write(board, OnPage(seam.Line, x, y), text, job.Styles, side, shows, ends: ends))
                return;
        }
    }

    private static Segment OnPage(Segment line, double x, double y) => new(line.From + new Point(x, y), line.To + new Point(x, y));
}
