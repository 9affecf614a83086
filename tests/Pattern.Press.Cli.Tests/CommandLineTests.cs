namespace Pattern.Press.Cli.Tests;

/// <summary>What the command says and which exit code it gives, without any booklet.</summary>
public sealed class CommandLineTests
{
    private static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = CommandLine.Run(arguments, output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    [Fact]
    public void Help_names_every_command_with_a_sentence()
    {
        var (code, output, errors) = Run("--help");
        Assert.Equal(0, code);
        Assert.Equal("", errors);
        foreach (var command in new[] { "build", "check", "draft", "preview", "structures" })
        {
            var line = Assert.Single(output.Split('\n'), line => line.TrimStart().StartsWith(command + " ", StringComparison.Ordinal));
            Assert.Matches(@"[A-Z].*\.\s*$", line);
        }
    }

    [Theory]
    [InlineData("build", "FOLDER", "--paper", "330x483mm", "--printer-margin", "--lap", "--only", "templates", "--copies", "--grey", "--force", "--out", "--theme", "--svg")]
    [InlineData("check", "FOLDER", "--paper", "--printer-margin", "--lap", "--force")]
    [InlineData("preview", "FOLDER", "--page", "--width", "--paper", "--theme", "--out")]
    [InlineData("draft", "STRUCTURE", "--item", "--name", "--into", "--size", "--stock", "--paper")]
    [InlineData("structures", "ID", "--pdf", "--paper", "--theme")]
    public void Help_of_a_command_names_what_it_takes(string command, params string[] takes)
    {
        var (code, output, _) = Run(command, "--help");
        Assert.Equal(0, code);
        Assert.All(takes, word => Assert.Contains(word, output, StringComparison.Ordinal));
    }

    [Fact]
    public void Structures_are_listed_with_what_they_suit()
    {
        var (code, output, errors) = Run("structures");
        Assert.Equal(0, code);
        Assert.Equal("", errors);
        Assert.Contains("explosion-box", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 78, line));
    }

    [Fact]
    public void A_structure_is_shown_with_everything_that_can_be_set_about_it()
    {
        var (code, output, _) = Run("structures", "explosion-box");
        Assert.Equal(0, code);
        foreach (var name in new[] { "floor_length", "wall_height", "gusset", "lid_walls", "platform", "mat_border" })
            Assert.Contains($"  {name}  (", output, StringComparison.Ordinal);
        Assert.Contains("single | double", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_structure_is_wrong_usage_and_the_nearest_is_offered()
    {
        var (code, _, errors) = Run("structures", "explosoin-box");
        Assert.Equal(2, code);
        Assert.Contains("Did you mean “explosion-box”?", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a44", "Did you mean “a4”?")]
    [InlineData("foolscap", "a4, letter, a3, a5, tabloid, legal; any other is written as two sides, such as 330 x 483 mm.")]
    public void An_unknown_paper_is_wrong_usage_and_the_known_ones_are_named(string paper, string advice)
    {
        var (code, _, errors) = Run("build", "somewhere", "--paper", paper);
        Assert.Equal(2, code);
        Assert.Contains($"--paper: “{paper}” is not a paper that is known here.", errors, StringComparison.Ordinal);
        Assert.Contains(advice, errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5")]
    [InlineData("80000")]
    [InlineData("wide")]
    public void A_picture_of_an_impossible_width_is_wrong_usage(string width)
    {
        var (code, _, errors) = Run("preview", "somewhere", "--width", width);
        Assert.Equal(2, code);
        Assert.Contains("--help", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("build")]
    [InlineData("check")]
    [InlineData("bild", "somewhere")]
    [InlineData("check", "here", "there")]
    public void Wrong_usage_says_where_help_is(params string[] arguments)
    {
        var (code, output, errors) = Run(arguments);
        Assert.Equal(2, code);
        Assert.Equal("", output);
        Assert.Contains("--help", errors, StringComparison.Ordinal);
    }
}
