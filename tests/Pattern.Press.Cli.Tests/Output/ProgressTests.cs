using Pattern.Press.Cli.Output;

namespace Pattern.Press.Cli.Tests.Output;

/// <summary>The line that says what is going on.</summary>
public sealed class ProgressTests
{
    [Fact]
    public void On_a_terminal_the_line_is_rewritten_and_taken_away()
    {
        using var output = new StringWriter();
        var progress = new Progress("my-box", output, isTerminal: true);
        progress.Report("reading and fitting");
        progress.Report("writing");
        progress.Clear();
        var shown = output.ToString();
        Assert.Contains("\rmy-box: reading and fitting …", shown, StringComparison.Ordinal);
        // The shorter text covers all of the longer one, and nothing is left at the end.
        Assert.Equal("my-box: reading and fitting …".Length, shown.Split('\r')[2].Length);
        Assert.Equal("", shown.Split('\r')[^1]);
        Assert.DoesNotContain('\n', shown);
    }

    [Fact]
    public void Elsewhere_nothing_is_shown()
    {
        using var output = new StringWriter();
        var progress = new Progress("my-box", output, isTerminal: false);
        progress.Report("reading and fitting");
        progress.Clear();
        Assert.Equal("", output.ToString());
    }
}
