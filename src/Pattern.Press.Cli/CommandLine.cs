using System.CommandLine;
using Pattern.Press.Cli.Commands;

namespace Pattern.Press.Cli;

/// <summary>The <c>pattern-press</c> command.</summary>
public static class CommandLine
{
    /// <summary>Runs the command with its arguments.</summary>
    /// <returns>The exit code: 0 done, 1 the content has problems, 2 wrong usage, 3 could not read or write.</returns>
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var root = new RootCommand("Turns an object's measurements and a few Markdown files into a printed pattern booklet.")
        {
            BuildCommand.Create(output, errors),
            CheckCommand.Create(output, errors),
            PreviewCommand.Create(output, errors),
            StructuresCommand.Create(output, errors),
            DraftCommand.Create(output, errors),
        };
        var parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
                errors.WriteLine(error.Message);
            errors.WriteLine("Run “pattern-press --help” to see what can be written here.");
            return ExitCode.WrongUsage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false });
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(problem.Message);
            return ExitCode.CannotReadOrWrite;
        }
    }
}
