using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Tests.Figures;

/// <summary>A straight line as drawn.</summary>
internal readonly record struct DrawnLine(PagePoint From, PagePoint To, Stroke Stroke)
{
    public double Length => Math.Sqrt(((To.X - From.X) * (To.X - From.X)) + ((To.Y - From.Y) * (To.Y - From.Y)));
}

/// <summary>Lettering as drawn: what it says, and the box around its capitals.</summary>
internal sealed record DrawnText(string Text, double Size, string Face, double Left, double Top, double Right, double Bottom)
{
    public double X => (Left + Right) / 2;

    public double Y => (Top + Bottom) / 2;
}

/// <summary>A path as drawn, in page coordinates.</summary>
internal sealed record DrawnPath(IReadOnlyList<PathVerb> Verbs, IReadOnlyList<PagePoint> Points, Colour? Fill, Stroke? Stroke);

/// <summary>Reads a display list back without knowing how it was made.</summary>
internal sealed class Reading
{
    private readonly List<DrawnPath> _paths = [];
    private readonly List<DrawnText> _texts = [];

    public Reading(IEnumerable<PageItem> items) => Read(items, Transform.Identity);

    public IReadOnlyList<DrawnPath> Paths => _paths;

    public IReadOnlyList<DrawnText> Texts => _texts;

    /// <summary>Every straight line that is stroked.</summary>
    public IEnumerable<DrawnLine> Lines
    {
        get
        {
            foreach (var path in _paths)
            {
                if (path.Stroke is not { } stroke)
                    continue;
                PagePoint start = default, pen = default;
                var at = 0;
                foreach (var verb in path.Verbs)
                {
                    switch (verb)
                    {
                        case PathVerb.Move:
                            start = pen = path.Points[at++];
                            break;
                        case PathVerb.Line:
                            yield return new DrawnLine(pen, path.Points[at], stroke);
                            pen = path.Points[at++];
                            break;
                        case PathVerb.Curve:
                            at += 3;
                            pen = path.Points[at - 1];
                            break;
                        default:
                            yield return new DrawnLine(pen, start, stroke);
                            pen = start;
                            break;
                    }
                }
            }
        }
    }

    /// <summary>Whether a line passes through the inside of the box around a text, found by walking along it.</summary>
    public static bool Crosses(DrawnLine line, DrawnText text, double shrink)
    {
        if (Math.Max(line.From.X, line.To.X) < text.Left || Math.Min(line.From.X, line.To.X) > text.Right ||
            Math.Max(line.From.Y, line.To.Y) < text.Top || Math.Min(line.From.Y, line.To.Y) > text.Bottom)
            return false;
        var steps = Math.Max(1, (int)(line.Length / 0.1));
        for (var i = 0; i <= steps; i++)
        {
            var x = line.From.X + ((line.To.X - line.From.X) * i / steps);
            var y = line.From.Y + ((line.To.Y - line.From.Y) * i / steps);
            if (x > text.Left + shrink && x < text.Right - shrink && y > text.Top + shrink && y < text.Bottom - shrink)
                return true;
        }

        return false;
    }

    private void Read(IEnumerable<PageItem> items, Transform place)
    {
        TextItem? before = null;
        foreach (var item in items)
        {
            switch (item)
            {
                case GroupItem group:
                    Read(group.Items, group.Transform.Then(place));
                    break;
                case PathItem path:
                    _paths.Add(new DrawnPath(path.Path.Verbs, [.. path.Path.Points.Select(place.Apply)], path.Fill, path.Stroke));
                    break;
                case TextItem text:
                    Read(text, before, place);
                    before = text;
                    continue;
                default:
                    throw new InvalidOperationException($"A drawing must not hold a {item.GetType().Name}.");
            }

            before = null;
        }
    }

    // Runs that follow each other on one line are one text.
    private void Read(TextItem item, TextItem? before, Transform place)
    {
        var run = item.Run;
        var cap = run.Face.CapHeight * run.Scale;
        var (a, b) = (place.Apply(new(item.X, item.Y - cap)), place.Apply(new(item.X + run.Width, item.Y)));
        var text = new DrawnText(run.Text, run.Size, run.Face.Name, Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
        if (before is not null && before.Y == item.Y && Math.Abs(before.X + before.Run.Width - item.X) < 1e-6)
        {
            var last = _texts[^1];
            _texts[^1] = last with
            {
                Text = last.Text + text.Text,
                Left = Math.Min(last.Left, text.Left),
                Top = Math.Min(last.Top, text.Top),
                Right = Math.Max(last.Right, text.Right),
                Bottom = Math.Max(last.Bottom, text.Bottom),
            };
            return;
        }

        _texts.Add(text);
    }
}
