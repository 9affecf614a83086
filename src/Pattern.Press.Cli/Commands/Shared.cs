using System.CommandLine;
using Pattern.Press.Measure;

namespace Pattern.Press.Cli.Commands;

/// <summary>Arguments and options that several commands take.</summary>
internal static class Shared
{
    /// <summary>The booklet's folder.</summary>
    public static Argument<string> Folder() => new("FOLDER")
    {
        Description = "The booklet's folder: it holds booklet.md and a folder of steps.",
    };

    /// <summary>The papers to print on.</summary>
    public static Option<PaperSize[]> Paper()
    {
        var option = new Option<PaperSize[]>("--paper")
        {
            Description = $"A paper to print on, instead of those the booklet names; may be given several times. One of {string.Join(", ", PaperSize.All.Select(paper => paper.Id))}.",
            HelpName = "NAME",
            AllowMultipleArgumentsPerToken = false,
            CustomParser = result =>
            {
                var papers = new List<PaperSize>();
                foreach (var token in result.Tokens)
                {
                    if (PaperSize.Find(token.Value) is { } paper)
                    {
                        if (!papers.Contains(paper))
                            papers.Add(paper);
                    }
                    else
                    {
                        result.AddError($"“{token.Value}” is not a paper known here. Write one of {string.Join(", ", PaperSize.All.Select(known => known.Id))}.");
                    }
                }

                return [.. papers];
            },
        };
        option.CompletionSources.Add(_ => PaperSize.All.Select(paper => new System.CommandLine.Completions.CompletionItem(paper.Id)));
        return option;
    }

    /// <summary>The theme.</summary>
    public static Option<string?> Theme() => new("--theme")
    {
        Description = "A theme, instead of the one the booklet names: handout or market.",
        HelpName = "NAME",
    };

    /// <summary>The folder to write to.</summary>
    public static Option<string> Out() => new("--out")
    {
        Description = "The folder to write to; made if it is not there.",
        HelpName = "DIR",
        DefaultValueFactory = _ => "out",
    };

    /// <summary>Says that problems kept anything from being written.</summary>
    public static int NothingWritten(string name, string folder, TextWriter errors)
    {
        errors.WriteLine($"{name}: nothing was written.");
        return Directory.Exists(folder) || File.Exists(folder) ? ExitCode.ContentHasProblems : ExitCode.CannotReadOrWrite;
    }

    /// <summary>Says that finished files could not be put where they were wanted.</summary>
    public static int CannotWrite(string folder, Exception problem, TextWriter errors)
    {
        errors.WriteLine($"{folder}: cannot be written to: {problem.Message}");
        errors.WriteLine("    Choose another folder with --out, or make room there. Nothing was changed.");
        return ExitCode.CannotReadOrWrite;
    }
}
