namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>How strongly a strip keeps with the one below it, from not at all to always.</summary>
internal enum Keep
{
    /// <summary>A page may end here.</summary>
    Free,

    /// <summary>Parts of one thing, such as a step, that fits a page as a whole.</summary>
    Together,

    /// <summary>A heading and its text, the first two lines of a paragraph, the first rows of a table.</summary>
    Firm,

    /// <summary>Never parted.</summary>
    Always,
}
