using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Output;

/// <summary>Shows problems to a maker.</summary>
internal static class ProblemReport
{
    /// <summary>Writes each problem on a line of its own, its advice below it, and a count at the end.</summary>
    public static void Write(IReadOnlyList<Problem> problems, TextWriter to)
    {
        foreach (var problem in problems)
        {
            to.WriteLine((problem with { Advice = "" }).ToString());
            if (problem.Advice.Length > 0)
                to.WriteLine("    " + problem.Advice);
        }

        var errors = problems.Count(problem => problem.Severity == Severity.Error);
        var warnings = problems.Count - errors;
        if (problems.Count > 0)
            to.WriteLine(string.Join(", ", Counted(errors, "error"), Counted(warnings, "warning")) + ".");
    }

    private static string Counted(int count, string word) => count switch
    {
        0 => $"no {word}s",
        1 => $"1 {word}",
        _ => $"{count} {word}s",
    };
}
