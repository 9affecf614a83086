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
}

/// <summary>Something that must hold, with the number that was found.</summary>
/// <param name="Kind">What was proven.</param>
/// <param name="Piece">The piece's id.</param>
/// <param name="Found">The number found, in millimetres.</param>
/// <param name="Limit">What it must not go beyond: the most for gaps and crossings, the least for room.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Panels">The panels it is about, when some are at fault; else empty.</param>
public sealed record FoldingProof(
    FoldingProofKind Kind, string Piece, double Found, double Limit, bool Holds, IReadOnlyList<string> Panels);
