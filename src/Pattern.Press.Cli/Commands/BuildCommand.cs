using System.CommandLine;
using System.Globalization;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Cli.Output;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>build FOLDER</c>: makes the PDFs of a booklet.</summary>
internal static class BuildCommand
{
    private const string Templates = "templates";

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = Shared.Folder();
        var print = new PrintOptions();
        var only = Only();
        var copies = Copies();
        var grey = new Option<bool>("--grey") { Description = "Print everything in greys, without any colour." };
        var into = Shared.Out();
        var svg = new Option<bool>("--svg")
        {
            Description = "Also draws each piece at true size as an SVG file, for a cutting machine.",
        };
        var command = new Command("build", "Makes the booklet: one PDF for each paper.") { folder };
        print.AddTo(command);
        foreach (var option in new Option[] { only, copies, grey, svg, into })
            command.Options.Add(option);
        command.SetAction(parsed => Build(
            parsed.GetValue(folder)!,
            print.Of(parsed) with
            {
                OnlyTemplates = parsed.GetValue(only) is not null,
                Copies = parsed.GetValue(copies),
                Grey = parsed.GetValue(grey),
            },
            parsed.GetValue(svg),
            parsed.GetValue(into)!,
            output,
            errors));
        return command;
    }

    private static Option<string?> Only() => new("--only")
    {
        Description = "The part to print by itself: templates, with the pages that show how to join them.",
        HelpName = "PART",
        CustomParser = result =>
        {
            if (result.Tokens[0].Value == Templates)
                return Templates;
            result.AddError($"--only: “{result.Tokens[0].Value}” cannot be printed by itself. Write --only {Templates}.");
            return null;
        },
    };

    private static Option<int?> Copies() => new("--copies")
    {
        Description = "For how many kits. Templates are set side by side as often where that saves paper; the others say how many to cut. Materials are counted for as many.",
        HelpName = "N",
        CustomParser = result =>
        {
            if (int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var copies) && copies is >= 1 and <= PrintSettings.MostCopies)
                return copies;
            result.AddError($"--copies: “{result.Tokens[0].Value}” should be a whole number from 1 to {PrintSettings.MostCopies}.");
            return null;
        },
    };

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
            return Shared.NothingWritten(name, folder, errors);

        try
        {
            var files = OutputFolder.Write(into, [.. built.Select(booklet => (booklet.FileName, booklet.Bytes)), .. pieces.Select(piece => (piece.FileName, piece.Bytes))]);
            foreach (var (booklet, file) in built.Zip(files))
                output.WriteLine($"{file}: {booklet.Pages} pages, {booklet.TemplatePages} of them templates.");
            foreach (var file in files.Skip(built.Count))
                output.WriteLine($"{file}: one piece, at true size.");
            output.WriteLine(options.OnlyTemplates
                ? "Print at actual size (100 %), then measure the square at the foot of each page."
                : "Print at actual size (100 %), then measure the check square under “Before you begin”.");
            return ExitCode.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Shared.CannotWrite(into, problem, errors);
        }
    }
}
