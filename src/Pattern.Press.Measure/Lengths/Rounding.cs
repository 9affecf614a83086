namespace Pattern.Press.Measure;

/// <summary>Which way a length moves when it is brought to a mark of a ruler.</summary>
public enum Rounding
{
    /// <summary>To the nearest mark; from half way, away from zero.</summary>
    Nearest,

    /// <summary>To the next longer mark: for what must hold something.</summary>
    Up,

    /// <summary>To the next shorter mark: for what must go into something.</summary>
    Down,
}
