namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves what the assembly claims of its pieces: that they close all round, or fold flat.</summary>
internal static class ClaimProofs
{
    private const double Angle = 1e-6;

    public static IEnumerable<FoldingProof> Of(KitProofs.Working work)
    {
        foreach (var part in work.Thing.Closed.Where(one => one is { Pose: not null, Copy: 0 }))
        {
            if (part.Part.ClaimsClosed)
            {
                yield return ClosesAllRound(part, work);
                if (Volume(part.Pose!) is { } volume)
                    yield return new(FoldingProofKind.Encloses, part.Part.Part, volume, 0, volume > 0, []);
            }

            if (part.Part.ClaimsFlatFoldable)
                yield return FoldsFlat(part.Pose!.Piece);
        }
    }

    // Kawasaki's sum where it is farthest from nothing, Maekawa's difference counted as a full turn off.
    private static FoldingProof FoldsFlat(Piece piece)
    {
        var worst = 0.0;
        IReadOnlyList<string> panels = [];
        foreach (var point in InteriorPoint.Of(piece))
        {
            var off = point.Folds.Count % 2 != 0 ? 360
                : Math.Abs(FlatFolding.MaekawaDifference(point.Folds.Select(fold => fold.Direction))) != 2 ? 360
                : Math.Abs(FlatFolding.KawasakiSum(point.Angles));
            if (off > worst)
                (worst, panels) = (off, [.. point.Folds.Select(fold => fold.Child).Distinct(StringComparer.Ordinal)]);
        }

        var holds = worst <= Angle;
        return new(FoldingProofKind.FoldsFlat, piece.Id, worst, Angle, holds, holds ? [] : panels);
    }

    // Every place along every edge of a panel has to have another panel against it.
    private static FoldingProof ClosesAllRound(PosedPart part, KitProofs.Working work)
    {
        var limit = (2 * work.Caliper(part)) + KitProofs.Working.Rounding;
        var (widest, at) = (0.0, "");
        var panels = part.Pose!.Panels;
        foreach (var panel in panels.Where(panel => panel.Panel.Role == PanelRole.Panel))
        {
            var corners = panel.Corners;
            for (var i = 0; i < corners.Count; i++)
            {
                for (var step = 1; step < 4; step++)
                {
                    var point = corners[i].Towards(corners[(i + 1) % corners.Count], step / 4.0);
                    var gap = panels.Where(other => other != panel && other.Panel.Role == PanelRole.Panel).Select(other => Distance(other, point)).DefaultIfEmpty(double.PositiveInfinity).Min();
                    if (gap > widest)
                        (widest, at) = (gap, panel.Panel.Name);
                }
            }
        }

        var holds = widest <= limit;
        return new(FoldingProofKind.ClosesAllRound, part.Part.Part, widest, limit, holds, holds ? [] : [at]);
    }

    private static double Distance(PosedPanel panel, Vector3d point)
    {
        var flat = panel.Motion.Inverse.Apply(point);
        var at = new Point(flat.X, -flat.Y);
        var beside = panel.Panel.Outline.Contains(at) ? 0 : panel.Panel.Outline.DistanceTo(at);
        return Math.Sqrt((beside * beside) + (flat.Z * flat.Z));
    }

    // Only where every edge has exactly one other against it do the panels bound a solid.
    private static double? Volume(Pose pose)
    {
        var faces = pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel).ToList();
        var edges = faces.SelectMany(face => face.Corners.Select((corner, i) => (From: corner, To: face.Corners[(i + 1) % face.Corners.Count]))).ToList();
        return edges.All(edge => edges.Count(other => other.From.DistanceTo(edge.To) < 1e-4 && other.To.DistanceTo(edge.From) < 1e-4) == 1)
            ? Math.Abs(SolidMeasure.Volume(faces))
            : null;
    }
}
