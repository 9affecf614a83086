using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Text with a figure to its right, their tops level. One below the other where that reads better: in a narrow column,
/// when the figure would be a mere strip, and when the text would run on long below the figure.
/// </summary>
internal sealed class BesideElement : BlockElement<BesideBlock>
{
    private const double TextShare = 0.58;
    private const double NarrowestFigure = 42;
    private const double FlattestFigure = 0.3;
    private const double LongestText = 2.4;
    private const double MostEmptySpace = 60;

    protected override void LayOut(BesideBlock block, Column column, StripList strips)
    {
        var gutter = column.Session.Styles.Spacing.Gutter;
        var textWidth = (column.Width - gutter) * TextShare;
        var figureWidth = column.Width - gutter - textWidth;
        if (figureWidth >= NarrowestFigure && column.Session.Try(() => TryBeside(block, column, textWidth, figureWidth, strips)))
            return;
        column.LayOut(block.Text, strips);
        BlockElements.LayOut(block.Figure, column, strips);
    }

    private static bool TryBeside(BesideBlock block, Column column, double textWidth, double figureWidth, StripList strips)
    {
        var trial = new StructureElement(Role.Div);
        var problems = column.Session.ProblemCount;
        var figure = new StripList();
        var figureColumn = column.Inset(column.Width - figureWidth, 0) with { Parent = trial, Frame = null, MayJustify = false };
        var wide = block.Figure is FigureBlock drawing ? drawing with { Width = FigureWidth.Full } : block.Figure;
        var text = new StripList();
        var textColumn = column.Inset(0, column.Width - textWidth) with { Parent = trial, Frame = null };
        textColumn.LayOut(block.Text, text);
        BlockElements.LayOut(wide, figureColumn, figure);
        if (figure.Count == 0 || text.Count == 0)
            return false;

        // What is too wide for half the column may well fit the whole.
        if (column.Session.ProblemCount > problems)
            return false;

        var (_, textHeight) = Stacking.Stack(text.Strips);
        var (_, figureHeight) = Stacking.Stack(figure.Strips);
        var drawn = figure[0].Height;
        var isFlat = block.Figure is FigureBlock or ImageBlock && drawn < figureWidth * FlattestFigure;
        var isLong = textHeight > figureHeight * LongestText && textHeight - figureHeight > MostEmptySpace;
        if (isFlat || isLong || Math.Max(textHeight, figureHeight) > column.Session.TextHeight)
            return false;

        foreach (var element in trial.Children)
            column.Parent.Add(element);
        var group = new GroupStrip { Source = column.Source, Frame = column.Frame };
        group.AddColumn(text.Strips);
        // The drawing's top is level with the capitals of the first line, not with the top of its leading.
        var look = column.Session.Looks.Body;
        group.AddColumn(figure.Strips, Math.Max(0, look.Baseline - (look.Size * 25.4 / 72 * 0.66)));
        strips.Space(Math.Max(text[0].Gap, column.Session.Styles.Spacing.Paragraph));
        strips.Add(group);
        strips.Space(column.Session.Styles.Spacing.Block);
        return true;
    }
}
