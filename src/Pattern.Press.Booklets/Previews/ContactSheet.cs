using Pattern.Press.Booklets.Figures;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Previews;

/// <summary>All pages of a booklet on one, small, in reading order, each with its number below it.</summary>
public static class ContactSheet
{
    // In millimetres and points of the pages themselves, which are made smaller together.
    private const double Gap = 14;
    private const double Foot = 16;
    private const double NumberSize = 26;
    private static readonly Colour Ground = new(232, 232, 230);
    private static readonly Colour Edge = new(150, 150, 148);
    private static readonly Colour Ink = new(60, 60, 60);

    /// <summary>Makes the sheet: a page like any other, so that it is drawn by the same means.</summary>
    /// <param name="pages">The pages; at least one.</param>
    /// <param name="styles">The booklet's look, for the numbers.</param>
    public static Page Of(IReadOnlyList<Page> pages, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(pages);
        ArgumentNullException.ThrowIfNull(styles);
        var (cellWidth, cellHeight) = (pages.Min(page => Math.Min(page.Width, page.Height)), pages.Max(page => Math.Min(page.Height, Math.Sqrt(2) * page.Width)));
        var columns = Columns(pages.Count);
        var rows = (pages.Count + columns - 1) / columns;
        var (width, height) = (Gap + (columns * (cellWidth + Gap)), Gap + (rows * (cellHeight + Foot + Gap)));
        var items = new List<PageItem> { new PathItem(PathBuilder.Rectangle(0, 0, width, height), Ground, null) };
        for (var i = 0; i < pages.Count; i++)
        {
            var left = Gap + (i % columns * (cellWidth + Gap));
            var top = Gap + (i / columns * (cellHeight + Foot + Gap));
            AddPage(items, pages[i], left, top, cellWidth, cellHeight, styles);
        }

        return new Page { Width = width, Height = height, Items = items };
    }

    /// <summary>How many pages stand in a row: the sheet comes out a little wider than high.</summary>
    public static int Columns(int pages)
    {
        // Rows first: then the last one is nearly full.
        var rows = Math.Max(1, (int)Math.Round(Math.Sqrt(pages / 2.0)));
        return Math.Max(1, (pages + rows - 1) / rows);
    }

    private static void AddPage(List<PageItem> items, Page page, double left, double top, double cellWidth, double cellHeight, StyleSheet styles)
    {
        // A page that lies on its side is made smaller, and stands on the line the others stand on.
        var scale = Math.Min(cellWidth / page.Width, cellHeight / page.Height);
        var (width, height) = (page.Width * scale, page.Height * scale);
        var (x, y) = (left + ((cellWidth - width) / 2), top + cellHeight - height);
        items.Add(new PathItem(PathBuilder.Rectangle(x, y, width, height), Colour.White, new Stroke(Edge, 0.6)));
        items.Add(new GroupItem(
            Transform.Scale(scale).Then(Transform.Move(x, y)),
            PathBuilder.Rectangle(0, 0, page.Width, page.Height),
            page.Items));
        var number = Lettering.Set(page.Label, styles.Text.Regular, NumberSize, styles.Language);
        items.AddRange(number.At(left + ((cellWidth - number.Width) / 2), top + cellHeight + Foot - 4, Ink));
    }
}
