using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;

namespace Pattern.Press.Acceptance.Cataloguing;

/// <summary>A maker follows the guide to structure files to the letter, and gets a booklet.</summary>
public sealed partial class OwnStructure : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    private static string Guide { get; } = File.ReadAllText(Path.Combine(Workshop.ContentFolder, "structures", "README.md"));

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_guides_example_saved_and_drafted_as_it_says_builds_a_booklet_from_the_file_beside_it()
    {
        var file = Save();
        var (code, output, errors) = Follow("draft", file);
        Assert.True(code == 0, output + errors);
        var folder = Path.Combine(_folder, "my-tray");
        Assert.Contains("structure: ./soap-tray.yaml", File.ReadAllText(Path.Combine(folder, "booklet.md")), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(file), File.ReadAllText(Path.Combine(folder, "soap-tray.yaml")));

        (code, output, errors) = BookletCopy.Run("build", folder, "--out", _folder);
        Assert.True(code == 0, output + errors);
        var printed = new PrintedBook(File.ReadAllBytes(Path.Combine(_folder, "my-tray-a4.pdf")));
        Assert.Equal("Soap tray", printed.Title);
        Assert.NotEmpty(printed.TemplatePages);
        Assert.Contains("The soap fits along the length of the floor", printed.Body, StringComparison.Ordinal);

        // 80 mm of soap, 2 mm of ease on both sides and three layers of card of 0.3 mm, up to the next whole millimetre.
        Assert.Contains("85", printed.Body, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_guide_says_of_the_printed_catalogue_holds_too()
    {
        var (code, output, errors) = Follow("structures", Save());
        Assert.True(code == 0, output + errors);
        Assert.Contains("Soap tray", new PrintedBook(File.ReadAllBytes(Path.Combine(_folder, "soap-tray.pdf"))).Body, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_in_the_file_beside_the_booklet_is_told_when_the_booklet_is_checked()
    {
        Follow("draft", Save());
        var own = Path.Combine(_folder, "my-tray", "soap-tray.yaml");
        File.WriteAllText(own, File.ReadAllText(own).Replace("height - tab, tab, length", "height - 2 * tab, tab, length", StringComparison.Ordinal));
        var (code, _, errors) = BookletCopy.Run("check", Path.Combine(_folder, "my-tray"));
        Assert.Equal(1, code);
        Assert.Matches(@"soap-tray\.yaml:\d+:\d+: error: “height - 2 \* tab” comes out at -\d+ mm, less than nothing", errors);
    }

    private string Save()
    {
        var file = Path.Combine(_folder, "soap-tray.yaml");
        File.WriteAllText(file, Example().Match(Guide).Groups[1].Value);
        return file;
    }

    // The command as the guide prints it, run from the folder that the file was saved in.
    private (int Code, string Output, string Errors) Follow(string command, string file)
    {
        var written = Command().Matches(Guide).Select(match => match.Groups[1].Value).Single(words => words.StartsWith(command + " soap-tray.yaml", StringComparison.Ordinal));
        var words = Word().Matches(written).Select(word => word.Value.Trim('"')).Select(word => word switch
        {
            "soap-tray.yaml" => file,
            "soap-tray.pdf" => Path.Combine(_folder, word),
            _ => word,
        });
        return BookletCopy.Run([.. words, .. command == "draft" ? new[] { "--into", _folder } : []]);
    }

    [GeneratedRegex("```yaml\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();

    [GeneratedRegex("`pattern-press ([^`]*)`")]
    private static partial Regex Command();

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();
}
