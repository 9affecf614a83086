using System.Globalization;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Something to look at with a caption below: in ragged books at the left like the text, in justified ones in the middle.
/// </summary>
internal abstract class CaptionedElement<TBlock> : BlockElement<TBlock>
    where TBlock : Block
{
    // A drawing that fills a page drowns the text around it.
    private const double MostOfPage = 0.6;
    private const double CaptionGap = 1.8;

    protected static double WidthOf(FigureWidth width, Column column) => column.Width * width switch
    {
        FigureWidth.Small => 0.4,
        FigureWidth.Medium => 0.62,
        _ => 1,
    };

    protected static double MostHeight(Column column) =>
        Math.Min(column.MostFigureHeight ?? double.PositiveInfinity, column.Session.TextHeight * MostOfPage);

    protected static void Place(
        DrawnFigure drawn, string alternativeText, IReadOnlyList<Inline> caption, Column column, StripList strips)
    {
        var session = column.Session;
        var spacing = session.Styles.Spacing;
        if (drawn.Width > column.Width + 0.01)
        {
            session.Report(
                column.Source,
                string.Create(CultureInfo.InvariantCulture, $"A figure is {drawn.Width:0.#} mm wide, but there are only {column.Width:0.#} mm for it. Make it smaller."));
        }

        var group = caption.Count == 0 ? column.Parent : column.Parent.Add(Role.Div);
        var figure = group.Add(Role.Figure);
        figure.AlternativeText = alternativeText;
        var left = session.Styles.Justified ? Math.Max(0, (column.Width - drawn.Width) / 2) : 0;
        strips.Space(spacing.Block);
        strips.Add(new DrawnStrip(figure, drawn)
        {
            X = column.X + left,
            Frame = column.Frame,
            Source = column.Source,
            Keep = caption.Count == 0 ? Keep.Free : Keep.Always,
        });
        if (caption.Count > 0)
        {
            strips.Space(CaptionGap);
            var first = strips.Count;
            // A caption is about as wide as its figure, but never so narrow that it becomes a column of single words.
            var width = Math.Min(column.Width - left, Math.Max(drawn.Width, column.Width * 0.6));
            (column.Inset(left, column.Width - left - width) with { MayJustify = false })
                .SetText(caption, session.Looks.Caption, group.Add(Role.Caption), strips);
            for (var i = first; i < strips.Count - 1; i++)
                strips[i].Keep = Keep.Always;
        }

        strips.Space(spacing.Block);
    }
}
