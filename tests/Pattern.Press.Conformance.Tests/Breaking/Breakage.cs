namespace Pattern.Press.Conformance.Breaking;

/// <summary>A way of breaking a sound file.</summary>
/// <param name="Condition">The condition that is to find it out.</param>
/// <param name="What">What is broken.</param>
/// <param name="Break">Breaks a copy of the file, and gives its bytes.</param>
internal sealed record Breakage(string Condition, string What, Func<PlainPdf, byte[]> Break)
{
    /// <summary>Words replaced by others.</summary>
    public static Breakage Words(string condition, string old, string with) =>
        new(condition, $"{old} → {with}", file => file.Replace(old, with).Build());

    /// <summary>Words taken away.</summary>
    public static Breakage Without(string condition, string words) => Words(condition, words, "");

    /// <summary>Words put behind others.</summary>
    public static Breakage More(string condition, string after, string words) =>
        new(condition, $"{after} + {(words.Length > 60 ? words[..60] : words)}", file => file.Replace(after, after + words).Build());

    /// <summary>An object more.</summary>
    public static Breakage Object(string condition, string text) => new(condition, $"+ {text}", file => file.Add(text).Build());

    /// <summary>Bytes of the finished file replaced by as many others, so that everything stays where it was.</summary>
    public static Breakage Bytes(string condition, string old, string with) =>
        new(condition, $"bytes {old} → {with}", file => file.Build(old, with));
}
