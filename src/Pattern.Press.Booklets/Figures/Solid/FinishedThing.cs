using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>The pieces of a finished thing put together as its assembly says, standing on the ground at z = 0, for drawing.</summary>
public sealed class FinishedThing
{
    /// <summary>How far layers that lie on each other are drawn apart, in millimetres: too little to be seen.</summary>
    internal const double Hair = 0.05;

    // What is no higher than this, in millimetres, is folded flat; an item in it is drawn this far above the lowest layer.
    private const double Flat = 1;
    private const double Between = 0.8 * Hair;

    // How far something on its way in is clear of what it goes into, as a part of their height: room for an arrow.
    private const double Clear = 0.35;

    // An item that is drawn part of the way out of something flat is out by this part of its length.
    private const double PartOut = 0.4;

    // Several drawings show a piece folded alike.
    private static readonly ConditionalWeakTable<Piece, ConcurrentDictionary<double, Pose>> Folded = [];

    private readonly Kit _kit;
    private readonly AssembledThing _thing;

    /// <summary>A thing made of a kit's pieces.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="item">What goes inside, if it is known.</param>
    public FinishedThing(Kit kit, Item? item)
    {
        ArgumentNullException.ThrowIfNull(kit);

        // Closed it is seen largest; what bends is as fine as that asks for.
        _kit = SolidDrawing.Fine(kit, () => Assembled(kit, item).Closed.SelectMany(part => part.Corners), FinishedDrawing.ClosedView);
        _thing = Assembled(_kit, item);
    }

    // Thickness is drawn as two hairs, so that no light shows between what touches.
    private static AssembledThing Assembled(Kit kit, Item? item) => new(kit, Body(item), _ => 2 * Hair, Fold, pose => Layers.Apart(pose, Hair));

    /// <summary>The outside of the closed thing in millimetres: across, deep, high.</summary>
    public (double Width, double Depth, double Height) Outside => _thing.Outside;

    /// <summary>The pieces that are there, in the order they are put together.</summary>
    public IReadOnlyList<string> Pieces => [.. _thing.Parts.Where(part => part.Part != Assembly.Item).Select(part => part.Part)];

    /// <summary>Whether it looks any different when it is open.</summary>
    public bool CanOpen => _thing.Parts.Any(part =>
        part.OpensWholly || part.Opens.Count > 0 || (part.To is not null && part.Part != Assembly.Item && (AssembledThing.Covers(part) || part.Leaves != Leaving.Up)));

    /// <summary>Whether a part of it folds open as a whole, so that its walls fall.</summary>
    public bool FallsOpen => _thing.Parts.Any(part => part.OpensWholly);

    /// <summary>Whether there is anything to take apart.</summary>
    public bool HasSeveralParts => _thing.Parts.Count > 1;

    /// <summary>The item as a body, or null.</summary>
    internal static ItemBody? Body(Item? item) => item is null
        ? null
        : new ItemBody(item.Shape == ItemShape.Round, item.Width.Millimetres, item.Depth.Millimetres, item.Height.Millimetres);

    /// <summary>The parts in their places, closed.</summary>
    internal IReadOnlyList<PosedPart> Closed => _thing.Closed;

    /// <summary>The parts with the thing open.</summary>
    /// <param name="opening">How far pieces that open as a whole are folded: 0 flat, 1 closed.</param>
    internal IReadOnlyList<PosedPart> Open(double opening) => _thing.Open(opening);

    /// <summary>The parts taken apart.</summary>
    internal IReadOnlyList<PosedPart> Apart() => _thing.Apart();

    /// <summary>Adds the closed thing; what is inside it is not seen and left out.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Where its middle stands on the ground.</param>
    public void AddClosed(Scene scene, Vector3d at)
    {
        // What stands inside a closed box costs time and shows only through gaps that a hair leaves.
        var hidden = _thing.Parts.Any(AssembledThing.Covers);
        Add(scene, _thing.Closed.Where(part => (!hidden || part.Part.Goes != GoesWhere.Inside) && !IsBetween(part)), at);
    }

