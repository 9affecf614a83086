using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>A line of a paragraph.</summary>
internal sealed class TextStrip(BrokenLines lines, int index, TextLook look, TextPainter painter) : Strip
{
    public override double Height => look.Leading;

    public override double Baseline => look.Baseline;

    protected override void Draw(PageCanvas canvas, double x, double y) => painter.Draw(canvas, lines[index], x, y + look.Baseline);
}

/// <summary>Puts set lines on a page, with what goes behind and under their words.</summary>
internal sealed class TextPainter(Colour underline, Colour ground)
{
    private const double UnderlineWidth = 0.18;
    private const double UnderlineDropEms = 0.14;
    private const double GroundTopEms = 0.78;
    private const double GroundBottomEms = 0.24;
    private const double GroundSideEms = 0.12;

    /// <summary>Draws a line that starts at a point on its baseline.</summary>
    public void Draw(PageCanvas canvas, SetLine line, double x, double baseline)
    {
        foreach (var piece in line.Pieces)
        {
            if (piece.Part.Literal)
                DrawGround(canvas, piece, x, baseline);
            canvas.Tag(piece.Part.Element, new TextItem(RunOf(canvas, piece), x + piece.X, baseline, piece.Style.Colour));
        }

        for (var i = 0; i < line.Pieces.Length; i++)
        {
            if (line.Pieces[i].Part.Link is null)
                continue;
            var end = i;
            while (end + 1 < line.Pieces.Length && ReferenceEquals(line.Pieces[end + 1].Part, line.Pieces[i].Part))
                end++;
            DrawLink(canvas, line.Pieces[i], line.Pieces[end], x, baseline);
            i = end;
        }
    }

    private void DrawLink(PageCanvas canvas, LinePiece first, LinePiece last, double x, double baseline)
    {
        var link = first.Part.Link!;
        var em = first.Style.Em;
        var left = x + first.X;
        var right = x + last.X + last.Width;
        var y = baseline + (UnderlineDropEms * em);
        canvas.Decorate(new PathItem(PathBuilder.Line(left, y, right, y), null, new Stroke(underline, UnderlineWidth)));
        var words = first.Part.Words.Trim();
        var says = link.IsAddress && words != link.Target ? $"{words} ({link.Target})" : words;
        canvas.AddLink(new LinkArea(left, baseline - (0.8 * em), right - left, 1.1 * em, link.Target, link.IsAddress, says, first.Part.Element));
    }

    private void DrawGround(PageCanvas canvas, LinePiece piece, double x, double baseline)
    {
        var em = piece.Style.Em;
        canvas.Decorate(new PathItem(
            PathBuilder.Rectangle(
                x + piece.X - (GroundSideEms * em),
                baseline - (GroundTopEms * em),
                piece.Width + (2 * GroundSideEms * em),
                (GroundTopEms + GroundBottomEms) * em),
            ground,
            null));
    }

    /// <summary>
    /// Page numbers are set anew when the pages are known. Lines are broken until the numbers in them are right; should
    /// that never end, the number is right all the same, and only the room for it is another number's.
    /// </summary>
    private static ShapedRun RunOf(PageCanvas canvas, LinePiece piece)
    {
        if (piece.Destination.Length == 0)
            return piece.Run;
        var label = canvas.LabelOf(piece.Destination);
        var hasSpace = piece.Run.Text.EndsWith(' ');
        return piece.Run.Text.TrimEnd(' ') == label ? piece.Run : piece.Style.Run(hasSpace ? label + " " : label);
    }
}
