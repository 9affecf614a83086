using System.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>The named places of a document (ISO 32000-1, 12.3.2.3).</summary>
internal sealed class Destinations
{
    private readonly SortedDictionary<string, (int PageId, double Y)> _places = new(StringComparer.Ordinal);

    public void Add(Page page, int pageId)
    {
        foreach (var (name, y) in page.Destinations)
        {
            if (!_places.TryAdd(name, (pageId, PageSpace.Points(page.Height - y))))
                throw new ArgumentException($"Two places of the document are called “{name}”.");
        }
    }

    /// <summary>Writes a name, having made sure that it leads somewhere.</summary>
    public void WriteName(PdfBuffer to, string name)
    {
        if (!_places.ContainsKey(name))
            throw new ArgumentException($"A link leads to “{name}”, which is nowhere in the document.");
        WriteKey(to, name);
    }

    /// <summary>Writes the tree of names; returns its object, or 0 if there are no names.</summary>
    public int Write(PdfFile file)
    {
        if (_places.Count == 0)
            return 0;
        var id = file.Reserve();
        var to = file.Object(id).Raw("<</Names["u8);
        foreach (var (name, (page, y)) in _places.OrderBy(place => Encoding.UTF8.GetBytes(place.Key), ByteOrder.Instance))
        {
            WriteKey(to, name);
            to.Byte((byte)'[').Ref(page).Raw("/XYZ 0 "u8).Number(y).Raw(" 0]"u8);
        }

        to.Raw("]>>"u8);
        return id;
    }

    private static void WriteKey(PdfBuffer to, string name) => to.HexString(Encoding.UTF8.GetBytes(name));

    /// <summary>Keys of name trees are sorted byte by byte.</summary>
    private sealed class ByteOrder : IComparer<byte[]>
    {
        public static ByteOrder Instance { get; } = new();

        public int Compare(byte[]? x, byte[]? y) => x.AsSpan().SequenceCompareTo(y);
    }
}
