using System.CommandLine;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Cli.Output;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>structures [ID]</c>: what can be made, and what can be set about it.</summary>
internal static class StructuresCommand
{
    private const int Width = 78;

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var id = new Argument<string?>("ID")
        {
            Description = "A structure, to see everything that can be set about it.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("structures", "Lists the structures that can be made, or the sizes of one of them.") { id };
        command.SetAction(parsed => Show(parsed.GetValue(id), output, errors));
        return command;
    }

    private static int Show(string? id, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var catalogue = Catalogue.Open(Resources.OfProgram.StructuresFolder, problems);
        if (id is null)
        {
            foreach (var structure in catalogue.All(problems))
            {
                output.WriteLine(structure.Id);
                Wrapped(structure.Suits, 4, output);
            }
        }
        else if (!catalogue.Ids.Contains(id, StringComparer.Ordinal))
        {
            errors.WriteLine($"There is no structure “{id}”. {Spelling.Advice(id, catalogue.Ids)}");
            return ExitCode.WrongUsage;
        }
        else if (catalogue.Find(id, new Place("ID"), problems) is { } structure)
        {
            One(structure, output);
        }

        ProblemReport.Write(problems.All, errors);
        return problems.HasErrors ? ExitCode.ContentHasProblems : ExitCode.Done;
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
