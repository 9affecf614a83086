using System.Buffers.Binary;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>What the head of a JPEG file says (ITU-T T.81, annex B).</summary>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
/// <param name="Components">1 for grey, 3 for colour, 4 for printing inks.</param>
/// <param name="CanPassThrough">
/// Whether the file can stand in a PDF file as it is: eight bits, grey or colour without a profile of its own, in baseline
/// or progressive coding (ISO 32000-1, 7.4.8).
/// </param>
internal readonly record struct JpegHeader(int Width, int Height, int Components, bool CanPassThrough)
{
    /// <summary>Reads the head of a file; null if it has none that can be understood.</summary>
    public static JpegHeader? Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < 4 || file[0] != 0xFF || file[1] != 0xD8)
            return null;
        var profile = false;
        var at = 2;
        while (at + 4 <= file.Length && file[at] == 0xFF)
        {
            var marker = file[at + 1];
            if (marker == 0xFF)
            {
                // A filling byte.
                at++;
                continue;
            }

            var length = BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
            var body = file[(at + 4)..];
            profile |= marker == 0xE2 && body.StartsWith("ICC_PROFILE"u8);

            // Frames are C0 to CF, except the tables among them.
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            {
                if (body.Length < 6)
                    return null;
                var components = body[5];
                var passes = marker is 0xC0 or 0xC1 or 0xC2 && body[0] == 8 && components is 1 or 3 && !profile;
                return new JpegHeader(
                    BinaryPrimitives.ReadUInt16BigEndian(body[3..]),
                    BinaryPrimitives.ReadUInt16BigEndian(body[1..]),
                    components,
                    passes);
            }

            at += 2 + length;
        }

        return null;
    }
}
