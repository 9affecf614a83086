using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>What a drawing of the finished thing shows.</summary>
public enum FinishedShow
{
    /// <summary>Closed, its lid on.</summary>
    Closed,

    /// <summary>Open, the item inside and the lid lifted off.</summary>
    Open,

    /// <summary>Open in front, closed behind it on the left; just once when it does not open.</summary>
    Both,

    /// <summary>Taken apart, each part along the way it comes off.</summary>
    Apart,

    /// <summary>Open, with arrows for what has come off.</summary>
    Opened,
}

/// <summary>The finished thing in axonometric projection, folded from its pieces.</summary>
public sealed class FinishedDrawing : IDrawing
{
    // Walls that have fallen by about two thirds show the item and both sides of the card; from a little higher than their
    // slope one looks into all four of them. A turn of 24° keeps the gussets, which stand at 45°, from being seen edge-on.
    private const double Opening = 0.31;
    private static readonly Axonometry OpenView = new(24, 38);
    private readonly SolidDrawing _drawing;

    /// <summary>Where the closed thing is seen from.</summary>
    internal static Axonometry ClosedView { get; } = new(32, 30);

    /// <summary>Draws a kit's finished thing.</summary>
    /// <param name="kit">Its pieces and mats.</param>
    /// <param name="item">What goes inside, if it is known.</param>
    /// <param name="show">What to show.</param>
    /// <param name="size">Labels with the outside size, put along the closed thing when it is shown alone.</param>
    public FinishedDrawing(Kit kit, Item? item, FinishedShow show = FinishedShow.Both, SizeLabels? size = null)
    {
        var thing = new FinishedThing(kit, item);
        var (width, depth, height) = thing.Outside;
        var scene = new Scene { Ground = 0 };

        // What does not open is shown once.
        if (show == FinishedShow.Both && !thing.CanOpen)
            show = FinishedShow.Open;
        if (show == FinishedShow.Closed)
            thing.AddClosed(scene, default);
        else if (show == FinishedShow.Apart)
            thing.AddApart(scene, ClosedView.Viewer);
        else if (show == FinishedShow.Opened)
            thing.AddOpened(scene, Opening, OpenView.Viewer);
        else
            thing.AddOpen(scene, default, Opening);
        if (show == FinishedShow.Both)
            thing.AddClosed(scene, Behind(thing, width, depth));

        IReadOnlyList<SpaceDimension> dimensions = show == FinishedShow.Closed && size is not null
            ? SpaceDimension.Around(width, depth, height, size)
            : [];
        _drawing = new SolidDrawing(scene, show is FinishedShow.Closed or FinishedShow.Apart ? ClosedView : OpenView, dimensions);
        Facts = new FinishedFacts(
            show, width, depth, height, show is FinishedShow.Closed or FinishedShow.Apart || !thing.FallsOpen ? 90 : 90 * Opening, thing.Pieces, item);
    }

    /// <summary>Draws the moment when a part goes on or in; null when there is no such part or it stands by itself.</summary>
    /// <param name="kit">The pieces and mats.</param>
    /// <param name="item">What goes inside, if it is known.</param>
    /// <param name="part">The piece, by id, or <see cref="Assembly.Item"/>.</param>
    public static SolidDrawing? Inserting(Kit kit, Item? item, string part)
    {
        var scene = new Scene { Ground = 0 };
        return new FinishedThing(kit, item).AddInserting(scene, part, Opening, OpenView.Viewer) ? new SolidDrawing(scene, OpenView) : null;
    }

    /// <summary>What is to be seen, with numbers, for a description in words.</summary>
    public FinishedFacts Facts { get; }

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => _drawing.Draw(maxWidth, maxHeight, styles);

    // Clear of the fallen left wall, and so far back that the two stand on one diagonal.
    private static Vector3d Behind(FinishedThing thing, double width, double depth)
    {
        var reach = thing.Open(Opening).Where(part => part.Part.To is null).SelectMany(part => part.Corners).Max(corner => Math.Abs(corner.X));
        var away = new Vector3d(-OpenView.Viewer.X, -OpenView.Viewer.Y, 0).Unit;
        var aside = Math.Max(width, depth);
        return (OpenView.Right * -(reach + (0.75 * aside))) + (away * (0.5 * reach));
    }
}

/// <summary>What a drawing of the finished thing shows, in numbers.</summary>
/// <param name="Show">What is shown.</param>
/// <param name="Width">The closed thing's outside along the sheet's x, in millimetres.</param>
/// <param name="Depth">The other way.</param>
/// <param name="Height">Its height.</param>
/// <param name="WallAngle">How far the walls stand up from the floor, in degrees; 90 closed.</param>
/// <param name="Pieces">The pieces it is made of, by id, in the order they are put together.</param>
/// <param name="Item">What is inside, if it is known.</param>
public sealed record FinishedFacts(
    FinishedShow Show, double Width, double Depth, double Height, double WallAngle, IReadOnlyList<string> Pieces, Item? Item);
