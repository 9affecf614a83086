using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A tip or a caution: a tinted ground, a drawn mark, a bold title. It stays on one page if it fits one.</summary>
internal sealed class CalloutElement : BlockElement<CalloutBlock>
{
    private const double PadSide = 4;
    private const double Pad = 3.2;
    private const double MarkRoom = 7.5;

    protected override void LayOut(CalloutBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var palette = session.Styles.Palette;
        var colour = block.Kind == CalloutKind.Caution ? palette.Caution : palette.Accent;
        var look = session.Looks.CalloutTitle;
        // The middle of the mark is the middle of the capitals of the first line.
        var middle = Pad + look.Baseline - (look.Family.Bold.CapHeight * look.Size * 25.4 / 72 / look.Family.Bold.UnitsPerEm / 2);
        var frame = new TintFrame(column.Frame, column.X, column.Width, Pad, Pad, palette.Tint, new Stroke(colour, 0.5))
        {
            Mark = (left, top) => block.Kind == CalloutKind.Caution
                ? CalloutMarks.Caution(left + PadSide, top + middle, colour, palette.Tint)
                : CalloutMarks.Tip(left + PadSide, top + middle, colour),
        };
        var inside = column.Inset(PadSide + MarkRoom, PadSide) with
        {
            Parent = column.Parent.Add(Role.Div),
            Frame = frame,
            MayJustify = false,
        };

        strips.Space(session.Styles.Spacing.Block);
        var first = strips.Count;
        if (block.Title.Length > 0)
        {
            inside.SetText([new TextInline(block.Title)], look, inside.Parent.Add(Role.P), strips);
            for (var i = first; i < strips.Count; i++)
                strips[i].Keep = Keep.Firm;
        }

        // The first block's own room above would come on top of the frame's.
        var content = strips.Count;
        var gap = content == first ? strips.PendingSpace : 0;
        inside.LayOut(block.Content, strips);
        if (strips.Count > content)
            strips[content].Gap = gap;
        strips.KeepTogether(first, session.TextHeight);
        strips.Space(session.Styles.Spacing.Block);
    }
}
