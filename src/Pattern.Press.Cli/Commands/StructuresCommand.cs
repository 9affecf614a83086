using System.CommandLine;
using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Cli.Output;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>structures [ID]</c>: what can be made, and what can be set about it, on the screen or in print.</summary>
internal static class StructuresCommand
{
    private const int Width = 78;

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "A structure, or the path of a structure’s file, to see everything that can be set about it.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var pdf = new Option<string?>("--pdf")
        {
            Description = "Also prints them: writes a catalogue with a drawing of each to this file.",
            HelpName = "FILE",
        };
        var paper = PrintOptions.Paper();
        paper.Description = "The paper of that catalogue: a4 unless another one is named.";
        var theme = new Option<string?>("--theme") { Description = "The theme of that catalogue: handout or market.", HelpName = "NAME" };
        var command = new Command("structures", "Lists the structures that can be made, or the sizes of one of them.") { id, pdf, paper, theme };
        command.SetAction(parsed =>
        {
            var (file, papers, look) = (parsed.GetValue(pdf), parsed.GetValue(paper) ?? [], parsed.GetValue(theme));
            if (file is null && (papers.Length > 0 || look is not null))
                return Wrong("--paper and --theme are about the printed catalogue. Add --pdf and the name of its file, such as --pdf structures.pdf.", errors);
            if (papers.Length > 1)
                return Wrong("The catalogue is one file, so it has one paper. Name one, and print it again for the other.", errors);
            return file is null
                ? Show(parsed.GetValue(id), output, errors)
                : Print(parsed.GetValue(id), file, papers.Length > 0 ? papers[0] : PaperSize.A4, look, output, errors);
        });
        return command;
    }

    private static int Wrong(string message, TextWriter errors)
    {
        errors.WriteLine(message);
        return ExitCode.WrongUsage;
    }

    private static int Show(string? id, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        if (id is null)
        {
            foreach (var structure in Catalogue.Open(Resources.OfProgram.StructuresFolder, problems).All(problems))
            {
                output.WriteLine(structure.Id);
                Wrapped(structure.Suits, 4, output);
            }
        }
        else if (Chosen(id, problems, errors) is not { } chosen)
        {
            return ExitCode.WrongUsage;
        }
        else if (chosen is [var structure])
        {
            One(structure, output);
        }

        ProblemReport.Write(problems.All, errors);
        return problems.HasErrors ? ExitCode.ContentHasProblems : ExitCode.Done;
    }

    private static int Print(string? id, string file, PaperSize paper, string? theme, TextWriter output, TextWriter errors)
    {
        var themes = ThemeReader.Names(Resources.OfProgram.ThemesFolder);
        if (theme is not null && !themes.Contains(theme))
            return Wrong($"There is no theme “{theme}”. {Spelling.Advice(theme, themes)}", errors);
        var problems = new Problems();
        if (Chosen(id, problems, errors) is not { } structures)
            return ExitCode.WrongUsage;
        var made = problems.HasErrors ? null : new CataloguePress(Resources.OfProgram).Make(structures, paper, theme, problems);
        ProblemReport.Write(problems.All, errors);
        if (made is not { } catalogue)
        {
            errors.WriteLine($"{file}: nothing was written.");
            return ExitCode.ContentHasProblems;
        }

        var path = Path.GetFullPath(file);
        try
        {
            OutputFolder.Write(Path.GetDirectoryName(path) ?? path, [(Path.GetFileName(path), catalogue.File)]);
            output.WriteLine($"{file}: {(structures.Count == 1 ? "1 structure" : $"{structures.Count} structures")} on {catalogue.Pages} pages.");
            return ExitCode.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{file}: cannot be written: {problem.Message}");
            errors.WriteLine("    Choose another file, or make room there. Nothing was changed.");
            return ExitCode.CannotReadOrWrite;
        }
    }

    // All of the catalogue, one of it, or a maker's own by the path of its file; null after an id that is not known.
    private static IReadOnlyList<Structure>? Chosen(string? id, Problems problems, TextWriter errors)
    {
        if (id?.EndsWith(".yaml", StringComparison.Ordinal) == true)
            return Catalogue.ReadFile(id, problems) is { } own ? [own] : [];
        var catalogue = Catalogue.Open(Resources.OfProgram.StructuresFolder, problems);
        if (id is null)
            return catalogue.All(problems);
        if (catalogue.Ids.Contains(id, StringComparer.Ordinal))
            return catalogue.Find(id, new Place("ID"), problems) is { } found ? [found] : [];
        errors.WriteLine($"There is no structure “{id}”. {Spelling.Advice(id, catalogue.Ids)}");
        return null;
    }

    private static void One(Structure structure, TextWriter output)
    {
        output.WriteLine($"{structure.Title} ({structure.Id})");
        Wrapped(structure.Suits, 0, output);
        output.WriteLine();
        output.WriteLine($"It holds an item that is {string.Join(" or ", structure.Takes.Select(shape => shape.ToString().ToLowerInvariant()))}.");
        output.WriteLine();
        output.WriteLine("Stocks (under “stocks” in booklet.md):");
        foreach (var stock in structure.Stocks)
        {
            output.WriteLine($"  {stock.Id}");
            Wrapped(stock.Means, 6, output);
        }

        output.WriteLine();
        output.WriteLine("Sizes and choices (under “sizes”; each can be left out):");
        foreach (var parameter in structure.Parameters)
        {
            var kind = parameter.Kind == ParameterKind.Choice ? string.Join(" | ", parameter.Choices) : Kind(parameter.Kind);
            output.WriteLine($"  {parameter.Name}  ({kind})");
            Wrapped(parameter.Means, 6, output);
            if (parameter.Usual.Length > 0)
                Wrapped($"If left out: {parameter.Usual}", 6, output);
            else if (parameter.Default is { } usual)
                Wrapped($"If left out: {usual}.", 6, output);
            if (Range(parameter) is { Length: > 0 } range)
                Wrapped(range, 6, output);
            if (parameter.Limits.Length > 0)
                Wrapped(parameter.Limits, 6, output);
        }
    }

    // Limits that depend on other sizes are said in the file's own words, below.
    private static string Range(Parameter parameter)
    {
        var least = parameter.Least is { } from && LengthParser.TryParse(from, out _, out _) ? from : "";
        var most = parameter.Most is { } to && LengthParser.TryParse(to, out _, out _) ? to : "";
        return (least.Length > 0, most.Length > 0) switch
        {
            (true, true) => $"From {least} to {most}.",
            (true, false) => $"At least {least}.",
            (false, true) => $"At most {most}.",
            _ => "",
        };
    }

    private static string Kind(ParameterKind kind) => kind switch
    {
        ParameterKind.Length => "a length, such as 58 mm or 2 1/4 in",
        ParameterKind.YesNo => "yes or no",
        _ => "a number",
    };

    private static void Wrapped(string text, int indent, TextWriter output)
    {
        var line = new System.Text.StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && indent + line.Length + 1 + word.Length > Width)
            {
                output.WriteLine(new string(' ', indent) + line);
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        output.WriteLine(new string(' ', indent) + line);
    }
}