    /// <summary>Adds the thing opened and the item inside, what covers it lifted off.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="at">Where its middle stands on the ground.</param>
    /// <param name="opening">How far pieces that open as a whole are folded: 0 flat, 1 closed.</param>
    public void AddOpen(Scene scene, Vector3d at, double opening) => Add(scene, Opened(opening), at);

    /// <summary>Adds the thing opened, with an arrow for each part that has come off.</summary>
    internal void AddOpened(Scene scene, double opening, Vector3d viewer)
    {
        var open = Opened(opening);
        Add(scene, open, default);
        foreach (var (part, place) in open.Zip(_thing.Closed).Where(pair => pair.First.Part.To is not null))
        {
            // From its place to where it is now, seen at the same spot as an arrow the other way.
            if (MotionArrow.Straight(part, Foot(place) - Foot(part), viewer) is { } back)
                scene.Add(new MotionArrow([.. Into(part, back, open, viewer).Path.Reverse()]));
        }
    }

    /// <summary>Adds everything taken apart, with arrows along the ways it goes together.</summary>
    internal void AddApart(Scene scene, Vector3d viewer)
    {
        var apart = _thing.Apart();
        Add(scene, apart, default);
        foreach (var (part, place) in apart.Zip(_thing.BeforeClosing).Where(pair => pair.First.Copy == 0))
        {
            var host = apart.FirstOrDefault(one => one.Part.Part == part.Part.To);
            var way = _thing.Way(part.Part);
            if (host is null)
                continue;

            // Only as far as to what it goes to next; the arrow would cover that.
            var gap = part.Corners.Min(way.Dot) - apart.Where(one => one != part && one.Corners.Max(way.Dot) < part.Corners.Min(way.Dot) + 1e-6).Select(one => one.Corners.Max(way.Dot)).DefaultIfEmpty(0).Max();
            if (MotionArrow.Straight(part, -way * Math.Min(gap * 1.1, Foot(part).DistanceTo(Foot(place))), viewer) is { } arrow)
                scene.Add(Into(part, arrow, apart, viewer));
        }
    }

    /// <summary>Adds what is there when a part goes on or in, that part on its way, and an arrow.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="part">The part: a piece or the item.</param>
    /// <param name="opening">How far pieces that open as a whole are folded when something goes in.</param>
    /// <param name="viewer">Towards the viewer.</param>
    /// <returns>Whether there is such a part, and something it goes to.</returns>
    internal bool AddInserting(Scene scene, string part, double opening, Vector3d viewer)
    {
        if (_thing.Parts.FirstOrDefault(one => one.Part == part) is not { To: not null } entry)
            return false;
        var closed = _thing.Closed;
        var before = _thing.Parts.TakeWhile(one => one.Part != part).Where(one => AssembledThing.Covers(entry) || !AssembledThing.Covers(one)).Select(one => one.Part).ToHashSet(StringComparer.Ordinal);
        var standing = (AssembledThing.Covers(entry) ? closed : _thing.Open(opening, wholly: true)).Where(one => before.Contains(one.Part.Part)).ToList();
        var hidden = AssembledThing.Covers(entry) && standing.Exists(one => one.Part.To is null && one.Pose is not null && entry.Goes == GoesWhere.Around);
        var way = _thing.Way(entry);
        var own = _thing.BeforeClosing.Where(one => one.Part.Part == part).ToList();
        var reach = standing.Where(one => !hidden || one.Part.To is null).SelectMany(one => one.Corners).Max(way.Dot);
        var size = own.SelectMany(one => one.Corners).Max(way.Dot) - own.SelectMany(one => one.Corners).Min(way.Dot);
        var shift = way * (Math.Max(0, reach - own.SelectMany(one => one.Corners).Min(way.Dot)) + (Clear * Math.Max(size, Outside.Height)));
        var moved = own.Select(one => one.Moved(shift)).ToList();
        Add(scene, standing.Concat(moved), default);
        if (MotionArrow.Straight(moved[0], -shift, viewer) is { } arrow)
            scene.Add(Into(moved[0], arrow, standing, viewer));
        return true;
    }

