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
        var into = Shared.Out();
        var svg = new Option<bool>("--svg")
        {
            Description = "Also draws each piece at true size as an SVG file, for a cutting machine.",
        };
        var command = new Command("build", "Makes the booklet: one PDF for each paper.") { folder, paper, into, theme, svg };
        command.SetAction(parsed => Build(
            parsed.GetValue(folder)!,
            new BuildOptions { Papers = parsed.GetValue(paper) ?? [], Theme = parsed.GetValue(theme) },
            parsed.GetValue(svg),
            parsed.GetValue(into)!,
            output,
            errors));
        return command;
    }

    private static int Build(string folder, BuildOptions options, bool svg, string into, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var name = Path.GetFileName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar));
        var progress = new Progress(name, output, ReferenceEquals(output, Console.Out) && !Console.IsOutputRedirected);
        var press = new BookletPress(Resources.OfProgram);
        var built = press.Build(folder, options, problems, progress);

        // What is wrong was said when the booklet was built.
        var pieces = svg && built is not null ? press.Pieces(folder, options, new Problems()) ?? [] : [];
        progress.Clear();
        ProblemReport.Write(problems.All, errors);
        if (built is null)
        {
            return Shared.NothingWritten(name, folder, errors);
        }

        try
        {
            var files = OutputFolder.Write(into, [.. built.Select(booklet => (booklet.FileName, booklet.Bytes)), .. pieces.Select(piece => (piece.FileName, piece.Bytes))]);
            foreach (var (booklet, file) in built.Zip(files))
                output.WriteLine($"{file}: {booklet.Pages} pages, {booklet.TemplatePages} of them templates.");
            foreach (var file in files.Skip(built.Count))
                output.WriteLine($"{file}: one piece, at true size.");
            output.WriteLine("Print at actual size (100 %), then measure the check square under “Before you begin”.");
            return ExitCode.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Shared.CannotWrite(into, problem, errors);
        }
    }
}
