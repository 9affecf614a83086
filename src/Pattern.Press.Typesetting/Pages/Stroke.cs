namespace Pattern.Press.Typesetting.Pages;

/// <summary>How the ends of a line look.</summary>
public enum LineCap
{
    /// <summary>Cut off at the end point.</summary>
    Butt,

    /// <summary>Rounded over the end point.</summary>
    Round,
}

/// <summary>How a line is drawn.</summary>
/// <param name="Colour">Its colour.</param>
/// <param name="Width">Its width in millimetres.</param>
/// <param name="Dash">Lengths of dashes and gaps in turn, in millimetres; empty for a continuous line.</param>
/// <param name="Cap">How its ends look.</param>
public sealed record Stroke(Colour Colour, double Width, IReadOnlyList<double> Dash, LineCap Cap = LineCap.Butt)
{
    /// <summary>A continuous line.</summary>
    public Stroke(Colour colour, double width)
        : this(colour, width, [])
    {
    }
}
