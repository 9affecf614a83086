namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>What was proven by folding.</summary>
public enum FoldingProofKind
{
    /// <summary>Loops of panels close in the finished shape.</summary>
    ClosesFinished,

    /// <summary>Loops of panels close on the way from flat to finished.</summary>
    ClosesOnTheWay,

    /// <summary>No panel passes through another in the finished shape.</summary>
    NothingPassesFinished,

    /// <summary>No panel passes through another on the way from flat to finished.</summary>
    NothingPassesOnTheWay,

    /// <summary>The item fits between the walls.</summary>
    ItemGoesIn,

    /// <summary>The item is not taller than the walls.</summary>
    ItemIsNotTooTall,

    /// <summary>What takes glue lies flat on what it is glued to, as far from it as the layers are thick.</summary>
    SeamsLieFlat,

    /// <summary>What takes glue does not reach beyond what it is glued to.</summary>
    SeamsLieInside,

    /// <summary>What takes glue is wide enough for it.</summary>
    GlueHasRoom,

    /// <summary>Edges that have to meet do.</summary>
    EdgesMeet,

    /// <summary>It closes all round.</summary>
    ClosesAllRound,

    /// <summary>What it encloses, in cubic millimetres.</summary>
    Encloses,

    /// <summary>It folds flat.</summary>
    FoldsFlat,

    /// <summary>Nothing passes through anything else in the assembled thing.</summary>
    NothingPassesAssembled,

    /// <summary>A part goes on or in without passing through anything.</summary>
    GoesTogether,

    /// <summary>A part that goes over, around or into another has room to do so.</summary>
    Clearance,

    /// <summary>A part that goes over or around another is not too loose.</summary>
    NotTooLoose,

    /// <summary>A part inside has room beside gussets that lie flat against the walls.</summary>
    RoomBesideGussets,

    /// <summary>The item has its ease on every side.</summary>
    RoomAroundItem,

    /// <summary>Several items in one piece have their ease between them.</summary>
    RoomBetweenItems,

    /// <summary>The item does not touch what is above it.</summary>
    RoomAboveItem,

    /// <summary>The item passes the opening.</summary>
    ItemPassesOpening,

    /// <summary>What is put into a flat piece at last, as a card into its envelope, has room on every side there.</summary>
    RoomAroundPutIn,

    /// <summary>It passes the opening.</summary>
    PutInPassesOpening,
}

/// <summary>What a proof says about printing.</summary>
public enum Verdict
{
    /// <summary>It holds.</summary>
    Holds,

    /// <summary>It can be made, but the maker should know.</summary>
    Doubtful,

    /// <summary>It cannot be made.</summary>
    Fails,
}

/// <summary>Something that must hold, with the number that was found.</summary>
/// <param name="Kind">What was proven.</param>
/// <param name="Piece">The piece's id.</param>
/// <param name="Found">The number found, in millimetres; degrees for flat folding, cubic millimetres for what is enclosed.</param>
/// <param name="Limit">What it must not go beyond: the most for gaps and crossings, the least for room.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Panels">The panels it is about, when some are at fault; else empty.</param>
public sealed record FoldingProof(
    FoldingProofKind Kind, string Piece, double Found, double Limit, bool Holds, IReadOnlyList<string> Panels)
{
    /// <summary>The other part it is about, by id; null when it is about one.</summary>
    public string? Other { get; init; }

    /// <summary>Kinds of panels that would let the item pass if they were opened too; empty when that would not help.</summary>
    public IReadOnlyList<string> WouldOpen { get; init; } = [];

    /// <summary>Whether it does no more than ask for attention when it does not hold.</summary>
    public bool IsWarning { get; init; }

    /// <summary>What it says about printing.</summary>
    public Verdict Verdict => Holds ? Verdict.Holds : IsWarning ? Verdict.Doubtful : Verdict.Fails;

    /// <summary>Whether the limit is the least there must be, not the most.</summary>
    public bool LimitIsLeast => Kind is FoldingProofKind.ItemGoesIn or FoldingProofKind.ItemIsNotTooTall or FoldingProofKind.GlueHasRoom
        or FoldingProofKind.Clearance or FoldingProofKind.RoomBesideGussets or FoldingProofKind.RoomAroundItem
        or FoldingProofKind.RoomBetweenItems or FoldingProofKind.RoomAboveItem or FoldingProofKind.ItemPassesOpening or FoldingProofKind.Encloses
        or FoldingProofKind.RoomAroundPutIn or FoldingProofKind.PutInPassesOpening;

    /// <summary>By how much it misses its limit; 0 when it holds.</summary>
    public double Lacks => Holds ? 0 : LimitIsLeast ? Limit - Found : Found - Limit;
}
