using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Printed;

/// <summary>Letters that one operator of the file shows, in millimetres from the page's top-left corner.</summary>
/// <param name="Text">What they say.</param>
/// <param name="From">Where their baseline starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Size">The size of the type, in points.</param>
/// <param name="Font">The font's name in the file.</param>
/// <param name="Ink">Left, top, right and bottom of what the letters cover.</param>
public sealed record PrintedRun(string Text, Point From, Point To, double Size, string Font, (double Left, double Top, double Right, double Bottom) Ink)
{
    public bool IsLevel => Math.Abs(From.Y - To.Y) < 0.01;

    public bool IsBold => Font.Contains("Bold", StringComparison.Ordinal);

    public Point Middle => new((Ink.Left + Ink.Right) / 2, (Ink.Top + Ink.Bottom) / 2);

    /// <summary>The size of the type in millimetres; a point is 1/72 in.</summary>
    public double Em => Size * 25.4 / 72;
}
