using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Booklets.Templates;

/// <summary>A page of small templates, each with its words.</summary>
internal sealed class SharedTemplatePage(TemplateJob job, SharedPage shared)
{
    private const double Least = 6.5;

    // Whether an arrow along the grain is in the drawing of any piece.
    private bool _grain;

    public FixedPage Make(int number, int count, string destination, string? bookmark, int level)
    {
        var frame = new PageFrame(job, shared.Lying);
        var words = job.Words;
        var folds = shared.Places.Any(place => place.Part.Piece.Folds.Count > 0);
        frame.Heading(words.Say(folds ? "template.shared_pieces" : "template.shared"), "");
        frame.Line(words.Say("template.shared_stock", ("stock", job.StockName(shared.Places[0].Part))));
        frame.Names(shared.Stock);
        var mats = shared.Places.Count(place => place.Part.Kind == PartKind.Mat);
        frame.Line(words.Say(mats == shared.Places.Count ? "template.side_mat" : mats == 0 ? "template.side" : "template.side_mixed"));
        if (job.Plan.Kits > 1)
        {
            var each = shared.Places[0].Cut == shared.Places[0].Part.Quantity;
            frame.Line(words.Say(each ? "template.kits_each" : "template.kits_all", ("kits", job.Plan.Kits.ToString(CultureInfo.InvariantCulture))));
        }

        FixedContent[] contents = [.. shared.Places.SelectMany(Place)];
        if (OneWay)
            frame.Line(words.Say("template.top"));
        else if (_grain)
            frame.Line(words.Say("template.grain"));
        frame.Foot(number, count);
        return frame.Finish(contents, destination, bookmark, level);
    }

    private bool OneWay => job.Stocks.TryGetValue(shared.Stock, out var stock) && stock.OneWay;

    private static Box Sheet(SharedPlace place)
    {
        var size = place.Turned ? place.Part.Piece.Sheet.Turned : place.Part.Piece.Sheet;
        return new Box(place.PageX, place.PageY, place.PageX + size.Width.Millimetres, place.PageY + size.Height.Millimetres);
    }

    private IEnumerable<FixedContent> Place(SharedPlace place)
    {
        var (part, styles) = (place.Part, job.Styles);
        var sheet = Sheet(place);
        var board = new Board();
        var painter = new TemplatePainter(part.Piece, TemplatePainter.PlacingOf(part.Piece, place.Turned, place.PageX, place.PageY), sheet, styles, job.Words);
        painter.DrawLines(board);
        if (OneWay)
            painter.DrawTop(board, sheet);
        else
            _grain |= painter.DrawGrain(board, sheet);

        // Pieces that fold are here when there are several kits.
        var folds = part.Piece.Folds.Count > 0;
        if (folds)
            painter.DrawSheet(board);
        if (part.Piece.Panels.Count > 1)
            painter.DrawWords(board, sheet, sheet, _ => true);
        painter.DrawGlue(board);
        if (folds)
            painter.DrawWaste(board);
        yield return new FixedContent(Role.Figure, board.Items, job.Words.Say("alternative.small_template", ("piece", part.Piece.Name), ("size", job.SizeOf(part))))
        {
            Box = (sheet.Left, sheet.Top, sheet.Width, sheet.Height),
        };

        var room = place.Label.Width > 0
            ? new Box(place.Label.X, place.Label.Y, place.Label.X + place.Label.Width, place.Label.Y + place.Label.Height)
            : sheet.Grown(-1.5);
        // Where the two hands have names of their own, these say it already.
        var paired = part.Hand != Hand.Either && job.Kit.Parts.Any(other => other.Hand != part.Hand && other.Piece.Name == part.Piece.Name);
        var name = (paired ? part.Hand : Hand.Either) switch
        {
            Hand.Left => job.Words.Say("template.left_hand", ("piece", part.Piece.Name)),
            Hand.Right => job.Words.Say("template.right_hand", ("piece", part.Piece.Name)),
            _ => part.Piece.Name,
        };
        var cut = job.Words.Say("template.cut_count", ("count", place.Cut.ToString(CultureInfo.InvariantCulture)));
        yield return new FixedContent(Role.P, Words(room, name, cut, job.SizeOf(part)));
    }

    // The name in bold with the count after it, the size below; smaller where the room asks for it, then without the size,
    // which the table of what to cut gives too.
    private List<PageItem> Words(Box room, string name, string cut, string size)
    {
        (double Points, string Size)[] tries = [(Math.Max(7, job.Styles.Scale.Drawing), size), (Least, size), (Least, "")];
        foreach (var (points, said) in tries)
        {
            if (Set(room, name, cut, said, points) is { } items)
                return items;
        }

        job.Misfits.Add((string.Create(CultureInfo.InvariantCulture, $"“{name} · {cut}” has no room beside its template, which leaves {room.Width:0} × {room.Height:0} mm for it."), shared.Stock));
        return [];
    }

    private List<PageItem>? Set(Box room, string name, string cut, string size, double points)
    {
        var styles = job.Styles;
        var leading = points * 1.16 * 25.4 / 72;
        var first = Lettering.Set(name, styles.Text.Bold, points, styles.Language);
        var second = Lettering.Set(" · " + cut, styles.Text.Regular, points, styles.Language);
        var together = first.Width + second.Width <= room.Width;
        var titles = together ? [] : Lines.Break(name, room.Width, styles.Text.Bold, points, styles.Language);
        var more = (together, size.Length > 0) switch
        {
            (true, _) => size,
            (false, true) => $"{cut} · {size}",
            _ => cut,
        };
        var rest = more.Length == 0 ? [] : Lines.Break(more, room.Width, styles.Text.Regular, points, styles.Language);
        var height = (Math.Max(1, titles.Count) + rest.Count) * leading;
        if (height > room.Height || titles.Concat(rest).Any(line => line.Width > room.Width + 0.01))
            return null;
        var (items, y) = (new List<PageItem>(), room.Top + 0.6);
        if (together)
        {
            items.AddRange(first.At(room.Left, y + first.Ascent, styles.Palette.Text));
            items.AddRange(second.GoingOn().At(room.Left + first.Width, y + first.Ascent, styles.Palette.Text));
            y += leading;
        }
        else
        {
            (var put, y) = Lines.Put([.. titles.Select(line => line.GoingOn())], room.Left, y, leading, styles.Palette.Text);
            items.AddRange(put);
        }

        items.AddRange(Lines.Put(rest, room.Left, y, leading, styles.Palette.Text).Items);
        return items;
    }
}
