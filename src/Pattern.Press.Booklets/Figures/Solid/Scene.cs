using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>Things in space that are drawn together: x to the right, y away from the viewer, z up, in millimetres.</summary>
public sealed class Scene
{
    private const double Same = 1e-6;

    /// <summary>How far straight lines may stray from the arc of a hole, in millimetres.</summary>
    private const double HoleFlatness = 0.02;

    /// <summary>How far hatching stands off its card, in millimetres: so that the card hides it from behind.</summary>
    private const double GlueHair = 0.05;

    /// <summary>Layers that lie on each other are set apart by less than this, in millimetres.</summary>
    private const double MostOfLayers = 2;
    private readonly List<Face> _faces = [];
    private readonly List<SpaceLine> _lines = [];
    private readonly List<MotionArrow> _arrows = [];
    private int _owners;

    /// <summary>All surfaces.</summary>
    public IReadOnlyList<Face> Faces => _faces;

    /// <summary>All edges.</summary>
    public IReadOnlyList<SpaceLine> Lines => _lines;

    /// <summary>Arrows that say how something moves.</summary>
    public IReadOnlyList<MotionArrow> Arrows => _arrows;

    /// <summary>The height of the ground that shadows fall on; null for none.</summary>
    public double? Ground { get; set; }

    /// <summary>Adds a folded piece with its cut edges and folds.</summary>
    /// <param name="pose">The piece, where it stands.</param>
    /// <param name="mats">Mats on its panels.</param>
    public void Add(Pose pose, IReadOnlyList<PlacedMat>? mats = null)
    {
        ArgumentNullException.ThrowIfNull(pose);
        foreach (var panel in pose.Panels)
        {
            var owner = _owners++;
            IReadOnlyList<Vector3d> corners = panel.Panel.Holes.Count == 0 ? panel.Corners : [.. BridgedRing.Of(panel.Panel).Select(panel.At)];
            AddFlat(corners, panel.Facing, Surface.CardFacing, Surface.CardAway, owner);
            _lines.AddRange(Edges(pose, panel));
            foreach (var hole in panel.Panel.Holes)
                AddRing([.. hole.Flattened(HoleFlatness).Select(panel.At)], LineKind.Cut);
        }

        // Where a panel bends there is no line, unless one looks along it.
        foreach (var ruling in pose.Strips.Rulings)
        {
            var (a, b) = (pose.Panel(ruling.Parent), pose.Panel(ruling.Child));
            _lines.Add(new SpaceLine(a.At(ruling.From), a.At(ruling.To), LineKind.Rounded, a.Facing, b.Facing));
        }

        // On a panel that bends a mat bends along the same rulings.
        foreach (var mat in mats ?? [])
        {
            var owner = _owners++;
            foreach (var strip in pose.Strips.StripsOf(mat.Panel.Name))
                AddMat(pose.Panel(strip.Name), mat, owner, Layers(pose, pose.Panel(strip.Name), mat.Side));
        }
    }

    /// <summary>
    /// Hatches where glue goes: on the side that takes it, or in broken lines, as ISO 128-2 has them for what is hidden (from
    /// memory), on the back of the panel or, with its outline, through everything.
    /// </summary>
    /// <param name="pose">The piece, where it stands.</param>
    /// <param name="area">The area that takes glue.</param>
    /// <param name="spacing">Millimetres between two lines of the hatching.</param>
    /// <param name="kind">One of the kinds of lines for glue.</param>
    public void AddGlue(Pose pose, GlueArea area, double spacing, LineKind kind = LineKind.Glue)
    {
        ArgumentNullException.ThrowIfNull(pose);
        ArgumentNullException.ThrowIfNull(area);
        var panel = pose.Panel(area.Panel);
        var off = panel.Facing * (area.Side == SheetSide.Facing == (kind != LineKind.GlueBehind) ? GlueHair : -GlueHair);
        foreach (var line in Hatching.Lines([Shape.Of(area.Outline, Placing.None)], spacing))
            _lines.Add(new SpaceLine(panel.At(line.From) + off, panel.At(line.To) + off, kind));
        if (kind == LineKind.HiddenGlue)
            AddRing([.. area.Outline.Flattened(HoleFlatness).Select(corner => panel.At(corner) + off)], kind);
    }

    /// <summary>Adds an arrow; nothing for null.</summary>
    public void Add(MotionArrow? arrow)
    {
        if (arrow is not null)
            _arrows.Add(arrow);
    }

