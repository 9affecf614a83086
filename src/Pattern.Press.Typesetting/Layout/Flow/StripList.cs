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

    public IReadOnlyList<Strip> Strips => _strips;

    public int Count => _strips.Count;

    public Strip this[int index] => _strips[index];

    /// <summary>The room above the next strip so far, in millimetres.</summary>
    public double PendingSpace => _gap;

    /// <summary>Whether the next strip starts a page.</summary>
    public bool IsAtPageStart => _startsPage || _strips.Count == 0;

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
        strip.Destinations.AddRange(_destinations);
        _destinations.Clear();
        (_gap, _startsPage) = (0, false);
        _strips.Add(strip);
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

    /// <summary>
    /// Keeps strips together like <see cref="KeepTogether"/>, but lets a page end between their items once so many of them
    /// stand on either side.
    /// </summary>
    public void KeepItemsTogether(int first, double pageHeight, int least)
    {
        if (HeightFrom(first) > pageHeight)
            return;
        var items = 0;
        for (var i = first; i < _strips.Count; i++)
            items += _strips[i].StartsItem ? 1 : 0;
        var above = 0;
        for (var i = first; i < _strips.Count - 1; i++)
        {
            above += _strips[i].StartsItem ? 1 : 0;
            if (!_strips[i + 1].StartsItem || above < least || items - above < least)
                Strengthen(i, Keep.Together);
        }
    }

    /// <summary>Keeps the last strip together with what comes next, unless that starts a page.</summary>
    public void KeepLast()
    {
        if (!IsAtPageStart)
            Strengthen(_strips.Count - 1, Keep.Together);
    }

    /// <summary>Gives every heading at least so much text below it on its page, in millimetres.</summary>
    public void KeepHeadings(double least)
    {
        for (var i = 0; i < _strips.Count; i++)
        {
            if (!_strips[i].IsHeading)
                continue;
            var below = 0.0;
            for (var j = i + 1; j < _strips.Count && below < least; j++)
            {
                if (_strips[j].StartsPage)
                    break;
                Strengthen(j - 1, Keep.Firm);
                if (!_strips[j].IsHeading)
                    below += _strips[j].Height;
            }
        }
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
