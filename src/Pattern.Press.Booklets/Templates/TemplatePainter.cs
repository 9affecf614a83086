using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Draws a piece at true size, cut off exactly at the edges of what a page shows.</summary>
internal sealed class TemplatePainter(Piece piece, Placing placing, Box shows, StyleSheet styles, IFigureWords words)
{
    private const double WasteSpacing = 6;
    private const double GlueSpacing = 4;
    private const double ShortestWorded = 26;

    // Words along a fold stand apart from the names of panels where they can.
    private static readonly double[] WordsClear = [0.85, 0.3];

    // What is seen ends where the page ends, but a line along its very edge must not be lost to rounding: sheets are
    // measured in whole nanometres, lines are not.
    private readonly Box _seen = shows.Grown(1e-5);

    // A line that goes on for this long within that hair of the edge lies along it.
    private const double Along = 0.01;

    /// <summary>Where a template that may be turned lies when its top-left corner is at a point.</summary>
    public static Placing PlacingOf(Piece piece, bool turned, double x, double y) => new(1, x, y, turned, piece.Sheet.Height.Millimetres);

    /// <summary>Every cut and fold, with the stroke it is drawn with; arcs as chords.</summary>
    public static IEnumerable<(Segment Line, Stroke Stroke)> Lines(Piece piece, Placing placing, LineStyles lines)
    {
        foreach (var (edge, stroke) in piece.Folds.Select(fold => (fold.Line, StrokeOf(fold, lines))).Concat(piece.Cuts.Select(cut => (cut, lines.CutStroke))))
        {
            var points = Shape.Line(edge);
            for (var i = 1; i < points.Count; i++)
                yield return (placing.Put(points[i - 1], points[i]), stroke);
        }
    }

    /// <summary>Folds and cuts, each ending where the page ends; arcs are drawn as true curves.</summary>
    public void DrawLines(Board board)
    {
        foreach (var fold in piece.Folds)
            DrawEdge(board, fold.Line, StrokeOf(fold, styles.Lines));
        foreach (var cut in piece.Cuts)
            DrawEdge(board, cut, styles.Lines.CutStroke);
    }

    private void DrawEdge(Board board, Edge edge, Stroke stroke)
    {
        foreach (var found in Stretches.Within(new Edge(placing.Put(edge.From), placing.Put(edge.To), edge.Bulge), _seen))
        {
            var seen = OnPage(found);
            board.Mark(Stretches.Path(seen), stroke);
            var points = Shape.Line(seen);
            for (var i = 1; i < points.Count; i++)
                board.Room.Add(new Segment(points[i - 1], points[i]));
        }
    }

    /// <summary>Names panels and folds inside a part of the page that no other page will cover.</summary>
    /// <param name="board">The drawing.</param>
    /// <param name="stays">What stays in sight when the pages are joined.</param>
    /// <param name="open">
    /// Where words may stand beside the template: what stays in sight and the free paper around it.
    /// </param>
    /// <param name="leads">
    /// Whether a panel without room for its name gets it by a line; pages that show less of it leave that to others.
    /// </param>
    public void DrawWords(Board board, Box stays, Box open, Func<Panel, bool> leads)
    {
        var crowded = new List<(Panel Panel, Shape Seen)>();
        foreach (var panel in piece.Panels)
        {
            var shape = Shape.Of(panel.Outline, placing);
            if (shape.Within(stays) is not { } seen)
                continue;
            if (PanelLabel.Find(board.Room, shape, panel.Kind, styles, false, stays, styles.Scale.Drawing + 2) is { } found)
                board.Write(found.Label, found.At.X, found.At.Y, styles.Palette.Text);
            else if (leads(panel))
                crowded.Add((panel, seen));
        }

        var panels = piece.Panels.Select(panel => Shape.Of(panel.Outline, placing)).ToArray();
        foreach (var (panel, seen) in crowded)
            LedLabel.Write(board, panel.Kind, seen, panels, open, styles);

        var say = new FoldWords(words, styles);
        foreach (var fold in piece.Folds.Where(fold => !fold.Line.IsArc))
        {
            if (placing.Put(fold.From, fold.To).Within(stays) is not { Length: > ShortestWorded } seen)
                continue;
            foreach (var clear in WordsClear)
            {
                if (AlongLine.Write(board, seen, say.Of(fold), styles, 0, stays, clear))
                    break;
            }
        }
    }

