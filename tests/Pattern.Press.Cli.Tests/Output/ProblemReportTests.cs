using Pattern.Press.Cli.Output;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Tests.Output;

/// <summary>How problems are shown.</summary>
public sealed class ProblemReportTests
{
    [Fact]
    public void Each_problem_has_its_place_its_advice_below_and_all_are_counted()
    {
        using var output = new StringWriter { NewLine = "\n" };
        ProblemReport.Write(
            [
                new Problem(Severity.Error, "booklet.md", 7, 3, "“58” has no unit.", "Write 58 mm."),
                new Problem(Severity.Warning, "booklet.md", 9, 0, "The margin is narrow."),
            ],
            output);
        Assert.Equal(
            "booklet.md:7:3: error: “58” has no unit.\n    Write 58 mm.\nbooklet.md:9: warning: The margin is narrow.\n1 error, 1 warning.\n",
            output.ToString());
    }

    [Fact]
    public void No_problems_say_nothing()
    {
        using var output = new StringWriter();
        ProblemReport.Write([], output);
        Assert.Equal("", output.ToString());
    }
}