    // What goes in disappears there; what goes over or around something stays in sight.
    private static MotionArrow Into(PosedPart part, MotionArrow arrow, IEnumerable<PosedPart> others, Vector3d viewer) =>
        AssembledThing.Covers(part.Part) ? arrow : arrow.EndingInSight(others.Where(other => other.Part.Part != part.Part.Part), viewer);

    // An item between flat layers, such as a card in its envelope, is drawn part of the way out.
    private List<PosedPart> Opened(double opening) => [.. _thing.Open(opening).Select(part => IsBetween(part)
        ? part.Moved(AssembledThing.Direction(part.Part.Leaves) with { Z = 0 } * (PartOut * (part.Part.Leaves is Leaving.Left or Leaving.Right ? part.Item!.Width : part.Item!.Depth)))
        : part)];

    // Whether something is the item inside a piece that is folded flat: layers of it lie over the item, thick as it is.
    private bool IsBetween(PosedPart part) => part.Item is not null && part.Part.Goes == GoesWhere.Inside
        && _thing.Closed.FirstOrDefault(one => one.Part.Part == part.Part.To) is { Pose: not null } host && host.Top - host.Bottom < Flat;

    private static Vector3d Foot(PosedPart part) => part.Pose?.Root.At(part.Pose.Root.Panel.Outline.Centroid) ?? part.Foot;

    /// <summary>Adds parts.</summary>
    internal void Add(Scene scene, IEnumerable<PosedPart> parts, Vector3d at)
    {
        ArgumentNullException.ThrowIfNull(scene);
        var all = parts.ToList();
        foreach (var part in all.Select(part => part.Moved(at)))
        {
            if (part.Pose is { } pose)
                scene.Add(pose, MatPlacing.On(_kit.Pieces.First(one => one.Piece.Id == pose.Piece.Id).Piece, _kit.Parts));
            else if (IsBetween(part))
                scene.AddBlock(part.Foot with { Z = at.Z + Between }, part.Item!.Width, part.Item.Depth, Between / 2);
            else if (part.Item is { IsRound: true } round)
                scene.AddRound(part.Foot + round.Start, round.Axis * round.Length, round.Diameter);
            else
                scene.AddBlock(part.Foot, part.Item!.Width, part.Item.Depth, part.Item.Height);
        }
    }

    /// <summary>A piece folded in the order of hands, the middle of its root at the origin, its facing side up.</summary>
    internal static Pose Standing(Piece piece, double opening, IReadOnlyList<string>? opens = null)
    {
        var pose = opens is { Count: > 0 } && opening is > 0 and < 1 ? Layers.Apart(Folder.InOrder(piece, opening, opens), Hair) : Fold(piece, opening);
        return pose.Moved(RigidMotion.By(-Vector3d.OnSheet(pose.Root.Panel.Outline.Bounds.Centre)));
    }

    /// <summary>The same turned over, standing on the ground.</summary>
    internal static Pose UpsideDown(Piece piece, double opening, IReadOnlyList<string>? opens = null)
    {
        var pose = Standing(piece, opening, opens).Moved(RigidMotion.Turn(default, Vector3d.UnitX, 180));
        var lowest = pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));
        return pose.Moved(RigidMotion.By(Vector3d.UnitZ * -lowest));
    }

    /// <summary>The kinds of a piece's panels that are opened again once it is finished, such as a roof.</summary>
    internal static IReadOnlyList<string> Opens(Kit kit, Piece piece) => kit.Assembly.Find(piece.Id)?.Opens ?? [];

    /// <summary>Whether a piece is put into place turned over, so that it is shown that way once it is folded.</summary>
    internal static bool IsTurnedOver(Kit kit, Piece piece) =>
        kit.Assembly.Find(piece.Id) is { Stands: Stance.UpsideDown, Goes: not GoesWhere.Over };

    private static Pose Fold(Piece piece, double opening) =>
        Folded.GetOrCreateValue(piece).GetOrAdd(opening, opening => Layers.Apart(Folder.InOrder(piece, opening), Hair));
}
