namespace Pattern.Press.Nets.Folding;

/// <summary>
/// The pieces of a kit folded and put together as its assembly says, in one frame: x to the right, y to the back, z up,
/// the first part with the middle of what it stands on above the origin.
/// </summary>
public sealed class AssembledThing
{
    // Between things that stand side by side, in millimetres: they are seen apart, and as belonging together.
    private const double BesideGap = 15;

    // What is as thick as this above a layer lies on it, in millimetres.
    private const double Hair = 1e-6;

    /// <summary>A fold past this angle, in degrees, lies flat once it is pressed, as the spine of a card in its envelope.</summary>
    private const double NearlyOver = 150;

    /// <summary>What comes out below the rest by more than this, in millimetres, is held shut by what it stands on.</summary>
    private const double Below = 1;

    /// <summary>How far flaps are folded that are shown open, as a part of their finished angle.</summary>
    private const double FlapOpening = 0.12;

    // How many states between closed and flat are tried for a way in.
    private const int LessFolded = 39;

    private readonly Kit kit;
    private readonly ItemBody? item;
    private readonly Func<Part, double> caliper;
    private readonly Func<Piece, double, Pose> fold;
    private readonly Func<Pose, Pose> layers;
    private readonly Dictionary<string, Standing> standing = new(StringComparer.Ordinal);
    private IReadOnlyList<PosedPart>? closed;

