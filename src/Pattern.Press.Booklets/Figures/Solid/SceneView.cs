using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>A scene seen from one place: what is painted and what lines are visible, before it has a scale.</summary>
internal sealed class SceneView
{
    /// <summary>Surfaces are painted this much larger, in millimetres on paper, so that no light shows between parts of one.</summary>
    private const double Bleed = 0.1;

    /// <summary>Smaller spots are left out, in millimetres on paper: they would only soil the tint.</summary>
    private const double LeastSpot = 0.2;

    /// <summary>The head of an arrow, and the light edge around it, in millimetres on paper.</summary>
    private const double HeadLength = 3.2;
    private const double ArrowEdge = 0.35;

    private readonly IReadOnlyList<Face> painted;
    private readonly IReadOnlyList<SeenLine> lines;
    private readonly Scene scene;

    public SceneView(Scene scene, Axonometry view)
    {
        this.scene = scene;
        View = view;
        painted = PaintOrder.Of(scene.Faces, view);
        lines = new LineVisibility(scene.Faces, view).Of(scene.Lines);
        var corners = painted.SelectMany(face => face.Corners).Concat(ShadowCorners().SelectMany(shadow => shadow)).Concat(scene.Arrows.SelectMany(arrow => arrow.Path)).Select(view.See).ToArray();
        (Left, Right) = (corners.Min(c => c.X), corners.Max(c => c.X));
        (Top, Bottom) = (corners.Min(c => c.Y), corners.Max(c => c.Y));
    }

    public Axonometry View { get; }

    public double Left { get; }

    public double Right { get; }

    public double Top { get; }

    public double Bottom { get; }

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    /// <summary>Draws it.</summary>
    /// <param name="x">Where its left edge is, in millimetres on paper.</param>
    /// <param name="y">Where its top edge is.</param>
    /// <param name="scale">Millimetres on paper for each millimetre.</param>
    /// <param name="styles">Colours and line widths.</param>
    public IEnumerable<PageItem> Draw(double x, double y, double scale, StyleSheet styles)
    {
        var tints = new Tints(styles, View);
        foreach (var shadow in ShadowCorners())
            yield return Fill(shadow, tints.Shadow);
        foreach (var face in painted)
        {
            yield return Fill(face.Corners, tints.Of(face));
            if (face.Pattern is { } pattern && SpotPattern.Radius * scale > LeastSpot)
                yield return Spots(face, pattern, tints.PatternOn(face));
        }

        // The finest first, so that outlines lie over the ends of folds.
        foreach (var group in lines.GroupBy(line => (Stroke: StrokeOf(line, styles, tints), IsHidden: line.Kind is LineKind.GlueBehind or LineKind.HiddenGlue)).OrderBy(group => group.Key.Stroke.Width))
        {
            var path = new PathBuilder();
            foreach (var run in Runs(group))
            {
                path.MoveTo(At(run[0]).X, At(run[0]).Y);
                foreach (var point in run.Skip(1))
                    path.LineTo(At(point).X, At(point).Y);
            }

            yield return new PathItem(path.Build(), null, new Stroke(group.Key.Stroke.Colour, group.Key.Stroke.Width, group.Key.IsHidden ? DrawingStrokes.HiddenDash : [], group.Key.IsHidden ? LineCap.Butt : LineCap.Round));
        }

        foreach (var arrow in scene.Arrows)
        {
            foreach (var item in Arrow(arrow))
                yield return item;
        }

        // A light edge parts the arrow from the lines that it crosses.
        IEnumerable<PageItem> Arrow(MotionArrow arrow)
        {
            var points = arrow.Path.Select(place => At(View.See(place))).Select(at => new Nets.Point(at.X, at.Y)).ToList();
            var tip = points[^1];
            var length = Math.Min(HeadLength, 0.6 * points.Zip(points.Skip(1), (a, b) => a.DistanceTo(b)).Sum());
            if (length < 0.5)
                yield break;

            // The head lies along the way's last stretch as long as itself; the shaft ends inside it.
            while (points.Count > 1 && points[^1].DistanceTo(tip) < length)
            {
                var before = points[^2];
                if (before.DistanceTo(tip) <= length)
                {
                    points.RemoveAt(points.Count - 1);
                    continue;
                }

                var (low, high) = (0.0, 1.0);
                for (var i = 0; i < 40; i++)
                {
                    var part = (low + high) / 2;
                    if ((before + ((points[^1] - before) * part)).DistanceTo(tip) > length)
                        low = part;
                    else
                        high = part;
                }

                points[^1] = before + ((points[^1] - before) * low);
                break;
            }

            var foot = points[^1];
            var along = (tip - foot) * (1 / tip.DistanceTo(foot));
            var across = new Nets.Point(-along.Y, along.X) * (length * 0.42);
            var (a, b) = (foot + across, foot - across);
            var shaft = new PathBuilder().MoveTo(points[0].X, points[0].Y);
            foreach (var point in points.Skip(1))
                shaft = shaft.LineTo(point.X, point.Y);
            shaft = shaft.LineTo((foot + (along * (length * 0.3))).X, (foot + (along * (length * 0.3))).Y);
            var line = shaft.Build();
            var head = PathBuilder.Polygon(new(tip.X, tip.Y), new(a.X, a.Y), new(b.X, b.Y));
            var width = styles.Lines.CutWidth * 1.3;
            yield return new PathItem(line, null, new Stroke(Colour.White, width + (2 * ArrowEdge), [], LineCap.Round));
            yield return new PathItem(head, Colour.White, new Stroke(Colour.White, 2 * ArrowEdge, [], LineCap.Round));
            yield return new PathItem(line, null, new Stroke(tints.Ink, width, [], LineCap.Round));
            yield return new PathItem(head, tints.Ink, null);
        }

        PagePoint At(Seen seen) => new(x + ((seen.X - Left) * scale), y + ((seen.Y - Top) * scale));

        GroupItem Spots(Face face, SpotPattern pattern, Colour colour)
        {
            // Dots of a dashed line, in coordinates that lie on the mat: seen aslant they come out as ellipses.
            var path = new PathBuilder();
            foreach (var (start, end, down) in pattern.Rows())
                path.MoveTo(start, down).LineTo(end + (SpotPattern.Pitch * 0.01), down);
            var middle = At(View.See(pattern.Middle));
            var across = At(View.See(pattern.Middle + pattern.Across));
            var below = At(View.See(pattern.Middle + pattern.Down));
            var onMat = new Transform(across.X - middle.X, across.Y - middle.Y, below.X - middle.X, below.Y - middle.Y, middle.X, middle.Y);
            var dots = new Stroke(colour, 2 * SpotPattern.Radius, [0, SpotPattern.Pitch], LineCap.Round);
            var clip = PathBuilder.Polygon([.. face.Corners.Select(corner => At(View.See(corner)))]);
            return new GroupItem(Transform.Identity, clip, [new GroupItem(onMat, null, [new PathItem(path.Build(), null, dots)])]);
        }

        PathItem Fill(IEnumerable<Vector3d> corners, Colour colour) =>
            new(PathBuilder.Polygon([.. corners.Select(corner => At(View.See(corner)))]), colour, new Stroke(colour, Bleed));
    }