    /// <summary>Adds an upright rectangular block.</summary>
    /// <param name="middle">The middle of its underside.</param>
    /// <param name="width">Along x.</param>
    /// <param name="depth">Along y.</param>
    /// <param name="height">Along z.</param>
    public void AddBlock(Vector3d middle, double width, double depth, double height)
    {
        var (x, y) = (width / 2, depth / 2);
        Vector3d[] foot = [new(-x, -y, 0), new(x, -y, 0), new(x, y, 0), new(-x, y, 0)];
        AddPrism([.. foot.Select(corner => middle + corner)], Vector3d.UnitZ * height, LineKind.Edge);
    }

    /// <summary>Adds an upright round body.</summary>
    /// <param name="middle">The middle of its underside.</param>
    /// <param name="diameter">Its diameter.</param>
    /// <param name="height">Its height.</param>
    /// <param name="sides">How many flat sides stand for the round one.</param>
    public void AddRound(Vector3d middle, double diameter, double height, int sides = 96) =>
        AddRound(middle, Vector3d.UnitZ * height, diameter, sides);

    /// <summary>Adds a round body that may lie on its side.</summary>
    /// <param name="middle">The middle of one of its ends.</param>
    /// <param name="axis">From there to the middle of the other end.</param>
    /// <param name="diameter">Its diameter.</param>
    /// <param name="sides">How many flat sides stand for the round one.</param>
    public void AddRound(Vector3d middle, Vector3d axis, double diameter, int sides = 96)
    {
        AddPrism(Circle(middle, axis.Unit, diameter / 2, sides), axis, LineKind.Rounded);

        // A rim a little inside the edge makes a plain disc read as the end of something round.
        AddRing(Circle(middle + axis, axis.Unit, diameter * 0.46, sides), LineKind.Detail);
        if (Math.Abs(axis.Unit.Z) < 0.9)
            AddRing(Circle(middle, axis.Unit, diameter * 0.46, sides), LineKind.Detail);
    }

    private static Vector3d[] Circle(Vector3d middle, Vector3d axis, double radius, int sides)
    {
        var across = Math.Abs(axis.X) > 0.9 ? Vector3d.UnitY : Vector3d.UnitX;
        var other = axis.Cross(across).Unit;
        var corners = new Vector3d[sides];
        for (var i = 0; i < sides; i++)
        {
            var (sine, cosine) = Math.SinCos(2 * Math.PI * i / sides);
            corners[i] = middle + (across * (radius * cosine)) + (other * (radius * sine));
        }

        return corners;
    }

    private void AddRing(Vector3d[] corners, LineKind kind)
    {
        for (var i = 0; i < corners.Length; i++)
            _lines.Add(new SpaceLine(corners[i], corners[(i + 1) % corners.Length], kind));
    }

    private void AddPrism(Vector3d[] foot, Vector3d rise, LineKind upright)
    {
        var owner = _owners++;
        var top = foot.Select(corner => corner + rise).ToArray();
        _faces.Add(new Face(top, rise.Unit, Surface.Item, null, owner));
        _faces.Add(new Face([.. foot.Reverse()], -rise.Unit, Surface.Item, null, owner));
        for (var i = 0; i < foot.Length; i++)
        {
            var next = (i + 1) % foot.Length;
            var normal = (foot[next] - foot[i]).Cross(rise).Unit;
            _faces.Add(new Face([foot[i], foot[next], top[next], top[i]], normal, Surface.Item, null, owner));
            _lines.Add(new SpaceLine(foot[i], foot[next], LineKind.Edge));
            _lines.Add(new SpaceLine(top[i], top[next], LineKind.Edge));
            var before = (foot[i] - foot[(i + foot.Length - 1) % foot.Length]).Cross(rise).Unit;
            _lines.Add(new SpaceLine(foot[i], top[i], upright, before, normal));
        }
    }

    // How far off a panel the tabs are that are glued on a side of it: its mat goes over them.
    private static double Layers(Pose pose, PosedPanel panel, SheetSide side)
    {
        var home = panel.Motion.Inverse;
        var most = 0.0;
        foreach (var glue in pose.Piece.GlueAreas.Where(glue => glue.Panel != panel.Panel.Name))
        {
            var tab = pose.Panel(glue.Panel);
            var at = home.Apply(tab.At(tab.Panel.Outline.Centroid));
            var off = side == SheetSide.Facing ? at.Z : -at.Z;
            if (off is > Same and < MostOfLayers && Math.Abs(panel.Facing.Dot(tab.Facing)) > 0.999 && panel.Panel.Outline.Contains(new Point(at.X, -at.Y)))
                most = Math.Max(most, off);
        }

        return most;
    }

