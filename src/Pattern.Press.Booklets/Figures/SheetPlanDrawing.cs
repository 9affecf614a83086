using System.Globalization;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Sheets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>One sheet with everything that is cut from it, to scale, its cuts numbered in their order.</summary>
/// <param name="Sheet">The planned sheet.</param>
/// <param name="Size">How large it is.</param>
/// <param name="Letter">The letter of each rectangle.</param>
/// <param name="GrainRunsDown">Whether an arrow shows the grain.</param>
public sealed record SheetPlanDrawing(PlannedSheet Sheet, Size Size, Func<WantedRectangle, string> Letter, bool GrainRunsDown = false) : IDrawing
{
    private const double Edge = 0.6;
    private const double ArrowRoom = 7;
    private const double LeastDisc = 1.25;

    // Cuts closer than that on the page run together to the eye, in millimetres. Common practice, no source.
    private const double ClosestCuts = 1.2;

    // What is not legible is crowded by more than half.
    private const double Illegible = 0.5;

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(styles);
        var (width, height) = (Size.Width.Millimetres, Size.Height.Millimetres);
        var side = GrainRunsDown ? ArrowRoom : 0;
        var scale = Math.Min(1, Math.Min((maxWidth - (2 * Edge) - side) / width, (maxHeight - (2 * Edge)) / height));
        return new DrawnFigure((width * scale) + (2 * Edge) + side, (height * scale) + (2 * Edge), () => Draw(scale, styles), () => Crowding(scale));
    }

    // Narrow strips that are cut one after the other are what a drawing loses first.
    private double Crowding(double scale)
    {
        var closest = Sheet.Rectangles.Select(r => Math.Min(r.Size.Width.Millimetres, r.Size.Height.Millimetres)).DefaultIfEmpty(double.PositiveInfinity).Min() * scale;
        return closest >= ClosestCuts ? 0 : 1 - (Illegible * closest / ClosestCuts);
    }

    private IReadOnlyList<PageItem> Draw(double scale, StyleSheet styles)
    {
        var (width, height) = (Size.Width.Millimetres, Size.Height.Millimetres);
        var board = new Board();
        var lines = styles.Lines;
        board.Ground(new PathItem(PathBuilder.Rectangle(Edge, Edge, width * scale, height * scale), null, DrawingStrokes.Sheet(lines)));
        foreach (var rectangle in Sheet.Rectangles)
        {
            var box = Scaled(new SheetArea(rectangle.Left, rectangle.Top, rectangle.Size), scale);
            board.Ground(new PathItem(PathBuilder.Rectangle(box.Left, box.Top, box.Width, box.Height), lines.Card, null));
        }

        var stroke = new Stroke(lines.Cut, lines.FoldWidth);
        foreach (var cut in Sheet.InOrder)
        {
            var (from, to) = Ends(cut, scale);
            board.Mark(PathBuilder.Line(from.X, from.Y, to.X, to.Y), stroke);
        }

        foreach (var run in Runs())
            WriteLetter(board, run, scale, styles);
        foreach (var operation in Sheet.Operations)
            WriteNumber(board, operation, scale, styles);
        if (GrainRunsDown)
            DrawGrain(board, Edge + (width * scale) + (ArrowRoom * 0.6), Edge + (height * scale / 2), styles);
        return board.Items;
    }

    private static Box Scaled(SheetArea area, double scale) => new(
        Edge + (area.Left.Millimetres * scale),
        Edge + (area.Top.Millimetres * scale),
        Edge + (area.Right.Millimetres * scale),
        Edge + (area.Bottom.Millimetres * scale));

    private static (Point From, Point To) Ends(CutNode cut, double scale)
    {
        var box = Scaled(cut.Area, scale);
        var at = Edge + (cut.At.Millimetres * scale);
        return cut.Down ? (new Point(at, box.Top), new Point(at, box.Bottom)) : (new Point(box.Left, at), new Point(box.Right, at));
    }

    // Equal rectangles in a row, which share a letter where each is too small for one of its own.
    private List<(PlacedRectangle First, int Count, SheetArea Area)> Runs()
    {
        var runs = new List<(PlacedRectangle First, int Count, SheetArea Area)>();
        foreach (var r in Sheet.Rectangles)
        {
            var last = runs.FindIndex(run => run.First.Wanted == r.Wanted && run.First.Size == r.Size
                && ((r.Left == run.Area.Left && r.Top == run.Area.Bottom && run.Area.Size.Width == r.Size.Width)
                    || (r.Top == run.Area.Top && r.Left == run.Area.Right && run.Area.Size.Height == r.Size.Height)));
            if (last < 0)
            {
                runs.Add((r, 1, new SheetArea(r.Left, r.Top, r.Size)));
                continue;
            }

            var (first, count, area) = runs[last];
            var size = r.Left == area.Left ? new Size(area.Size.Width, area.Size.Height + r.Size.Height) : new Size(area.Size.Width + r.Size.Width, area.Size.Height);
            runs[last] = (first, count + 1, area with { Size = size });
        }

        return runs;
    }

    private void WriteLetter(Board board, (PlacedRectangle First, int Count, SheetArea Area) run, double scale, StyleSheet styles)
    {
        var letter = Letter(run.First.Wanted);
        var one = Label.Of(letter, styles.Text.Bold, styles.Scale.Drawing + 1, styles.Language);
        var size = run.First.Size;
        if (run.Count == 1 || (Math.Min(size.Width.Millimetres, size.Height.Millimetres) * scale > one.Height + 4))
        {
            var (w, h) = (size.Width, size.Height);
            for (var x = run.Area.Left; x < run.Area.Right; x += w)
            {
                for (var y = run.Area.Top; y < run.Area.Bottom; y += h)
                    WriteIn(board, letter, Scaled(new SheetArea(x, y, size), scale), styles);
            }

            return;
        }

        WriteIn(board, $"{letter} × {run.Count.ToString(CultureInfo.InvariantCulture)}", Scaled(run.Area, scale), styles);
    }

    private static void WriteIn(Board board, string text, Box box, StyleSheet styles)
    {
        foreach (var size in new[] { styles.Scale.Drawing + 1, styles.Scale.Drawing - 1 })
        {
            foreach (var upwards in new[] { false, true })
            {
                var label = Label.Of(text, styles.Text.Bold, size, styles.Language, upwards);
                if (label.Width + 0.6 > box.Width || label.Height > box.Height + 0.4)
                    continue;
                WriteClear(board, label, box, styles);
                return;
            }
        }

        var small = Label.Of(text, styles.Text.Bold, styles.Scale.Drawing - 1.5, styles.Language, box.Height > box.Width);
        WriteClear(board, small, box, styles);
    }

    // Lines of a row of narrow strips stop short of their letter.
    private static void WriteClear(Board board, Label label, Box box, StyleSheet styles)
    {
        var room = label.BoxAt(box.CentreX, box.CentreY).Grown(0.4).Common(box.Grown(-0.15));
        board.Solid(PathBuilder.Rectangle(room.Left, room.Top, room.Width, room.Height), styles.Lines.Card);
        board.Write(label, box.CentreX, box.CentreY, styles.Palette.Text);
    }

    // The number stands on the first of its lines, near the beginning, where it covers nothing else.
    private static void WriteNumber(Board board, CutOperation operation, double scale, StyleSheet styles)
    {
        var label = Label.Of(operation.Number.ToString(CultureInfo.InvariantCulture), styles.Text.Regular, styles.Scale.Drawing - 1, styles.Language);
        var radius = Math.Max(LeastDisc, (Math.Max(label.Width, label.Height * 0.8) / 2) + 0.25);
        var (from, to) = Ends(operation.Cuts[0], scale);
        var length = from.DistanceTo(to);
        var along = (to - from) * (1 / length);
        var best = from + (along * (length / 2));
        for (var at = Math.Min(radius + 0.6, length / 2); at <= length - Math.Min(radius, length / 2); at += 0.8)
        {
            var middle = from + (along * at);
            if (!board.Room.IsFree(Box.Around(middle.X, middle.Y, (2 * radius) + 0.2, (2 * radius) + 0.2)))
                continue;
            best = middle;
            break;
        }

        board.Solid(PathBuilder.Circle(best.X, best.Y, radius), Colour.White);
        board.Mark(PathBuilder.Circle(best.X, best.Y, radius), new Stroke(styles.Lines.Dimension, styles.Lines.ThinWidth));
        board.Room.Take(Box.Around(best.X, best.Y, 2 * radius, 2 * radius));
        board.Write(label, best.X, best.Y, styles.Palette.Text);
    }

    private static void DrawGrain(Board board, double x, double y, StyleSheet styles)
    {
        var stroke = new Stroke(styles.Lines.Dimension, styles.Lines.FoldWidth);
        var (top, bottom) = (new Point(x, y - 12), new Point(x, y + 12));
        board.Mark(PathBuilder.Line(top.X, top.Y, bottom.X, bottom.Y), stroke);
        board.Solid(Drafting.Arrow.Head(top, bottom), styles.Lines.Dimension);
        board.Solid(Drafting.Arrow.Head(bottom, top), styles.Lines.Dimension);
    }
}
