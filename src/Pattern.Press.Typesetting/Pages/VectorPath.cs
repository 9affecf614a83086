namespace Pattern.Press.Typesetting.Pages;

/// <summary>What one part of a path does.</summary>
public enum PathVerb : byte
{
    /// <summary>Starts a new line at a point (one point).</summary>
    Move,

    /// <summary>Draws a straight line to a point (one point).</summary>
    Line,

    /// <summary>Draws a cubic Bézier curve (two control points and an end).</summary>
    Curve,

    /// <summary>Closes the line (no points).</summary>
    Close,
}

/// <summary>A point on a page in millimetres: x to the right, y down.</summary>
public readonly record struct PagePoint(double X, double Y);

/// <summary>Lines and curves, in millimetres. Build one with <see cref="PathBuilder"/>.</summary>
/// <param name="Verbs">What to do, in order.</param>
/// <param name="Points">The points the verbs take, in order.</param>
public sealed record VectorPath(IReadOnlyList<PathVerb> Verbs, IReadOnlyList<PagePoint> Points);