    private void AddMat(PosedPanel panel, PlacedMat mat, int owner, double above)
    {
        // A hair off what is below: enough to be painted after it, too little to be seen.
        var hair = above > 0 ? 2 * above : 0.05;
        var outline = mat.Panel.Bend is null ? mat.Corners : MatStrip.Of(mat.Corners, panel.Panel.Outline);
        if (outline.Count < 3)
            return;
        var outwards = panel.Facing * (mat.Side == SheetSide.Facing ? 1 : -1);
        var (left, right) = (mat.Corners.Min(corner => corner.X), mat.Corners.Max(corner => corner.X));
        var (top, bottom) = (mat.Corners.Min(corner => corner.Y), mat.Corners.Max(corner => corner.Y));
        var middle = At(new Point((left + right) / 2, (top + bottom) / 2));
        var corners = outline.Select(At).ToArray();
        AddFlat(corners, outwards, Surface.Mat, null, owner, new SpotPattern(middle, panel.Motion.XAxis, panel.Motion.YAxis, (right - left) / 2, (bottom - top) / 2));
        for (var i = 0; i < corners.Length; i++)
        {
            if (MatStrip.IsEdge(mat.Corners, outline[i], outline[(i + 1) % corners.Length]))
                _lines.Add(new SpaceLine(corners[i], corners[(i + 1) % corners.Length], LineKind.Mat));
        }

        Vector3d At(Point corner) => panel.At(corner) + (outwards * hair);
    }

    private void AddFlat(IReadOnlyList<Vector3d> corners, Vector3d normal, Surface front, Surface? back, int owner, SpotPattern? pattern = null)
    {
        foreach (var part in ConvexParts.Of(corners, normal))
            _faces.Add(new Face(part, normal, front, back, owner) { Pattern = pattern });
    }

    // The panel's outline in stretches, each a fold or a cut. A fold is one line for both its panels, taken from its
    // parent, unless layers were set apart there: then either panel may hide the other's line.
    private static IEnumerable<SpaceLine> Edges(Pose pose, PosedPanel panel)
    {
        foreach (var edge in panel.Panel.Outline.Edges)
        {
            if (edge.IsArc)
            {
                Point[] bends = [.. edge.Flattened(0.02), edge.To];
                for (var i = 1; i < bends.Length; i++)
                    yield return new SpaceLine(panel.At(bends[i - 1]), panel.At(bends[i]), LineKind.Cut) { Inwards = [Across(panel, bends[i - 1], bends[i])] };
                continue;
            }

            var along = edge.To - edge.From;
            var length = edge.Chord;
            var inwards = Across(panel, edge.From, edge.To);
            var folds = pose.Piece.Folds
                .Where(fold => fold.Parent == panel.Panel.Name || fold.Child == panel.Panel.Name)
                .Where(fold => edge.DistanceTo(fold.From) < Same && edge.DistanceTo(fold.To) < Same)
                .Select(fold => (A: along.Dot(fold.From - edge.From) / length, B: along.Dot(fold.To - edge.From) / length, Fold: fold))
                .Select(part => (Start: Math.Min(part.A, part.B), End: Math.Max(part.A, part.B), part.Fold))
                .OrderBy(part => part.Start);
            var done = 0.0;
            foreach (var (start, end, fold) in folds)
            {
                if (start - done > Same)
                    yield return new SpaceLine(At(done), At(start), LineKind.Cut) { Inwards = [inwards] };
                done = end;
                if (pose.Strips.Rulings.Contains(fold))
                    continue;

                // A gusset behind the panel beside it takes the line of its fold along; where it was, it would shine through.
                if (fold.Direction == FoldDirection.Mountain && panel.Panel.Role != PanelRole.Gusset && IsGusset(fold) && IsApart(fold))
                    continue;
                if (fold.Parent == panel.Panel.Name || pose.Panel(fold.Parent).At(fold.From).DistanceTo(panel.At(fold.From)) > Same)
                    yield return new SpaceLine(At(start), At(end), LineKind.Fold) { Inwards = [inwards, -Across(pose.Panel(fold.Parent == panel.Panel.Name ? fold.Child : fold.Parent), edge.From, edge.To)] };
            }

            if (length - done > Same)
                yield return new SpaceLine(At(done), At(length), LineKind.Cut) { Inwards = [inwards] };

            Vector3d At(double distance) => panel.At(edge.At(distance / length));

            bool IsGusset(Fold fold) => pose.Panel(fold.Parent).Panel.Role == PanelRole.Gusset || pose.Panel(fold.Child).Panel.Role == PanelRole.Gusset;

            bool IsApart(Fold fold) => pose.Panel(fold.Parent).At(fold.From).DistanceTo(pose.Panel(fold.Child).At(fold.From)) > Same;
        }

        // To the right of an edge, where the inside of an outline lies that runs clockwise on the page.
        static Vector3d Across(PosedPanel panel, Point from, Point to)
        {
            var along = to - from;
            return (panel.At(from + new Point(-along.Y, along.X)) - panel.At(from)).Unit;
        }
    }
}
