using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>A template put together from its pages.</summary>
/// <param name="Name">What is printed above or below it.</param>
/// <param name="Pages">The pages that show it.</param>
/// <param name="Lines">All its cuts and folds in one coordinate system, laps twice.</param>
public sealed record PrintedTemplate(string Name, IReadOnlyList<TemplatePage> Pages, IReadOnlyList<DrawnLine> Lines);

/// <summary>
/// Puts the templates of a printed booklet together as a maker does: pages of one name are laid over each other so that
/// targets with the same letter meet. It knows nothing but what is on the pages.
/// </summary>
public static class TemplateReader
{
    public static IReadOnlyList<PrintedTemplate> Read(PrintedBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var templates = new List<PrintedTemplate>();

        // A page in the middle of a large panel may have nothing to cut or fold, but it has to be joined.
        var pages = book.TemplatePages.Select(page => new TemplatePage(page)).Where(page => page.Work.Count > 0 || page.Targets.Count > 0).ToArray();
        foreach (var page in pages)
            Assert.Empty(LineCover.Doubled(page.Work));
        foreach (var tiles in pages.Where(page => page.Tile is not null).GroupBy(page => page.Name))
            templates.Add(Joined(tiles.Key, [.. tiles]));
        foreach (var page in pages.Where(page => page.Tile is null))
            templates.AddRange(Separate(page));
        return templates;
    }

    private static PrintedTemplate Joined(string name, IReadOnlyList<TemplatePage> pages)
    {
        Assert.Equal(pages.Count, pages.Select(page => page.Tile).Distinct().Count());
        var places = new Dictionary<TemplatePage, Point> { [pages[0]] = default };
        while (places.Count < pages.Count)
        {
            var next = pages.Where(page => !places.ContainsKey(page)).FirstOrDefault(page => Shared(page).Count >= 2);
            Assert.True(next is not null, $"No page of {name} has two targets in common with those joined so far.");
            var shared = Shared(next!);
            var move = shared.Aggregate(default(Point), (sum, pair) => sum + (pair.There - pair.Here)) * (1.0 / shared.Count);
            places[next!] = move;
        }

        // All targets of one letter meet, those too that were not needed for laying the pages.
        foreach (var letter in pages.SelectMany(page => page.Targets.Select(target => (target.Letter, At: target.Centre + places[page]))).GroupBy(target => target.Letter))
        {
            Assert.True(letter.Count() == 2, $"“{letter.Key}” stands at {letter.Count()} targets of {name}, on {string.Join(", ", pages.Where(page => page.Targets.Any(target => target.Letter == letter.Key)).Select(page => page.Page.Label))}.");
            Assert.InRange(letter.First().At.DistanceTo(letter.Last().At), 0, LineCover.Tolerance);
        }

        // So do the lines along which the pages are joined; every page has one, and each is on both of its pages.
        var joins = pages.SelectMany(page => page.Joins.Select(line => (Page: page, Line: line.Moved(places[page])))).ToArray();
        foreach (var page in pages)
        {
            DrawnLine[] others = [.. joins.Where(join => join.Page != page).Select(join => join.Line)];
            Assert.NotEmpty(page.Joins);
            Assert.Empty(LineCover.Uncovered(page.Joins.Select(line => line.Moved(places[page])), others));
        }

        foreach (var page in pages)
        {
            TargetsAtEverySeam(page);
            LapsAgree(page, pages, places);
        }

        NothingTwiceButInLaps(pages, places);
        return new PrintedTemplate(name, pages, [.. pages.SelectMany(page => page.Work.Select(line => line.Moved(places[page])))]);

        List<(Point Here, Point There)> Shared(TemplatePage page) =>
        [
            .. from here in page.Targets
               from there in places.SelectMany(place => place.Key.Targets.Select(target => (target.Letter, At: target.Centre + place.Value)))
               where here.Letter == there.Letter
               select (here.Centre, there.At),
        ];
    }

