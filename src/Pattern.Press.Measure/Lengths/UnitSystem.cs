namespace Pattern.Press.Measure;

/// <summary>Which of the two families of units a maker measures in.</summary>
public enum UnitSystem
{
    /// <summary>Millimetres and centimetres.</summary>
    Metric,

    /// <summary>Inches and fractions of an inch.</summary>
    Imperial,
}
