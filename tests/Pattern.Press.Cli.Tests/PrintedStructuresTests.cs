namespace Pattern.Press.Cli.Tests;

/// <summary><c>structures --pdf FILE</c>: what is written, and what is said when nothing can be.</summary>
public sealed class PrintedStructuresTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_catalogue_is_written_and_nothing_is_left_beside_it()
    {
        var file = Path.Combine(_folder, "new", "shapes.pdf");
        var (code, output, errors) = Run("structures", "cone", "--pdf", file, "--paper", "letter", "--theme", "market");
        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("shapes.pdf: 1 structure on 2 pages.", output, StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFiles(Path.GetDirectoryName(file)!));
        Assert.StartsWith("%PDF-1.7", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_can_be_written_what_was_there_stays()
    {
        var file = Path.Combine(_folder, "shapes.pdf");
        File.WriteAllText(file, "old");
        Directory.CreateDirectory(file + ".part");
        var (code, _, errors) = Run("structures", "cone", "--pdf", file);
        Assert.Equal(3, code);
        Assert.Contains("cannot be written", errors, StringComparison.Ordinal);
        Assert.Equal("old", File.ReadAllText(file));
    }

    [Fact]
    public void A_structure_of_ones_own_is_printed_or_refused_with_its_place()
    {
        var own = Path.Combine(_folder, "own.yaml");
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "content", "structures", "cone.yaml"));
        File.WriteAllText(own, text);
        Assert.Equal(0, Run("structures", own, "--pdf", Path.Combine(_folder, "own.pdf")).Code);
        File.WriteAllText(own, text.Replace("title:", "titel:", StringComparison.Ordinal));
        var (code, _, errors) = Run("structures", own, "--pdf", Path.Combine(_folder, "other.pdf"));
        Assert.Equal(1, code);
        Assert.Contains("Did you mean “title”?", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(_folder, "other.pdf")));
    }

    [Theory]
    [InlineData("Did you mean “market”?", "--pdf", "x.pdf", "--theme", "markt")]
    [InlineData("one paper", "--pdf", "x.pdf", "--paper", "a4", "--paper", "letter")]
    [InlineData("Add --pdf", "--paper", "a4")]
    [InlineData("Did you mean “cone”?", "conee", "--pdf", "x.pdf")]
    [InlineData("is not a paper that is known here", "--pdf", "x.pdf", "--paper", "a44")]
    public void Wrong_usage_says_what_would_be_right(string expected, params string[] arguments)
    {
        var (code, _, errors) = Run(["structures", .. arguments]);
        Assert.Equal(2, code);
        Assert.Contains(expected, errors, StringComparison.Ordinal);
        Assert.False(File.Exists("x.pdf"));
    }

    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = CommandLine.Run(arguments, output, errors);
        return (code, output.ToString(), errors.ToString());
    }
}
