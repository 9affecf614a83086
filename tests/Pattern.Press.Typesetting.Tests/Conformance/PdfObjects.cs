using System.IO.Compression;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Conformance;

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
