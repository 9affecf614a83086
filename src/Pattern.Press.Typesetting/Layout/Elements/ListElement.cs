using System.Globalization;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A list. Labels hang in a margin of their own; numbers end below each other.</summary>
internal sealed class ListElement : BlockElement<ListBlock>
{
    private const double ItemGap = 0.55;
    private const double LabelRoomEms = 0.5;
    private const double BulletRoomEms = 1.25;
    // Bullets of text faces are made for text; as marks they want to be larger.
    private const double BulletSize = 1.3;
    private const double BoxEms = 0.8;
    private const double BoxRoomEms = 1.7;

    private static readonly string[] Bullets = ["•", "–"];

    protected override void LayOut(ListBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var looks = session.Looks;
        var paragraph = session.Styles.Spacing.Paragraph;
        var isDash = block.Kind == ListKind.Bulleted && column.BulletDepth % Bullets.Length == 1;
        var labelLook = looks.Body with
        {
            Colour = session.Styles.Palette.Accent,
            Base = isDash ? Emphasis.None : Emphasis.Bold,
            Size = looks.Body.Size * (block.Kind == ListKind.Bulleted && !isDash ? BulletSize : 1),
            Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures,
        };
        var em = looks.Body.Size * TextStyle.Point;
        var style = session.Texts.Get(labelLook, Emphasis.None);
        var labels = LabelsOf(block, column.BulletDepth, style);
        var widest = labels.Count == 0 ? 0 : labels.Max(label => label?.Width ?? 0);
        var room = block.Kind switch
        {
            ListKind.Numbered => widest + (LabelRoomEms * em),
            ListKind.Checklist => BoxRoomEms * em,
            _ => BulletRoomEms * em,
        };

        var list = column.Parent.Add(Role.L);
        list.Numbering = block.Kind switch
        {
            ListKind.Numbered => ListNumbering.Decimal,
            ListKind.Bulleted => ListNumbering.Disc,
            _ => ListNumbering.None,
        };
        if (column.ListDepth > 0)
            strips.NoSpace();
        strips.Space(column.ListDepth == 0 ? paragraph : paragraph * ItemGap);
        for (var i = 0; i < block.Items.Count; i++)
        {
            var item = list.Add(Role.LI);
            HangingLabel hanging;
            if (labels[i] is { } run)
            {
                var x = block.Kind == ListKind.Numbered ? widest - run.Width : (room - (LabelRoomEms * em) - run.Width) / 2;
                hanging = new TextLabel(item.Add(Role.Lbl), run, column.X + Math.Max(0, x), labelLook.Colour);
            }
            else
            {
                hanging = new BoxLabel(column.X, BoxEms * em, session.Styles.Palette.Text);
            }

            var first = strips.Count;
            var inside = column.Inset(room, 0) with { Parent = item.Add(Role.LBody), ListDepth = column.ListDepth + 1, BulletDepth = column.BulletDepth + (block.Kind == ListKind.Bulleted ? 1 : 0) };
            var gap = i == 0 ? strips.PendingSpace : paragraph * ItemGap;
            inside.LayOut(block.Items[i], strips);
            if (strips.Count == first)
                inside.SetText([new TextInline("\u00A0")], looks.Body, inside.Parent.Add(Role.P), strips);
            strips[first].Gap = gap;
            strips[first].Labels = [.. strips[first].Labels, hanging];
            if (column.KeepsItems)
                strips.KeepTogether(first, session.TextHeight);
            strips.NoSpace();
        }

        strips.Space(column.ListDepth == 0 ? paragraph : paragraph * ItemGap);
    }

    private static List<ShapedRun?> LabelsOf(ListBlock block, int depth, TextStyle style)
    {
        var labels = new List<ShapedRun?>(block.Items.Count);
        for (var i = 0; i < block.Items.Count; i++)
        {
            labels.Add(block.Kind switch
            {
                ListKind.Numbered => style.Run((block.Start + i).ToString(CultureInfo.InvariantCulture) + "."),
                ListKind.Bulleted => style.Run(Bullets[depth % Bullets.Length]),
                _ => null,
            });
        }

        return labels;
    }
}