    /// <summary>Puts a kit together.</summary>
    /// <param name="kit">The pieces, the mats and the assembly.</param>
    /// <param name="item">What goes inside, if it is known.</param>
    /// <param name="caliper">How thick each part is, in millimetres: what is put on something rests on its card and its mats.</param>
    /// <param name="fold">How a piece is folded part of the way, 1 finished; as <see cref="Folder.InOrder(Piece, double, IReadOnlyList{string}?)"/> when null.</param>
    /// <param name="layers">Sets the layers of a piece apart whose flaps were opened; null leaves them as they are.</param>
    public AssembledThing(Kit kit, ItemBody? item, Func<Part, double> caliper, Func<Piece, double, Pose>? fold = null, Func<Pose, Pose>? layers = null)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(caliper);
        (this.kit, this.item, this.caliper) = (kit, item, caliper);
        this.fold = fold ?? ((piece, opening) => Folder.InOrder(piece, opening));
        this.layers = layers ?? (pose => pose);
        Parts = [.. kit.Assembly.Parts.Where(part => part.Part == Assembly.Item ? item is not null : Find(part.Part) is not null)];
    }

    /// <summary>What there is: the assembly's pieces, and the item if it is known.</summary>
    public IReadOnlyList<AssembledPart> Parts { get; }

    /// <summary>Everything in its place, closed.</summary>
    public IReadOnlyList<PosedPart> Closed => closed ??= Place();

    /// <summary>
    /// Opened: what opens as a whole is folded as far as asked, flaps are folded back, and what lies over or around
    /// something has come off its own way, far enough to be clear of the item.
    /// </summary>
    /// <param name="opening">How far pieces that open as a whole are folded: 0 flat, 1 closed.</param>
    /// <param name="wholly">Whether flaps are as far open as they go, so that nothing is in the way of what is put in.</param>
    public IReadOnlyList<PosedPart> Open(double opening, bool wholly = false)
    {
        var parts = new List<PosedPart>();
        foreach (var part in Closed)
        {
            var moved = part.Pose is null ? part : part with { Pose = Filled(part, opening, wholly ? 0 : FlapOpening) };
            parts.Add(moved.Moved(ComesOff(part) ? Direction(part.Part.Leaves) * Lift(part.Part) : default));
        }

        return parts;
    }

    /// <summary>
    /// Everything in its place at the moment before it is closed: what something goes into stands open, what goes into its host
    /// in the end lies there.
    /// </summary>
    public IReadOnlyList<PosedPart> BeforeClosing => [.. Closed.Select(BeforeItCloses)];

    /// <summary>
    /// Everything taken apart along the ways it comes off, each clear of what it comes from, and in the state in which it goes
    /// together: as <see cref="BeforeClosing"/>.
    /// </summary>
    public IReadOnlyList<PosedPart> Apart()
    {
        var shifts = new Dictionary<string, Vector3d>(StringComparer.Ordinal);
        var placed = new List<PosedPart>();
        var together = BeforeClosing;
        foreach (var part in Parts)
        {
            var copies = together.Where(one => one.Part.Part == part.Part).ToList();
            var shift = part.To is null ? default : shifts.GetValueOrDefault(part.To);
            if (part.To is not null)
            {
                // Beyond everything that is taken apart the same way already, by two fifths of the thing's size.
                var way = Way(part);
                var clear = 0.4 * Size(Closed);
                var reach = placed.SelectMany(one => one.Corners).Max(corner => way.Dot(corner));
                shift += way * Math.Max(0, reach + clear - copies.SelectMany(one => one.Corners).Min(corner => way.Dot(corner + shift)));
            }

            shifts[part.Part] = shift;
            placed.AddRange(copies.Select(one => one.Moved(shift)));
        }

        return placed;
    }

    /// <summary>The outside of the closed thing in millimetres: across, deep, high; the item counts only where nothing is around it.</summary>
    public (double Width, double Depth, double Height) Outside
    {
        get
        {
            var pieces = Closed.Where(part => part.Pose is not null).ToList();
            var corners = (pieces.Count > 0 ? pieces : Closed).SelectMany(part => part.Corners).ToList();
            return (
                corners.Max(c => c.X) - corners.Min(c => c.X),
                corners.Max(c => c.Y) - corners.Min(c => c.Y),
                corners.Max(c => c.Z) - corners.Min(c => c.Z));
        }
    }

    /// <summary>Whether a part is over or around what it goes to, and so has to come off before that is opened.</summary>
    public static bool Covers(AssembledPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Goes is GoesWhere.Over or GoesWhere.Around;
    }

    /// <summary>The arrow of length 1 along which a part comes off.</summary>
    public static Vector3d Direction(Leaving leaving) => leaving switch
    {
        Leaving.Right => Vector3d.UnitX,
        Leaving.Left => -Vector3d.UnitX,
        Leaving.Front => -Vector3d.UnitY,
        Leaving.Back => Vector3d.UnitY,
        _ => Vector3d.UnitZ,
    };

    /// <summary>The arrow of length 1 along which a part leaves what it goes to: its own way, or out of the mouth of what it is put into.</summary>
    public Vector3d Way(AssembledPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Direction(PutIn(part, 0) is var (host, body) && Mouth(host, body) is { } mouth ? mouth : part.Leaves);
    }

    /// <summary>The side of a flat piece through which most of what is put into it would go; null where it is closed all round.</summary>
    private static Leaving? Mouth(PosedPart host, PosedPart body) =>
        new[] { Leaving.Back, Leaving.Front, Leaving.Right, Leaving.Left }
            .Select(way => (Way: way, Room: Proofs.ItemRoom.InPocket(body.Item!, body.Foot, host.Pose!, 0, way, host.Part.Opens)))
            .Where(side => side.Room is not null)
            .OrderByDescending(side => Math.Round(side.Room!.Room, 6))
            .Select(side => (Leaving?)side.Way)
            .FirstOrDefault();

    private PosedPart BeforeItCloses(PosedPart part)
    {
        if (PutIn(part.Part, 0) is var (_, body))
            return Pressed(part, body);
        var isFilled = Parts.Any(one => one.To == part.Part.Part && (one.Goes == GoesWhere.Inside || one.IsPutIn));
        return part.Pose is null || !isFilled ? part : part with { Pose = Filled(part, 1, 0) };
    }

    // A piece that is put into something, as it lies there: nearly closed folds pressed down, its longer side along its host's.
    private PosedPart Pressed(PosedPart part, PosedPart body)
    {
        var pose = layers(Folder.Pose(part.Pose!.Strips, fold => fold.Angle > NearlyOver ? 180 : fold.Angle));
        if (Wide(pose) != body.Item!.Width >= body.Item.Depth)
            pose = pose.Moved(RigidMotion.Turn(default, Vector3d.UnitZ, 90));
        var corners = pose.Panels.SelectMany(panel => panel.Corners).ToList();
        return part with { Pose = pose.Moved(RigidMotion.By(body.Foot - MiddleOf(corners))) };

        static bool Wide(Pose pose)
        {
            var corners = pose.Panels.SelectMany(panel => panel.Corners).ToList();
            return corners.Max(c => c.X) - corners.Min(c => c.X) >= corners.Max(c => c.Y) - corners.Min(c => c.Y);
        }
    }

    // What goes in through one of two ends finds the other shut already; null for what is not filled that way.
    private Pose? WithFarEndShut(PosedPart part)
    {
        if (part.Part.Opens.Count == 0 || part.Part.OpensWholly
            || Closed.FirstOrDefault(one => one.Item is not null && one.Part is { Goes: GoesWhere.Inside, Leaves: not Leaving.Up } && one.Part.To == part.Part.Part) is not { } item)
            return null;
        var way = Direction(item.Part.Leaves);
        var ends = part.Pose!.Panels.Where(panel => part.Part.Opens.Contains(panel.Panel.Kind))
            .ToLookup(panel => way.Dot(MiddleOf([.. panel.Corners]) - item.Foot) > 0, panel => panel.Panel.Name);
        return ends[true].Any() && ends[false].Any() ? InPlace(part, layers(Folder.Opened(part.Pose.Strips, [.. ends[true]], 0))) : null;
    }

    // What is closed all round and opens as a whole, opened no farther than what is inside needs, thick as its card is; null for
    // what has a way in closed.
    private Pose? WithWayIn(PosedPart part)
    {
        if (!part.Part.OpensWholly)
            return null;
        var inside = Closed.Where(one => one.Item is not null && one.Part.To == part.Part.Part && one.Part.Goes == GoesWhere.Inside).ToList();
        if (inside.Count == 0 || !WayIn.IsShut(part.Pose!, inside))
            return null;
        var card = caliper(Find(part.Part.Part)!);
        return Enumerable.Range(1, LessFolded).Select(i => Folded(part, 1 - ((double)i / (LessFolded + 1)))).FirstOrDefault(pose => WayIn.IsOpen(pose, card, inside));
    }

    /// <summary>A piece folded part of the way, where it stands when it is closed.</summary>
    public Pose Folded(PosedPart part, double opening)
    {
        ArgumentNullException.ThrowIfNull(part);
        return InPlace(part, fold(Find(part.Part.Part)!.Piece, opening));
    }

    /// <summary>A folded piece as its part stands, the middle of what it stands on at the origin.</summary>
    public static Pose Stood(Pose pose, AssembledPart part)
    {
        ArgumentNullException.ThrowIfNull(pose);
        ArgumentNullException.ThrowIfNull(part);
        return Standing.Of(pose, part).Pose;
    }

    // The root lies still on the sheet, so where it is in the closed thing is the motion of the whole.
    private static Pose InPlace(PosedPart part, Pose pose) => pose.Moved(part.Pose!.Root.Motion);

    /// <summary>
    /// The piece of a part as it is filled: what is closed all round opened as far as what goes in needs, what is filled through
    /// one end with the other shut, anything else opened as far as it is asked.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="opening">How far it is folded when it opens as a whole and has a way in however little: 0 flat, 1 closed.</param>
    /// <param name="flap">How far its flaps are folded when only those open.</param>
    internal Pose Filled(PosedPart part, double opening, double flap) => WithWayIn(part) ?? WithFarEndShut(part) ?? Opened(part, opening, flap);

    /// <summary>The piece of a part in an opened thing: folded open as a whole, or its flaps folded back.</summary>
    /// <param name="part">The part.</param>
    /// <param name="opening">How far it is folded when it opens as a whole: 0 flat, 1 closed.</param>
    /// <param name="flap">How far its flaps are folded when only those open.</param>
    private Pose Opened(PosedPart part, double opening, double flap)
    {
        if (part.Part.OpensWholly)
            return Folded(part, opening);
        if (part.Part.Opens.Count == 0)
            return part.Pose!;
        var opened = Folder.Opened(part.Pose!.Strips, part.Part.Opens, flap);
        var open = InPlace(part, opened);

        // What it stands on holds it shut there: flaps that would come out below stay as they are.
        var shut = open.Gaps.Count > 0
            ? []
            : open.Panels.Where(panel => part.Part.Opens.Contains(panel.Panel.Kind) && panel.Corners.Min(corner => corner.Z) < part.Bottom - Below).Select(panel => panel.Panel.Name).ToHashSet(StringComparer.Ordinal);
        if (shut.Count > 0)
            opened = Folder.Pose(part.Pose!.Strips, fold => shut.Contains(fold.Child) ? fold.Angle : open.Angles[fold]);
        return InPlace(part, layers(opened));
    }

    private static double Size(IEnumerable<PosedPart> parts)
    {
        var corners = parts.SelectMany(part => part.Corners).ToList();
        return Math.Max(corners.Max(c => c.X) - corners.Min(c => c.X), Math.Max(corners.Max(c => c.Y) - corners.Min(c => c.Y), corners.Max(c => c.Z) - corners.Min(c => c.Z)));
    }

    /// <summary>
    /// A piece that is put into what it stands beside, as the body it is then: every fold that is nearly over pressed down, as
    /// thick as its layers, its mats and what lies in it. Null for any other, and where nothing is there to be put into.
    /// </summary>
    /// <param name="part">The part.</param>
    /// <param name="contents">How thick what lies in it is, in millimetres.</param>
    internal (PosedPart Host, PosedPart Body)? PutIn(AssembledPart part, double contents)
    {
        if (!part.IsPutIn || Closed.FirstOrDefault(one => one.Part.Part == part.To) is not { Pose: not null } host)
            return null;
        var piece = Find(part.Part)!;
        var pressed = Folder.Pose(piece.Piece, fold => fold.Angle > NearlyOver ? 180 : fold.Angle);
        var corners = pressed.Panels.SelectMany(panel => panel.Corners).ToList();
        var (width, depth) = (corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y));

        // In its middle, where its layers lie on each other.
        var middle = MiddleOf(corners);
        var thick = contents + (corners.Max(c => c.Z) - corners.Min(c => c.Z)) + pressed.Panels.Where(panel => Lies(panel, middle)).Sum(panel =>
            caliper(piece) + new[] { SheetSide.Facing, SheetSide.Away }.Sum(side => MatLayers.On(kit, part.Part, panel.Panel, side, caliper)));
        var ground = Ground(host).Corners;
        var (across, deep) = (ground.Max(c => c.X) - ground.Min(c => c.X), ground.Max(c => c.Y) - ground.Min(c => c.Y));
        var body = new ItemBody(false, width, depth, thick);
        if (across >= deep != width >= depth)
            body = body.Turned;
        var own = new PosedPart(part with { Goes = GoesWhere.Inside }, 0, null, body, MiddleOf(host) with { Z = 0 });
        return (host, own.Moved(Vector3d.UnitZ * Floor(host, own, [.. Closed])));

        static bool Lies(PosedPanel panel, Vector3d at) =>
            panel.Corners.Max(c => c.X) > at.X && panel.Corners.Min(c => c.X) < at.X && panel.Corners.Max(c => c.Y) > at.Y && panel.Corners.Min(c => c.Y) < at.Y;
    }

    // What covers something comes off, and so does what leaves another way than up, as a drawer.
    private static bool ComesOff(PosedPart part) =>
        part.Item is null && part.Part.To is not null && (Covers(part.Part) || part.Part.Leaves != Leaving.Up);

    private double Lift(AssembledPart part)
    {
        var way = Direction(part.Leaves);
        var own = Closed.Where(one => one.Part.Part == part.Part).SelectMany(one => one.Corners).Min(corner => way.Dot(corner));
        var others = Closed.Where(one => one.Part.Part != part.Part && one.Part.To != part.Part).ToList();
        if (part.Leaves != Leaving.Up)
        {
            // A drawer pulled out by two thirds shows how it works.
            var ends = Closed.Where(one => one.Part.Part == part.Part).SelectMany(one => one.Corners).Max(corner => way.Dot(corner));
            return part.Goes == GoesWhere.Around ? (others.SelectMany(one => one.Corners).Max(way.Dot) - own) * 1.15 : (ends - own) * 0.65;
        }

        var inside = others.Where(one => one.Item is not null).Select(one => one.Top).DefaultIfEmpty(double.NegativeInfinity).Max();
        var (width, depth, _) = Outside;
        return Math.Max(0, inside - own) + Math.Max(width, depth);
    }

    private Part? Find(string id) => kit.Parts.FirstOrDefault(part => part.Kind == PartKind.Piece && part.Piece.Id == id);

    private List<PosedPart> Place()
    {
        var placed = new List<PosedPart>();
        foreach (var part in Parts)
        {
            var host = part.To is null ? null : placed.Find(one => one.Part.Part == part.To);
            for (var copy = 0; copy < part.Places.Count; copy++)
                placed.Add(part.Part == Assembly.Item ? PlaceItem(part, copy, host, placed) : PlacePiece(part, copy, host, placed));
        }

        return placed;
    }

    private PosedPart PlacePiece(AssembledPart part, int copy, PosedPart? host, List<PosedPart> placed)
    {
        var piece = Find(part.Part)!;
        if (!standing.TryGetValue(part.Part, out var stands))
            standing[part.Part] = stands = Standing.Of(fold(piece.Piece, 1), part);
        var own = new PosedPart(part, copy, stands.Pose, null, default);
        var (thick, shift) = (caliper(piece), part.Places[copy]);
        var middle = host is null ? default : MiddleOf(host);
        var back = part.Goes == GoesWhere.Beside ? host!.Corners.Min(corner => corner.Y) - BesideGap - own.Corners.Max(corner => corner.Y) : middle.Y;
        var at = new Vector3d(middle.X + shift.Right, back + shift.Back, 0);
        var height = part.Goes switch
        {
            GoesWhere.Inside => Floor(host!, own.Moved(at), placed) + (thick / 2),
            GoesWhere.Over or GoesWhere.On => host!.Top + (thick / 2),
            GoesWhere.Around => ((host!.Top + host.Bottom) / 2) - ((own.Top - own.Bottom) / 2),
            GoesWhere.Beside => host!.Bottom,
            _ => 0,
        };

        // A lid rests with its top; everything else with whatever is lowest.
        var rests = part.Goes == GoesWhere.Over ? own.Top : own.Bottom;
        var up = height - rests;

        // One that is deeper than what it goes over stands on the same ground.
        if (part.Goes == GoesWhere.Over)
            up = Math.Max(up, host!.Bottom - own.Bottom);
        return own.Moved(at + (Vector3d.UnitZ * (up + shift.Up)));
    }

    private PosedPart PlaceItem(AssembledPart part, int copy, PosedPart? host, List<PosedPart> placed)
    {
        var body = Lying(part, host);
        var shift = part.Places[copy];
        var middle = host is null ? default : MiddleOf(host);
        var own = new PosedPart(part, copy, null, body, new Vector3d(middle.X + shift.Right, middle.Y + shift.Back, 0));
        var height = host is null ? 0 : part.Goes == GoesWhere.Inside ? Floor(host, own, placed) : host.Top;
        return own.Moved(Vector3d.UnitZ * (height + shift.Up));
    }

    // The longer side of an item lies along the longer side of where it stands, unless the assembly turns it.
    private ItemBody Lying(AssembledPart part, PosedPart? host)
    {
        var turned = Math.Abs(Math.Round(part.Turned / 90) % 2) == 1;
        var lying = part.IsTipped ? item!.Tipped : item!;
        var body = turned ? lying.Turned : lying;
        if (part.Turned != 0 || (body.IsRound && !part.IsTipped) || host?.Pose is null || part.Places.Count > 1)
            return body;
        var corners = Ground(host).Corners;
        var (across, deep) = (corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y));
        return across >= deep == body.Width >= body.Depth ? body : body.Turned;
    }

    // The panel of a piece that is lowest and level, its floor as it stands; its root where none is.
    private static PosedPanel Ground(PosedPart part)
    {
        var pose = part.Pose!;
        if (part.Part.Stands is Stance.AsDrawn or Stance.UpsideDown)
            return pose.Root;
        if (part.Part.Stands == Stance.OnPanel)
            return pose.Panels.First(panel => panel.Panel.Kind == part.Part.StandsOn);
        var level = pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel && Math.Abs(panel.Facing.Z) > 0.99).ToList();
        return level.Count == 0 ? pose.Root : level.MinBy(panel => panel.Corners[0].Z)!;
    }

    private static Vector3d MiddleOf(PosedPart host) => host.Pose is null
        ? host.Foot
        : host.Part.Stands == Stance.OnEdge && host.Pose.Panels.Count(panel => panel.Panel.Role == PanelRole.Panel) > 1 ? RingMiddle.Of(host.Pose) ?? MiddleOf(host.Corners.ToList()) : Ground(host).At(Ground(host).Panel.Outline.Centroid);

    private static Vector3d MiddleOf(List<Vector3d> corners) => new(
        (corners.Min(c => c.X) + corners.Max(c => c.X)) / 2, (corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2, corners.Min(c => c.Z));

    // The height of what lies below a part inside its host: the host's floor, or something that was put on it before.
    private double Floor(PosedPart host, PosedPart own, List<PosedPart> placed)
    {
        // A ring has no floor: what is inside stands on what the ring stands on.
        var corners = own.Corners.ToList();
        var (left, right, front, back) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        var floor = host.Pose is null ? host.Top : Ground(host) is var ground && Math.Abs(ground.Facing.Z) > 0.99 ? Carries(host, ground, left, right, front, back) : host.Bottom;
        foreach (var other in placed.Where(one => one.Part.To == host.Part.Part && one.Part.Goes == GoesWhere.Inside && one.Part.Part != own.Part.Part))
        {
            if (other.Pose is null)
                continue;
            foreach (var panel in other.Pose.Panels.Where(panel => Math.Abs(panel.Facing.Z) > 0.99))
            {
                var middle = panel.At(panel.Panel.Outline.Centroid);
                if (middle.X > left && middle.X < right && middle.Y > front && middle.Y < back)
                    floor = Math.Max(floor, Upper(other, panel));
            }
        }

        return floor;
    }

    // The upper surface of a piece's floor, with the tabs that lie on it below what is put there: folded without thickness they
    // are in its plane, set apart a hair above it.
    private double Carries(PosedPart host, PosedPanel ground, double left, double right, double front, double back)
    {
        var (floor, thick) = (Upper(host, ground), caliper(Find(host.Part.Part)!));
        return host.Pose!.Panels.Any(Carries) ? floor + thick : floor;

        bool Carries(PosedPanel panel)
        {
            if (panel.Panel.Role != PanelRole.Tab || Math.Abs(panel.Facing.Z) < 0.99 || Math.Abs(panel.Corners[0].Z - ground.Corners[0].Z) > thick + Hair)
                return false;
            var corners = panel.Corners;
            return corners.Max(c => c.X) > left && corners.Min(c => c.X) < right && corners.Max(c => c.Y) > front && corners.Min(c => c.Y) < back;
        }
    }

    // The upper surface of a level panel: half its card above its middle, and a mat if it has one on that side.
    private double Upper(PosedPart part, PosedPanel panel)
    {
        var side = panel.Facing.Z > 0 ? SheetSide.Facing : SheetSide.Away;
        return panel.Corners[0].Z + (caliper(Find(part.Part.Part)!) / 2) + MatLayers.On(kit, part.Part.Part, panel.Panel, side, caliper);
    }

    /// <summary>A folded piece as it stands, the middle of what it stands on at the origin.</summary>
    private sealed record Standing(Pose Pose)
    {
        public static Standing Of(Pose pose, AssembledPart part)
        {
            pose = part.Stands switch
            {
                Stance.UpsideDown => pose.Moved(RigidMotion.Turn(default, Vector3d.UnitX, 180)),
                Stance.OnEdge => pose.Moved(Upright(pose)),
                Stance.OnPanel => pose.Moved(Onto(pose.Panels.First(panel => panel.Panel.Kind == part.StandsOn))),
                _ => pose,
            };
            if (part.Turned != 0)
                pose = pose.Moved(RigidMotion.Turn(default, Vector3d.UnitZ, part.Turned));
            var down = new PosedPart(part, 0, pose, null, default);
            return new Standing(pose.Moved(RigidMotion.By(-MiddleOf(down) with { Z = 0 })));
        }

        // A ring, such as a shade or a cup, stands on its rim: all its panels lean alike then. Anything else stands with its
        // first panel upright.
        private static RigidMotion Upright(Pose pose)
        {
            var usual = RigidMotion.Turn(default, Vector3d.UnitX, 90);
            var facings = pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel).Select(panel => panel.Facing).ToList();
            if (facings.Count < 3)
                return usual;
            var axis = (facings[facings.Count / 3] - facings[0]).Cross(facings[2 * facings.Count / 3] - facings[0]);
            if (axis.Length < 1e-6)
                return usual;
            axis = axis.Unit * (axis.Y < 0 ? -1 : 1);
            var lean = axis.Dot(facings[0]);
            if (facings.Exists(facing => Math.Abs(facing.Dot(axis) - lean) > 1e-6))
                return usual;
            var turn = axis.Cross(Vector3d.UnitZ);
            return turn.Length < 1e-9 ? usual : RigidMotion.Turn(default, turn, Math.Atan2(turn.Length, axis.Z) * 180 / Math.PI);
        }

        // The least turn that makes the panel's facing side look up; the front stays in front.
        private static RigidMotion Onto(PosedPanel panel)
        {
            var axis = panel.Facing.Cross(Vector3d.UnitZ);
            var angle = Math.Atan2(axis.Length, panel.Facing.Z) * 180 / Math.PI;
            return RigidMotion.Turn(default, axis.Length < 1e-9 ? Vector3d.UnitX : axis, angle);
        }
    }
}
