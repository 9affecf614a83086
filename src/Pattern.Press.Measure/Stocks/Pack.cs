namespace Pattern.Press.Measure;

/// <summary>What something is sold in.</summary>
/// <param name="Holds">How much a pack holds, in the unit the thing is counted in: sheets, pieces, millimetres; above 0.</param>
/// <param name="Price">What one pack costs; 0 or more, null when it is not known.</param>
public sealed record Pack(decimal Holds, decimal? Price)
{
    /// <summary>How many whole packs hold an amount.</summary>
    public int Holding(decimal amount) => (int)decimal.Ceiling(amount / Holds);
}
