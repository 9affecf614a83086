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

    private readonly IReadOnlyList<Face> painted;
    private readonly IReadOnlyList<SeenLine> lines;
    private readonly Scene scene;

    public SceneView(Scene scene, Axonometry view)
    {
        this.scene = scene;
        View = view;
        painted = PaintOrder.Of(scene.Faces, view);
        lines = new LineVisibility(scene.Faces, view).Of(scene.Lines);
        var corners = painted.SelectMany(face => face.Corners).Concat(ShadowCorners().SelectMany(shadow => shadow)).Select(view.See).ToArray();
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
        foreach (var group in lines.GroupBy(line => StrokeOf(line, styles, tints)).OrderBy(group => group.Key.Width))
        {
            var path = new PathBuilder();
            foreach (var run in Runs(group))
            {
                path.MoveTo(At(run[0]).X, At(run[0]).Y);
                foreach (var point in run.Skip(1))
                    path.LineTo(At(point).X, At(point).Y);
            }

            yield return new PathItem(path.Build(), null, new Stroke(group.Key.Colour, group.Key.Width, [], LineCap.Round));
        }

        PagePoint At(Seen seen) => new(x + ((seen.X - Left) * scale), y + ((seen.Y - Top) * scale));

        GroupItem Spots(Face face, SpotPattern pattern, Colour colour)
        {
            // A face that others partly hide is painted in parts; each takes only the spots that show in it.
            var path = new PathBuilder();
            PagePoint[] corners = [.. face.Corners.Select(corner => At(View.See(corner)))];
            var rim = new PagePoint[12];
            foreach (var spot in pattern.Spots())
            {
                for (var i = 0; i < rim.Length; i++)
                {
                    var (sine, cosine) = Math.SinCos(i * Math.Tau / rim.Length);
                    rim[i] = At(View.See(spot + (((pattern.Across * cosine) + (pattern.Down * sine)) * SpotPattern.Radius)));
                }

                if (LiesBeside(rim, corners))
                    continue;
                path.MoveTo(rim[0].X, rim[0].Y);
                foreach (var point in rim.Skip(1))
                    path.LineTo(point.X, point.Y);
                path.Close();
            }

            return new GroupItem(Transform.Identity, PathBuilder.Polygon(corners), [new PathItem(path.Build(), colour, null)]);
        }

        PathItem Fill(IEnumerable<Vector3d> corners, Colour colour) =>
            new(PathBuilder.Polygon([.. corners.Select(corner => At(View.See(corner)))]), colour, new Stroke(colour, Bleed));
    }

    // Whether all of it is on the far side of an edge of a convex region, whichever way round the region's corners go.
    private static bool LiesBeside(PagePoint[] rim, PagePoint[] corners)
    {
        for (var i = 0; i < corners.Length; i++)
        {
            var (from, to, inside) = (corners[i], corners[(i + 1) % corners.Length], corners[(i + 2) % corners.Length]);
            double Side(PagePoint point) => ((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X));
            var within = Side(inside);
            if (Math.Abs(within) > 1e-9 && rim.All(point => Side(point) * within < 0))
                return true;
        }

        return false;
    }

    private static (Colour Colour, double Width) StrokeOf(SeenLine line, StyleSheet styles, Tints tints)
    {
        var (wide, thin) = (styles.Lines.CutWidth, styles.Lines.ThinWidth);
        return (line.Kind, line.Rank) switch
        {
            (LineKind.Mat, _) => (tints.FineInk, thin * 0.8),
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
