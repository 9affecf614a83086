using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>The next strip starts a page.</summary>
internal sealed class PageBreakElement : BlockElement<PageBreakBlock>
{
    protected override void LayOut(PageBreakBlock block, Column column, StripList strips) => strips.StartPage();
}
