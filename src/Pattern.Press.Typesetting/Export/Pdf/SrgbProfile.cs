using System.Buffers.Binary;
using System.Text;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// An ICC profile (ISO 15076-1, version 4.2) of the colour space sRGB (IEC 61966-2-1), made from the chromaticities and the
/// curve of that standard. It tells which colours the numbers of the file mean.
/// </summary>
internal static class SrgbProfile
{
    // White of profiles, D50 (ISO 15076-1, 7.2.16).
    private static readonly double[] _d50 = [0.9642, 1.0, 0.8249];

    // Chromaticities of sRGB's red, green, blue and white, D65 (IEC 61966-2-1, table 1; ITU-R BT.709).
    private static readonly double[] _primaries = [0.64, 0.33, 0.30, 0.60, 0.15, 0.06];
    private static readonly double[] _d65 = [0.3127, 0.3290];

    // Bradford matrix of cone responses (ISO 15076-1, annex E).
    private static readonly double[] _bradford = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

    /// <summary>The profile.</summary>
    public static byte[] Bytes { get; } = Build();

    /// <summary>The matrix from linear sRGB to XYZ under D50, row by row.</summary>
    internal static double[] Matrix()
    {
        var white = Xyz(_d65[0], _d65[1]);
        double[][] columns = [Xyz(_primaries[0], _primaries[1]), Xyz(_primaries[2], _primaries[3]), Xyz(_primaries[4], _primaries[5])];
        double[] primaries =
        [
            columns[0][0], columns[1][0], columns[2][0],
            columns[0][1], columns[1][1], columns[2][1],
            columns[0][2], columns[1][2], columns[2][2],
        ];

        // Full red, green and blue together give white.
        var amounts = Apply(Inverse(primaries), white);
        for (var i = 0; i < 9; i++)
            primaries[i] *= amounts[i % 3];
        return Multiply(Adaptation(), primaries);
    }

    private static double[] Adaptation()
    {
        var from = Apply(_bradford, Xyz(_d65[0], _d65[1]));
        var to = Apply(_bradford, _d50);
        double[] scale = [to[0] / from[0], 0, 0, 0, to[1] / from[1], 0, 0, 0, to[2] / from[2]];
        return Multiply(Inverse(_bradford), Multiply(scale, _bradford));
    }

    private static byte[] Build()
    {
        var matrix = Matrix();
        var curve = Curve();
        (string Name, byte[] Data)[] tags =
        [
            ("desc", Words("sRGB")),
            ("cprt", Words("No copyright, use freely")),
            ("wtpt", Numbers("XYZ ", _d50)),
            ("chad", Numbers("sf32", Adaptation())),
            ("rXYZ", Numbers("XYZ ", [matrix[0], matrix[3], matrix[6]])),
            ("gXYZ", Numbers("XYZ ", [matrix[1], matrix[4], matrix[7]])),
            ("bXYZ", Numbers("XYZ ", [matrix[2], matrix[5], matrix[8]])),
            ("rTRC", curve),
            ("gTRC", curve),
            ("bTRC", curve),
        ];
        using var file = new MemoryStream();
        file.Write(new byte[128]);
        U32(file, (uint)tags.Length);
        var at = 128 + 4 + (12 * tags.Length);
        var places = new Dictionary<byte[], int>(ReferenceEqualityComparer.Instance);
        foreach (var (name, data) in tags)
        {
            // The three curves share one place.
            if (!places.TryGetValue(data, out var place))
            {
                places[data] = place = at;
                at += (data.Length + 3) / 4 * 4;
            }

            Ascii(file, name);
            U32(file, (uint)place);
            U32(file, (uint)data.Length);
        }

        foreach (var data in tags.Select(tag => tag.Data).Distinct(ReferenceEqualityComparer.Instance).Cast<byte[]>())
        {
            file.Write(data);
            file.Write(new byte[(4 - (data.Length % 4)) % 4]);
        }

        var bytes = file.ToArray();
        WriteHeader(bytes);
        return bytes;
    }

