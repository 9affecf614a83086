namespace Pattern.Press.Typesetting.Layout;

/// <summary>How large the figures of a text are made, as the page has room.</summary>
internal enum FigureScale
{
    /// <summary>As goes well with the text.</summary>
    Usual,

    /// <summary>As small as they can be read, and headings closer to what is above, because the page then holds more.</summary>
    Tight,

    /// <summary>
    /// As goes well with the text, and the group is not kept together: kept, it would leave the page above it all but empty.
    /// </summary>
    Divided,

    /// <summary>Larger than they have to be, because the page would stay empty otherwise.</summary>
    Generous,

    /// <summary>Larger still, across the page: the group has a page to itself and leaves much of it empty.</summary>
    Alone,
}
