using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>A drawing in the making: grounds below lines below words.</summary>
internal sealed class Board
{
    private readonly List<PageItem> _grounds = [];
    private readonly List<PageItem> _lines = [];
    private readonly List<PageItem> _words = [];

    public Room Room { get; } = new();

    public IReadOnlyList<PageItem> Items => [.. _grounds, .. _lines, .. _words];

    public void Ground(PageItem item) => _grounds.Add(item);

    /// <summary>A line that lettering keeps clear of.</summary>
    public void Line(Segment line, Stroke stroke)
    {
        Mark(PathBuilder.Line(line.From.X, line.From.Y, line.To.X, line.To.Y), stroke);
        Room.Add(line);
    }

    /// <summary>Lines that lettering keeps clear of by other means.</summary>
    public void Mark(VectorPath path, Stroke stroke) => _lines.Add(new PathItem(path, null, stroke));

    /// <summary>A filled mark, such as an arrowhead.</summary>
    public void Solid(VectorPath path, Colour colour) => _lines.Add(new PathItem(path, colour, null));

    public void Write(Label label, double x, double y, Colour colour, LabelSide side = LabelSide.Centre)
    {
        _words.AddRange(label.At(x, y, colour, side));
        Room.Take(label.BoxAt(x, y));
    }

    public void WriteTurned(Label label, Point middle, double degrees, Box takes, Colour colour)
    {
        _words.Add(label.TurnedAt(middle, degrees, colour));
        Room.Take(takes);
    }
}
