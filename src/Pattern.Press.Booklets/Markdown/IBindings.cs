using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>What names in the words of a booklet stand for, once its model is there.</summary>
public interface IBindings
{
    /// <summary>The names that may stand in double braces.</summary>
    IReadOnlyCollection<string> Names { get; }

    /// <summary>The value of a name, ready to be set in both units, or null when there is none.</summary>
    IReadOnlyList<Inline>? Value(string name);

    /// <summary>A figure, or null after noting what is wrong with it.</summary>
    Block? Figure(FigureSource figure, Problems problems);
}
