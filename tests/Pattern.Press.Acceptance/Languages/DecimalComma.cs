using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Acceptance.Languages;

/// <summary>
/// Another language is a file of phrases and nothing else, number formats included. The words of this one are English; only
/// the mark between whole numbers and decimals is the comma that ISO 80000-1 allows beside the point.
/// </summary>
public sealed partial class DecimalComma : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    [Fact]
    public void A_language_with_a_decimal_comma_has_no_decimal_point_anywhere()
    {
        Copy(Path.Combine(Resources.OfProgram.Root, "content"), Path.Combine(_root, "content"));
        Copy(Path.Combine(Resources.OfProgram.Root, "themes"), Path.Combine(_root, "themes"));
        var phrases = File.ReadAllText(Path.Combine(_root, "content", "phrases", "en.yaml"));
        Assert.Contains("decimal_mark: \".\"", phrases, StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(_root, "content", "phrases", "xx.yaml"), phrases.Replace("decimal_mark: \".\"", "decimal_mark: \",\"", StringComparison.Ordinal));
        var folder = Path.Combine(_root, "box");
        Copy(Workshop.FolderOf("tea-tin-box"), folder);
        var booklet = File.ReadAllText(Path.Combine(folder, "booklet.md"));
        File.WriteAllText(Path.Combine(folder, "booklet.md"), Language().Replace(booklet, "language: xx\n", 1));

        var problems = new Problems();
        var built = new BookletPress(new Resources(_root)).Build(folder, new BuildOptions { Papers = [PaperSize.A4] }, problems);
        Assert.True(built is not null, string.Join(Environment.NewLine, problems.All));
        var text = string.Join('\n', new PrintedBook(built[0].Bytes).Pages.Select(page => page.Text));
        Assert.Matches(@"\d,\d+ mm", text);
        Assert.DoesNotMatch(@"\d\.\d+ ?(mm|in)\b", text);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var inner in Directory.GetDirectories(from))
            Copy(inner, Path.Combine(to, Path.GetFileName(inner)));
    }

    [GeneratedRegex("^language:.*\n", RegexOptions.Multiline)]
    private static partial Regex Language();
}
