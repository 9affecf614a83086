using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Text with figures to its right, their tops level. One below the other where that reads better: in a narrow column,
/// when the figure would be a mere strip, and when the text would run on long below the figure. Several figures stand
/// where they take the least height.
/// </summary>
internal sealed class BesideElement : BlockElement<BesideBlock>
{
    // How much of the width the text takes: as it is best, so that figures below each other are lower, and so that a single
    // one is large.
    private const double TextShare = 0.58;
    private const double WideTextShare = 0.64;
    private const double NarrowTextShare = 0.52;

    private const double FlattestFigure = 0.3;
    private const double LongestText = 2.4;
    private const double MostEmptySpace = 60;

    // About two lines of caption and the room around, in millimetres.
    private const double CaptionRoom = 12;

    // Of a page.
    private const double GenerousMostOfPage = 0.38;

    // How much more of a figure's lettering a larger one has to show.
    private const double WorthSeeing = 0.1;

    // What a less good arrangement must save at least, in millimetres.
    private const double WorthIt = 4;

    /// <summary>A way of placing text and figures; whether it can be done.</summary>
    private delegate bool Arrangement(Column column, StripList strips);

    protected override void LayOut(BesideBlock block, Column column, StripList strips)
    {
        var row = block.Figure as FigureRowBlock;
        if (column.FigureScale == FigureScale.Generous && TryGenerous(block, row, column, strips))
            return;
        if (row is null && column.FigureScale != FigureScale.Tight)
        {
            LayOutLegible(
                [
                    (inside, list) => TryBeside(block, inside, TextShare, list),
                    (inside, list) => LayOutAbove(block, inside, list),
                ],
                column,
                strips);
            return;
        }

        LayOutLowest(
            [
                (inside, list) => TryBeside(block, inside, TextShare, list),
                (inside, list) => TryBeside(block, inside, WideTextShare, list),
                (inside, list) => column.FigureScale == FigureScale.Tight && TryBeside(block, inside with { FigureScale = FigureScale.Usual }, TextShare, list),
                (inside, list) => row is not null && TryAbove(block.Text, row, inside, list),
                (inside, list) => LayOutAbove(block, inside, list),
            ],
            column,
            strips);
    }

    private static bool TryGenerous(BesideBlock block, FigureRowBlock? row, Column column, StripList strips)
    {
        if (row is not null)
        {
            bool Row(Column inside, StripList list) => TryAbove(block.Text, row, inside, list);
            return Outcome(Row, column) is { IsCrowded: false } && Row(column, strips);
        }

        bool Beside(Column inside, StripList list) => TryBeside(block, inside, NarrowTextShare, list);
        var beside = Outcome(Beside, column);
        // Room is worth most where it lets more of the figure be named.
        if (beside is not { Crowding: 0 })
        {
            bool Above(Column inside, StripList list) =>
                LayOutAbove(block, inside with { MostFigureHeight = column.Session.TextHeight * GenerousMostOfPage }, list);
            if (Outcome(Above, column) is { IsCrowded: false } above && above.Crowding < (beside?.Crowding ?? 1) - WorthSeeing)
                return Above(column, strips);
        }

        return beside is { IsCrowded: false } && Beside(column, strips);
    }

    private static bool LayOutAbove(BesideBlock block, Column column, StripList strips)
    {
        var figures = FiguresOf(block);
        var height = column.MostFigureHeight ?? FigureHeights.For(figures, column.Width, column);
        if (!block.FigureFirst)
            column.LayOut(block.Text, strips);
        (column with { MostFigureHeight = height }).LayOut(figures, strips);
        if (block.FigureFirst)
            column.LayOut(block.Text, strips);
        return true;
    }

    private static bool TryAbove(IReadOnlyList<Block> text, FigureRowBlock row, Column column, StripList strips)
    {
        column.LayOut(text, strips);
        return FigureRowElement.TrySideBySide(row, column, strips);
    }

