using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>Decorative panels that are glued on a face: one panel, no folds.</summary>
public static class Mats
{
    /// <summary>What the one panel of a mat is called.</summary>
    public const string PanelName = "mat";

    /// <summary>A rectangular mat.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="size">Its sides, each above 0.</param>
    /// <exception cref="NetException">A side is nothing or less.</exception>
    public static Piece Rectangle(string id, string name, Size size)
    {
        RefuseFlat(id, size);
        return Of(id, name, size, Outline.Rectangle(0, 0, size.Width.Millimetres, size.Height.Millimetres));
    }

    /// <summary>
    /// A narrow mat with one end cut at 45°, lying along the page with its longer edge at the bottom: the slanted end of
    /// <see cref="Hand.Left"/> is to the left, and <see cref="Hand.Right"/> is its mirror image.
    /// </summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="size">The rectangle it is cut from: its longer edge, and its width above 0 and below that.</param>
    /// <param name="hand">Which of the pair: left or right.</param>
    /// <exception cref="NetException">The size has no room for the slanted end.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The hand is neither left nor right.</exception>
    public static Piece MitredStrip(string id, string name, Size size, Hand hand)
    {
        if (hand is not (Hand.Left or Hand.Right))
            throw new ArgumentOutOfRangeException(nameof(hand), hand, "A mitred strip is either a left or a right one.");
        RefuseFlat(id, size);
        if (size.Width <= size.Height)
            throw new NetException(id, ["The strip is no longer than it is wide, so its slanted end would take all of one edge."]);

        var (length, width) = (size.Width.Millimetres, size.Height.Millimetres);
        var left = Outline.Through(new(width, 0), new(length, 0), new(length, width), new(0, width));
        return Of(id, name, size, hand == Hand.Left ? left : LineWork.Tidied(left.MirroredAt(length / 2).Edges));
    }

    /// <summary>A mat with two level sides, the longer at the bottom, and its other two sides leaning alike.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="size">The rectangle it is cut from: its longer side, and its height; each above 0.</param>
    /// <param name="top">Its shorter side; above 0, and no longer than the longer one.</param>
    /// <exception cref="NetException">The sizes make no such shape.</exception>
    public static Piece Trapezium(string id, string name, Size size, Length top)
    {
        RefuseFlat(id, size);
        if (top <= Length.Zero || top > size.Width)
            throw new NetException(id, ["The mat’s shorter side has to be longer than nothing and no longer than its width."]);
        var (width, height, lean) = (size.Width.Millimetres, size.Height.Millimetres, (size.Width - top).Millimetres / 2);
        return Of(id, name, size, LineWork.Tidied(Outline.Through(new(lean, 0), new(width - lean, 0), new(width, height), new(0, height)).Edges));
    }

    /// <summary>A regular polygon, one side level at the bottom.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="sides">How many sides it has: a whole number from 3 to 60.</param>
    /// <param name="side">How long each is; above 0.</param>
    /// <param name="ruler">The ruler that the sheet it is cut from lies on.</param>
    /// <exception cref="NetException">That is no polygon.</exception>
    public static Piece RegularPolygon(string id, string name, double sides, Length side, Ruler ruler)
    {
        if (sides is not (>= 3 and <= 60) || sides != Math.Floor(sides))
            throw new NetException(id, ["A polygon has a whole number of sides, from 3 to 60."]);
        RefuseFlat(id, new Size(side, side));
        var outline = Polygons.Regular((int)sides, side.Millimetres);
        var bounds = outline.Bounds;
        return Of(
            id,
            name,
            new Size(Up(bounds.Width), Up(bounds.Height)),
            LineWork.Tidied(Motion.By(new Point(-bounds.Left, -bounds.Top)).Apply(outline).Edges));

        Length Up(double extent) => ruler.Round(Length.FromMillimetres(extent), Rounding.Up);
    }

    /// <summary>A mat of an outline on its sheet.</summary>
    internal static Piece Of(string id, string name, Size size, Outline outline) => new PieceAssembly
    {
        Id = id,
        Name = name,
        Sheet = size,
        Root = PanelName,
        Panels = [new Panel(PanelName, PanelName, PanelRole.Panel, outline)],
        Folds = [],
        GlueAreas = [],
    }.Build();

    private static void RefuseFlat(string id, Size size)
    {
        var reasons = new List<string>();
        foreach (var (what, side) in new[] { ("width", size.Width), ("height", size.Height) })
        {
            if (side <= Length.Zero)
                reasons.Add($"The mat's {what} is {LengthFormat.Format(side, Ruler.WholeMillimetres)}; nothing of it is left.");
        }

        if (reasons.Count > 0)
            throw new NetException(id, reasons);
    }
}
