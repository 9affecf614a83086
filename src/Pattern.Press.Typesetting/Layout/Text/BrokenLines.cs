namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// The lines of a paragraph in a measure. How many there are is known at once; they are set when one of them is drawn, which
/// most of what layout tries never is.
/// </summary>
/// <param name="shaped">The paragraph's words.</param>
/// <param name="width">The measure in millimetres.</param>
/// <param name="justified">Whether lines fill it.</param>
/// <param name="parts">The parts of the paragraph, in their places in the structure.</param>
internal sealed class BrokenLines(ShapedParagraph shaped, double width, bool justified, IReadOnlyList<InlinePart> parts)
{
    private IReadOnlyList<SetLine>? _lines;

    /// <summary>How many lines there are.</summary>
    public int Count { get; } = shaped.Ends(width, justified).Count;

    /// <summary>One of the lines.</summary>
    public SetLine this[int index] => (_lines ??= shaped.SetLines(width, justified, parts))[index];
}