    /// <summary>An arrow to the top of a pattern that has one.</summary>
    public bool DrawTop(Board board, Box within) =>
        Directions.Draw(board, piece.Panels.Select(panel => Shape.Of(panel.Outline, placing)), within, level: placing.Turned, bothEnds: false, styles);

    /// <summary>An arrow with two heads along the grain, where that matters.</summary>
    public bool DrawGrain(Board board, Box within) =>
        Directions.GrainOf(piece) is var grain and not Grain.Any
        && Directions.Draw(board, piece.Panels.Select(panel => Shape.Of(panel.Outline, placing)), within, level: grain == Grain.Across != placing.Turned, bothEnds: true, styles);

    /// <summary>The sides of the sheet where waste is cut off it, so that the template can be laid on the card.</summary>
    public void DrawSheet(Board board)
    {
        foreach (var side in SheetSides())
        {
            if (side.Within(_seen) is { Length: > 1e-6 } seen)
                board.Line(new Segment(Inside(seen.From), Inside(seen.To)), DrawingStrokes.Sheet(styles.Lines));
        }
    }

    // Where a line runs off the page it ends on the page's edge and on itself; only one that lies along the edge, a hair
    // outside, is moved onto it.
    private Edge OnPage(Edge found)
    {
        var moved = new Edge(Inside(found.From), Inside(found.To), found.Bulge);
        return moved != found && Stretches.Within(found, shows).ToList() is [var cut] && cut.From.DistanceTo(found.From) < Along && cut.To.DistanceTo(found.To) < Along
            ? cut
            : moved;
    }

    // What was found a hair outside is drawn on the page's very edge.
    private Point Inside(Point point) => new(Math.Clamp(point.X, shows.Left, shows.Right), Math.Clamp(point.Y, shows.Top, shows.Bottom));

    /// <summary>Hatching where glue goes.</summary>
    public void DrawGlue(Board board)
    {
        foreach (var glue in piece.GlueAreas)
            Hatch(board, [Shape.Of(glue.Outline, placing)], GlueSpacing, [true], DrawingStrokes.Glue(styles.Lines, glue.Side));
    }

    /// <summary>Hatching of what is cut away; large areas take little ink.</summary>
    public void DrawWaste(Board board)
    {
        var faint = new Stroke(TileMap.Lighter(styles.Lines.Waste), styles.Lines.ThinWidth * 0.7);
        foreach (var waste in piece.Waste)
            Hatch(board, [Shape.Of(waste.Outline, placing), .. waste.Holes.Select(hole => Shape.Of(hole, placing))], WasteSpacing, [true, false], faint);
    }

    private void Hatch(Board board, IEnumerable<Shape> loops, double spacing, bool[] ways, Stroke stroke)
    {
        var spared = board.Room.Taken.Select(box => box.Grown(0.6)).ToArray();
        var seen = loops.Select(loop => loop.Within(shows)).OfType<Shape>().ToArray();

        // The same lines on every page of a template, so that hatching meets too.
        var origin = placing.Put(new Point(0, 0));
        foreach (var way in ways)
        {
            if (Hatching.Fill(seen, spacing, way, spared, origin) is { } path)
                board.Mark(path, stroke);
        }
    }

    private static Stroke StrokeOf(Fold fold, LineStyles lines) =>
        DrawingStrokes.ForLength(fold.Direction == FoldDirection.Valley ? lines.ValleyStroke : lines.MountainStroke, fold.Line.Length);

    private IEnumerable<Segment> SheetSides()
    {
        var (width, height) = (piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        foreach (var edge in piece.Waste.SelectMany(waste => waste.Outline.Edges).Where(edge => !edge.IsArc))
        {
            if (Both(edge.From.X, edge.To.X, 0) || Both(edge.From.X, edge.To.X, width) || Both(edge.From.Y, edge.To.Y, 0) || Both(edge.From.Y, edge.To.Y, height))
                yield return placing.Put(edge.From, edge.To);
        }

        static bool Both(double a, double b, double where) => Math.Abs(a - where) < 1e-6 && Math.Abs(b - where) < 1e-6;
    }
}
