using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A cell of a row with its words broken into lines.</summary>
/// <param name="X">Its text's left, from the table's left.</param>
/// <param name="Width">The room for its text.</param>
/// <param name="Share">Where lines stand in that room: 0 at the left, 1 at the right.</param>
/// <param name="Lines">The lines.</param>
/// <param name="Cell">What it says.</param>
internal sealed record RowCell(double X, double Width, double Share, BrokenLines Lines, TableCell Cell)
{
    /// <summary>The longest run of words in it.</summary>
    public string Words => Cell.Content.OfType<TextInline>().MaxBy(words => words.Text.Length)?.Text ?? "";
}

/// <summary>A row of a table, with the line below it.</summary>
internal sealed class RowStrip(
    IReadOnlyList<RowCell> cells, double width, TextLook look, TextPainter painter, double padTop, double padBottom) : Strip
{
    private readonly double _height = padTop + padBottom + (look.Leading * Math.Max(1, cells.Count == 0 ? 1 : cells.Max(cell => cell.Lines.Count)));

    /// <summary>The ground behind the row; null for none.</summary>
    public Colour? Ground { get; init; }

    /// <summary>The line above the row; null for none.</summary>
    public Stroke? LineAbove { get; init; }

    /// <summary>The line below the row; null for none.</summary>
    public Stroke? LineBelow { get; init; }

    /// <summary>Where the line below starts, from the table's left.</summary>
    public double LineBelowFrom { get; init; }

    public override string Kind => "A row of the table";

    /// <summary>The words of its highest cell.</summary>
    public override string Words => cells.MaxBy(cell => cell.Lines.Count)?.Words ?? "";

    public override double Height => _height;

    public override double Baseline => padTop + look.Baseline;

    protected override void Draw(PageCanvas canvas, double x, double y)
    {
        if (Ground is { } ground)
            canvas.Decorate(new PathItem(PathBuilder.Rectangle(x, y, width, Height), ground, null));
        DrawLine(canvas, LineAbove, x, y, 0);
        DrawLine(canvas, LineBelow, x, y + Height, LineBelowFrom);
        foreach (var cell in cells)
        {
            for (var i = 0; i < cell.Lines.Count; i++)
            {
                var line = cell.Lines[i];
                var left = x + cell.X + (cell.Share * (cell.Width - line.Width));
                painter.Draw(canvas, line, left, y + Baseline + (i * look.Leading));
            }
        }
    }

    private void DrawLine(PageCanvas canvas, Stroke? stroke, double x, double y, double from)
    {
        if (stroke is not null)
            canvas.Decorate(new PathItem(PathBuilder.Line(x + from, y, x + width, y), null, stroke));
    }
}
