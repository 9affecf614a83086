namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// A part of a paragraph that is never broken, with the place after it where a line may end. In the words of Knuth and
/// Plass: a box, the glue after it, and the penalty of breaking there.
/// </summary>
/// <param name="Width">The width of the part in millimetres.</param>
/// <param name="Space">The room to the next part when both are on one line.</param>
/// <param name="Hyphen">What a hyphen adds to the line if the line ends here; 0 mostly.</param>
/// <param name="Penalty">How bad it is to end the line here; 0 after a word.</param>
/// <param name="MustBreak">Whether the line ends here in any case.</param>
internal readonly record struct Segment(
    double Width,
    double Space = 0,
    double Hyphen = 0,
    float Penalty = 0,
    bool MustBreak = false)
{
    // A glue of Knuth and Plass: a space may grow by a half and shrink by a third.
    private const double Stretches = 1.0 / 2;
    private const double Shrinks = 1.0 / 3;

    /// <summary>By how much the room to the next part likes to grow at most.</summary>
    public double Stretch => Space * Stretches;

    /// <summary>By how much that room can become less.</summary>
    public double Shrink => Space * Shrinks;
}
