using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Booklets.Templates;

/// <summary>
/// How the pages of each tiled template go together: a drawing and the order, one below the other, as many templates on a
/// page as it holds, so that small kits need only one such page.
/// </summary>
internal sealed class JoiningPages(TemplateJob job, IReadOnlyList<(TilePlan Plan, IReadOnlyList<Seam> Seams)> templates)
{
    private const double Tallest = 92;
    private const double Gap = 7;

    /// <summary>The pages still without their numbers.</summary>
    public IReadOnlyList<Func<int, int, string?, int, FixedPage>> Plan()
    {
        var pages = new List<Func<int, int, string?, int, FixedPage>>();
        var waiting = new Queue<(TilePlan Plan, IReadOnlyList<Seam> Seams)>(templates.Where(template => template.Plan.Tiles.Count > 1));
        while (waiting.Count > 0)
        {
            var frame = new PageFrame(job, lying: false);
            var contents = new List<FixedContent>();
            var y = frame.Area.Top - 2;
            while (waiting.Count > 0)
            {
                var (plan, seams) = waiting.Peek();
                var (items, bottom) = Block(frame, plan, seams, y);
                if (bottom > frame.Area.Bottom && contents.Count > 0)
                    break;
                waiting.Dequeue();
                contents.AddRange(items);
                y = bottom + Gap;
            }

            var destination = "template-joining" + (pages.Count == 0 ? "" : "-" + (pages.Count + 1).ToString(CultureInfo.InvariantCulture));
            pages.Add((number, count, bookmark, level) =>
            {
                frame.Heading(job.Words.Say("joining.title"), "", frame.Printable.Width);
                frame.Line(job.Words.Say(templates[0].Plan.Lap > 0 ? "joining.how" : "joining.how-butt"), frame.Printable.Width);
                frame.Foot(number, count);
                return frame.Finish(contents, destination, bookmark, level);
            });
        }

        return pages;
    }

    private (IReadOnlyList<FixedContent> Contents, double Bottom) Block(PageFrame frame, TilePlan plan, IReadOnlyList<Seam> seams, double top)
    {
        var styles = job.Styles;
        var contents = new List<FixedContent>();
        var size = Math.Min(styles.Scale.Heading3, 11.5);
        var heading = Lettering.Set(
            job.Words.Say("joining.piece", ("piece", plan.Part.Piece.Name), ("tiles", TileNames.Range(plan))), styles.Display.Bold, size, styles.Language);
        contents.Add(new FixedContent(Role.H3, [.. heading.At(frame.Printable.Left, top + heading.Ascent, styles.Palette.Heading)]));
        var y = top + heading.Ascent + heading.Descent + 3;

        var width = frame.Printable.Width * 0.56;
        var bounds = TileMap.Bounds(plan);
        var scale = Math.Min(0.5, Math.Min((width - 2) / bounds.Width, Math.Min(Tallest, frame.Area.Bottom - y) / bounds.Height));
        var board = new Board();
        DrawWhole(board, plan, seams, frame.Printable.Left + 1, y, scale);
        contents.Add(new FixedContent(
            Role.Figure,
            board.Items,
            job.Words.Say("alt.joining", ("piece", plan.Part.Piece.Name), ("tiles", TileNames.Range(plan))))
        {
            Box = (frame.Printable.Left, y, width, bounds.Height * scale),
        });

        var left = frame.Printable.Left + (bounds.Width * scale) + 8;
        var points = styles.Scale.Small;
        var leading = points * 1.3 * 25.4 / 72;
        var down = y;
        foreach (var step in Steps(plan, seams))
        {
            var lines = Lines.Break(step, frame.Printable.Right - left, styles.Text.Regular, points, styles.Language);
            var (items, next) = Lines.Put(lines, left, down, leading, styles.Palette.Text);
            contents.Add(new FixedContent(Role.P, items));
            down = next + 1.4;
        }

        return (contents, Math.Max(down, y + (bounds.Height * scale)));
    }