    /// <summary>Takes the first arrangement in which no figure is crowded; if all are, the first that works.</summary>
    private static void LayOutLegible(IReadOnlyList<Arrangement> arrangements, Column column, StripList strips)
    {
        Arrangement? best = null;
        foreach (var arrangement in arrangements)
        {
            if (Outcome(arrangement, column) is not { } outcome)
                continue;
            best ??= arrangement;
            if (outcome.IsCrowded)
                continue;
            best = arrangement;
            break;
        }

        (best ?? arrangements[^1])(column, strips);
    }

    /// <summary>
    /// Tries arrangements, the best first, and keeps the lowest of those in which no figure is crowded, or of all if there
    /// is none; the last is one that always works.
    /// </summary>
    private static void LayOutLowest(IReadOnlyList<Arrangement> arrangements, Column column, StripList strips)
    {
        var best = arrangements[^1];
        var lowest = (Height: double.PositiveInfinity, IsCrowded: true, Crowding: 1.0);
        foreach (var arrangement in arrangements)
        {
            if (Outcome(arrangement, column) is not { } outcome)
                continue;
            var isBetter = outcome.IsCrowded == lowest.IsCrowded ? outcome.Height < lowest.Height - WorthIt : lowest.IsCrowded;
            if (isBetter)
                (best, lowest) = (arrangement, outcome);
        }

        best(column, strips);
    }

    private static (double Height, bool IsCrowded, double Crowding)? Outcome(Arrangement arrangement, Column column)
    {
        (double, bool, double)? outcome = null;
        column.Session.Measure(() =>
        {
            var strips = new StripList();
            if (arrangement(column with { Parent = new StructureElement(Role.Div), Frame = null }, strips))
                outcome = (Stacking.Stack(strips.Strips).Height, strips.Strips.Any(strip => strip.IsCrowded), strips.Strips.Select(strip => strip.Crowding).DefaultIfEmpty().Max());
        });
        return outcome;
    }

    private static IReadOnlyList<Block> FiguresOf(BesideBlock block) =>
        block.Figure is FigureRowBlock row ? row.Figures : [block.Figure];

    private static bool TryBeside(BesideBlock block, Column column, double share, StripList strips)
    {
        var gutter = column.Session.Styles.Spacing.Gutter;
        var textWidth = (column.Width - gutter) * share;
        var figureWidth = column.Width - gutter - textWidth;
        return figureWidth >= FigureRowElement.NarrowestFigure
            && column.Session.Try(() => TryBeside(block, column, textWidth, figureWidth, strips));
    }

    private static bool TryBeside(BesideBlock block, Column column, double textWidth, double figureWidth, StripList strips)
    {
        var trial = new StructureElement(Role.Div);
        var problems = column.Session.ProblemCount;
        var figure = new StripList();
        var figureColumn = column.Inset(column.Width - figureWidth, 0) with { Parent = trial, Frame = null, MayJustify = false };
        var text = new StripList();
        var textColumn = column.Inset(0, column.Width - textWidth) with { Parent = trial, Frame = null };
        textColumn.LayOut(block.Text, text);
        var (_, textHeight) = Stacking.Stack(text.Strips);
        var figures = FiguresOf(block);
        if (column.FigureScale == FigureScale.Tight)
            figureColumn = figureColumn with { MostFigureHeight = Math.Max(FigureHeights.Lowest, (textHeight / figures.Count) - CaptionRoom) };
        figureColumn.LayOut(figures.Select(one => one is FigureBlock ? FigureRowElement.Widest(one) : one), figure);
        if (figure.Count == 0 || text.Count == 0)
            return false;

        // What is too wide for half the column may well fit the whole.
        if (column.Session.ProblemCount > problems)
            return false;

        var (_, figureHeight) = Stacking.Stack(figure.Strips);
        var drawn = figure[0].Height;
        var isFlat = block.Figure is FigureBlock or ImageBlock && drawn < figureWidth * FlattestFigure;
        var isLong = textHeight > figureHeight * LongestText && textHeight - figureHeight > MostEmptySpace;
        if (isFlat || isLong || Math.Max(textHeight, figureHeight) > column.Session.TextHeight)
            return false;

        foreach (var element in trial.Children)
            column.Parent.Add(element);
        var group = new GroupStrip("Text with a figure beside it") { Source = column.Source, Frame = column.Frame };
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
