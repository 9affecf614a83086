using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A short line that parts two thoughts.</summary>
internal sealed class RuleElement : BlockElement<RuleBlock>
{
    private const double Length = 24;

    protected override void LayOut(RuleBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var gap = session.Looks.Body.Leading;
        var length = Math.Min(Length, column.Width);
        strips.Space(gap);
        strips.Add(new RuleStrip(length, new Stroke(session.Styles.Palette.Rule, 0.4))
        {
            X = column.X + (session.Styles.Justified ? (column.Width - length) / 2 : 0),
            Frame = column.Frame,
            Source = column.Source,
        });
        strips.Space(gap);
    }

    private sealed class RuleStrip(double length, Stroke stroke) : Strip
    {
        public override double Height => stroke.Width;

        protected override void Draw(PageCanvas canvas, double x, double y) =>
            canvas.Decorate(new PathItem(PathBuilder.Line(x, y + (Height / 2), x + length, y + (Height / 2)), null, stroke));
    }
}
