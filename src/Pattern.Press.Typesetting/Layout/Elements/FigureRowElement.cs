using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>Figures side by side in columns of equal width; one below the other where those would be too narrow.</summary>
internal sealed class FigureRowElement : BlockElement<FigureRowBlock>
{
    /// <summary>Narrower figures cannot be read at arm's length, in millimetres.</summary>
    public const double NarrowestFigure = 42;

    // Of a page.
    private const double GenerousMostOfPage = 0.45;

    protected override void LayOut(FigureRowBlock block, Column column, StripList strips)
    {
        if (!TrySideBySide(block, column, strips))
            column.LayOut(block.Figures, strips);
    }

    /// <summary>Sets the figures side by side if each of them fits its share of the width.</summary>
    public static bool TrySideBySide(FigureRowBlock block, Column column, StripList strips)
    {
        var count = block.Figures.Count;
        var gutter = column.Session.Styles.Spacing.Gutter;
        var width = (column.Width - (gutter * (count - 1))) / count;
        return count > 1 && width >= NarrowestFigure && column.Session.Try(() => TryWidth(block, column, width, gutter, strips));
    }

    /// <summary>A figure as wide as the room for it, whatever it wanted to be.</summary>
    public static Block Widest(Block figure) => figure switch
    {
        FigureBlock drawing => drawing with { Width = FigureWidth.Full },
        ImageBlock image => image with { Width = FigureWidth.Full },
        _ => figure,
    };

    private static bool TryWidth(FigureRowBlock block, Column column, double width, double gutter, StripList strips)
    {
        var trial = new StructureElement(Role.Div);
        var problems = column.Session.ProblemCount;
        var height = column.FigureScale is FigureScale.Generous or FigureScale.Alone
            ? column.Session.TextHeight * GenerousMostOfPage
            : FigureHeights.For(block.Figures, width, column);
        var group = new GroupStrip("A row of figures") { Source = column.Source, Frame = column.Frame };
        for (var i = 0; i < block.Figures.Count; i++)
        {
            var left = i * (width + gutter);
            var cell = column.Inset(left, column.Width - left - width) with
            {
                Parent = trial,
                Frame = null,
                MayJustify = false,
                MostFigureHeight = height,
            };
            var figure = new StripList();
            BlockElements.LayOut(Widest(block.Figures[i]), cell, figure);
            group.AddColumn(figure.Strips);
        }

        if (column.Session.ProblemCount > problems || group.Height > column.Session.TextHeight)
            return false;
        foreach (var element in trial.Children)
            column.Parent.Add(element);
        strips.Space(column.Session.Styles.Spacing.Block);
        strips.Add(group);
        strips.Space(column.Session.Styles.Spacing.Block);
        return true;
    }
}
