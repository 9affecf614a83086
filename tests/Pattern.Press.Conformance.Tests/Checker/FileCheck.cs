using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Pattern.Press.Conformance;

/// <summary>Checks the bytes of the file as they stand, before any reader makes the best of them (ISO 19005-2, 6.1).</summary>
internal static partial class FileCheck
{
    // ISO 19005-2, 6.1.7.2: the filters of ISO 32000-1 but LZW and encryption.
    private static readonly HashSet<string> _filters = new(
        ["FlateDecode", "DCTDecode", "ASCIIHexDecode", "ASCII85Decode", "RunLengthDecode", "CCITTFaxDecode", "JBIG2Decode", "JPXDecode"],
        StringComparer.Ordinal);

    /// <summary>Runs the checks; false if the file is encrypted.</summary>
    public static bool Run(byte[] file, Findings findings)
    {
        // One character for each byte.
        var text = Encoding.Latin1.GetString(file);
        if (!Version().IsMatch(text))
            findings.Report("A 6.1.2a", "The file does not start with “%PDF-1.7”.");
        if (!BinaryComment().IsMatch(text))
            findings.Report("A 6.1.2b", "The second line is no comment of four bytes above 127.");
        if (!End().IsMatch(text))
            findings.Report("A 6.1.3c", "The file does not end with “%%EOF” and a line end.");
        WalkObjects(text, file, findings);
        return CheckTrailer(text, findings);
    }

    private static void WalkObjects(string text, byte[] file, Findings findings)
    {
        var at = FirstObject().Match(text) is { Success: true } first ? first.Index : text.Length;
        for (var head = ObjectHead().Match(text, at); head.Success; head = ObjectHead().Match(text, at))
        {
            var name = $"object {head.Groups["number"].Value}";
            if (head.Groups["gap"].Captures.Any(gap => gap.Value != " ") || head.Groups["end"].Value is not ("\n" or "\r\n" or "\r"))
                findings.Report("A 6.1.9", $"The head of {name} is not spaced as it should be.");
            var body = head.Index + head.Length;
            var end = text.IndexOf("endobj", body, StringComparison.Ordinal);
            var stream = text.IndexOf("stream", body, StringComparison.Ordinal);
            if (stream >= 0 && stream < end)
                end = CheckStream(text, file, body, stream, name, findings);
            else
                SyntaxCheck.Run(text[body..end], name, findings);
            at = end < 0 ? text.Length : AfterLine(text, end + "endobj".Length);
        }
    }

    /// <summary>Checks a stream; returns where its object ends.</summary>
    private static int CheckStream(string text, byte[] file, int body, int keyword, string name, Findings findings)
    {
        var entries = text[body..keyword];
        SyntaxCheck.Run(entries, name, findings);
        if (ExternalFile().IsMatch(entries))
            findings.Report("A 6.1.7c", $"The stream of {name} lies in another file.");
        foreach (var filter in Filters().Match(entries).Groups["name"].Captures.Select(capture => capture.Value))
        {
            if (!_filters.Contains(filter))
                findings.Report("A 6.1.7d", $"The stream of {name} is packed with {filter}.");
        }

        var start = keyword + "stream".Length;
        if (text[start] == '\n')
            start++;
        else if (text[start] == '\r' && text[start + 1] == '\n')
            start += 2;
        else
            findings.Report("A 6.1.7a", $"No line end follows the keyword “stream” of {name}.");
        var length = LengthEntry().Match(entries) is { Success: true } entry ? int.Parse(entry.Groups[1].Value, CultureInfo.InvariantCulture) : -1;
        var closed = start + length <= text.Length && length >= 0 ? EndOfStream().Match(text, start + length) : Match.Empty;
        if (!closed.Success)
        {
            findings.Report("A 6.1.7b", $"The stream of {name} does not end where its length says.");
            return text.IndexOf("endobj", text.IndexOf("endstream", start, StringComparison.Ordinal), StringComparison.Ordinal);
        }

        if (entries.Contains("/ObjStm", StringComparison.Ordinal))
            SyntaxCheck.Run(Unpack(file.AsSpan(start, length).ToArray()), name, findings);
        return text.IndexOf("endobj", closed.Index, StringComparison.Ordinal);
    }

