using System.Globalization;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>One pass over a book: first every page is planned, then, when page numbers are known, drawn.</summary>
internal sealed class BookPass(LayoutSession session)
{
    private readonly StructureElement _root = new(Role.Document);
    private readonly List<PlannedPage?> _pages = [];
    private readonly Dictionary<string, string> _labels = new(StringComparer.Ordinal);
    private readonly HashSet<string> _places = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _counts = new(StringComparer.Ordinal);

    /// <summary>The numbers of the pages of all destinations.</summary>
    public IReadOnlyDictionary<string, string> Labels => _labels;

    /// <summary>Decides what stands on which page.</summary>
    public void Plan()
    {
        var parts = session.Book.Parts;
        for (var i = 0; i < parts.Count; i++)
        {
            if (parts[i] is FixedPart pages)
                PlanFixed(pages);
            else
                i = PlanFlow(parts, i) - 1;
        }
    }

    /// <summary>Makes the document.</summary>
    public PressDocument Draw()
    {
        var furniture = new PageFurniture(session);
        var pages = new List<Page>(_pages.Count);
        var named = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < _pages.Count; i++)
        {
            // A page that is drawn needs its strips no more, and a long book has many.
            var planned = _pages[i]!;
            _pages[i] = null;
            var page = planned.Flow is not null ? DrawFlow(planned, furniture) : DrawFixed(planned);
            // A name leads to one place, the first that has it.
            pages.Add(page.Destinations.Count == 0 ? page : page with { Destinations = [.. page.Destinations.Where(place => named.Add(place.Name))] });
        }

        session.CheckTargets(_places);
        if (pages.Count == 0)
            pages.Add(new Page { Width = session.Book.Paper.Width, Height = session.Book.Paper.Height, Items = [] });
        var book = session.Book;
        return new PressDocument
        {
            Pages = pages,
            Structure = _root,
            Bookmarks = session.Outline.Bookmarks(),
            Title = book.Title,
            Author = book.Author,
            Subject = book.Subject,
            Language = book.Language,
            Date = book.Date,
        };
    }

    /// <summary>Plans text parts that follow each other, and returns the index of the part after them.</summary>
    private int PlanFlow(IReadOnlyList<BookPart> parts, int first)
    {
        var strips = new StripList();
        var i = first;
        for (; i < parts.Count && parts[i] is FlowPart flow; i++)
        {
            if (!flow.FlowsOn)
                strips.StartPage();
            var section = _root.Add(Role.Sect);
            section.Title = flow.Title.Length > 0 ? flow.Title : null;
            var column = new Column { Session = session, Width = session.TextWidth, Parent = section };
            var flowsOn = i + 1 < parts.Count && parts[i + 1] is FlowPart { FlowsOn: true };
            var scales = new Queue<FigureScale>();
            for (var at = 0; at < flow.Blocks.Count; at++)
            {
                var scale = FigureScale.Usual;
                if (flow.Blocks[at] is KeepTogetherBlock { HasLargeFigures: false })
                {
                    if (flow.Blocks[at].KeepsWithPrevious)
                        strips.KeepLast();
                    if (scales.Count == 0)
                        scales = new Queue<FigureScale>(GroupFitting.ScalesOf(flow.Blocks.Skip(at), flowsOn, column, strips));
                    scale = scales.Dequeue();
                }

                BlockElements.LayOut(flow.Blocks[at], column with { FigureScale = scale }, strips);
            }
        }

        strips.KeepHeadings(2 * session.Looks.Body.Leading);
        CheckHeights(strips);
        foreach (var plan in Paginator.Paginate(strips.Strips, session.TextHeight))
        {
            var label = NextLabel("");
            _pages.Add(new PlannedPage(label, plan, null, null));
            var names = new List<string>();
            foreach (var placed in plan.Strips)
            {
                if (!placed.IsRepeated)
                    placed.Strip.CollectDestinations(names);
            }

            foreach (var name in names)
                AddPlace(name, label);
        }

        return i;
    }

    private void PlanFixed(FixedPart part)
    {
        var section = _root.Add(Role.Sect);
        section.Title = part.Title.Length > 0 ? part.Title : null;
        foreach (var page in part.Pages)
        {
            var label = part.LabelPrefix is null ? "" : NextLabel(part.LabelPrefix);
            if (session.Outline.Of(page) is { } name)
                AddPlace(name, label);
            _pages.Add(new PlannedPage(label, null, page, section));
        }
    }

    private void AddPlace(string name, string label)
    {
        if (_places.Add(name))
            _labels[name] = label;
    }

    private string NextLabel(string prefix)
    {
        var number = _counts.GetValueOrDefault(prefix) + 1;
        _counts[prefix] = number;
        return prefix + number.ToString(CultureInfo.InvariantCulture);
    }

    private Page DrawFlow(PlannedPage planned, PageFurniture furniture)
    {
        var canvas = new PageCanvas(name => _labels.GetValueOrDefault(name, "?"));
        var (paper, spacing) = (session.Book.Paper, session.Styles.Spacing);
        Stacking.Draw(canvas, planned.Flow!.Strips, spacing.Left, spacing.Top, planned.Flow.Before);
        furniture.Draw(canvas, planned.Label);
        return canvas.Finish(paper.Width, paper.Height, planned.Label);
    }

    private Page DrawFixed(PlannedPage planned)
    {
        var page = planned.Fixed!;
        var items = new List<PageItem>(page.Contents.Count);
        foreach (var content in page.Contents)
        {
            if (FixedText.Beyond(content.Items, page) is { } words)
                session.Report(page.Source, $"“{words}” reaches beyond the edge of its page. Shorten it, or use larger paper.", words, page.Width);
            if (content.Role is null)
            {
                items.Add(new ArtifactItem(ArtifactKind.Layout, content.Items));
                continue;
            }

            var element = planned.Section!.Add(session.Outline.Of(content));
            element.AlternativeText = content.AlternativeText;
            if (element.Role == Role.Figure)
                element.Box = content.Box ?? (0, 0, page.Width, page.Height);
            items.Add(new TaggedItem(element, content.Items));
        }

        return new Page
        {
            Width = page.Width,
            Height = page.Height,
            Items = items,
            Label = planned.Label,
            Destinations = session.Outline.Of(page) is { } name ? [(name, 0)] : [],
        };
    }

    private void CheckHeights(StripList strips)
    {
        foreach (var strip in strips.Strips)
        {
            var pads = Stacking.TopOf(strip, null) + Stacking.PadBelow(strip.Frame, null) + strip.Repeated.Sum(head => head.Height);
            if (strip.Height + pads <= session.TextHeight + 0.01)
                continue;
            session.Report(
                strip.Source,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{strip.Kind} is {strip.Height + pads:0.#} mm high, but a page holds only {session.TextHeight:0.#} mm. Make it smaller, or divide it."),
                strip.Words);
        }
    }

    private sealed record PlannedPage(string Label, PagePlan? Flow, FixedPage? Fixed, StructureElement? Section);
}
