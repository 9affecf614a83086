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

    /// <summary>The closed thing, its lid on.</summary>
    public Scene Closed()
    {
        var scene = new Scene { Ground = 0 };
        Add(scene, Standing(Box, 1), SheetSide.Facing);
        if (LidOn() is { } lid)
            Add(scene, lid, SheetSide.Away);
        return scene;
    }

    /// <summary>The thing with its walls part of the way open and the item inside.</summary>
    /// <param name="opening">How far the walls stand up: 0 flat, 1 closed.</param>
    /// <param name="lid">Where the lid is, measured from its place on the closed box; null leaves it out.</param>
    public Scene Open(double opening, RigidMotion? lid)
    {
        var scene = new Scene { Ground = 0 };
        Add(scene, Standing(Box, opening), SheetSide.Facing);
        var floor = Hair;
        if (Platform is not null)
        {
            var platform = UpsideDown(Platform, 1, 0);
            platform = platform.Moved(RigidMotion.By(Vector3d.UnitZ * (2 * Hair)));
            Add(scene, platform, SheetSide.Away);
            floor = platform.Panels.Max(panel => panel.Corners.Max(corner => corner.Z)) + Hair;
        }

        var foot = Vector3d.UnitZ * (floor + Hair);
        if (_item is { Shape: ItemShape.Round })
        {
            scene.AddRound(foot, _item.Width.Millimetres, _item.Height.Millimetres);
        }
        else if (_item is not null)
        {
            var (width, depth) = Lying(_item);
            scene.AddBlock(foot, width, depth, _item.Height.Millimetres);
        }

        if (lid is { } moved && LidOn() is { } on)
            Add(scene, on.Moved(moved), SheetSide.Away);
        return scene;
    }

    /// <summary>A piece alone, standing on its root, its facing side up or down.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded: 0 flat, 1 finished.</param>
    /// <param name="upsideDown">Whether its facing side looks down.</param>
    public static Scene Alone(Piece piece, double opening, bool upsideDown)
    {
        var scene = new Scene();
        var pose = upsideDown ? UpsideDown(piece, opening, 0) : Standing(piece, opening);
        scene.Add(pose);
        scene.Ground = pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));
        return scene;
    }

    // An item lies the way that its longer side goes along the longer side of the floor.
    private (double Width, double Depth) Lying(Item item)
    {
        var floor = Box.Panel(Box.Root).Outline.Bounds;
        var (along, across) = (item.Width.Millimetres, item.Depth.Millimetres);
        return floor.Width >= floor.Height == along >= across ? (along, across) : (across, along);
    }

    private void Add(Scene scene, Pose pose, SheetSide side) => scene.Add(pose, MatPlacing.On(pose.Piece, _kit.Parts), side);

    private static Pose Standing(Piece piece, double opening)
    {
        var pose = Layers.Apart(Folder.Pose(piece, opening), Hair);
        return pose.Moved(RigidMotion.By(-Vector3d.OnSheet(pose.Root.Panel.Outline.Bounds.Centre)));
    }

    private static Pose UpsideDown(Piece piece, double opening, double clearance)
    {
        var pose = Standing(piece, opening).Moved(RigidMotion.Turn(default, Vector3d.UnitX, 180));
        var lowest = pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));
        return pose.Moved(RigidMotion.By(Vector3d.UnitZ * (clearance - lowest)));
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
