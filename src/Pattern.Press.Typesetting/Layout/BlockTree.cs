using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Which blocks are inside others.</summary>
internal static class BlockTree
{
    /// <summary>The blocks directly inside a block, in reading order.</summary>
    public static IEnumerable<Block> Children(Block block) => block switch
    {
        ListBlock list => list.Items.SelectMany(item => item),
        CalloutBlock callout => callout.Content,
        QuoteBlock quote => quote.Content,
        KeepTogetherBlock group => group.Content,
        PageShareBlock share => share.Content,
        ColumnsBlock columns => columns.Content,
        FigureRowBlock row => row.Figures,
        BesideBlock beside => beside.Text.Append(beside.Figure),
        _ => [],
    };
}
