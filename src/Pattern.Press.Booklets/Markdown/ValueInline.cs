using Markdig.Syntax.Inlines;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>A name in double braces, in the syntax tree.</summary>
internal sealed class ValueInline(string name, bool hasEnd) : LeafInline
{
    /// <summary>The name between the braces, without spaces around it.</summary>
    public string Name { get; } = name;

    /// <summary>Whether the braces are closed on the same line.</summary>
    public bool HasEnd { get; } = hasEnd;
}
