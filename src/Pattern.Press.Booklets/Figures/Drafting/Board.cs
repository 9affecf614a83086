using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>
/// A drawing in the making: grounds below lines below words. What is on it becomes items of a page only when they are asked
/// for.
/// </summary>
/// <param name="isTrial">
/// Whether it is made just to see what finds room, as most are: then only that is kept account of, and there are no items.
/// </param>
internal sealed class Board(bool isTrial = false)
{
    // Trials follow each other and most drawings are tried several times, so one board serves all of a thread.
    [ThreadStatic]
    private static Board? _spare;

    private readonly List<PageItem> _grounds = [];
    private readonly List<Drawn> _lines = [];
    private readonly List<Written> _words = [];

    public Room Room { get; } = new();

    /// <summary>Draws something just to see what finds room.</summary>
    public static T Try<T>(Func<Board, T> draw)
    {
        var board = _spare ?? new Board(isTrial: true);
        _spare = null;
        var found = draw(board);
        board._grounds.Clear();
        board._lines.Clear();
        board._words.Clear();
        board.Room.Clear();
        _spare = board;
        return found;
    }

    /// <summary>Whether nothing but room is kept account of.</summary>
    public bool IsTrial => isTrial;

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

    /// <summary>A filled shape below everything else.</summary>
    public void Ground(Shape shape, Colour colour)
    {
        if (!isTrial)
            _grounds.Add(new PathItem(shape.Path(), colour, null));
    }

    /// <summary>A line that lettering keeps clear of.</summary>
    public void Line(Segment line, Stroke stroke)
    {
        if (!isTrial)
            _lines.Add(new Drawn(line, null, null, stroke));
        Room.Add(line);
    }

    /// <summary>Lines that lettering keeps clear of by other means.</summary>
    public void Mark(VectorPath path, Stroke stroke) => _lines.Add(new Drawn(default, path, null, stroke));

    /// <summary>The sides of a shape; lettering keeps clear of them by other means.</summary>
    public void Mark(Shape shape, Stroke stroke)
    {
        if (!isTrial)
            Mark(shape.Path(), stroke);
    }

    /// <summary>An open circle; lettering keeps clear of it by other means.</summary>
    public void Ring(Point centre, double radius, Stroke stroke)
    {
        if (!isTrial)
            Mark(PathBuilder.Circle(centre.X, centre.Y, radius), stroke);
    }

    /// <summary>A filled mark.</summary>
    public void Solid(VectorPath path, Colour colour) => _lines.Add(new Drawn(default, path, colour, null));

    /// <summary>A filled circle.</summary>
    public void Dot(Point centre, double radius, Colour colour)
    {
        if (!isTrial)
            Solid(PathBuilder.Circle(centre.X, centre.Y, radius), colour);
    }

    /// <summary>An arrowhead on a dimension line that comes from a point.</summary>
    public void Head(Point tip, Point from, double length, Colour colour)
    {
        if (!isTrial)
            Solid(Arrow.Head(tip, from, length), colour);
    }

    public void Write(Label label, double x, double y, Colour colour, LabelSide side = LabelSide.Centre)
    {
        if (!isTrial)
            _words.Add(new Written(label, new Point(x, y), colour, side, null));
        Room.Take(label.BoxAt(x, y));
    }

    public void WriteTurned(Label label, Point middle, double degrees, Box takes, Colour colour)
    {
        if (!isTrial)
            _words.Add(new Written(label, middle, colour, LabelSide.Centre, degrees));
        Room.Take(takes);
    }

    /// <summary>A line, or a path where there is one.</summary>
    private readonly record struct Drawn(Segment Line, VectorPath? Path, Colour? Fill, Stroke? Stroke);

    /// <summary>A label, level or turned about its middle.</summary>
    private readonly record struct Written(Label Label, Point At, Colour Colour, LabelSide Side, double? Degrees);
}
