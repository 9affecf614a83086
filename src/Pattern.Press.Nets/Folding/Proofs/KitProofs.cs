namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>What the proofs of a kit start from.</summary>
/// <param name="Kit">The kit, fitted.</param>
/// <param name="Item">What goes inside; null when it is not known.</param>
/// <param name="Ease">The room the item has to have on every side, in millimetres; 0 when none is asked for.</param>
/// <param name="Caliper">How thick each part is, in millimetres.</param>
public sealed record KitToProve(Kit Kit, ItemBody? Item, double Ease, Func<Part, double> Caliper);

/// <summary>
/// Proves a kit by folding every piece and putting the thing together as its assembly says. Nothing here knows what any
/// piece is for beyond that.
/// </summary>
public static class KitProofs
{
    /// <summary>Glue wants a tab this wide, in millimetres; common practice, no source.</summary>
    public const double GlueWidth = 6;

    /// <summary>Narrower than this no tab can be glued at all, in millimetres; common practice, no source.</summary>
    public const double LeastGlueWidth = 3;

    /// <summary>The least room for something to slide, in millimetres; common practice, no source. Thick card wants its own thickness.</summary>
    public const double LeastClearance = 0.5;

    /// <summary>Rounding, and what no hand can measure, in millimetres.</summary>
    private const double Slack = 1e-3;

    /// <summary>Everything that can be proven of a kit, pieces first.</summary>
    public static IReadOnlyList<FoldingProof> Of(KitToProve kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var work = new Working(kit);
        var proofs = new List<FoldingProof>();
        foreach (var part in kit.Kit.Pieces)
        {
            var placed = work.Thing.Closed.FirstOrDefault(one => one.Pose is not null && one.Part.Part == part.Piece.Id);
            proofs.AddRange(PieceProofs.Of(part.Piece, kit.Caliper(part), placed is null ? null : work.Slabs(placed)[0].Select(slab => slab.Panel), kit.Kit.Assembly.Find(part.Piece.Id)?.Opens ?? []));
        }

        proofs.AddRange(SeamProofs.Of(work));
        proofs.AddRange(ClaimProofs.Of(work));
        proofs.AddRange(FittingProofs.Of(work));
        proofs.AddRange(ItemProofs.OfPutIn(work));
        proofs.AddRange(ItemProofs.Of(work));
        return proofs;
    }

    /// <summary>The least room that what slides over or into something must have, in millimetres.</summary>
    public static double Clearance(double caliper) => Math.Max(LeastClearance, caliper);

    /// <summary>A kit put together, with what several proofs need.</summary>
    internal sealed class Working
    {
        private readonly Dictionary<PosedPart, IReadOnlyList<IReadOnlyList<Slab>>> slabs = [];

        public Working(KitToProve kit)
        {
            Kit = kit;
            Thing = new AssembledThing(kit.Kit, kit.Item, kit.Caliper, (piece, opening) => opening >= 1 ? Folder.Finished(piece) : Folder.InOrder(piece, opening));
            Thickest = kit.Kit.Parts.Select(kit.Caliper).DefaultIfEmpty(0).Max();
            Seams = SeamFinding.Of(kit.Kit.Assembly, Thing.Closed, 1.5 + (4 * Thickest));
        }

        public KitToProve Kit { get; }

        public AssembledThing Thing { get; }

        /// <summary>The thickest stock, in millimetres.</summary>
        public double Thickest { get; }

        public IReadOnlyList<FoundSeam> Seams { get; }

        public static double Rounding => Slack;

        public double Caliper(PosedPart part) => Kit.Caliper(Kit.Kit.Pieces.First(one => one.Piece.Id == part.Part.Part));

        /// <summary>The panels of a closed piece with their thickness: once for each way its gussets can lie.</summary>
        public IReadOnlyList<IReadOnlyList<Slab>> Slabs(PosedPart part)
        {
            if (!slabs.TryGetValue(part, out var ways))
                slabs[part] = ways = [.. LaidGussets.Of(part.Pose!).Select(pose => Thick(part, pose))];
            return ways;
        }

        /// <summary>The panels of a pose of a piece with their thickness.</summary>
        public IReadOnlyList<Slab> Thick(PosedPart part, Pose pose) => Stack.Of(
            pose,
            Seams.Where(seam => seam.Part.Part.Part == part.Part.Part),
            Caliper(part),
            (panel, side) => MatLayers.On(Kit.Kit, part.Part.Part, panel, side, Kit.Caliper));

        /// <summary>Whether glue holds a part to another one, so that it does not have to slide.</summary>
        public bool IsGluedIn(PosedPart part) => Seams.Any(seam =>
            seam.Hold == SeamHold.Glue && seam.Other is not null && seam.Part.Part.Part == part.Part.Part && seam.Other.Part.Part != part.Part.Part);
    }
}
