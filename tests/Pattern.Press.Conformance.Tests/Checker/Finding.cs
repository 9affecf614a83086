namespace Pattern.Press.Conformance;

/// <summary>Something in a PDF file that is not as it should be.</summary>
/// <param name="Checkpoint">The condition of the checklist.</param>
/// <param name="Message">What is wrong, and where.</param>
public sealed record Finding(string Checkpoint, string Message)
{
    public override string ToString() => $"{Checkpoint}: {Message}";
}