    private static (Colour Colour, double Width) StrokeOf(SeenLine line, StyleSheet styles, Tints tints)
    {
        var (wide, thin) = (styles.Lines.CutWidth, styles.Lines.ThinWidth);
        return (line.Kind, line.Rank) switch
        {
            (LineKind.Mat, _) => (tints.FineInk, thin * 0.8),
            (LineKind.Glue or LineKind.GlueBehind or LineKind.HiddenGlue, _) => (styles.Lines.Glue, thin),
            (LineKind.Detail, _) => (tints.FineInk, thin),
            (LineKind.Edge or LineKind.Rounded, LineRank.Outline) => (tints.Ink, wide * 0.75),
            (LineKind.Edge or LineKind.Rounded, _) => (tints.Ink, wide * 0.5),
            (_, LineRank.Outline) => (tints.Ink, wide * 0.85),
            (LineKind.Cut, _) => (tints.Ink, thin * 1.2),
            _ => (tints.FineInk, thin * 1.2),
        };
    }

    // Lines that go on where others end are drawn in one, so that their corners are joined.
    private static List<List<Seen>> Runs(IEnumerable<SeenLine> lines)
    {
        var runs = new List<List<Seen>>();
        foreach (var line in lines)
        {
            if (runs.Count > 0 && Meets(runs[^1][^1], line.From))
                runs[^1].Add(line.To);
            else if (runs.Count > 0 && Meets(runs[^1][^1], line.To))
                runs[^1].Add(line.From);
            else
                runs.Add([line.From, line.To]);
        }

        return runs;
    }

    private static bool Meets(Seen a, Seen b) => Math.Abs(a.X - b.X) < 1e-6 && Math.Abs(a.Y - b.Y) < 1e-6;

    // Shadows fall to the right and away from the viewer.
    private IEnumerable<IReadOnlyList<Vector3d>> ShadowCorners()
    {
        if (scene.Ground is not { } ground)
            yield break;
        var away = new Vector3d(-View.Viewer.X, -View.Viewer.Y, 0).Unit;
        var fall = (View.Right * 0.26) + (away * 0.14);
        foreach (var face in scene.Faces)
        {
            var shadow = face.Corners.Select(corner => corner with { Z = ground } + (fall * (corner.Z - ground))).ToArray();
            yield return shadow;
        }
    }
}
