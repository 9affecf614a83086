using System.CommandLine;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Cli.Output;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>build FOLDER</c>: makes the PDFs of a booklet.</summary>
internal static class BuildCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = Shared.Folder();
        var paper = Shared.Paper();
        var theme = Shared.Theme();
        var into = new Option<string>("--out")
        {
            Description = "The folder to write to; made if it is not there.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out",
        };
        var command = new Command("build", "Makes the booklet: one PDF for each paper.") { folder, paper, into, theme };
        command.SetAction(parsed => Build(
            parsed.GetValue(folder)!,
            new BuildOptions { Papers = parsed.GetValue(paper) ?? [], Theme = parsed.GetValue(theme) },
            parsed.GetValue(into)!,
            output,
            errors));
        return command;
    }

    private static int Build(string folder, BuildOptions options, string into, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var name = Path.GetFileName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar));
        var progress = new Progress(name, output, ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected);
        var built = new BookletPress(Resources.OfProgram).Build(folder, options, problems, progress);
        progress.Clear();
        ProblemReport.Write(problems.All, errors);
        if (built is null)
        {
            errors.WriteLine($"{name}: nothing was written.");
            return Directory.Exists(folder) || File.Exists(folder) ? ExitCode.ContentHasProblems : ExitCode.CannotReadOrWrite;
        }

        try
        {
            var files = OutputFolder.Write(into, [.. built.Select(booklet => (booklet.FileName, booklet.Bytes))]);
            foreach (var (booklet, file) in built.Zip(files))
                output.WriteLine($"{file}: {booklet.Pages} pages, {booklet.TemplatePages} of them templates.");
            output.WriteLine("Print at actual size (100 %), then measure the check square under “Before you begin”.");
            return ExitCode.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{into}: cannot be written to: {problem.Message}");
            errors.WriteLine("    Choose another folder with --out, or make room there. Nothing was changed.");
            return ExitCode.CannotReadOrWrite;
        }
    }
}
