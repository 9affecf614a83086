namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves a piece by folding it.</summary>
public static class PieceProofs
{
    /// <summary>The widest gap a loop may have, as a part of the sheet's longer side.</summary>
    public const double WidestGap = 1e-9;

    /// <summary>
    /// How deep, in cards, two flaps may come into each other that both lie on something: each leaves its own fold by a card,
    /// and where the folds meet in one point the tips are that much in each other. Anything else may by one card.
    /// </summary>
    private const double FlapsOnFlaps = 1.5;

    /// <summary>How many positions between flat and finished are tried where everything moves together.</summary>
    public const int Positions = 9;

    /// <summary>How many positions are tried in each step where folds are made one after the other.</summary>
    public const int PositionsInStep = 10;

    /// <summary>
    /// Folds a piece and proves that its loops close and that no panel passes through another, finished and on the way.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="caliper">
    /// The card's thickness in millimetres, by which panels that lie on each other in the finished shape are set apart; 0
    /// leaves it out of account. Panels that are set apart leave their folds by as much, which the card takes up by bending
    /// there, so crossings no deeper than this do not count.
    /// </param>
    public static IReadOnlyList<FoldingProof> Of(Piece piece, double caliper = 0) => Of(piece, caliper, null);

    /// <summary>The same, with the finished panels as they lie on each other when their seams and mats are known.</summary>
    internal static IReadOnlyList<FoldingProof> Of(Piece piece, double caliper, IEnumerable<PosedPanel>? stacked)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var finished = Folder.Finished(piece);
        var gapLimit = WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        var proofs = new List<FoldingProof>
        {
            Closes(FoldingProofKind.ClosesFinished, [finished], gapLimit),
            Passes(FoldingProofKind.NothingPassesFinished, piece, [[.. stacked ?? Layers.Apart(finished, caliper).Panels]], caliper, FlapsOf(finished)),
        };

        // Loops hold their panels on the one way there is; elsewhere folds are made one after the other. What bends and
        // forms loops is bowed first and then pushed in.
        if (finished.Gaps.Count == 0)
        {
            proofs.Add(InOrder(finished, caliper));
        }
        else if (piece.Panels.All(panel => panel.Bend is null))
        {
            var way = new Pose[Positions];
            for (var i = 0; i < way.Length; i++)
                way[i] = Folder.Pose(finished.Strips, (i + 1.0) / (way.Length + 1));
            proofs.Add(Closes(FoldingProofKind.ClosesOnTheWay, way, gapLimit));
            var held = Held(piece);
            proofs.Add(Passes(FoldingProofKind.NothingPassesOnTheWay, piece, way.Select(pose => pose.Panels.Where(panel => held.Contains(panel.Panel.Name))), caliper));
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

    // The usual order; where something is in the way there, an order that is looked for fold by fold.
    private static FoldingProof InOrder(Pose finished, double caliper)
    {
        var tree = HingeTree.Of(finished.Strips);
        var usual = Tried(FoldingOrder.Usual(tree));

        // What is rolled is rolled all at once.
        if (usual.Holds || tree.Strips.Rulings.Count > 0)
            return usual;
        foreach (var overFirst in (ReadOnlySpan<bool>)[false, true])
        {
            if (FoldingOrder.Search(tree, overFirst, pose => Crossings.Of(pose.Panels).All(crossing => crossing.Depth <= caliper), PositionsInStep) is { } order)
                return Tried(order);
        }

        return usual;

        FoldingProof Tried(FoldingOrder order)
        {
            var positions = order.Steps * PositionsInStep;
            var way = Enumerable.Range(1, Math.Max(0, positions - 1)).Select(i => order.At((double)i / positions).Panels);
            return Passes(FoldingProofKind.NothingPassesOnTheWay, finished.Piece, way, caliper);
        }
    }

    // Tabs and gussets, which come to lie on other panels.
    private static HashSet<string> FlapsOf(Pose pose) =>
        [.. pose.Panels.Where(panel => panel.Panel.Role != PanelRole.Panel).Select(panel => panel.Panel.Name)];

    private static FoldingProof Passes(FoldingProofKind kind, Piece piece, IEnumerable<IEnumerable<PosedPanel>> poses, double allowed, HashSet<string>? flaps = null)
    {
        var deepest = poses.SelectMany(Crossings.Of).MaxBy(crossing => crossing.Depth / Limit(crossing));
        var limit = deepest is null ? allowed + Crossings.Tolerance : Limit(deepest);
        var holds = deepest is null || deepest.Depth <= limit;
        return new(kind, piece.Id, deepest?.Depth ?? 0, limit, holds, holds ? [] : [deepest!.First, deepest.Second]);

        double Limit(Crossing crossing) =>
            ((flaps is not null && flaps.Contains(crossing.First) && flaps.Contains(crossing.Second) ? FlapsOnFlaps : 1) * allowed) + Crossings.Tolerance;
    }
}
