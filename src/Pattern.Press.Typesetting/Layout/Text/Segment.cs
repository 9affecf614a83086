namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// A part of a paragraph that is never broken, with the place after it where a line may end. In the words of Knuth and
/// Plass: a box, the glue after it, and the penalty of breaking there.
/// </summary>
/// <param name="Width">The width of the part in millimetres.</param>
/// <param name="Space">The room to the next part when both are on one line.</param>
/// <param name="Stretch">By how much that room likes to grow at most.</param>
/// <param name="Shrink">By how much it can become less.</param>
/// <param name="Hyphen">What a hyphen adds to the line if the line ends here; 0 mostly.</param>
/// <param name="Penalty">How bad it is to end the line here; 0 after a word.</param>
/// <param name="MustBreak">Whether the line ends here in any case.</param>
internal readonly record struct Segment(
    double Width,
    double Space = 0,
    double Stretch = 0,
    double Shrink = 0,
    double Hyphen = 0,
    double Penalty = 0,
    bool MustBreak = false);