    private static void WriteHeader(Span<byte> bytes)
    {
        BinaryPrimitives.WriteUInt32BigEndian(bytes, (uint)bytes.Length);
        BinaryPrimitives.WriteUInt32BigEndian(bytes[8..], 0x04200000);
        "mntrRGB XYZ "u8.CopyTo(bytes[12..]);

        // A fixed date, that of the standard's edition: profiles must have one.
        BinaryPrimitives.WriteUInt16BigEndian(bytes[24..], 1999);
        BinaryPrimitives.WriteUInt16BigEndian(bytes[26..], 10);
        BinaryPrimitives.WriteUInt16BigEndian(bytes[28..], 1);
        "acsp"u8.CopyTo(bytes[36..]);
        for (var i = 0; i < 3; i++)
            BinaryPrimitives.WriteInt32BigEndian(bytes[(68 + (4 * i))..], Fixed(_d50[i]));
    }

    /// <summary>The curve ((a·x + b)^g above d, c·x below) of IEC 61966-2-1 as a parametric curve of type 3.</summary>
    private static byte[] Curve()
    {
        using var data = new MemoryStream();
        Ascii(data, "para");
        U32(data, 0);
        data.Write([0, 3, 0, 0]);
        foreach (var value in (double[])[2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045])
            U32(data, (uint)Fixed(value));
        return data.ToArray();
    }

    private static byte[] Words(string text)
    {
        using var data = new MemoryStream();
        Ascii(data, "mluc");
        U32(data, 0);
        U32(data, 1);
        U32(data, 12);
        Ascii(data, "enUS");
        U32(data, (uint)(2 * text.Length));
        U32(data, 28);
        data.Write(Encoding.BigEndianUnicode.GetBytes(text));
        return data.ToArray();
    }

    private static byte[] Numbers(string type, double[] values)
    {
        using var data = new MemoryStream();
        Ascii(data, type);
        U32(data, 0);
        foreach (var value in values)
            U32(data, (uint)Fixed(value));
        return data.ToArray();
    }

    private static int Fixed(double value) => (int)Math.Round(value * 65536);

    private static void Ascii(Stream to, string text) => to.Write(Encoding.ASCII.GetBytes(text));

    private static void U32(Stream to, uint value)
    {
        Span<byte> bytes = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, value);
        to.Write(bytes);
    }

    private static double[] Xyz(double x, double y) => [x / y, 1, (1 - x - y) / y];

    private static double[] Apply(double[] m, double[] v) =>
    [
        (m[0] * v[0]) + (m[1] * v[1]) + (m[2] * v[2]),
        (m[3] * v[0]) + (m[4] * v[1]) + (m[5] * v[2]),
        (m[6] * v[0]) + (m[7] * v[1]) + (m[8] * v[2]),
    ];

    private static double[] Multiply(double[] a, double[] b)
    {
        var product = new double[9];
        for (var i = 0; i < 9; i++)
        {
            for (var k = 0; k < 3; k++)
                product[i] += a[(i / 3 * 3) + k] * b[(k * 3) + (i % 3)];
        }

        return product;
    }

    private static double[] Inverse(double[] m)
    {
        var cofactors = new double[9];
        for (var i = 0; i < 9; i++)
        {
            var (r1, r2) = (((i / 3) + 1) % 3 * 3, ((i / 3) + 2) % 3 * 3);
            var (c1, c2) = (((i % 3) + 1) % 3, ((i % 3) + 2) % 3);
            cofactors[i] = (m[r1 + c1] * m[r2 + c2]) - (m[r1 + c2] * m[r2 + c1]);
        }

        var determinant = (m[0] * cofactors[0]) + (m[1] * cofactors[1]) + (m[2] * cofactors[2]);
        return [.. Enumerable.Range(0, 9).Select(i => cofactors[(i % 3 * 3) + (i / 3)] / determinant)];
    }
}
