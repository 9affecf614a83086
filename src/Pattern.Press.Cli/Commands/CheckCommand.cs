using System.CommandLine;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Cli.Output;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>check FOLDER</c>: lists what is wrong with a booklet and what was proven, and writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = Shared.Folder();
        var command = new Command("check", "Lists everything that is wrong with a booklet; writes nothing.") { folder };
        var print = new PrintOptions();
        print.AddTo(command);
        command.SetAction(parsed => Check(parsed.GetValue(folder)!, print.Of(parsed), output, errors));
        return command;
    }

    private static int Check(string folder, BuildOptions options, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var proven = new BookletPress(Resources.OfProgram).Check(folder, options, problems);
        foreach (var line in proven)
            output.WriteLine(line);
        ProblemReport.Write(problems.All, errors);
        if (!problems.HasErrors)
        {
            output.WriteLine(problems.All.Count == 0 ? "All is well." : "It can be built.");
            return ExitCode.Done;
        }

        return Directory.Exists(folder) || File.Exists(folder) ? ExitCode.ContentHasProblems : ExitCode.CannotReadOrWrite;
    }
}
