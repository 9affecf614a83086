namespace Pattern.Press.Measure;

/// <summary>Which way the fibres of a sheet run, the sheet lying as its size is written.</summary>
public enum Grain
{
    /// <summary>Along the first of the two sides.</summary>
    Across,

    /// <summary>Along the second of the two sides.</summary>
    Down,
}