    // Whatever else holds, a seam without two targets cannot be set straight.
    private static void TargetsAtEverySeam(TemplatePage page)
    {
        foreach (var join in page.Joins)
        {
            var along = (join.To - join.From) * (1 / join.Length);
            var on = page.Targets.Count(target =>
                Math.Abs(along.Cross(target.Centre - join.From)) < LineCover.Tolerance
                && along.Dot(target.Centre - join.From) > -LineCover.Tolerance && along.Dot(target.Centre - join.From) < join.Length + LineCover.Tolerance);
            Assert.True(on >= 2, $"Page {page.Page.Label} has {on} targets on a seam.");
        }
    }

    // Two pages show the same line only in a shaded strip, or where the line runs along the seam itself.
    private static void NothingTwiceButInLaps(IReadOnlyList<TemplatePage> pages, Dictionary<TemplatePage, Point> places)
    {
        var strips = pages.SelectMany(page => page.Laps.Select(lap => (Left: lap.Left + places[page].X, Top: lap.Top + places[page].Y, Right: lap.Right + places[page].X, Bottom: lap.Bottom + places[page].Y)))
            .Concat(pages.SelectMany(page => page.Joins.Select(join => join.Moved(places[page]))).Select(join => (Left: Math.Min(join.From.X, join.To.X), Top: Math.Min(join.From.Y, join.To.Y), Right: Math.Max(join.From.X, join.To.X), Bottom: Math.Max(join.From.Y, join.To.Y))))
            .ToArray();
        var lines = pages.Select(page => page.Work.Select(line => line.Moved(places[page])).ToArray()).ToArray();
        for (var i = 0; i < pages.Count; i++)
        {
            for (var j = i + 1; j < pages.Count; j++)
            {
                foreach (var twice in LineCover.Shared(lines[i], lines[j]))
                    Assert.True(strips.Any(strip => In(strip, twice.From) && In(strip, twice.To)), $"{twice} is on {pages[i].Tile} and {pages[j].Tile} but in no shaded strip.");
            }
        }

        static bool In((double Left, double Top, double Right, double Bottom) box, Point p)
        {
            const double Slack = 2 * LineCover.Tolerance;
            return p.X > box.Left - Slack && p.X < box.Right + Slack && p.Y > box.Top - Slack && p.Y < box.Bottom + Slack;
        }
    }

    // What a shaded strip shows is shown by the page that is glued on it too, line by line.
    private static void LapsAgree(TemplatePage first, IReadOnlyList<TemplatePage> pages, Dictionary<TemplatePage, Point> places)
    {
        foreach (var lap in first.Laps)
        {
            // Lines along the very edge of a strip are on it for one page and just off it for the other.
            (double, double, double, double) Grown(double by) => (lap.Left - by, lap.Top - by, lap.Right + by, lap.Bottom + by);
            var (inside, around) = (Grown(-2 * LineCover.Tolerance), Grown(LineCover.Tolerance));
            var second = pages.Single(page => page != first && page.Targets.Any(target => first.Targets.Any(own =>
                own.Letter == target.Letter && own.Centre.X > lap.Left - 0.01 && own.Centre.X < lap.Right && own.Centre.Y > lap.Top - 0.01 && own.Centre.Y < lap.Bottom)));
            var move = places[second] - places[first];
            DrawnLine[] Strip(IEnumerable<DrawnLine> lines, (double, double, double, double) box) => [.. lines.Select(line => line.Within(box)).OfType<DrawnLine>()];
            DrawnLine[] above = [.. second.Work.Select(line => line.Moved(move))];
            Assert.Empty(LineCover.Uncovered(Strip(first.Work, inside), Strip(above, around)));
            Assert.Empty(LineCover.Uncovered(Strip(above, inside), Strip(first.Work, around)));
        }
    }