    private static string Unpack(byte[] data)
    {
        using var unpacker = new ZLibStream(new MemoryStream(data), CompressionMode.Decompress);
        using var plain = new MemoryStream();
        unpacker.CopyTo(plain);
        return Encoding.Latin1.GetString(plain.ToArray());
    }

    private static bool CheckTrailer(string text, Findings findings)
    {
        var start = int.Parse(StartXref().Match(text).Groups[1].Value, CultureInfo.InvariantCulture);
        var table = text[start..];
        var trailer = table.StartsWith("xref", StringComparison.Ordinal)
            ? table[table.IndexOf("trailer", StringComparison.Ordinal)..]
            : table[..table.IndexOf("stream", StringComparison.Ordinal)];
        if (!Identifier().IsMatch(trailer))
            findings.Report("A 6.1.3a", "The trailer has no identifier of two strings.");
        if (Encrypt().Match(trailer) is not { Success: true } encrypt)
            return true;
        findings.Report("A 6.1.3b", "The trailer leads to a way of encryption.");
        var at = text.IndexOf($"\n{encrypt.Groups[1].Value} 0 obj", StringComparison.Ordinal);
        var entries = text[at..text.IndexOf("endobj", at, StringComparison.Ordinal)];

        // Bit 10 lets screen readers in (ISO 32000-1, table 22).
        if (Permissions().Match(entries) is not { Success: true } permissions)
            findings.Report("26-001", "The encryption does not say what is allowed.");
        else if ((int.Parse(permissions.Groups[1].Value, CultureInfo.InvariantCulture) & (1 << 9)) == 0)
            findings.Report("26-002", "The encryption does not let screen readers in.");
        return false;
    }

    private static int AfterLine(string text, int at)
    {
        while (at < text.Length && text[at] is '\n' or '\r')
            at++;
        return at;
    }

    [GeneratedRegex(@"\A%PDF-1\.7[\r\n]")]
    private static partial Regex Version();

    [GeneratedRegex(@"\A[^\r\n]*(\r\n|\r|\n)%[\x80-\xFF]{4}")]
    private static partial Regex BinaryComment();

    [GeneratedRegex(@"%%EOF(\r\n|\r|\n)?\z")]
    private static partial Regex End();

    [GeneratedRegex(@"(?<=[\r\n])\d+\s+\d+\s+obj")]
    private static partial Regex FirstObject();

    [GeneratedRegex(@"\G(?<number>\d+)(?<gap>\s+)\d+(?<gap>\s+)obj(?<end>\r\n|.)", RegexOptions.Singleline)]
    private static partial Regex ObjectHead();

    [GeneratedRegex(@"/(F|FFilter|FDecodeParms)(?![A-Za-z])")]
    private static partial Regex ExternalFile();

    [GeneratedRegex(@"/Filter\s*(\[(\s*/(?<name>\w+))+|/(?<name>\w+))")]
    private static partial Regex Filters();

    [GeneratedRegex(@"/Length\s+(\d+)(?!\s+\d+\s+R)")]
    private static partial Regex LengthEntry();

    [GeneratedRegex(@"\G(\r\n|\r|\n)endstream")]
    private static partial Regex EndOfStream();

    [GeneratedRegex(@"startxref\s+(\d+)\s+%%EOF", RegexOptions.RightToLeft)]
    private static partial Regex StartXref();

    [GeneratedRegex(@"/ID\s*\[\s*<[0-9A-Fa-f]{2,}>\s*<[0-9A-Fa-f]{2,}>\s*\]")]
    private static partial Regex Identifier();

    [GeneratedRegex(@"/Encrypt\s+(\d+)\s+0\s+R")]
    private static partial Regex Encrypt();

    [GeneratedRegex(@"/P\s+(-?\d+)")]
    private static partial Regex Permissions();
}
