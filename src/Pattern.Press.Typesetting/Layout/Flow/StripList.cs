using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>
/// The strips of a column in the making. Room asked for between two of them is not added up: the larger wish counts.
/// </summary>
internal sealed class StripList
{
    private readonly List<Strip> _strips = [];
    private readonly List<string> _destinations = [];
    private double _gap;
    private bool _startsPage;
    private int _lastPage;
    private int _firstOpenHeading;
    private (int End, StructureElement? Parent) _paragraph = (-1, null);

    public IReadOnlyList<Strip> Strips => _strips;

    public int Count => _strips.Count;

    public Strip this[int index] => _strips[index];

    /// <summary>The room above the next strip so far, in millimetres.</summary>
    public double PendingSpace => _gap;

    /// <summary>Whether the next strip starts a page.</summary>
    public bool IsAtPageStart => _startsPage || _strips.Count == 0;

    /// <summary>Whether nothing was put into it nor asked of it.</summary>
    public bool IsUntouched => _strips.Count == 0 && _gap == 0 && _destinations.Count == 0 && !_startsPage;

    /// <summary>Asks for room above the next strip, in millimetres.</summary>
    public void Space(double gap) => _gap = Math.Max(_gap, gap);

    /// <summary>Takes back the room that was asked for.</summary>
    public void NoSpace() => _gap = 0;

    /// <summary>The next strip starts a page.</summary>
    public void StartPage() => _startsPage = true;

    /// <summary>Names the place where the next strip starts.</summary>
    public void Name(string destination) => _destinations.Add(destination);

    /// <summary>Adds a strip.</summary>
    public void Add(Strip strip)
    {
        strip.Gap = _gap;
        strip.StartsPage |= _startsPage && _strips.Count > 0;
        if (_destinations.Count > 0)
        {
            strip.Destinations = [.. strip.Destinations, .. _destinations];
            _destinations.Clear();
        }

        (_gap, _startsPage) = (0, false);
        _strips.Add(strip);
    }

    /// <summary>Adds the strips of another list, which is not used any more.</summary>
    public void Adopt(StripList other)
    {
        foreach (var strip in other._strips)
        {
            Space(strip.Gap);
            Add(strip);
        }

        if (other._paragraph.End == other._strips.Count)
            EndParagraph(other._paragraph.Parent);
        Space(other._gap);
        _destinations.AddRange(other._destinations);
        _startsPage |= other._startsPage;
    }

    /// <summary>How far down the last page the strips reach so far, if pages are so high; in millimetres.</summary>
    public double BottomOnPage(double pageHeight)
    {
        var last = Paginator.LastPage(_strips, pageHeight, ref _lastPage)[^1];
        return last.Bottom + Stacking.PadBelow(last.Strip.Frame, null);
    }

    /// <summary>Keeps all strips from one on together, if they fit a page.</summary>
    public void KeepTogether(int first, double pageHeight)
    {
        if (HeightFrom(first) > pageHeight)
            return;
        for (var i = first; i < _strips.Count - 1; i++)
            Strengthen(i, Keep.Together);
    }

    /// <summary>Keeps the last strip together with what comes next, unless that starts a page.</summary>
    public void KeepLast()
    {
        if (!IsAtPageStart)
            Strengthen(_strips.Count - 1, Keep.Together);
    }

    /// <summary>Notes that a paragraph ends with the last strip, for what it may introduce.</summary>
    /// <param name="parent">What holds the paragraph; null if it introduces nothing.</param>
    public void EndParagraph(StructureElement? parent) => _paragraph = (_strips.Count, parent);

    /// <summary>
    /// Keeps the end of a paragraph right above with what comes next, which it introduces. A heading above a short paragraph
    /// goes along, for nothing of it is parted then. Where a page is too low for all that, it ends here rather than where a row
    /// or a line would stand alone.
    /// </summary>
    /// <param name="parent">What holds that which comes next: a paragraph elsewhere, such as in a list, introduces nothing.</param>
    public void KeepIntroduction(StructureElement parent)
    {
        if (!IsAtPageStart && _paragraph.End == _strips.Count && ReferenceEquals(_paragraph.Parent, parent))
            Strengthen(_strips.Count - 1, Keep.Together);
    }

    /// <summary>
    /// Gives every heading at least so much text below it on its page, in millimetres; where there is less so far, it keeps
    /// with what comes next. Called again as the column grows, it goes on from where it was.
    /// </summary>
    public void KeepHeadings(double least)
    {
        var open = -1;
        for (var i = _firstOpenHeading; i < _strips.Count; i++)
        {
            if (!_strips[i].IsHeading)
                continue;
            var (below, at) = (0.0, i);
            while (below < least && at < _strips.Count)
            {
                if (at + 1 < _strips.Count && _strips[at + 1].StartsPage)
                    break;
                Strengthen(at++, Keep.Firm);
                if (at < _strips.Count && !_strips[at].IsHeading)
                    below += _strips[at].Height;
            }

            if (at == _strips.Count && open < 0)
                open = i;
        }

        _firstOpenHeading = open < 0 ? _strips.Count : open;
    }

    /// <summary>
    /// How high the last strips are that go to the next page together with what follows if that does not fit below them:
    /// a heading, say, with too little text of its own; in millimetres.
    /// </summary>
    public double TailHeight()
    {
        var first = _strips.Count;
        while (first > 0 && _strips[first - 1].Keep > Keep.Free && (first == _strips.Count || !_strips[first].StartsPage))
            first--;
        return first == _strips.Count ? 0 : HeightFrom(first);
    }

    /// <summary>How high the strips from one on are, stacked on a page of their own.</summary>
    public double HeightFrom(int first)
    {
        PlacedStrip? above = null;
        for (var i = first; i < _strips.Count; i++)
            above = new PlacedStrip(_strips[i], Stacking.TopOf(_strips[i], above), false);
        return above is { } last ? last.Bottom + Stacking.PadBelow(last.Strip.Frame, null) : 0;
    }

    private void Strengthen(int index, Keep least) =>
        _strips[index].Keep = (Keep)Math.Max((int)_strips[index].Keep, (int)least);
}
