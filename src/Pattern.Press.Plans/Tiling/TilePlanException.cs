namespace Pattern.Press.Plans.Tiling;

/// <summary>Why templates cannot be laid over a page.</summary>
public enum TilePlanProblem
{
    /// <summary>What every page says does not fit into the width that margins leave.</summary>
    PageTooNarrow,

    /// <summary>The drawing area that margins and words leave is smaller than a usable tile.</summary>
    AreaTooSmall,

    /// <summary>The lap takes so much of a tile that neighbouring laps would run into each other.</summary>
    LapTooLarge,
}

/// <summary>A page that templates cannot be laid over.</summary>
public sealed class TilePlanException : Exception
{
    /// <summary>An exception with its numbers.</summary>
    /// <param name="problem">What is wrong.</param>
    /// <param name="found">The length that is wrong, in millimetres.</param>
    /// <param name="limit">The least or greatest length it can be, in millimetres.</param>
    /// <param name="message">The same as a sentence a maker can follow.</param>
    public TilePlanException(TilePlanProblem problem, double found, double limit, string message)
        : base(message)
    {
        Problem = problem;
        Found = found;
        Limit = limit;
    }

    /// <summary>What is wrong.</summary>
    public TilePlanProblem Problem { get; }

    /// <summary>The length that is wrong, in millimetres.</summary>
    public double Found { get; }

    /// <summary>The least or greatest length it can be, in millimetres.</summary>
    public double Limit { get; }
}
