using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A tip or a caution: a tinted ground, a drawn mark, a bold title. A short one stays on one page; a long one may go on to the next after some of its items.</summary>
internal sealed class CalloutElement : BlockElement<CalloutBlock>
{
    private const double PadSide = 4;
    private const double Pad = 3.2;
    private const double MarkRoom = 7.5;

    // Of a page. Moved to the next as a whole, a callout higher than that would leave too much of this one empty.
    private const double HighestUndivided = 1.0 / 3;
    private const int LeastItems = 2;

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
        foreach (var child in block.Content)
        {
            var start = strips.Count;
            BlockElements.LayOut(child, inside, strips);
            if (strips.Count > start)
                strips[start].StartsItem = true;
        }

        if (strips.Count > content)
            strips[content].Gap = gap;
        if (strips.HeightFrom(first) > session.TextHeight * HighestUndivided)
            strips.KeepItemsTogether(first, session.TextHeight, LeastItems);
        else
            strips.KeepTogether(first, session.TextHeight);
        strips.Space(session.Styles.Spacing.Block);
    }
}
