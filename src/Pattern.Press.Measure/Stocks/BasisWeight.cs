namespace Pattern.Press.Measure;

/// <summary>A weight in pounds, which means nothing without its basic sheet.</summary>
/// <param name="Pounds">What 500 basic sheets weigh.</param>
/// <param name="Sheet">The basic sheet.</param>
public sealed record BasisWeight(double Pounds, BasicSheet Sheet)
{
    /// <summary>The same in grams per square metre.</summary>
    public Grammage Grammage => Grammage.FromBasisWeight(Pounds, Sheet);
}
