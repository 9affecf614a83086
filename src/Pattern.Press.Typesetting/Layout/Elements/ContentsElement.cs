using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>The contents: a line for each entry, dots, and the number of its page.</summary>
internal sealed class ContentsElement : BlockElement<ContentsBlock>
{
    private const double IndentEms = 1.6;
    private const double NumberRoomEms = 3.2;
    private const double DotPitchEms = 0.62;

    protected override void LayOut(ContentsBlock block, Column column, StripList strips)
    {
        var session = column.Session;
        var looks = session.Looks;
        var em = looks.Body.Size * TextStyle.Point;
        var open = new Stack<(int Level, StructureElement List)>();
        StructureElement? item = null;
        strips.Space(session.Styles.Spacing.Paragraph);
        foreach (var entry in session.Outline.Entries)
        {
            if (entry.Level > block.Depth || !entry.HasNumber)
                continue;
            // Entries of a lower level are a list inside the entry above them.
            while (open.Count > 1 && open.Peek().Level > entry.Level)
                open.Pop();
            if (open.Count == 0 || open.Peek().Level < entry.Level)
                open.Push((entry.Level, (item ?? column.Parent).Add(Role.TOC)));
            item = open.Peek().List.Add(Role.TOCI);

            var top = open.Count == 1;
            var look = looks.Body with
            {
                Base = top && block.Depth > 1 ? Emphasis.Bold : Emphasis.None,
                Features = FontFeatures.LiningFigures,
            };
            var link = item.Add(Role.P).Add(Role.Link);
            var inside = column.Inset((open.Count - 1) * IndentEms * em, NumberRoomEms * em);
            if (top)
                strips.Space(session.Styles.Spacing.Paragraph * 0.8);
            AddEntry(entry, look, link, inside, column, strips);
        }

        strips.Space(session.Styles.Spacing.Block);
    }

    private static void AddEntry(OutlineEntry entry, TextLook look, StructureElement link, Column inside, Column column, StripList strips)
    {
        var session = column.Session;
        var paragraph = session.Paragraph([new TextInline(entry.Title)], look, column.Source);
        paragraph.AttachTo(link);
        inside.Check(paragraph, inside.Width);
        var lines = paragraph.Break(inside.Width, justified: false);
        var numberStyle = session.Texts.Get(look with { Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures }, Emphasis.None);
        for (var i = 0; i < lines.Count; i++)
        {
            var last = i == lines.Count - 1;
            strips.Add(new EntryStrip(entry, lines, i, look, link, last ? numberStyle : null, column.X + column.Width - inside.X, session)
            {
                X = inside.X,
                Frame = column.Frame,
                Source = column.Source,
                Keep = last ? Keep.Free : Keep.Always,
            });
        }
    }

    private sealed class EntryStrip(
        OutlineEntry entry, BrokenLines lines, int index, TextLook look, StructureElement link, TextStyle? number, double width, LayoutSession session) : Strip
    {
        public override double Height => look.Leading;

        public override double Baseline => look.Baseline;

        protected override void Draw(PageCanvas canvas, double x, double y)
        {
            var (baseline, line) = (y + look.Baseline, lines[index]);
            session.Painter.Draw(canvas, line, x, baseline);
            canvas.AddLink(new LinkArea(x, y, width, Height, entry.Destination, false, entry.Title, link));
            if (number is null)
                return;
            var label = canvas.LabelOf(entry.Destination);
            var right = x + width;
            var run = number.Run(label);
            // A space first, so that the last word and the number stay apart when they are read.
            canvas.Tag(link, new TextItem(number.Run(" "), x + line.Width, baseline, number.Colour));
            canvas.Tag(link, new TextItem(run, right - run.Width, baseline, number.Colour));
            DrawDots(canvas, x + line.Width, right - run.Width, right, baseline);
        }

        /// <summary>Dots stand below each other on all lines, for they are counted from the right margin.</summary>
        private void DrawDots(PageCanvas canvas, double from, double to, double margin, double baseline)
        {
            var em = look.Size * TextStyle.Point;
            var pitch = DotPitchEms * em;
            var last = margin - (Math.Ceiling((margin - to + (0.5 * em)) / pitch) * pitch);
            var first = last - (Math.Floor((last - from - (0.6 * em)) / pitch) * pitch);
            if (first >= last)
                return;
            canvas.Decorate(new PathItem(
                PathBuilder.Line(first, baseline - 0.2, last + 0.01, baseline - 0.2),
                null,
                new Stroke(session.Styles.Palette.Muted, 0.34, [0.001, pitch - 0.001], LineCap.Round)));
        }
    }
}
