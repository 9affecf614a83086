using System.Globalization;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>Lines as they were typed, on a tint. They are never broken: who wrote them meant their ends.</summary>
internal sealed class LiteralElement : BlockElement<LiteralBlock>
{
    private const double PadSide = 4;
    private const double Pad = 2.6;
    private const int TabStop = 4;

    protected override void LayOut(LiteralBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var look = session.Looks.Literal;
        var style = session.Texts.Get(look, Emphasis.Literal);
        var frame = new TintFrame(column.Frame, column.X, column.Width, Pad, Pad, session.Styles.Palette.Tint, null);
        var code = column.Parent.Add(Role.P).Add(Role.Code);
        strips.Space(session.Styles.Spacing.Block);
        var first = strips.Count;
        foreach (var line in block.Lines)
        {
            var run = style.Run(line.TrimEnd().Replace("\t", new string(' ', TabStop), StringComparison.Ordinal) + " ");
            column.CheckGlyphs(run.Text, run.Glyphs, run.Face);
            var room = column.Width - (2 * PadSide);
            if (run.Width - style.SpaceWidth > room + 0.01)
            {
                session.Report(
                    column.Source,
                    string.Create(CultureInfo.InvariantCulture, $"The literal line “{line.Trim()}” is {run.Width:0.#} mm wide, but there are only {room:0.#} mm for it. Break it."));
            }

            strips.Add(new LiteralStrip(code, new TextItem(run, 0, 0, look.Colour), look)
            {
                X = column.X + PadSide,
                Frame = frame,
                Source = column.Source,
            });
        }

        strips.KeepTogether(first, session.TextHeight);
        strips.Space(session.Styles.Spacing.Block);
    }

    private sealed class LiteralStrip(StructureElement element, TextItem line, TextLook look) : Strip
    {
        public override double Height => look.Leading;

        public override double Baseline => look.Baseline;

        protected override void Draw(PageCanvas canvas, double x, double y) =>
            canvas.Tag(element, line with { X = x, Y = y + look.Baseline });
    }
}
