using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>The pieces of a finished thing and how they come together, standing on the ground at z = 0.</summary>
public sealed class FinishedThing
{
    /// <summary>How far layers that lie on each other are drawn apart, in millimetres: too little to be seen.</summary>
    internal const double Hair = 0.05;

    private readonly Kit _kit;
    private readonly Item? _item;

    /// <summary>
    /// A thing made of a kit's pieces. The one called <c>lid</c> goes over the one that the item stands in, the first; one
    /// called <c>platform</c> stands inside it, upside down.
    /// </summary>
    /// <param name="kit">The kit.</param>
    /// <param name="item">What goes inside, if it is known.</param>
    public FinishedThing(Kit kit, Item? item)
    {
        ArgumentNullException.ThrowIfNull(kit);
        (_kit, _item) = (kit, item);
        var pieces = kit.Parts.Where(part => part.Kind == PartKind.Piece).Select(part => part.Piece).ToList();
        Lid = pieces.Find(piece => piece.Id.Contains("lid", StringComparison.Ordinal));
        Platform = pieces.Find(piece => piece.Id.Contains("platform", StringComparison.Ordinal));
        Box = pieces.Find(piece => piece != Lid && piece != Platform)
            ?? throw new ArgumentException("The kit has no piece for the item to stand in.", nameof(kit));
    }

    /// <summary>The piece that the item stands in.</summary>
    public Piece Box { get; }

    /// <summary>The lid, if there is one.</summary>
    public Piece? Lid { get; }

    /// <summary>The platform, if there is one.</summary>
    public Piece? Platform { get; }

    /// <summary>The outside of the closed thing in millimetres: across, deep, high.</summary>
    public (double Width, double Depth, double Height) Outside
    {
        get
        {
            var corners = Standing(Box, 1).Panels.Concat(LidOn()?.Panels ?? []).SelectMany(panel => panel.Corners).ToArray();
            return (
                corners.Max(c => c.X) - corners.Min(c => c.X),
                corners.Max(c => c.Y) - corners.Min(c => c.Y),
                corners.Max(c => c.Z) - corners.Min(c => c.Z));
        }
    }

    /// <summary>How high above its place on the closed box the lid is drawn, in millimetres, so that it is clear of the item.</summary>
    public double LidLift
    {
        get
        {
            if (LidOn() is not { } lid)
                return 0;
            var brim = lid.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));
            var (width, depth, _) = Outside;
            return Math.Max(0, ItemTop - brim) + (1.0 * Math.Max(width, depth));
        }
    }

    // Where the item's upper side is when it stands inside.
    private double ItemTop => (_item?.Height.Millimetres ?? 0)
        + (Platform is null ? 0 : UpsideDown(Platform, 1).Panels.Max(panel => panel.Corners.Max(corner => corner.Z)));

    /// <summary>Adds the closed thing, its lid on.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Where its middle stands on the ground.</param>
    public void AddClosed(Scene scene, Vector3d at)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var place = RigidMotion.By(at);
        Add(scene, Standing(Box, 1).Moved(place));
        if (LidOn() is { } lid)
            Add(scene, lid.Moved(place));
    }

    /// <summary>Adds the thing with its walls part of the way open and the item inside, its lid lifted off.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Where its middle stands on the ground.</param>
    /// <param name="opening">How far the walls stand up: 0 flat, 1 closed.</param>
    public void AddOpen(Scene scene, Vector3d at, double opening)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var place = RigidMotion.By(at);
        Add(scene, Standing(Box, opening).Moved(place));
        var floor = 2 * Hair;
        if (Platform is not null)
        {
            var platform = UpsideDown(Platform, 1).Moved(RigidMotion.By(at + (Vector3d.UnitZ * floor)));
            Add(scene, platform);
            floor = platform.Panels.Max(panel => panel.Corners.Max(corner => corner.Z)) - at.Z + (2 * Hair);
        }

        var foot = at + (Vector3d.UnitZ * floor);
        if (_item is { Shape: ItemShape.Round })
        {
            scene.AddRound(foot, _item.Width.Millimetres, _item.Height.Millimetres);
        }
        else if (_item is not null)
        {
            var (width, depth) = Lying(_item);
            scene.AddBlock(foot, width, depth, _item.Height.Millimetres);
        }

        if (LidOn() is { } lid)
            Add(scene, lid.Moved(RigidMotion.By(at + (Vector3d.UnitZ * LidLift))));
    }

    // An item lies the way that its longer side goes along the longer side of the floor.
    private (double Width, double Depth) Lying(Item item)
    {
        var floor = Box.Panel(Box.Root).Outline.Bounds;
        var (along, across) = (item.Width.Millimetres, item.Depth.Millimetres);
        return floor.Width >= floor.Height == along >= across ? (along, across) : (across, along);
    }

    private void Add(Scene scene, Pose pose) => scene.Add(pose, MatPlacing.On(pose.Piece, _kit.Parts));

    /// <summary>A piece folded in the order of hands, the middle of its root at the origin, its facing side up.</summary>
    internal static Pose Standing(Piece piece, double opening)
    {
        var pose = Layers.Apart(Folder.InOrder(piece, opening), Hair);
        return pose.Moved(RigidMotion.By(-Vector3d.OnSheet(pose.Root.Panel.Outline.Bounds.Centre)));
    }

    /// <summary>The same turned over, standing on the ground.</summary>
    internal static Pose UpsideDown(Piece piece, double opening)
    {
        var pose = Standing(piece, opening).Moved(RigidMotion.Turn(default, Vector3d.UnitX, 180));
        var lowest = pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));
        return pose.Moved(RigidMotion.By(Vector3d.UnitZ * -lowest));
    }

    private Pose? LidOn()
    {
        if (Lid is null)
            return null;
        var top = Standing(Box, 1).Panels.Max(panel => panel.Corners.Max(corner => corner.Z));
        var lid = Standing(Lid, 1).Moved(RigidMotion.Turn(default, Vector3d.UnitX, 180));
        return lid.Moved(RigidMotion.By(Vector3d.UnitZ * (top + Hair)));
    }
}
