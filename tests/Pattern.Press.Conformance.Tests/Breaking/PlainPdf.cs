using System.Globalization;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;
using UglyToad.PdfPig.Writer;

namespace Pattern.Press.Conformance.Breaking;

/// <summary>
/// A PDF file taken apart into objects that can be read and changed as text, and put together again with a plain table:
/// to break files on purpose.
/// </summary>
internal sealed class PlainPdf
{
    private readonly SortedDictionary<long, string> _objects = [];
    private readonly string _root;
    private readonly string _info;

    public PlainPdf(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        var reader = new PdfObjects(document);
        foreach (var reference in document.Structure.CrossReferenceTable.ObjectOffsets.Keys)
        {
            var token = reader.Object(reference.ObjectNumber);
            if (token is StreamToken stream)
            {
                // Object and cross-reference streams are gone; page contents can be read.
                if (reader.Name(stream.StreamDictionary, "Type") is "ObjStm" or "XRef")
                    continue;
                if (reader.Name(stream.StreamDictionary, "Filter") == "FlateDecode")
                    token = new StreamToken(stream.StreamDictionary.Without("Filter"), reader.Data(stream));
            }

            using var text = new MemoryStream();
            TokenWriter.Instance.WriteToken(token, text);
            _objects[reference.ObjectNumber] = Encoding.Latin1.GetString(text.ToArray());
        }

        var trailer = document.Structure.Trailer!;
        _root = Reference(trailer.Root);
        _info = Reference(((IndirectReferenceToken)trailer.Info!).Data);
    }

    private PlainPdf(PlainPdf other)
    {
        _objects = new SortedDictionary<long, string>(other._objects);
        (_root, _info) = (other._root, other._info);
    }

    /// <summary>A copy that can be changed without changing this.</summary>
    public PlainPdf Copy() => new(this);

    /// <summary>Replaces words everywhere; they must be there.</summary>
    public PlainPdf Replace(string old, string with)
    {
        var found = false;
        foreach (var (number, text) in _objects.ToList())
        {
            if (!text.Contains(old, StringComparison.Ordinal))
                continue;
            found = true;
            _objects[number] = text.Replace(old, with, StringComparison.Ordinal);
        }

        return found ? this : throw new ArgumentException($"The file holds no “{old}”.");
    }

    /// <summary>Replaces one object, the only one that holds some words.</summary>
    public PlainPdf ReplaceObject(string mark, string with)
    {
        _objects[_objects.Single(entry => entry.Value.Contains(mark, StringComparison.Ordinal)).Key] = with;
        return this;
    }

    /// <summary>Adds an object; returns its number.</summary>
    public PlainPdf Add(string text, out long number)
    {
        number = _objects.Keys.Max() + 1;
        _objects[number] = text;
        return this;
    }

    /// <summary>Adds an object that nothing leads to.</summary>
    public PlainPdf Add(string text) => Add(text, out _);

    /// <summary>Puts the file together and changes its bytes.</summary>
    public byte[] Build(string old, string with)
    {
        var text = Encoding.Latin1.GetString(Build());
        var at = text.IndexOf(old, StringComparison.Ordinal);
        if (at < 0)
            throw new ArgumentException($"The file holds no “{old}”.");
        return Encoding.Latin1.GetBytes(text[..at] + with + text[(at + old.Length)..]);
    }

    public byte[] Build()
    {
        var file = new StringBuilder("%PDF-1.7\n%\u00B5\u00B6\u00B5\u00B6\n");
        var offsets = new Dictionary<long, int>();
        foreach (var (number, text) in _objects)
        {
            offsets[number] = file.Length;
            file.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n{FixLength(text)}\nendobj\n");
        }

        var start = file.Length;
        var size = _objects.Keys.Max() + 1;
        file.Append(CultureInfo.InvariantCulture, $"xref\n0 {size}\n0000000000 65535 f \n");
        for (long number = 1; number < size; number++)
        {
            file.Append(offsets.TryGetValue(number, out var offset)
                ? string.Create(CultureInfo.InvariantCulture, $"{offset:0000000000} 00000 n \n")
                : "0000000000 65535 f \n");
        }

        file.Append(CultureInfo.InvariantCulture, $"trailer\n<</Size {size}/Root {_root}/Info {_info}/ID[<00><00>]>>\nstartxref\n{start}\n%%EOF\n");
        return Encoding.Latin1.GetBytes(file.ToString());
    }

    private static string Reference(IndirectReference reference) =>
        string.Create(CultureInfo.InvariantCulture, $"{reference.ObjectNumber} {reference.Generation} R");

    /// <summary>Streams say how long they are, which changes with their text.</summary>
    private static string FixLength(string text)
    {
        const string Begin = "stream\n";
        var begin = text.IndexOf(Begin, StringComparison.Ordinal);
        var end = text.LastIndexOf("\nendstream", StringComparison.Ordinal);
        if (begin < 0 || end < begin)
            return text;
        var length = (end - begin - Begin.Length).ToString(CultureInfo.InvariantCulture);
        var head = System.Text.RegularExpressions.Regex.Replace(text[..begin], @"/Length\s+\d+", "/Length " + length);
        return head + text[begin..];
    }
}
