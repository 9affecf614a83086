using System.Buffers.Binary;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>What the head of a JPEG file says (ITU-T T.81, annex B).</summary>
/// <param name="Width">Pixels across, as stored.</param>
/// <param name="Height">Pixels down, as stored.</param>
/// <param name="Components">1 for grey, 3 for colour, 4 for printing inks.</param>
/// <param name="CanPassThrough">
/// Whether a PDF file can hold the file as it is: eight bits, grey or colour, in baseline or progressive coding
/// (ISO 32000-1, 7.4.8).
/// </param>
/// <param name="Profile">The ICC profile of its colours, if it has one that PDF can take.</param>
internal sealed record JpegHeader(int Width, int Height, int Components, bool CanPassThrough, byte[]? Profile)
{
    // Twelve bytes of name, the number of the part and the number of parts (ISO 15076-1, annex B.4).
    private const int ProfileHead = 14;

    /// <summary>Reads the head of a file; null if it has none that can be understood.</summary>
    public static JpegHeader? Read(ReadOnlySpan<byte> file)
    {
        if (file.Length < 4 || file[0] != 0xFF || file[1] != 0xD8)
            return null;
        var profile = new SortedDictionary<int, byte[]>();
        (int Width, int Height, int Components, bool Passes)? frame = null;
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

            // The picture itself begins.
            if (marker == 0xDA)
                break;
            var length = BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
            if (length < 2 || at + 2 + length > file.Length)
                return null;
            var body = file.Slice(at + 4, length - 2);
            if (marker == 0xE2 && body.Length > ProfileHead && body.StartsWith("ICC_PROFILE\0"u8))
                profile[body[12]] = body[ProfileHead..].ToArray();

            // Frames are C0 to CF, except the tables among them.
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC) && body.Length >= 6)
            {
                var passes = marker is 0xC0 or 0xC1 or 0xC2 && body[0] == 8 && body[5] is 1 or 3;
                frame = (BinaryPrimitives.ReadUInt16BigEndian(body[3..]), BinaryPrimitives.ReadUInt16BigEndian(body[1..]), body[5], passes);
            }

            at += 2 + length;
        }

        return frame is { } found
            ? new JpegHeader(found.Width, found.Height, found.Components, found.Passes, Sound([.. profile.Values.SelectMany(part => part)], found.Components))
            : null;
    }

    /// <summary>A profile if it is whole, of a version PDF/A-2 takes (ISO 19005-2, 6.2.4.2), and of the picture's kind.</summary>
    private static byte[]? Sound(byte[] profile, int components)
    {
        if (profile.Length < 132 || BinaryPrimitives.ReadUInt32BigEndian(profile) != profile.Length || profile[8] is not (2 or 4))
            return null;
        ReadOnlySpan<byte> bytes = profile;
        var kind = bytes.Slice(12, 4);
        var space = bytes.Slice(16, 4);
        var known = kind.SequenceEqual("mntr"u8) || kind.SequenceEqual("scnr"u8) || kind.SequenceEqual("prtr"u8) || kind.SequenceEqual("spac"u8);
        var fits = components == 1 ? space.SequenceEqual("GRAY"u8) : components == 3 && space.SequenceEqual("RGB "u8);
        return known && fits && bytes.Slice(36, 4).SequenceEqual("acsp"u8) ? profile : null;
    }
}
