namespace Pattern.Press.Plans.Tiling;

/// <summary>A shared page while it is being filled.</summary>
internal interface ISharedSheet
{
    /// <summary>How far down the page is filled.</summary>
    double Height { get; }

    /// <summary>Takes a block if there is a place among those that are there.</summary>
    bool TakeAmong(SharedBlock block);

    /// <summary>Takes a block if there is any place.</summary>
    bool Take(SharedBlock block);

    /// <summary>The page, with everything centred as a whole so that it has even edges.</summary>
    SharedPage Set();
}
