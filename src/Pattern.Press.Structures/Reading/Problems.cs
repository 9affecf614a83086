namespace Pattern.Press.Structures.Reading;

/// <summary>Collects problems while reading goes on, so that a maker sees all of them in one go.</summary>
public sealed class Problems
{
    private readonly List<Problem> _all = [];

    /// <summary>Everything found so far, by file, line and column.</summary>
    public IReadOnlyList<Problem> All =>
        [.. _all.OrderBy(p => p.File, StringComparer.Ordinal).ThenBy(p => p.Line).ThenBy(p => p.Column)];

    /// <summary>Whether there is at least one error.</summary>
    public bool HasErrors => _all.Exists(problem => problem.Severity == Severity.Error);

    /// <summary>Takes note of a problem; the same problem twice counts once.</summary>
    public void Add(Problem problem)
    {
        if (!_all.Contains(problem))
            _all.Add(problem);
    }

    /// <summary>Takes note of several problems.</summary>
    public void AddRange(IEnumerable<Problem> problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        foreach (var problem in problems)
            Add(problem);
    }

    /// <summary>Takes note of an error at a place.</summary>
    public void Error(Place place, string message, string advice = "") =>
        Add(new Problem(Severity.Error, place.File, place.Line, place.Column, message, advice));

    /// <summary>Takes note of a warning at a place.</summary>
    public void Warning(Place place, string message, string advice = "") =>
        Add(new Problem(Severity.Warning, place.File, place.Line, place.Column, message, advice));
}
