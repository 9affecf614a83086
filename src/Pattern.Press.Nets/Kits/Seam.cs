namespace Pattern.Press.Nets;

/// <summary>How two panels hold together.</summary>
public enum SeamHold
{
    /// <summary>By glue.</summary>
    Glue,

    /// <summary>By being pushed in, as a flap that can be opened again.</summary>
    Tuck,

    /// <summary>Not at all: an edge of one lies against an edge of the other.</summary>
    Meet,
}

/// <summary>Where panels of folded pieces come together.</summary>
/// <param name="Piece">The piece whose panel it is, by id.</param>
/// <param name="Panel">The kind of that panel, a tab for most seams; it holds for every panel of the kind.</param>
/// <param name="OtherPiece">The piece it comes to, by id; often the same.</param>
/// <param name="OtherPanel">The kind of panel it comes to; any panel of that kind will do.</param>
/// <param name="Side">The side of the other panel it lies on: facing for inside, away for outside; null for either.</param>
/// <param name="Hold">How they hold together.</param>
public sealed record Seam(string Piece, string Panel, string OtherPiece, string OtherPanel, SheetSide? Side, SeamHold Hold);
