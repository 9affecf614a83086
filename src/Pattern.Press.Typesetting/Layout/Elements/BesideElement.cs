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

    private const double AloneMostOfPage = 0.42;

    // How much wider a figure has to become to be worth a place of its own below the text.
    private const double WorthMoving = 1.15;

    // How much more of a figure's lettering a larger one has to show.
    private const double WorthSeeing = 0.1;

    // What a less good arrangement must save at least, in millimetres.
    private const double WorthIt = 4;

    // The ways of placing text and figures, by their numbers: side by side with more or less of the width for the text, with
    // figures as small as usual where they are smaller elsewhere, and below each other.
    private const int Beside = 0;
    private const int WideText = 1;
    private const int NarrowText = 2;
    private const int BesideUsual = 3;
    private const int RowBelow = 4;
    private const int LargeBelow = 5;
    private const int Below = 6;
    private const int AloneBelow = 7;

    /// <summary>A way of placing text and figures; whether it can be done.</summary>
    private delegate bool Arrangement(Column column, StripList strips);

    protected override void LayOut(BesideBlock block, Column column, StripList strips)
    {
        var ways = Ways(block);
        Trial? tried = null;
        var best = column.Session.Arrangements.Get(block, column, () => (tried = Best(ways, block.Figure is FigureRowBlock, column)).Way);
        // Where only heights are asked for, the trial has answered.
        if (column.Session.IsMeasuring && column.Frame is null && tried is { Strips: { } known })
            strips.Adopt(known);
        else
            ways[best](column, strips);
    }

    /// <summary>All ways of placing the text and the figures of a block; the last is one that always works.</summary>
    private static Arrangement[] Ways(BesideBlock block)
    {
        var row = block.Figure as FigureRowBlock;
        var ways = new Arrangement[8];
        ways[Beside] = (column, strips) => TryBeside(block, column, TextShare, strips);
        ways[WideText] = (column, strips) => TryBeside(block, column, WideTextShare, strips);
        ways[NarrowText] = (column, strips) => TryBeside(block, column, NarrowTextShare, strips);
        ways[BesideUsual] = (column, strips) => TryBeside(block, column with { FigureScale = FigureScale.Usual }, TextShare, strips);
        ways[RowBelow] = (column, strips) => row is not null && TryAbove(block.Text, row, column, strips);
        ways[LargeBelow] = (column, strips) => LayOutAbove(block, column with { MostFigureHeight = column.Session.TextHeight * GenerousMostOfPage }, strips);
        ways[Below] = (column, strips) => LayOutAbove(block, column, strips);
        ways[AloneBelow] = (column, strips) => TryAlone(block, column, strips);
        return ways;
    }

    private static Trial Best(Arrangement[] ways, bool isRow, Column column)
    {
        if (column.FigureScale == FigureScale.Alone && Try(ways, AloneBelow, column) is { IsCrowded: false } alone)
            return alone;
        if (column.FigureScale is FigureScale.Generous or FigureScale.Alone && Generous(ways, isRow, column) is { } generous)
            return generous;
        if (!isRow && column.FigureScale != FigureScale.Tight)
            return FirstLegible([Beside, Below], ways, column);
        return Lowest(column.FigureScale == FigureScale.Tight ? [Beside, WideText, BesideUsual, RowBelow, Below] : [Beside, WideText, RowBelow, Below], ways, column);
    }

    private static Trial? Generous(Arrangement[] ways, bool isRow, Column column)
    {
        if (isRow)
            return Try(ways, RowBelow, column) is { IsCrowded: false } row ? row : null;
        var beside = Try(ways, NarrowText, column);
        // Room is worth most where it lets more of the figure be named.
        if (beside is not { Crowding: 0 }
            && Try(ways, LargeBelow, column) is { IsCrowded: false } below
            && below.Crowding < (beside?.Crowding ?? 1) - WorthSeeing)
        {
            return below;
        }

        return beside is { IsCrowded: false } ? beside : null;
    }

    private static bool LayOutAbove(BesideBlock block, Column column, StripList strips)
    {
        var figures = FiguresOf(block);
        var height = column.MostFigureHeight ?? FigureHeights.For(figures, column.Width, column);
        if (!block.FigureFirst)
            LayOutText(block.Text, column, strips);
        (column with { MostFigureHeight = height }).LayOut(figures, strips);
        if (block.FigureFirst)
            column.LayOut(block.Text, strips);
        return true;
    }

    /// <summary>Sets a drawing across the page, if that makes it larger than it would be beside the text.</summary>
    private static bool TryAlone(BesideBlock block, Column column, StripList strips)
    {
        if (block.Figure is not FigureBlock { Drawing.GainsFromSize: true } figure)
            return false;
        var page = column.Session.TextHeight;
        var beside = column.Session.Drawings.Of(figure.Drawing, (column.Width - column.Session.Styles.Spacing.Gutter) * (1 - NarrowTextShare), page);
        var below = column.Session.Drawings.Of(figure.Drawing, column.Width, page * AloneMostOfPage);
        return below.Width > beside.Width * WorthMoving && LayOutAbove(block, column with { MostFigureHeight = page * AloneMostOfPage }, strips);
    }

    private static bool TryAbove(IReadOnlyList<Block> text, FigureRowBlock row, Column column, StripList strips)
    {
        LayOutText(text, column, strips);
        return FigureRowElement.TrySideBySide(row, column, strips);
    }

    private static void LayOutText(IReadOnlyList<Block> text, Column column, StripList strips)
    {
        if (column.Session.IsMeasuring && strips.IsUntouched)
            strips.Adopt(column.Session.TextTrials.Get(text, column).Strips);
        else
            column.LayOut(text, strips);
    }

    /// <summary>The first way in which no figure is crowded; if all are, the first that works.</summary>
    private static Trial FirstLegible(ReadOnlySpan<int> candidates, Arrangement[] ways, Column column)
    {
        Trial? best = null;
        foreach (var way in candidates)
        {
            if (Try(ways, way, column) is not { } trial)
                continue;
            if (!trial.IsCrowded)
                return trial;
            best ??= trial;
        }

        return best ?? Trial.Untried;
    }

    /// <summary>The lowest way of those in which no figure is crowded, or of all if there is none.</summary>
    private static Trial Lowest(ReadOnlySpan<int> candidates, Arrangement[] ways, Column column)
    {
        var best = Trial.Untried;
        foreach (var way in candidates)
        {
            if (Try(ways, way, column) is not { } trial)
                continue;
            if (trial.IsCrowded == best.IsCrowded ? trial.Height < best.Height - WorthIt : best.IsCrowded)
                best = trial;
        }

        return best;
    }

    private static Trial? Try(Arrangement[] ways, int way, Column column)
    {
        Trial? trial = null;
        column.Session.Measure(() =>
        {
            var strips = new StripList();
            if (ways[way](column with { Parent = new StructureElement(Role.Div), Frame = null }, strips))
                trial = new Trial(way, strips.HeightFrom(0), strips.Strips.Any(strip => strip.IsCrowded), strips.Strips.Select(strip => strip.Crowding).DefaultIfEmpty().Max(), strips);
        });
        return trial;
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
        var (words, shown) = (new StructureElement(Role.Div), new StructureElement(Role.Div));
        var problems = column.Session.ProblemCount;
        var textColumn = column.Inset(0, column.Width - textWidth) with { Parent = words, Frame = null };
        if (Words() is not { } text)
            return false;
        var textHeight = text.HeightFrom(0);
        var figures = FiguresOf(block);
        var figureColumn = column.Inset(column.Width - figureWidth, 0) with { Parent = shown, Frame = null, MayJustify = false };
        if (column.FigureScale == FigureScale.Tight)
            figureColumn = figureColumn with { MostFigureHeight = Math.Max(FigureHeights.Lowest, (textHeight / figures.Count) - CaptionRoom) };
        var (figure, figureHeight) = Figures(figureColumn);
        if (figureColumn.MostFigureHeight is { } most && most > FigureHeights.Lowest && figureHeight > textHeight + WorthIt)
        {
            // Captions of narrow figures take more lines than was thought.
            shown = new StructureElement(Role.Div);
            (figure, figureHeight) = Figures(figureColumn with
            {
                Parent = shown,
                MostFigureHeight = Math.Max(FigureHeights.Lowest, most - ((figureHeight - textHeight) / figures.Count)),
            });
        }

        if (figure.Count == 0 || text.Count == 0)
            return false;

        // What is too wide for half the column may well fit the whole.
        if (column.Session.ProblemCount > problems)
            return false;

        var drawn = figure[0].Height;
        var isFlat = block.Figure is FigureBlock or ImageBlock && drawn < figureWidth * FlattestFigure;
        var isLong = textHeight > figureHeight * LongestText && textHeight - figureHeight > MostEmptySpace;
        if (isFlat || isLong || Math.Max(textHeight, figureHeight) > column.Session.TextHeight)
            return false;

        foreach (var element in words.Children.Concat(shown.Children))
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

        StripList? Words()
        {
            if (column.Session.IsMeasuring)
                return column.Session.TextTrials.Get(block.Text, textColumn) is { HasProblems: false } tried ? tried.Strips : null;
            var set = new StripList();
            textColumn.LayOut(block.Text, set);
            return set;
        }

        (StripList Strips, double Height) Figures(Column place)
        {
            var set = new StripList();
            place.LayOut(figures.Select(one => one is FigureBlock ? FigureRowElement.Widest(one) : one), set);
            return (set, set.HeightFrom(0));
        }
    }

    /// <summary>How a way came out.</summary>
    /// <param name="Way">Its number.</param>
    /// <param name="Height">How high it is, in millimetres.</param>
    /// <param name="IsCrowded">Whether a figure in it is crowded.</param>
    /// <param name="Crowding">How much of a figure's lettering found no room, from 0 to 1.</param>
    /// <param name="Strips">What was laid out.</param>
    private sealed record Trial(int Way, double Height, bool IsCrowded, double Crowding, StripList? Strips)
    {
        /// <summary>The way that always works, if no way was found to.</summary>
        public static Trial Untried { get; } = new(Below, double.PositiveInfinity, true, 1, null);
    }
}
