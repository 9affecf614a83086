using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A heading: more room above than below, so that it belongs to what follows.</summary>
internal sealed class HeadingElement : BlockElement<HeadingBlock>
{
    // In body lines, by level.
    private static readonly double[] Above = [2.6, 2.0, 1.3, 1.0];
    private static readonly double[] Below = [0.7, 0.35, 0.2, 0];

    // Of the room above, where groups stand close so that a page holds one more.
    private const double TightAbove = 0.65;

    protected override void LayOut(HeadingBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var level = Math.Clamp(block.Level, 1, Above.Length);
        var line = session.Looks.Body.Leading;
        var element = column.Parent.Add(session.Outline.Of(block).Role);
        strips.Space(Above[level - 1] * line * (column.FigureScale == FigureScale.Tight ? TightAbove : 1));
        if (block.Overline.Length > 0)
            strips.Add(Overline(block.Overline, element, column));
        column.SetText(block.Content, session.Looks.OfHeading(level), element, strips, isHeading: true);
        strips.NoSpace();
        strips.Space(Below[level - 1] * line);
    }

    private static OverlineStrip Overline(string words, StructureElement element, Column column)
    {
        var look = column.Session.Looks.Overline;
        var style = column.Session.Texts.Get(look, Emphasis.None);
        var run = style.Run(words + " ");
        column.CheckGlyphs(run.Text, run.Glyphs, run.Face);
        return new OverlineStrip(new TextItem(run, 0, 0, look.Colour), element, look.Leading, look.Baseline)
        {
            X = column.X,
            Frame = column.Frame,
            Source = column.Source,
            IsHeading = true,
            Keep = Keep.Firm,
        };
    }

    private sealed class OverlineStrip(TextItem words, StructureElement element, double height, double baseline) : Strip
    {
        public override double Height => height;

        public override double Baseline => baseline;

        protected override void Draw(PageCanvas canvas, double x, double y) =>
            canvas.Tag(element, words with { X = x, Y = y + baseline });
    }
}
