using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>The key to the lines: a sample of each with its word, in as many columns as the theme asks for and the width holds.</summary>
public sealed record LineKey(IFigureWords Words) : IDrawing
{
    private const double Sample = 26;
    private const double Row = 7.4;
    private const double Gap = 4;
    private const double BetweenColumns = 8;

    private static readonly string[] Keys =
    [
        "cut", "valley", "mountain", "flat", "glue", "glue_back", "waste", "sheet", "dimension", "bar", "mark", "trim", "lap", "corner",
    ];

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(styles);
        var board = new Board();
        var labels = Keys.Select(key => Label.Of(Words.Say("key." + key), styles.Text.Regular, styles.Scale.Small, styles.Language)).ToArray();
        var column = Sample + Gap + labels.Max(label => label.Width);
        var columns = Math.Clamp((int)((maxWidth + BetweenColumns) / (column + BetweenColumns)), 1, styles.Columns.Key);
        var rows = (Keys.Length + columns - 1) / columns;
        for (var i = 0; i < Keys.Length; i++)
        {
            var x = i / rows * (column + BetweenColumns);
            var y = (i % rows * Row) + (Row / 2);
            DrawSample(board, Keys[i], x, y, styles);
            board.Write(labels[i], x + Sample + Gap + (labels[i].Width / 2), y, styles.Palette.Text);
        }

        return new DrawnFigure((columns * column) + ((columns - 1) * BetweenColumns), rows * Row, board.Items);
    }

    private void DrawSample(Board board, string key, double x, double y, StyleSheet styles)
    {
        var lines = styles.Lines;
        var line = new Segment(new Point(x, y), new Point(x + Sample, y));
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        switch (key)
        {
            case "cut":
                board.Line(line, lines.CutStroke);
                break;
            case "valley":
                board.Line(line, lines.ValleyStroke);
                break;
            case "mountain":
                board.Line(line, lines.MountainStroke);
                break;
            case "flat":
                board.Line(line, lines.ValleyStroke);
                AlongLine.Write(board, line, Words.Say("drawing.fold.valley_flat"), styles, -1);
                break;
            case "glue":
                Area(board, x, y, [true], 1.8, DrawingStrokes.Glue(lines, SheetSide.Facing), lines);
                break;
            case "glue_back":
                Area(board, x, y, [true], 1.8, DrawingStrokes.Glue(lines, SheetSide.Away), lines);
                break;
            case "sheet":
                board.Line(line, DrawingStrokes.Sheet(lines));
                break;
            case "bar":
                var firm = new Stroke(lines.Cut, lines.FoldWidth);
                board.Line(line, firm);
                board.Line(new Segment(new Point(x, y - 1.6), new Point(x, y + 1.6)), firm);
                board.Line(new Segment(new Point(x + Sample, y - 1.6), new Point(x + Sample, y + 1.6)), firm);
                break;
            case "lap":
                board.Ground(new PathItem(PathBuilder.Rectangle(x, y - 2.6, Sample, 5.2), styles.Palette.Tint, null));
                board.Line(new Segment(new Point(x, y - 2.6), new Point(x, y + 2.6)), DrawingStrokes.ForLength(DrawingStrokes.Trim(lines), 5.2));
                break;
            case "corner":
                var corner = new Stroke(lines.Faded, lines.ThinWidth);
                board.Line(new Segment(new Point(x + (Sample / 2) - 2, y - 2), new Point(x + (Sample / 2) + 2, y - 2)), corner);
                board.Line(new Segment(new Point(x + (Sample / 2) - 2, y - 2), new Point(x + (Sample / 2) - 2, y + 2)), corner);
                break;
            case "waste":
                Area(board, x, y, [true, false], 2.4, new Stroke(lines.Waste, lines.ThinWidth), lines);
                break;
            case "dimension":
                board.Line(line, thin);
                board.Line(new Segment(new Point(x, y - 2), new Point(x, y + 1)), thin);
                board.Line(new Segment(new Point(x + Sample, y - 2), new Point(x + Sample, y + 1)), thin);
                board.Solid(Arrow.Head(line.From, line.To), lines.Dimension);
                board.Solid(Arrow.Head(line.To, line.From), lines.Dimension);
                break;
            case "mark":
                RegistrationMark.Draw(board, new Point(x + (Sample / 2), y), new Box(x, y - 10, x + Sample, y + 10), thin);
                break;
            default:
                board.Line(line, DrawingStrokes.Trim(lines));
                break;
        }
    }

    private static void Area(Board board, double x, double y, bool[] ways, double spacing, Stroke hatch, LineStyles lines)
    {
        var box = new Box(x, y - 2.6, x + Sample, y + 2.6);
        var shape = Shape.Of(box);
        foreach (var way in ways)
        {
            if (Hatching.Fill([shape], spacing, way, [], new Point(x, y)) is { } path)
                board.Mark(path, hatch);
        }

        board.Mark(shape.Path(), new Stroke(lines.Cut, lines.ThinWidth));
    }
}
