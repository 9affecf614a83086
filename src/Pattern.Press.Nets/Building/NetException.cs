namespace Pattern.Press.Nets.Building;

/// <summary>A description that does not make a piece that can be cut and folded.</summary>
public sealed class NetException : Exception
{
    /// <summary>An exception with its reasons, each a sentence a maker can follow.</summary>
    public NetException(string piece, IReadOnlyList<string> reasons)
        : base($"The piece “{piece}” cannot be made: {string.Join(" ", reasons)}")
    {
        Piece = piece;
        Reasons = reasons;
    }

    /// <summary>The piece's id.</summary>
    public string Piece { get; }

    /// <summary>Why, each a sentence.</summary>
    public IReadOnlyList<string> Reasons { get; }
}
