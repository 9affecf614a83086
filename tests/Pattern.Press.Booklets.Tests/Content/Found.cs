using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Content;

/// <summary>Says what a single problem should be.</summary>
internal static class Found
{
    /// <summary>Exactly one problem, an error, at a place, whose sentences say certain things.</summary>
    public static void One(Problems problems, string file, int line, int column, string message, string advice) =>
        One(Severity.Error, problems, file, line, column, message, advice);

    public static void One(Severity severity, Problems problems, string file, int line, int column, string message, string advice)
    {
        var problem = Assert.Single(problems.All);
        Is(problem, severity, file, line, column, message, advice);
    }

    public static void Is(Problem problem, Severity severity, string file, int line, int column, string message, string advice)
    {
        Assert.Equal((severity, file, line, column), (problem.Severity, problem.File, problem.Line, problem.Column));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        if (advice.Length > 0)
            Assert.Contains(advice, problem.Advice.Length > 0 ? problem.Advice : problem.Message, StringComparison.Ordinal);
        Assert.Matches(@"[.?]$", problem.Message.TrimEnd('”', ')'));
    }
}
