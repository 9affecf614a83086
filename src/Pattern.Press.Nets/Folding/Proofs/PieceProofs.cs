namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves a piece by folding it.</summary>
public static class PieceProofs
{
    /// <summary>The widest gap a loop may have, as a part of the sheet's longer side.</summary>
    public const double WidestGap = 1e-9;

    // Two panels that both leave their fold come to lie half a card deeper in each other than one that does.
    private const double Bending = 1.5;

    /// <summary>How many positions between flat and finished are tried.</summary>
    public const int Positions = 9;

    /// <summary>
    /// Folds a piece and proves that its loops close and that no panel passes through another, finished and on the way.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="caliper">
    /// The card's thickness in millimetres, by which panels that lie on each other in the finished shape are set apart; 0
    /// leaves it out of account. Panels that are set apart leave their folds by as much, which the card takes up by bending
    /// there, so crossings no deeper than this do not count.
    /// </param>
    public static IReadOnlyList<FoldingProof> Of(Piece piece, double caliper = 0)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var finished = Folder.Finished(piece);
        var gapLimit = WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        var proofs = new List<FoldingProof>
        {
            Closes(FoldingProofKind.ClosesFinished, [finished], gapLimit),
            Passes(FoldingProofKind.NothingPassesFinished, [Layers.Apart(finished, caliper)], caliper * Bending),
        };

        // Only where loops hold the panels is the way there a way every maker has to go; elsewhere folds are made one
        // after the other, in the order of the steps. What bends is bowed first and then pushed in.
        if (finished.Gaps.Count > 0 && piece.Panels.All(panel => panel.Bend is null))
        {
            var way = new Pose[Positions];
            for (var i = 0; i < way.Length; i++)
                way[i] = Folder.Pose(piece, (i + 1.0) / (way.Length + 1));
            proofs.Add(Closes(FoldingProofKind.ClosesOnTheWay, way, gapLimit));

            // One way was tried, all folds together; where it is blocked hands may still find another.
            proofs.Add(Passes(FoldingProofKind.NothingPassesOnTheWay, way, 0, Held(piece)) with { IsWarning = true });
        }

        return proofs;
    }

    /// <summary>Proves that an item goes into a folded box.</summary>
    /// <param name="box">The box's piece.</param>
    /// <param name="item">The item seen from above.</param>
    /// <param name="height">The item's height in millimetres.</param>
    /// <param name="ease">The room that must stay free on each side of it, in millimetres; 0 or more.</param>
    public static IReadOnlyList<FoldingProof> Of(Piece box, ItemSection item, double height, double ease)
    {
        var pose = Folder.Finished(box);
        var proofs = new List<FoldingProof>();
        if (InsideRoom.Of(pose) is { } room)
        {
            var left = room.Height - height;
            proofs.Add(new(FoldingProofKind.ItemIsNotTooTall, box.Id, left, 0, left >= -Crossings.Tolerance, []));
        }

        var around = InsideRoom.RoomAround(pose, item, height);
        proofs.Add(new(FoldingProofKind.ItemGoesIn, box.Id, around, ease, around >= ease - Crossings.Tolerance, []));
        return proofs;
    }

    private static FoldingProof Closes(FoldingProofKind kind, IReadOnlyList<Pose> poses, double limit)
    {
        var widest = new LoopGap(null!, 0);
        foreach (var gap in poses.SelectMany(pose => pose.Gaps).Where(gap => gap.Width > widest.Width))
            widest = gap;
        var holds = widest.Width <= limit;
        return new(kind, poses[0].Piece.Id, widest.Width, limit, holds, holds ? [] : [widest.Fold.Parent, widest.Fold.Child]);
    }

    // The panels that meet at a point with folds all round it.
    private static HashSet<string> Held(Piece piece) =>
        [.. InteriorPoint.Of(piece).SelectMany(point => point.Folds).SelectMany(fold => new[] { fold.Parent, fold.Child })];

    private static FoldingProof Passes(FoldingProofKind kind, IReadOnlyList<Pose> poses, double allowed, HashSet<string>? among = null)
    {
        var limit = allowed + Crossings.Tolerance;
        var deepest = poses.SelectMany(pose => Crossings.Of([.. pose.Panels.Where(panel => among is null || among.Contains(panel.Panel.Name))])).MaxBy(crossing => crossing.Depth);
        var holds = deepest is null || deepest.Depth <= limit;
        return new(
            kind, poses[0].Piece.Id, deepest?.Depth ?? 0, limit, holds, holds ? [] : [deepest!.First, deepest.Second]);
    }
}
