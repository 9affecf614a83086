using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Measure;
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
    private const double TallestWide = 130;

    // Where no other template needs the room.
    private const double TallestAlone = 150;
    private const double Gap = 7;
    private const double AboveFirst = 3;

    // A page too narrow for a drawing with words beside it.
    private const double Narrow = 130;
    private const double Between = 1.2;

    // Room below the last words that nothing else needs.
    private const double Tolerance = 4;

    // A drawing lower than this is too small to follow: then the words go on overleaf, and it takes a good half of the page.
    private const double Lowest = 60;
    private const double ShareOfPage = 0.55;

    /// <summary>The pages still without their numbers.</summary>
    public IReadOnlyList<Func<int, int, string?, int, FixedPage>> Plan()
    {
        var pages = new List<Func<int, int, string?, int, FixedPage>>();
        var waiting = new Queue<(TilePlan Plan, IReadOnlyList<Seam> Seams)>(templates.Where(template => template.Plan.Tiles.Count > 1));
        IReadOnlyList<string> overleaf = [];
        while (waiting.Count > 0 || overleaf.Count > 0)
        {
            var frame = new PageFrame(job, lying: false, withTemplate: false);
            var contents = new List<FixedContent>();
            var y = frame.Area.Top + AboveFirst;
            if (overleaf.Count > 0)
            {
                (var bottom, overleaf) = Put(contents, overleaf, frame, frame.Left, y);
                y = bottom + Gap;
            }

            while (waiting.Count > 0 && overleaf.Count == 0)
            {
                var (plan, seams) = waiting.Peek();
                var (items, bottom, rest) = Block(frame, plan, seams, y);
                if ((bottom > frame.Area.Bottom || rest.Count > 0) && contents.Count > 0)
                    break;
                waiting.Dequeue();
                contents.AddRange(items);
                (y, overleaf) = (bottom + Gap, rest);
            }

            var destination = "template-joining" + (pages.Count == 0 ? "" : "-" + (pages.Count + 1).ToString(CultureInfo.InvariantCulture));
            pages.Add((number, count, bookmark, level) =>
            {
                frame.Heading(job.Words.Say("joining.title"), "");
                frame.Line(job.Words.Say(templates[0].Plan.Lap > 0 ? "joining.how" : "joining.how_butt"));
                frame.Foot(number, count);
                return frame.Finish(contents, destination, bookmark, level);
            });
        }

        return pages;
    }

    private (IReadOnlyList<FixedContent> Contents, double Bottom, IReadOnlyList<string> Overleaf) Block(PageFrame frame, TilePlan plan, IReadOnlyList<Seam> seams, double top)
    {
        var styles = job.Styles;
        var contents = new List<FixedContent>();
        var size = Math.Min(styles.Scale.Heading3, 11.5);
        var heading = Lines.Break(
            job.Words.Say("joining.piece", ("piece", plan.Part.Piece.Name), ("tiles", TileNames.Range(plan))), frame.Right - frame.Left, styles.Display.Bold, size, styles.Language);
        if (heading.FirstOrDefault(line => line.Width > frame.Right - frame.Left) is { } tooWide)
            job.Misfits.Add((string.Create(CultureInfo.InvariantCulture, $"“{tooWide.Text.Trim()}” is {tooWide.Width:0} mm wide where the pages of a template are joined, but there are only {frame.Right - frame.Left:0} mm for it."), ""));
        contents.Add(new FixedContent(Role.H3, Lines.Put(heading, frame.Left, top, size * 1.2 * 25.4 / 72, styles.Palette.Heading).Items));
        var y = top + ((heading.Count - 1) * size * 1.2 * 25.4 / 72) + heading[0].Ascent + heading[0].Descent + 3;

        // A drawing of many tiles takes the whole width, with the words below it.
        var wide = plan.Tiles.Count > 4 || frame.Right - frame.Left < Narrow;
        var width = (frame.Right - frame.Left) * (wide ? 1 : 0.56);
        var bounds = TileMap.Bounds(plan);
        var leading = Leading;
        var steps = Steps(plan, seams).ToArray();
        string[] sentences = [.. Sentences(plan, steps)];
        var taken = wide ? sentences.Sum(sentence => (Broken(sentence, frame.Right - frame.Left).Count * leading) + Between) + 4 : 0;
        var room = frame.Area.Height - (y - top) - taken - 2;
        if (room < Lowest)
            room = frame.Area.Height * ShareOfPage;
        var alone = templates.Count(template => template.Plan.Tiles.Count > 1) == 1;
        var tallest = Math.Min(alone ? TallestAlone : wide ? TallestWide : Tallest, room);
        var scale = Math.Min(wide ? 0.7 : 0.5, Math.Min((width - 2) / bounds.Width, tallest / bounds.Height));
        var board = new Board();
        DrawWhole(board, plan, seams, steps, frame.Left, y, scale);
        contents.Add(new FixedContent(
            Role.Figure,
            board.Items,
            job.Words.Say("alternative.joining", ("piece", plan.Part.Piece.Name), ("size", job.SizeOf(plan.Part)), ("tiles", TileNames.Range(plan))))
        {
            Box = (frame.Left, y, width, bounds.Height * scale),
        });

        var left = wide ? frame.Left : frame.Left + (bounds.Width * scale) + 8;
        var down = wide ? y + (bounds.Height * scale) + 4 : y;
        var (last, rest) = Put(contents, sentences, frame, left, down);
        return (contents, Math.Max(last, y + (bounds.Height * scale)), rest);
    }

    private double Points => Math.Clamp(job.Styles.Scale.Small + 1, 8.5, 9.5);

    private double Leading => Points * 1.3 * 25.4 / 72;

    private IReadOnlyList<LetteringLine> Broken(string sentence, double room) =>
        Lines.Break(sentence, room, job.Styles.Text.Regular, Points, job.Styles.Language);

    // As many as the page holds, at least one; the rest goes overleaf.
    private (double Bottom, IReadOnlyList<string> Overleaf) Put(List<FixedContent> contents, IReadOnlyList<string> sentences, PageFrame frame, double left, double down)
    {
        for (var i = 0; i < sentences.Count; i++)
        {
            var lines = Broken(sentences[i], frame.Right - left);
            if (i > 0 && down + (lines.Count * Leading) > frame.Area.Bottom + Tolerance)
                return (down, [.. sentences.Skip(i)]);
            var (items, next) = Lines.Put(lines, left, down, Leading, job.Styles.Palette.Text);
            contents.Add(new FixedContent(Role.P, items));
            down = next + Between;
        }

        return (down, []);
    }

    private void DrawWhole(Board board, TilePlan plan, IReadOnlyList<Seam> seams, IReadOnlyList<JoiningStep> steps, double x, double y, double scale)
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
            if (seam.Lap is not { } lap)
                continue;
            var (a, b) = (Put(new(lap.Left, lap.Top)), Put(new(lap.Right, lap.Bottom)));
            board.Ground(new PathItem(PathBuilder.Rectangle(a.X, a.Y, b.X - a.X, b.Y - a.Y), TileMap.Lighter(styles.Palette.Rule), null));
        }

        foreach (var (line, _) in TemplatePainter.Lines(piece, placing, lines))
            board.Line(line, new Stroke(lines.Faded, lines.ThinWidth));
        var edge = new Stroke(lines.Dimension, lines.ThinWidth);
        var whole = new Box(x, y, x + (bounds.Width * scale), y + (bounds.Height * scale));
        board.Mark(Shape.Of(whole).Path(), edge);
        board.Room.Add(Shape.Of(whole).Sides);
        foreach (var seam in seams)
        {
            board.Line(new Segment(Put(seam.Line.From), Put(seam.Line.To)), DrawingStrokes.Trim(lines) with { Width = lines.FoldWidth });
            foreach (var mark in seam.Marks)
            {
                var at = Put(mark.At);
                board.Mark(PathBuilder.Circle(at.X, at.Y, 1), edge);
                board.Room.Take(Box.Around(at.X, at.Y, 2, 2));
            }
        }

        foreach (var seam in seams)
        {
            foreach (var mark in seam.Marks)
                WriteLetters(board, Put(mark.At), mark.Letter, seam.Upright, whole);
        }

        for (var i = 0; i < steps.Count; i++)
        {
            foreach (var seam in steps[i].Joins)
                DrawOrder(board, new Segment(Put(seam.Line.From), Put(seam.Line.To)), seam.Upright, (i + 1).ToString(CultureInfo.InvariantCulture), whole);
        }

        foreach (var tile in plan.Tiles)
        {
            var (a, b) = (Put(new(tile.X, tile.Y)), Put(new(tile.X + tile.Width, tile.Y + tile.Height)));
            var next = seams.Where(seam => seam.First == tile).ToArray();
            var box = new Box(a.X, a.Y, b.X, b.Y);
            foreach (var seam in next)
                box = seam.Upright ? box with { Right = Put(seam.Line.From).X } : box with { Bottom = Put(seam.Line.From).Y };
            var label = Label.Of(TileNames.Of(tile), styles.Display.Bold, 13, styles.Language);
            if (board.Room.Find(Shape.Of(box), label.Width, label.Height, 0.8) is { } at)
                board.Write(label, at.X, at.Y, styles.Palette.Accent);
        }
    }

    // The letter on both sides of the seam, a little further along it or away from it where lines are in the way, or on the
    // one side that has room.
    private void WriteLetters(Board board, Point mark, string letter, bool upright, Box whole)
    {
        var label = Label.Of(letter, job.Styles.Text.Bold, Math.Max(6.5, job.Styles.Scale.Drawing), job.Styles.Language);
        var near = 1.4 + ((upright ? label.Width : label.Height) / 2);
        double[] shifts = [0, 1.6, -1.6, 2.6, -2.6, 3.6, -3.6];
        bool Free(Point place) => whole.Holds(label.BoxAt(place.X, place.Y)) && board.Room.IsFree(label.BoxAt(place.X, place.Y).Grown(0.15));
        Point Place(double away, double shift) => mark + (upright ? new Point(away, shift) : new Point(shift, away));
        foreach (var shift in shifts)
        {
            Point[] places = [Place(-near, shift), Place(near, shift)];
            if (!places.All(Free))
                continue;
            foreach (var place in places)
                board.Write(label, place.X, place.Y, job.Styles.Palette.Text);
            return;
        }

        foreach (var side in new[] { -1, 1 })
        {
            var free =
                from far in new[] { near, near + 1, near + 2 }
                from shift in shifts
                let place = Place(side * far, shift)
                where Free(place)
                select place;
            foreach (var place in free.Take(1))
                board.Write(label, place.X, place.Y, job.Styles.Palette.Text);
        }
    }

    // The number of the step on the page that is laid down in it, with an arrow to the seam. Very small drawings have room
    // for a small one, or for none; the words say it too.
    private void DrawOrder(Board board, Segment seam, bool upright, string number, Box whole)
    {
        const double Clear = 0.6;
        var styles = job.Styles;
        Point Away(double part, double by) => seam.At(part) + (upright ? new Point(by, 0) : new Point(0, by));
        Segment[] Sides(double part, double from, double to)
        {
            var aside = upright ? new Point(0, Clear) : new Point(Clear, 0);
            return [new(Away(part, from) - aside, Away(part, to) - aside), new(Away(part, from) + aside, Away(part, to) + aside)];
        }

        foreach (var (radius, points) in new[] { (2.3, Math.Max(6.5, styles.Scale.Drawing)), (1.8, 6.5) })
        {
            (double Part, double Far)? best = null;
            var least = double.MaxValue;
            foreach (var far in new[] { 9.0, 7, 11, 6, 14, 5, 4.2, 17 })
            {
                for (var step = 0; step <= 32; step++)
                {
                    // From the middle outwards, to both sides in turn.
                    var part = 0.5 + (0.028 * ((step + 1) / 2) * (step % 2 == 0 ? 1 : -1));
                    var end = Away(part, far);
                    var cost = board.Room.Crossings(new Segment(Away(part, 1), end)) + (Math.Abs(far - 9) * 0.1) + (step * 0.01);
                    var badge = Box.Around(end.X, end.Y, 2 * radius, 2 * radius).Grown(0.3);
                    if (cost >= least || !whole.Holds(badge) || !board.Room.IsFree(badge) || !Sides(part, Clear, far).All(board.Room.IsClear))
                        continue;
                    (best, least) = ((part, far), cost);
                }
            }

            if (best is not { } found)
                continue;
            var (to, foot, at) = (Away(found.Part, Clear), Away(found.Part, found.Far - radius), Away(found.Part, found.Far));
            var colour = styles.Palette.Accent;
            board.Mark(PathBuilder.Line(foot.X, foot.Y, to.X, to.Y), new Stroke(colour, styles.Lines.FoldWidth));
            board.Solid(Arrow.Head(to, at, Math.Min(3.4, found.Far - radius - Clear)), colour);
            board.Solid(PathBuilder.Circle(at.X, at.Y, radius), Colour.White);
            board.Mark(PathBuilder.Circle(at.X, at.Y, radius), new Stroke(colour, styles.Lines.FoldWidth));
            board.Write(Label.Of(number, styles.Text.Bold, points, styles.Language), at.X, at.Y, styles.Palette.Text);
            board.Room.Take(Box.Around((to.X + at.X) / 2, (to.Y + at.Y) / 2, Math.Abs(to.X - at.X) + (2 * Clear), Math.Abs(to.Y - at.Y) + (2 * Clear)));
            board.Room.Take(Box.Around(at.X, at.Y, 2 * radius, 2 * radius));
            return;
        }
    }

    private sealed record JoiningStep(string Name, IReadOnlyList<Seam> Joins);

    // Each row first, from left to right, then row below row: so the page that is trimmed always comes on top.
    private static IEnumerable<JoiningStep> Steps(TilePlan plan, IReadOnlyList<Seam> seams)
    {
        var strips = Strips(plan);
        foreach (var strip in strips)
        {
            for (var i = 1; i < strip.Count; i++)
                yield return new JoiningStep(TileNames.Of(strip[i]), [.. seams.Where(seam => seam.Upright && seam.Second == strip[i])]);
        }

        foreach (var strip in strips)
        {
            var name = strip.Count == 1 ? TileNames.Of(strip[0]) : $"{TileNames.Of(strip[0])}–{TileNames.Of(strip[^1])}";
            Seam[] above = [.. seams.Where(seam => !seam.Upright && strip.Contains(seam.Second))];
            if (above.Length > 0)
                yield return new JoiningStep(name, above);
        }
    }

    private IEnumerable<string> Sentences(TilePlan plan, IReadOnlyList<JoiningStep> steps)
    {
        for (var i = 0; i < steps.Count; i++)
        {
            yield return job.Words.Say(
                plan.Lap > 0 ? "joining.step" : "joining.step_butt",
                ("number", (i + 1).ToString(CultureInfo.InvariantCulture)),
                ("tile", steps[i].Name),
                ("others", AlternativeText.List(job.Words, steps[i].Joins.Select(seam => TileNames.Of(seam.First)))),
                ("marks", AlternativeText.List(job.Words, steps[i].Joins.SelectMany(seam => seam.Marks).Select(mark => mark.Letter))));
        }

        var size = plan.Turned ? plan.Part.Piece.Sheet.Turned : plan.Part.Piece.Sheet;
        yield return job.Words.Say(
            "joining.last",
            ("number", (steps.Count + 1).ToString(CultureInfo.InvariantCulture)),
            ("width", job.Words.Number(LengthFormat.Format(size.Width, job.Kit.Ruler))),
            ("height", job.Words.Number(LengthFormat.Format(size.Height, job.Kit.Ruler))));
    }

    // Tiles beside each other without a gap.
    private static List<List<Tile>> Strips(TilePlan plan)
    {
        var strips = new List<List<Tile>>();
        foreach (var tile in plan.Tiles.OrderBy(tile => tile.Row).ThenBy(tile => tile.Column))
        {
            if (strips.Count > 0 && strips[^1][^1] is var last && last.Row == tile.Row && last.Column == tile.Column - 1)
                strips[^1].Add(tile);
            else
                strips.Add([tile]);
        }

        return strips;
    }
}
