using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>A scene as a drawing that fits a width: lines and lettering keep their size, the scale changes.</summary>
public sealed class SolidDrawing : IDrawing
{
    /// <summary>Room around for half the width of the widest line, in millimetres.</summary>
    private const double Margin = 0.5;

    /// <summary>Things are not drawn larger than life by more than this.</summary>
    private const double Largest = 1.5;

    /// <summary>No page has more room, in millimetres: Letter is 216 wide and A4 297 high.</summary>
    private const double WidestPage = 216;
    private const double HighestPage = 297;

    // After ISO 129-1 (from memory), in millimetres on paper: the gap before an extension line, the place of the
    // dimension line, how far the extension line goes on, and the gap to the label.
    private const double Gap = 1;
    private const double LineAway = 5;
    private const double Beyond = 1;
    private const double LabelGap = 1;

    private readonly SceneView _view;
    private readonly IReadOnlyList<SpaceDimension> _dimensions;

    /// <summary>A drawing of a scene, seen from a place, with dimensions if there are any.</summary>
    public SolidDrawing(Scene scene, Axonometry view, IReadOnlyList<SpaceDimension>? dimensions = null)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(view);
        _view = new SceneView(scene, view);
        _dimensions = dimensions ?? [];
    }

    /// <summary>
    /// A piece whose strips, where it bends, stand off the smooth surface by no more than <see cref="Facets.OnPaper"/> however
    /// large it is drawn: no larger than <see cref="Largest"/>, and no wider or higher than a page.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="corners">What is drawn of it.</param>
    /// <param name="view">Where it is seen from.</param>
    internal static Piece Fine(Piece piece, IEnumerable<Vector3d> corners, Axonometry view) =>
        piece.Panels.All(panel => panel.Bend is null) ? piece : Facets.Within(piece, Facets.OnPaper / LargestScale(corners, view));

    /// <summary>The same for a kit.</summary>
    internal static Kit Fine(Kit kit, Func<IEnumerable<Vector3d>> corners, Axonometry view) =>
        kit.Pieces.All(part => part.Piece.Panels.All(panel => panel.Bend is null)) ? kit : Facets.Within(kit, Facets.OnPaper / LargestScale(corners(), view));

    /// <summary>The largest scale at which corners are drawn on any page.</summary>
    internal static double LargestScale(IEnumerable<Vector3d> corners, Axonometry view)
    {
        var seen = corners.Select(view.See).ToArray();
        var (width, height) = (seen.Max(c => c.X) - seen.Min(c => c.X), seen.Max(c => c.Y) - seen.Min(c => c.Y));
        return Math.Min(Largest, Math.Min(WidestPage / width, HighestPage / height));
    }

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(styles);

        // Where dimensions reach does not scale, so the drawing is fitted in a few rounds.
        var scale = Math.Min(Largest, Math.Min((maxWidth - (2 * Margin)) / _view.Width, (maxHeight - (2 * Margin)) / _view.Height));
        var box = Extent(scale, styles);
        for (var round = 0; round < 8 && (box.Width > maxWidth + 1e-9 || box.Height > maxHeight + 1e-9); round++)
        {
            var (overX, overY) = (box.Width - maxWidth, box.Height - maxHeight);
            scale -= Math.Max(overX / _view.Width, overY / _view.Height);
            scale = Math.Max(scale, 1e-3);
            box = Extent(scale, styles);
        }

        var (x, y) = (-box.Left, -box.Top);
        var fitted = scale;
        return new DrawnFigure(box.Width, box.Height, () =>
        {
            var items = _view.Draw(x, y, fitted, styles).ToList();
            foreach (var dimension in _dimensions)
                Placed.Of(dimension, _view, fitted, styles).Draw(items, x, y, styles);
            return items;
        });
    }

    // The extent of the drawing, with the view's own top-left corner at the origin.
    private Box Extent(double scale, StyleSheet styles)
    {
        var box = new Box(-Margin, -Margin, (_view.Width * scale) + Margin, (_view.Height * scale) + Margin);
        foreach (var dimension in _dimensions)
        {
            var reach = Placed.Of(dimension, _view, scale, styles).Reach;
            box = new Box(
                Math.Min(box.Left, reach.Left), Math.Min(box.Top, reach.Top), Math.Max(box.Right, reach.Right), Math.Max(box.Bottom, reach.Bottom));
        }

        return box;
    }

    /// <summary>A dimension with its place on paper.</summary>
    private sealed record Placed(Point From, Point To, Point Outwards, Label Label, Point LabelAt)
    {
        /// <summary>The box around the label and the ends of the extension lines.</summary>
        public Box Reach
        {
            get
            {
                var (a, b) = (From + (Outwards * (LineAway + Beyond)), To + (Outwards * (LineAway + Beyond)));
                var label = Label.BoxAt(LabelAt.X, LabelAt.Y);
                return new Box(
                    Math.Min(label.Left, Math.Min(a.X, b.X)),
                    Math.Min(label.Top, Math.Min(a.Y, b.Y)),
                    Math.Max(label.Right, Math.Max(a.X, b.X)),
                    Math.Max(label.Bottom, Math.Max(a.Y, b.Y)));
            }
        }

        public static Placed Of(SpaceDimension dimension, SceneView view, double scale, StyleSheet styles)
        {
            var (from, to) = (At(dimension.From), At(dimension.To));
            var arrow = At(dimension.From + dimension.Outwards) - from;
            var outwards = arrow * (1 / Math.Sqrt(arrow.Dot(arrow)));
            var label = Label.Of(dimension.Label, styles.Text.Regular, styles.Scale.Drawing, styles.Language);

            // The label stands level, beyond the middle of the line, so far out that it is clear of it.
            var middle = from.MidwayTo(to) + (outwards * LineAway);
            var along = (to - from) * (1 / to.DistanceTo(from));
            var across = new Point(-along.Y, along.X);
            if (across.Dot(outwards) < 0)
                across *= -1;
            var clear = (Math.Abs(across.X) * label.Width / 2) + (Math.Abs(across.Y) * label.Height / 2) + LabelGap;
            return new Placed(from, to, outwards, label, middle + (across * clear));

            Point At(Vector3d point)
            {
                var seen = view.View.See(point);
                return new Point((seen.X - view.Left) * scale, (seen.Y - view.Top) * scale);
            }
        }

        public void Draw(List<PageItem> items, double x, double y, StyleSheet styles)
        {
            var move = new Point(x, y);
            var (from, to) = (From + move, To + move);
            var (start, end) = (from + (Outwards * LineAway), to + (Outwards * LineAway));
            var lines = new PathBuilder();
            foreach (var foot in new[] { from, to })
            {
                var (near, far) = (foot + (Outwards * Gap), foot + (Outwards * (LineAway + Beyond)));
                lines.MoveTo(near.X, near.Y).LineTo(far.X, far.Y);
            }

            lines.MoveTo(start.X, start.Y).LineTo(end.X, end.Y);
            items.Add(new PathItem(lines.Build(), null, new Stroke(styles.Lines.Dimension, styles.Lines.ThinWidth)));
            items.Add(new PathItem(Arrow.Head(start, end), styles.Lines.Dimension, null));
            items.Add(new PathItem(Arrow.Head(end, start), styles.Lines.Dimension, null));
            items.AddRange(Label.At(LabelAt.X + x, LabelAt.Y + y, styles.Lines.Dimension));
        }
    }
}