    // Lines that touch belong together; the bold words next to their lower left corner, or the heading, are their name.
    private static IEnumerable<PrintedTemplate> Separate(TemplatePage page)
    {
        var left = page.Work.ToList();
        var groups = new List<DrawnLine[]>();
        while (left.Count > 0)
        {
            var group = new List<DrawnLine> { left[0] };
            left.RemoveAt(0);
            for (var i = 0; i < group.Count; i++)
            {
                var touching = left.Where(line => Touch(line, group[i])).ToArray();
                group.AddRange(touching);
                left.RemoveAll(touching.Contains);
            }

            groups.Add([.. group]);
        }

        groups = WithWhatLiesInside(groups);
        if (groups.Count == 1 && !HasNameBelow(page, groups[0]))
            return [new PrintedTemplate(page.Name, [page], groups[0])];
        return groups.Select(group => new PrintedTemplate(NameOf(page, group), [page], group));
    }

    // A window cut out of a template touches none of its lines.
    private static List<DrawnLine[]> WithWhatLiesInside(List<DrawnLine[]> groups)
    {
        var boxes = groups.Select(Around).ToArray();
        int Outer(int i)
        {
            for (var j = 0; j < boxes.Length; j++)
            {
                if (j != i && boxes[j].Left < boxes[i].Left && boxes[j].Top < boxes[i].Top && boxes[j].Right > boxes[i].Right && boxes[j].Bottom > boxes[i].Bottom)
                    return Outer(j);
            }

            return i;
        }

        return [.. Enumerable.Range(0, groups.Count).GroupBy(Outer).Select(group => group.SelectMany(i => groups[i]).ToArray())];
    }

    private static (double Left, double Top, double Right, double Bottom) Around(DrawnLine[] lines) => (
        lines.Min(line => Math.Min(line.From.X, line.To.X)),
        lines.Min(line => Math.Min(line.From.Y, line.To.Y)),
        lines.Max(line => Math.Max(line.From.X, line.To.X)),
        lines.Max(line => Math.Max(line.From.Y, line.To.Y)));

    // A template that shares a page has its name right below it, one with a page of its own has it in the heading.
    private static bool HasNameBelow(TemplatePage page, DrawnLine[] group)
    {
        const double Reach = 5;
        var around = Around(group);
        return page.Page.Runs.Any(run => run.IsLevel && run.IsBold && Math.Abs(run.From.X - around.Left) < 2 && run.From.Y - around.Bottom is > 0 and < Reach);
    }

    private static bool Touch(DrawnLine a, DrawnLine b) => Near(a, b.From) || Near(a, b.To) || Near(b, a.From) || Near(b, a.To);

    private static bool Near(DrawnLine line, Point point)
    {
        var along = line.To - line.From;
        var part = Math.Clamp((point - line.From).Dot(along) / along.Dot(along), 0, 1);
        return point.DistanceTo(line.From + (along * part)) < LineCover.Tolerance;
    }

    private static string NameOf(TemplatePage page, DrawnLine[] group)
    {
        var corner = new Point(
            group.Min(line => Math.Min(line.From.X, line.To.X)),
            group.Max(line => Math.Max(line.From.Y, line.To.Y)));
        var runs = page.Page.Runs;
        var start = Enumerable.Range(0, runs.Count)
            .Where(i => runs[i].IsLevel && runs[i].IsBold && runs[i].From.Y > corner.Y)
            .MinBy(i => runs[i].From.DistanceTo(corner));

        // A long name goes on below its start.
        var words = new List<PrintedRun> { runs[start] };
        for (var i = start + 1; i < runs.Count && runs[i].IsBold && runs[i].Font == runs[start].Font && Math.Abs(runs[i].From.X - runs[start].From.X) < 0.1 && runs[i].From.Y - words[^1].From.Y < 1.6 * runs[i].Em; i++)
            words.Add(runs[i]);
        return PrintedPage.Joined(words);
    }
}
