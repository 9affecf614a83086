using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>The bookmarks of a document (ISO 32000-1, 12.3.3): the top level stands open.</summary>
internal static class Outline
{
    /// <summary>Writes the bookmarks; returns the object of their root.</summary>
    public static int Write(PdfFile file, Destinations destinations, IReadOnlyList<Bookmark> bookmarks)
    {
        var root = file.Reserve();
        var (first, last) = WriteLevel(file, destinations, bookmarks, root);
        file.Object(root).Raw("<</Type/Outlines/First "u8).Ref(first).Raw("/Last "u8).Ref(last)
            .Raw("/Count "u8).Int(bookmarks.Count).Raw(">>"u8);
        return root;
    }

    private static (int First, int Last) WriteLevel(PdfFile file, Destinations destinations, IReadOnlyList<Bookmark> level, int parent)
    {
        var ids = level.Select(_ => file.Reserve()).ToList();
        for (var i = 0; i < level.Count; i++)
        {
            var bookmark = level[i];
            var children = bookmark.Children.Count > 0 ? WriteLevel(file, destinations, bookmark.Children, ids[i]) : default;
            var to = file.Object(ids[i]).Raw("<</Title"u8).Text(bookmark.Title).Raw("/Parent "u8).Ref(parent).Raw("/Dest"u8);
            destinations.WriteName(to, bookmark.Destination);
            if (i > 0)
                to.Raw("/Prev "u8).Ref(ids[i - 1]);
            if (i + 1 < ids.Count)
                to.Raw("/Next "u8).Ref(ids[i + 1]);
            if (bookmark.Children.Count > 0)
                to.Raw("/First "u8).Ref(children.First).Raw("/Last "u8).Ref(children.Last).Raw("/Count "u8).Int(-bookmark.Children.Count);
            to.Raw(">>"u8);
        }

        return (ids[0], ids[^1]);
    }
}
