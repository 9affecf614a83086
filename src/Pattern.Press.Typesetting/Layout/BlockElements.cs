using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Elements;
using Pattern.Press.Typesetting.Layout.Flow;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Lays out blocks of one kind.</summary>
internal interface IBlockElement
{
    /// <summary>Turns a block into strips of a column, and adds its elements to the structure.</summary>
    void LayOut(Block block, Column column, StripList strips);
}

/// <summary>Lays out blocks of one type.</summary>
internal abstract class BlockElement<TBlock> : IBlockElement
    where TBlock : Block
{
    void IBlockElement.LayOut(Block block, Column column, StripList strips) => LayOut((TBlock)block, column, strips);

    protected abstract void LayOut(TBlock block, Column column, StripList strips);
}

/// <summary>Which element lays out which kind of block: the one place where kinds of blocks are listed.</summary>
internal static class BlockElements
{
    private static readonly Dictionary<Type, IBlockElement> Elements = new()
    {
        [typeof(HeadingBlock)] = new HeadingElement(),
        [typeof(ParagraphBlock)] = new ParagraphElement(),
        [typeof(ListBlock)] = new ListElement(),
        [typeof(TableBlock)] = new TableElement(),
        [typeof(FigureBlock)] = new FigureElement(),
        [typeof(ImageBlock)] = new ImageElement(),
        [typeof(CalloutBlock)] = new CalloutElement(),
        [typeof(QuoteBlock)] = new QuoteElement(),
        [typeof(LiteralBlock)] = new LiteralElement(),
        [typeof(RuleBlock)] = new RuleElement(),
        [typeof(KeepTogetherBlock)] = new KeepTogetherElement(),
        [typeof(PageShareBlock)] = new PageShareElement(),
        [typeof(BesideBlock)] = new BesideElement(),
        [typeof(FigureRowBlock)] = new FigureRowElement(),
        [typeof(ColumnsBlock)] = new ColumnsElement(),
        [typeof(ContentsBlock)] = new ContentsElement(),
        [typeof(PageBreakBlock)] = new PageBreakElement(),
    };

    /// <summary>Lays out a block.</summary>
    public static void LayOut(Block block, Column column, StripList strips)
    {
        if (!Elements.TryGetValue(block.GetType(), out var element))
            throw new ArgumentException($"No layout is known for {block.GetType().Name}.", nameof(block));
        var name = block is HeadingBlock heading ? column.Session.Outline.Of(heading).Destination : block.Destination;
        if (name is not null)
            strips.Name(name);
        if (block.KeepsWithPrevious)
            strips.KeepLast();
        element.LayOut(block, block.Source is null ? column : column with { Source = block.Source }, strips);
    }
}
