namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves a piece by folding it.</summary>
public static class PieceProofs
{
    /// <summary>The widest gap a loop may have, as a part of the sheet's longer side.</summary>
    public const double WidestGap = 1e-9;

    /// <summary>How many positions are tried in each step of an order of folding.</summary>
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
    public static IReadOnlyList<FoldingProof> Of(Piece piece, double caliper = 0) => Of(piece, caliper, null, []);

    /// <summary>The same, with the finished panels as they lie on each other when their seams and mats are known, and what opens.</summary>
    internal static IReadOnlyList<FoldingProof> Of(Piece piece, double caliper, IEnumerable<PosedPanel>? stacked, IReadOnlyList<string> opens)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var finished = Folder.Finished(piece);
        var gapLimit = WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        var proofs = new List<FoldingProof>
        {
            Closes(FoldingProofKind.ClosesFinished, [finished], gapLimit),
            Passes(FoldingProofKind.NothingPassesFinished, piece, Crossings.Of([.. stacked ?? Layers.Apart(finished, caliper).Panels]), caliper),
        };

        // Wholly open, what opens closes its loops too, even where the card bends on its way there.
        var flaps = PushedFlaps.Of(piece, finished.Strips);
        List<Pose> still = [.. flaps.Bowing(PositionsInStep), .. flaps.SomeIn()];
        var (passes, way) = InOrder(finished, caliper, opens, flaps.Names, still);
        if (finished.Gaps.Count > 0)
            proofs.Add(Closes(FoldingProofKind.ClosesOnTheWay, [.. way, .. still, .. opens.Count > 0 ? [Folder.Opened(finished.Strips, opens, 0)] : (Pose[])[]], gapLimit));
        proofs.Add(passes);
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

    // The usual order; where something is in the way there, an order that is looked for move by move.
    private static (FoldingProof Passes, IReadOnlyList<Pose> Way) InOrder(Pose finished, double caliper, IReadOnlyList<string> opens, IReadOnlySet<string> pushed, IReadOnlyList<Pose> still)
    {
        var tree = HingeTree.Of(finished.Strips);
        var sagittas = Sagittas(finished.Strips);
        var resting = still.SelectMany(pose => Crossings.Of(pose.Panels)).ToList();
        var usual = Tried(FoldingOrder.Usual(tree, opens));

        // What is rolled is rolled all at once.
        if (usual.Passes.Holds || (tree.Strips.Rulings.Count > 0 && tree.Groups.Count == 0))
            return usual;
        foreach (var overFirst in (ReadOnlySpan<bool>)[false, true])
        {
            if (FoldingOrder.Search(tree, opens, overFirst, pose => Crossings.Of(pose.Panels).All(crossing => IsPushed(crossing, pushed) || crossing.Depth <= Allowed(crossing, caliper, sagittas)), PositionsInStep) is { } order)
                return Tried(order);
        }

        return usual;

        (FoldingProof Passes, IReadOnlyList<Pose> Way) Tried(FoldingOrder order)
        {
            var positions = order.Steps * PositionsInStep;
            var way = Enumerable.Range(1, Math.Max(0, positions - 1)).Select(i => order.At((double)i / positions)).ToList();
            var crossings = way.SelectMany(pose => Crossings.Of(pose.Panels)).Where(crossing => !IsPushed(crossing, pushed)).Concat(resting);
            return (Passes(FoldingProofKind.NothingPassesOnTheWay, finished.Piece, crossings, caliper, sagittas), way);
        }
    }

    private static FoldingProof Passes(FoldingProofKind kind, Piece piece, IEnumerable<Crossing> crossings, double caliper, IReadOnlyDictionary<string, double>? sagittas = null)
    {
        var none = new Dictionary<string, double>();
        var deepest = crossings.MaxBy(crossing => crossing.Depth - Allowed(crossing, caliper, sagittas ?? none));
        var (found, limit) = (deepest?.Depth ?? 0, deepest is null ? caliper + Crossings.Tolerance : Allowed(deepest, caliper, sagittas ?? none));
        var holds = found <= limit;
        return new(kind, piece.Id, found, limit, holds, holds ? [] : [deepest!.First, deepest.Second]);
    }

    // A card's thickness; between two panels that bend, as much more as their flat strips stand off the smooth surfaces.
    private static double Allowed(Crossing crossing, double caliper, IReadOnlyDictionary<string, double> sagittas) => caliper + Crossings.Tolerance
        + (sagittas.TryGetValue(crossing.First, out var one) && sagittas.TryGetValue(crossing.Second, out var other) ? one + other : 0);

    // Flaps along arcs are pushed in one over the other, and bend out of each other's way, which strips do not on theirs; where
    // they hold still, in or out, each counts.
    private static bool IsPushed(Crossing crossing, IReadOnlySet<string> pushed) => pushed.Contains(crossing.First) && pushed.Contains(crossing.Second);

    // How far each strip's middle stands off the arc through its edges: half its width times the tangent of a quarter of the
    // angle that it turns.
    private static Dictionary<string, double> Sagittas(StripPiece strips)
    {
        var found = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var ruling in strips.Rulings)
        {
            foreach (var name in new[] { ruling.Parent, ruling.Child })
            {
                var width = strips.Piece.Panel(name).Outline.Area / ruling.From.DistanceTo(ruling.To);
                found[name] = Math.Max(found.GetValueOrDefault(name), width / 2 * Math.Tan(ruling.Angle * Math.PI / 720));
            }
        }

        return found;
    }
}
