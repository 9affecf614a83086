namespace Pattern.Press.Typesetting.Tests.Conformance;

/// <summary>Something in a PDF file that is not as it should be.</summary>
/// <param name="Checkpoint">
/// The failure condition of the Matterhorn Protocol 1.1 (PDF Association, 2021; numbers from memory), such as
/// <c>13-004</c>, or the clause of a standard where the protocol has none.
/// </param>
/// <param name="Message">What is wrong, and where.</param>
public sealed record Finding(string Checkpoint, string Message)
{
    public override string ToString() => $"{Checkpoint}: {Message}";
}
