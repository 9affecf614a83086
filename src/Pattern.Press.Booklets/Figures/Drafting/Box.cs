namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>An upright rectangle in millimetres: what a label takes, what a page shows.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public double CentreX => (Left + Right) / 2;

    public double CentreY => (Top + Bottom) / 2;

    public static Box Around(double x, double y, double width, double height) =>
        new(x - (width / 2), y - (height / 2), x + (width / 2), y + (height / 2));

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public Box Moved(double x, double y) => new(Left + x, Top + y, Right + x, Bottom + y);

    public bool Meets(Box other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box other) =>
        other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public Box Common(Box other) => new(
        Math.Max(Left, other.Left), Math.Max(Top, other.Top), Math.Min(Right, other.Right), Math.Min(Bottom, other.Bottom));
}
