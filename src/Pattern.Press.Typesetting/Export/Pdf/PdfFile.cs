using System.IO.Compression;
using System.Security.Cryptography;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// The objects of a PDF 1.7 file (ISO 32000-1, 7.5): streams stand by themselves, all other objects are packed into object
/// streams, and a cross-reference stream ends the file.
/// </summary>
internal sealed class PdfFile : IDisposable
{
    // More objects in a stream compress better; readers that want one object unpack them all.
    private const int ObjectsPerStream = 250;

    // A step below the usual level of 6: booklets come out a thousandth larger and are packed in a sixth less time.
    private static readonly ZLibCompressionOptions Packing = new() { CompressionLevel = 5 };

    private readonly PdfBuffer _body = new();
    private readonly PdfBuffer _packed = new();
    private readonly MemoryStream _deflated = new();
    private readonly List<(int Id, int Offset)> _packedObjects = [];
    private readonly List<Place> _places = [default];

    public PdfFile() => _body.Raw("%PDF-1.7\n%µ¶\n"u8);

    private enum Kind : byte
    {
        Free = 0,
        InFile = 1,
        InStream = 2,
    }

    /// <summary>Packs bytes with Flate.</summary>
    public static byte[] Deflate(ReadOnlySpan<byte> data)
    {
        using var packed = new MemoryStream();
        Deflate(data, packed);
        return packed.ToArray();
    }

    /// <summary>A number for an object to be written later.</summary>
    public int Reserve()
    {
        _places.Add(default);
        return _places.Count - 1;
    }

    /// <summary>Starts an object that is not a stream; write its value into the buffer before starting the next.</summary>
    public PdfBuffer Object(int id)
    {
        if (_packedObjects.Count == ObjectsPerStream)
            FlushPacked();
        _packed.Byte((byte)'\n');
        _packedObjects.Add((id, _packed.Length));
        return _packed;
    }

    /// <summary>Writes a stream object, packed with Flate unless it is packed in its own way already.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="entries">The entries of its dictionary other than length and Flate filter.</param>
    /// <param name="data">The data.</param>
    /// <param name="isToBePacked">Whether it is still to be packed with Flate.</param>
    public void Stream(int id, ReadOnlySpan<byte> entries, ReadOnlySpan<byte> data, bool isToBePacked = true)
    {
        if (isToBePacked)
        {
            _deflated.SetLength(0);
            Deflate(data, _deflated);
            data = _deflated.GetBuffer().AsSpan(0, (int)_deflated.Length);
        }

        _places[id] = new Place(Kind.InFile, _body.Length, 0);
        _body.Int(id).Raw(" 0 obj\n<<"u8).Raw(entries);
        if (isToBePacked)
            _body.Raw("/Filter/FlateDecode"u8);
        _body.Raw("/Length "u8).Int(data.Length).Raw(">>\nstream\n"u8).Raw(data).Raw("\nendstream\nendobj\n"u8);
    }

    /// <summary>The bytes so far: the whole file once it is finished.</summary>
    public ReadOnlySpan<byte> Bytes => _body.Span;

    /// <summary>Ends the file.</summary>
    public void Finish(int catalog, int info)
    {
        FlushPacked();
        var table = Reserve();
        var start = _body.Length;
        _places[table] = new Place(Kind.InFile, start, 0);
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(_body.Span, hash);
        var identifier = hash[..16];
        _packed.Clear();
        foreach (var place in _places)
        {
            // The head of the list of free objects has the generation 65535.
            var last = place.Kind == Kind.Free ? 0xFFFF : place.Index;
            _packed.Byte((byte)place.Kind)
                .Byte((byte)(place.Offset >> 24)).Byte((byte)(place.Offset >> 16)).Byte((byte)(place.Offset >> 8)).Byte((byte)place.Offset)
                .Byte((byte)(last >> 8)).Byte((byte)last);
        }

        using var entries = new PdfBuffer();
        entries.Raw("/Type/XRef/Size "u8).Int(_places.Count).Raw("/W[1 4 2]/Root "u8).Ref(catalog).Raw("/Info "u8).Ref(info)
            .Raw("/ID["u8).HexString(identifier).HexString(identifier).Raw("]"u8);
        Stream(table, entries.Span, _packed.Span);
        _body.Raw("startxref\n"u8).Int(start).Raw("\n%%EOF\n"u8);
    }

    public void Dispose()
    {
        _body.Dispose();
        _packed.Dispose();
        _deflated.Dispose();
    }

    private static void Deflate(ReadOnlySpan<byte> data, Stream into)
    {
        using var packer = new ZLibStream(into, Packing, leaveOpen: true);
        packer.Write(data);
    }

    private void FlushPacked()
    {
        if (_packedObjects.Count == 0)
            return;
        var id = Reserve();
        using var content = new PdfBuffer();
        for (var i = 0; i < _packedObjects.Count; i++)
        {
            var (number, offset) = _packedObjects[i];
            _places[number] = new Place(Kind.InStream, id, i);
            content.Int(number).Byte((byte)' ').Int(offset).Byte((byte)' ');
        }

        var first = content.Length;
        content.Raw(_packed.Span);
        using var entries = new PdfBuffer();
        entries.Raw("/Type/ObjStm/N "u8).Int(_packedObjects.Count).Raw("/First "u8).Int(first);
        Stream(id, entries.Span, content.Span);
        _packedObjects.Clear();
        _packed.Clear();
    }

    private readonly record struct Place(Kind Kind, int Offset, int Index);
}
