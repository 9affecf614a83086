using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Turns positions in a text into places in the file that the text is a part of.</summary>
internal sealed class Positions
{
    private readonly MarkdownText _text;
    private readonly List<int> _lineStarts = [0];

    public Positions(MarkdownText text)
    {
        _text = text;
        for (var i = 0; i < text.Text.Length; i++)
        {
            if (text.Text[i] == '\n')
                _lineStarts.Add(i + 1);
        }
    }

    /// <summary>The place of the character at an index.</summary>
    public Place At(int index)
    {
        var found = _lineStarts.BinarySearch(index);
        var line = found >= 0 ? found : ~found - 1;
        var column = index - _lineStarts[line] + 1;
        // The text may start within a line, but goes on at the first column of the next ones.
        return new Place(_text.Start.File, _text.Start.Line + line, line == 0 ? column + Math.Max(_text.Start.Column, 1) - 1 : column);
    }
}
