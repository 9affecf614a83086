using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Tests.Templates;

/// <summary>A registration mark found on a page, in the page's millimetres.</summary>
internal sealed record FoundMark(Point Centre, string Letter);

/// <summary>A line of a template, and what it is: cut, valley or mountain.</summary>
internal sealed record FoundLine(string Kind, Point From, Point To);

/// <summary>
/// Reads template pages with no more than what is printed on them: lines are told by their strokes, marks by their
/// circles, pages are put together by the letters of their marks.
/// </summary>
internal sealed class TemplateReading(FixedPage page, LineStyles lines)
{
    public Reading Drawing { get; } = new(page.Contents.SelectMany(content => content.Items));

    public IEnumerable<FoundLine> Lines
    {
        get
        {
            foreach (var line in Drawing.Lines)
            {
                var kind = line.Stroke switch
                {
                    { Dash.Count: 0 } cut when cut == lines.CutStroke => "cut",
                    { Dash.Count: 2 } fold when fold.Colour == lines.Valley && fold.Width == lines.FoldWidth => "valley",
                    { Dash.Count: 4 } fold when fold.Colour == lines.Mountain && fold.Width == lines.FoldWidth => "mountain",
                    _ => null,
                };
                if (kind is not null)
                    yield return new FoundLine(kind, new Point(line.From.X, line.From.Y), new Point(line.To.X, line.To.Y));
            }
        }
    }

    public IEnumerable<FoundMark> Marks
    {
        get
        {
            foreach (var path in Drawing.Paths.Where(path => path.Stroke is not null && path.Verbs.Contains(PathVerb.Curve)))
            {
                // Compass points of the circle; two that lie opposite each other give the centre.
                var compass = new List<Point>();
                var at = 0;
                foreach (var verb in path.Verbs)
                {
                    at += verb == PathVerb.Curve ? 2 : 0;
                    if (verb != PathVerb.Close)
                        compass.Add(new Point(path.Points[at].X, path.Points[at++].Y));
                }

                var centre = (from a in compass from b in compass where Math.Abs(a.DistanceTo(b) - 5) < 1e-6 select (a + b) * 0.5).First();
                var letter = Drawing.Texts.Where(text => text.Face == "Bold" && text.Size >= 8 && text.Text.Length <= 3).MinBy(text => centre.DistanceTo(new Point(text.X, text.Y)));
                if (letter is not null && centre.DistanceTo(new Point(letter.X, letter.Y)) < 8)
                    yield return new FoundMark(centre, letter.Text);
            }
        }
    }

    /// <summary>Puts pages together by their marks: where each page's top left comes to lie beside the first page's.</summary>
    public static IReadOnlyList<Point> Join(IReadOnlyList<TemplateReading> pages)
    {
        var marks = pages.Select(page => page.Marks.ToList()).ToList();
        var places = new Point?[pages.Count];
        places[0] = default(Point);
        for (var round = 0; round < pages.Count; round++)
        {
            for (var i = 0; i < pages.Count; i++)
            {
                for (var j = 0; j < pages.Count; j++)
                {
                    if (i == j || places[i] is not { } known)
                        continue;
                    var shared = (from a in marks[i] from b in marks[j] where a.Letter == b.Letter select known + (a.Centre - b.Centre)).ToList();
                    if (shared.Count == 0)
                        continue;
                    // At least two marks to a seam, and all of them say the same.
                    Assert.True(shared.Count >= 2, "a seam has only one mark");
                    Assert.All(shared, place => Assert.True(place.DistanceTo(places[j] ?? shared[0]) < 1e-9));
                    places[j] ??= shared[0];
                }
            }
        }

        return [.. places.Select(place => place ?? throw new InvalidOperationException("A page joins nothing."))];
    }
}
