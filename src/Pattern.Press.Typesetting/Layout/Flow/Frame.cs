namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>A ground behind some strips: the tint of a callout. If they reach over several pages, so does it.</summary>
internal abstract class Frame(Frame? parent, double padTop, double padBottom)
{
    /// <summary>The frame around this one.</summary>
    public Frame? Parent { get; } = parent;

    /// <summary>Room between its top and the first strip in it.</summary>
    public double PadTop { get; } = padTop;

    /// <summary>Room between the last strip in it and its bottom.</summary>
    public double PadBottom { get; } = padBottom;

    /// <summary>Draws it behind everything.</summary>
    /// <param name="canvas">The page.</param>
    /// <param name="left">The left of the text area.</param>
    /// <param name="top">Its top.</param>
    /// <param name="bottom">Its bottom.</param>
    /// <param name="starts">Whether its first strip is on this page, and not on one before.</param>
    public abstract void Draw(PageCanvas canvas, double left, double top, double bottom, bool starts);

    /// <summary>Whether this frame is around another, or is it.</summary>
    public bool Holds(Frame? frame)
    {
        for (; frame is not null; frame = frame.Parent)
        {
            if (ReferenceEquals(frame, this))
                return true;
        }

        return false;
    }
}
