using System.Text;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads a text file that a person wrote: UTF-8, of a sensible size, with line ends of any kind.</summary>
public static class TextFile
{
    /// <summary>The most bytes a text file may have: one mebibyte, some 500 printed pages.</summary>
    public const int MostBytes = 1 << 20;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">Its name in problems.</param>
    /// <param name="problems">Where problems go.</param>
    /// <returns>The text with <c>\n</c> at the end of its lines, or null when a problem was noted.</returns>
    public static string? Read(string path, string name, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        byte[] bytes;
        try
        {
            var length = new FileInfo(path).Length;
            if (length > MostBytes)
            {
                problems.Error(new Place(name), $"The file is {length / 1024} KiB long; a text file here has at most {MostBytes / 1024} KiB.", "Is it really a text file?");
                return null;
            }

            bytes = File.ReadAllBytes(path);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            problems.Error(new Place(name), "The file cannot be read.", "Check that you may read it, and that no other program holds it.");
            return null;
        }

        return Decode(bytes, name, problems);
    }

    private static string? Decode(byte[] bytes, string name, Problems problems)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.Error(new Place(name), "The file is saved as UTF-16.", "Save it again with the encoding UTF-8.");
            return null;
        }

        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException broken)
        {
            var line = 1 + bytes.AsSpan(0, Math.Clamp(broken.Index, 0, bytes.Length)).Count((byte)'\n');
            problems.Error(new Place(name, line), "The file is not saved as UTF-8; this line holds a byte that UTF-8 cannot.", "Save it again with the encoding UTF-8.");
            return null;
        }

        if (text.StartsWith('\uFEFF'))
            text = text[1..];
        text = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
        var control = text.AsSpan().IndexOfAnyInRange('\0', '\u0008');
        if (control < 0)
            return text;
        var before = text.AsSpan(0, control);
        problems.Error(
            new Place(name, 1 + before.Count('\n'), control - before.LastIndexOf('\n')),
            "The file holds a character that is no text.",
            "Is it really a text file?");
        return null;
    }
}