    private void DrawWhole(Board board, TilePlan plan, IReadOnlyList<Seam> seams, double x, double y, double scale)
    {
        var styles = job.Styles;
        var lines = styles.Lines;
        var bounds = TileMap.Bounds(plan);
        Point Put(Point p) => new(x + ((p.X - bounds.Left) * scale), y + ((p.Y - bounds.Top) * scale));
        var piece = plan.Part.Piece;
        var placing = TemplatePainter.PlacingOf(piece, plan.Turned, x - (bounds.Left * scale), y - (bounds.Top * scale)) with { Scale = scale };
        board.Ground(new PathItem(Shape.Of(piece.Outline, placing).Path(), lines.Card, null));
        foreach (var seam in seams)
        {
            // The strip that is glued under the next page.
            var box = seam.Upright
                ? new Box(seam.Line.From.X, seam.Line.From.Y, seam.First.X + seam.First.Width, seam.Line.To.Y)
                : new Box(seam.Line.From.X, seam.Line.From.Y, seam.Line.To.X, seam.First.Y + seam.First.Height);
            if (box.Width > 0.1 && box.Height > 0.1)
            {
                var (a, b) = (Put(new(box.Left, box.Top)), Put(new(box.Right, box.Bottom)));
                board.Ground(new PathItem(PathBuilder.Rectangle(a.X, a.Y, b.X - a.X, b.Y - a.Y), styles.Palette.Tint, null));
            }
        }

        foreach (var (line, _) in TemplatePainter.Lines(piece, placing, lines))
            board.Line(line, new Stroke(lines.Faded, lines.ThinWidth));
        var edge = new Stroke(lines.Dimension, lines.ThinWidth);
        var whole = new Box(x, y, x + (bounds.Width * scale), y + (bounds.Height * scale));
        board.Mark(Shape.Of(whole).Path(), edge);
        foreach (var seam in seams)
        {
            board.Line(new Segment(Put(seam.Line.From), Put(seam.Line.To)), DrawingStrokes.Trim(lines) with { Width = lines.FoldWidth });
            foreach (var mark in seam.Marks)
            {
                var at = Put(mark.At);
                board.Mark(PathBuilder.Circle(at.X, at.Y, 1), edge);
                board.Room.Take(Box.Around(at.X, at.Y, 2, 2));
                var label = new Label([mark.Letter], styles.Text.Bold, Math.Max(6.5, styles.Scale.Drawing), styles.Language);
                var ways = seam.Upright ? new[] { new Point(-2.6, 0), new Point(2.6, 0) } : [new Point(0, -2.6), new Point(0, 2.6)];
                foreach (var way in ways)
                    board.Write(label, at.X + way.X, at.Y + way.Y, styles.Palette.Text);
            }
        }

        foreach (var tile in plan.Tiles)
        {
            var (a, b) = (Put(new(tile.X, tile.Y)), Put(new(tile.X + tile.Width, tile.Y + tile.Height)));
            var next = seams.Where(seam => seam.First == tile).ToArray();
            var box = new Box(a.X, a.Y, b.X, b.Y);
            foreach (var seam in next)
                box = seam.Upright ? box with { Right = Put(seam.Line.From).X } : box with { Bottom = Put(seam.Line.From).Y };
            var label = new Label([TileNames.Of(tile)], styles.Display.Bold, 13, styles.Language);
            if (board.Room.Find(Shape.Of(box), label.Width, label.Height, 0.8) is { } at)
                board.Write(label, at.X, at.Y, styles.Palette.Accent);
        }
    }

    // Tile by tile in reading order, each onto those already there, so that the whole grows without gaps.
    private IEnumerable<string> Steps(TilePlan plan, IReadOnlyList<Seam> seams)
    {
        var placed = new List<Tile> { plan.Tiles[0] };
        var waiting = plan.Tiles.Skip(1).ToList();
        var number = 1;
        while (waiting.Count > 0)
        {
            var tile = waiting.FirstOrDefault(tile => Joining(tile).Length > 0) ?? waiting[0];
            waiting.Remove(tile);
            var joins = Joining(tile);
            if (joins.Length > 0)
            {
                yield return job.Words.Say(
                    plan.Lap > 0 ? "joining.step" : "joining.step-butt",
                    ("number", number++.ToString(CultureInfo.InvariantCulture)),
                    ("tile", TileNames.Of(tile)),
                    ("others", AlternativeText.List(job.Words, joins.Select(seam => TileNames.Of(seam.First == tile ? seam.Second : seam.First)))),
                    ("marks", AlternativeText.List(job.Words, joins.SelectMany(seam => seam.Marks).Select(mark => mark.Letter))));
            }

            placed.Add(tile);
        }

        yield return job.Words.Say("joining.last", ("number", number.ToString(CultureInfo.InvariantCulture)));

        Seam[] Joining(Tile tile) =>
            [.. seams.Where(seam => (seam.First == tile && placed.Contains(seam.Second)) || (seam.Second == tile && placed.Contains(seam.First)))];
    }
}
