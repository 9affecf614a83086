using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>
/// A drawing in the making: grounds below lines below words. What is on it becomes items of a page only when they are asked
/// for, because many drawings are made just to see what finds room.
/// </summary>
internal sealed class Board
{
    private readonly List<PageItem> _grounds = [];
    private readonly List<Drawn> _lines = [];
    private readonly List<Written> _words = [];

    public Room Room { get; } = new();

    public IReadOnlyList<PageItem> Items
    {
        get
        {
            var items = new List<PageItem>(_grounds.Count + _lines.Count + _words.Count);
            items.AddRange(_grounds);
            foreach (var line in _lines)
                items.Add(new PathItem(line.Path ?? PathBuilder.Line(line.Line.From.X, line.Line.From.Y, line.Line.To.X, line.Line.To.Y), line.Fill, line.Stroke));
            foreach (var words in _words)
            {
                if (words.Degrees is { } degrees)
                    items.Add(words.Label.TurnedAt(words.At, degrees, words.Colour));
                else
                    items.AddRange(words.Label.At(words.At.X, words.At.Y, words.Colour, words.Side));
            }

            return items;
        }
    }

    public void Ground(PageItem item) => _grounds.Add(item);

    /// <summary>A line that lettering keeps clear of.</summary>
    public void Line(Segment line, Stroke stroke)
    {
        _lines.Add(new Drawn(line, null, null, stroke));
        Room.Add(line);
    }

    /// <summary>Lines that lettering keeps clear of by other means.</summary>
    public void Mark(VectorPath path, Stroke stroke) => _lines.Add(new Drawn(default, path, null, stroke));

    /// <summary>A filled mark, such as an arrowhead.</summary>
    public void Solid(VectorPath path, Colour colour) => _lines.Add(new Drawn(default, path, colour, null));

    public void Write(Label label, double x, double y, Colour colour, LabelSide side = LabelSide.Centre)
    {
        _words.Add(new Written(label, new Point(x, y), colour, side, null));
        Room.Take(label.BoxAt(x, y));
    }

    public void WriteTurned(Label label, Point middle, double degrees, Box takes, Colour colour)
    {
        _words.Add(new Written(label, middle, colour, LabelSide.Centre, degrees));
        Room.Take(takes);
    }

    /// <summary>A line, or a path where there is one.</summary>
    private readonly record struct Drawn(Segment Line, VectorPath? Path, Colour? Fill, Stroke? Stroke);

    /// <summary>A label, level or turned about its middle.</summary>
    private readonly record struct Written(Label Label, Point At, Colour Colour, LabelSide Side, double? Degrees);
}
