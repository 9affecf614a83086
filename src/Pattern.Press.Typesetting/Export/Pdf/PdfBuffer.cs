using System.Buffers;
using System.Buffers.Text;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// A growing buffer of bytes with the few ways PDF writes things (ISO 32000-1, 7.3). Numbers are written straight into
/// the bytes: a booklet has some hundred thousand of them.
/// </summary>
internal sealed class PdfBuffer : IDisposable
{
    /// <summary>Fixed-point units in one unit of length: four decimals, which is 0.00004 mm.</summary>
    public const int FixedPerUnit = 10_000;

    private byte[] _bytes = ArrayPool<byte>.Shared.Rent(16 * 1024);

    public int Length { get; private set; }

    public ReadOnlySpan<byte> Span => _bytes.AsSpan(0, Length);

    /// <summary>Rounds to the fixed point that is written.</summary>
    /// <exception cref="ArgumentException">The number is not finite or far outside any page.</exception>
    public static long ToFixed(double value)
    {
        if (!(Math.Abs(value) < 1e9))
            throw new ArgumentException("A coordinate is not a number that can be printed.");
        return (long)Math.Round(value * FixedPerUnit);
    }

    public void Clear() => Length = 0;

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_bytes);
        _bytes = [];
    }

    public PdfBuffer Raw(ReadOnlySpan<byte> bytes)
    {
        bytes.CopyTo(Room(bytes.Length));
        Length += bytes.Length;
        return this;
    }

    public PdfBuffer Byte(byte value)
    {
        Room(1)[0] = value;
        Length++;
        return this;
    }

    public PdfBuffer Int(long value)
    {
        _ = Utf8Formatter.TryFormat(value, Room(20), out var written);
        Length += written;
        return this;
    }

    /// <summary>A reference to an object.</summary>
    public PdfBuffer Ref(int id) => Int(id).Raw(" 0 R"u8);

    /// <summary>A number with at most four decimals.</summary>
    public PdfBuffer Number(double value) => Fixed(ToFixed(value));

    /// <summary>A number given in units of 1/10000.</summary>
    public PdfBuffer Fixed(long value)
    {
        var room = Room(24);
        var at = 0;
        if (value < 0)
        {
            room[at++] = (byte)'-';
            value = -value;
        }

        var (whole, fraction) = Math.DivRem(value, FixedPerUnit);
        if (whole > 0 || fraction == 0)
        {
            _ = Utf8Formatter.TryFormat(whole, room[at..], out var written);
            at += written;
        }

        if (fraction > 0)
        {
            room[at++] = (byte)'.';
            for (var unit = FixedPerUnit / 10; fraction > 0; unit /= 10)
            {
                var (digit, rest) = Math.DivRem(fraction, unit);
                room[at++] = (byte)('0' + digit);
                fraction = rest;
            }
        }

        Length += at;
        return this;
    }

    /// <summary>A factor of a matrix, with eight decimals: it is multiplied by coordinates.</summary>
    public PdfBuffer Factor(double value)
    {
        if (!(Math.Abs(value) < 1e9))
            throw new ArgumentException("A factor is not a number that can be printed.");
        if (Math.Abs(value) < 5e-9)
            return Byte((byte)'0');
        var room = Room(32);
        _ = Utf8Formatter.TryFormat(value, room, out var written, new StandardFormat('F', 8));
        while (room[written - 1] == '0')
            written--;
        if (room[written - 1] == '.')
            written--;
        Length += written;
        return this;
    }

    public PdfBuffer Hex(byte value)
    {
        var room = Room(2);
        room[0] = HexDigit(value >> 4);
        room[1] = HexDigit(value & 15);
        Length += 2;
        return this;
    }

    public PdfBuffer Hex16(int value) => Hex((byte)(value >> 8)).Hex((byte)value);

    /// <summary>Bytes as a hexadecimal string.</summary>
    public PdfBuffer HexString(ReadOnlySpan<byte> bytes)
    {
        Byte((byte)'<');
        foreach (var b in bytes)
            Hex(b);
        return Byte((byte)'>');
    }

    /// <summary>A name; characters that names cannot hold are written by number.</summary>
    public PdfBuffer Name(ReadOnlySpan<char> name)
    {
        Byte((byte)'/');
        foreach (var c in name)
        {
            if (char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '+' or '.')
                Byte((byte)c);
            else if (c < 256)
                Byte((byte)'#').Hex((byte)c);
            else
                Byte((byte)'_');
        }

        return this;
    }

    /// <summary>A text string (7.9.2.2): plain if it is ASCII, else UTF-16 with its mark.</summary>
    public PdfBuffer Text(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
        {
            if (c is < ' ' or > '~')
                return Utf16(text);
        }

        Byte((byte)'(');
        foreach (var c in text)
        {
            if (c is '(' or ')' or '\\')
                Byte((byte)'\\');
            Byte((byte)c);
        }

        return Byte((byte)')');
    }

    /// <summary>UTF-16 code units in hexadecimal, without brackets or mark.</summary>
    public PdfBuffer HexUnits(ReadOnlySpan<char> text)
    {
        foreach (var c in text)
            Hex16(c);
        return this;
    }

    private static byte HexDigit(int value) => (byte)(value < 10 ? '0' + value : 'A' + value - 10);

    private PdfBuffer Utf16(ReadOnlySpan<char> text) => Raw("<FEFF"u8).HexUnits(text).Byte((byte)'>');

    private Span<byte> Room(int size)
    {
        if (_bytes.Length - Length < size)
        {
            var larger = ArrayPool<byte>.Shared.Rent(Math.Max(_bytes.Length * 2, Length + size));
            Span.CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_bytes);
            _bytes = larger;
        }

        return _bytes.AsSpan(Length);
    }
}
