using System.IO.Compression;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Finds its way through the objects of a PDF file, as an independent reader gives them.</summary>
public sealed class PdfObjects
{
    private readonly PdfDocument _document;
    private readonly Dictionary<int, IReadOnlyList<IGraphicsStateOperation>> _operations = [];

    public PdfObjects(PdfDocument document)
    {
        _document = document;
        Catalog = document.Structure.Catalog.CatalogDictionary;
        CollectPages(Reference(Catalog, "Pages"), null);
    }

    /// <summary>The root of the file.</summary>
    public DictionaryToken Catalog { get; }

    /// <summary>The pages in order, with their object numbers.</summary>
    public List<(long Number, DictionaryToken Page)> Pages { get; } = [];

    /// <summary>The operators of a page's content; pages are counted from 0.</summary>
    public IReadOnlyList<IGraphicsStateOperation> Operations(int page)
    {
        if (!_operations.TryGetValue(page, out var operations))
            _operations[page] = operations = _document.GetPage(page + 1).Operations;
        return operations;
    }

    /// <summary>What a token stands for, references followed.</summary>
    public IToken Resolve(IToken token)
    {
        while (token is IndirectReferenceToken reference)
            token = _document.Structure.GetObject(reference.Data).Data;
        return token is ObjectToken inner ? inner.Data : token;
    }

    /// <summary>An entry of a dictionary, or null if it is missing or of another type.</summary>
    public T? Get<T>(DictionaryToken? from, string key)
        where T : class, IToken =>
        from is not null && from.TryGet(NameToken.Create(key), out var token) ? Resolve(token) as T : null;

    public DictionaryToken? Dictionary(DictionaryToken? from, string key) => Get<DictionaryToken>(from, key);

    public ArrayToken? Array(DictionaryToken? from, string key) => Get<ArrayToken>(from, key);

    public string? Name(DictionaryToken? from, string key) => Get<NameToken>(from, key)?.Data;

    public double? Number(DictionaryToken? from, string key) => Get<NumericToken>(from, key)?.Double;

    /// <summary>A rectangle, or null if there is none of four numbers.</summary>
    public Box? Rectangle(DictionaryToken? from, string key) =>
        Array(from, key) is { Length: 4 } sides && sides.Data.Select(Resolve).OfType<NumericToken>().Select(side => side.Double).ToArray() is [var a, var b, var c, var d]
            ? new Box(a, b, c, d)
            : null;

    /// <summary>The content of a page as bytes; pages are counted from 0.</summary>
    public byte[] Content(int page)
    {
        var parts = Get<ArrayToken>(Pages[page].Page, "Contents") is { } array
            ? array.Data.Select(Resolve).OfType<StreamToken>()
            : Get<StreamToken>(Pages[page].Page, "Contents") is { } single ? [single] : [];
        return [.. parts.SelectMany(part => Data(part).Append((byte)'\n'))];
    }

    /// <summary>A text string, whichever way it is written.</summary>
    public string? Text(DictionaryToken? from, string key) =>
        from is not null && from.TryGet(NameToken.Create(key), out var token) ? Text(Resolve(token)) : null;

    /// <summary>The text of a string token; null for other tokens.</summary>
    public static string? Text(IToken token) => token switch
    {
        StringToken plain => plain.Data,
        HexToken hex => HexText(hex.Bytes.ToArray()),
        _ => null,
    };

    /// <summary>What stands in a structure element or in the root of the structure, in order.</summary>
    public IEnumerable<IToken> Kids(DictionaryToken element)
    {
        if (!element.TryGet(NameToken.Create("K"), out var kids))
            return [];
        return kids is ArrayToken array ? array.Data : Resolve(kids) is ArrayToken referenced ? referenced.Data : [kids];
    }

    /// <summary>The structure elements that stand in an element, in order.</summary>
    public IEnumerable<DictionaryToken> Elements(DictionaryToken element) => Kids(element)
        .Select(Resolve)
        .OfType<DictionaryToken>()
        .Where(part => Name(part, "S") is not null);

    /// <summary>The number of the object that an entry refers to, or 0.</summary>
    public static long Reference(DictionaryToken from, string key) =>
        from.TryGet(NameToken.Create(key), out var token) ? Reference(token) : 0;

    public static long Reference(IToken token) => token is IndirectReferenceToken reference ? reference.Data.ObjectNumber : 0;

    /// <summary>An object by its number.</summary>
    public IToken Object(long number) => _document.Structure.GetObject(new IndirectReference(number, 0)).Data;

    /// <summary>The data of a stream that is unpacked or packed with Flate.</summary>
    public byte[] Data(StreamToken stream)
    {
        if (Name(stream.StreamDictionary, "Filter") != "FlateDecode")
            return stream.Data.ToArray();
        using var unpacker = new ZLibStream(new MemoryStream(stream.Data.ToArray()), CompressionMode.Decompress);
        using var data = new MemoryStream();
        unpacker.CopyTo(data);
        return data.ToArray();
    }

    private static string HexText(byte[] bytes) => bytes is [0xFE, 0xFF, ..]
        ? System.Text.Encoding.BigEndianUnicode.GetString(bytes.AsSpan(2))
        : System.Text.Encoding.Latin1.GetString(bytes);

    private void CollectPages(long number, DictionaryToken? parent)
    {
        var node = (DictionaryToken)Object(number);
        if (Array(node, "Kids") is not { } kids)
        {
            // Resources may stand higher in the tree of pages.
            if (!node.ContainsKey(NameToken.Create("Resources")) && Dictionary(parent, "Resources") is { } resources)
                node = node.With("Resources", resources);
            Pages.Add((number, node));
            return;
        }

        foreach (var kid in kids.Data)
            CollectPages(Reference(kid), node);
    }
}
