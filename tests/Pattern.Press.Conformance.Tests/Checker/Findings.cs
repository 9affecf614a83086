namespace Pattern.Press.Conformance;

/// <summary>Takes what the checks find.</summary>
public sealed class Findings
{
    private readonly List<Finding> _all = [];

    /// <summary>What was found, in the order of finding.</summary>
    public IReadOnlyList<Finding> All => _all;

    /// <summary>Notes a finding; its condition must stand in the checklist.</summary>
    public void Report(string checkpoint, string message)
    {
        if (!Checklist.Knows(checkpoint))
            throw new ArgumentException($"The checklist has no condition {checkpoint}.", nameof(checkpoint));
        _all.Add(new Finding(checkpoint, message));
    }
}
