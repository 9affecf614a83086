using System.CommandLine;
using System.CommandLine.Parsing;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;

namespace Pattern.Press.Cli.Commands;

/// <summary>The options about paper, printer and look that building and checking share.</summary>
internal sealed class PrintOptions
{
    private readonly Option<PaperSize[]> _paper = Paper();

    private readonly Option<Length?> _margin = LengthOption(
        "--printer-margin",
        "What the printer leaves free at the edges of a page, such as 6mm, instead of what the booklet says.",
        PrintSettings.WrongMargin);

    private readonly Option<Length?> _lap = LengthOption(
        "--lap",
        "How far the pages of a template lap where they are joined, up to 20 mm; 0mm for edges that meet.",
        PrintSettings.WrongLap);

    private readonly Option<string?> _theme = new("--theme")
    {
        Description = "A theme, instead of the one the booklet names: handout or market.",
        HelpName = "NAME",
    };

    private readonly Option<bool> _force = new("--force")
    {
        Description = $"Print a template even if it takes more than {PrintSettings.MostPages} pages.",
    };

    /// <summary>Lets a command take the options.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _paper, _margin, _lap, _theme, _force })
            command.Options.Add(option);
    }

    /// <summary>What was asked for.</summary>
    public BuildOptions Of(ParseResult parsed) => new()
    {
        Papers = parsed.GetValue(_paper) ?? [],
        PrinterMargin = parsed.GetValue(_margin),
        Lap = parsed.GetValue(_lap),
        Theme = parsed.GetValue(_theme),
        Force = parsed.GetValue(_force),
    };

    /// <summary>The option for papers.</summary>
    public static Option<PaperSize[]> Paper()
    {
        var option = new Option<PaperSize[]>("--paper")
        {
            Description = $"A paper to print on, instead of those the booklet names; may be given several times. One of {string.Join(", ", PaperSize.All.Select(paper => paper.Id))}, or two sides such as 330x483mm.",
            HelpName = "PAPER",
            AllowMultipleArgumentsPerToken = false,
            CustomParser = Papers,
        };
        option.CompletionSources.Add(_ => PaperSize.All.Select(paper => new System.CommandLine.Completions.CompletionItem(paper.Id)));
        return option;
    }

    private static PaperSize[] Papers(ArgumentResult result)
    {
        var papers = new List<PaperSize>();
        foreach (var written in result.Tokens.Select(token => token.Value))
        {
            if (!PaperSize.TryParse(written, out var paper, out var problem))
                result.AddError("--paper: " + (problem.Length > 0 ? problem : $"{PrintSettings.UnknownPaper(written)} {PrintSettings.KnownPapers(written)}"));
            else if (!papers.Exists(other => other.Size == paper.Size))
                papers.Add(paper);
        }

        return [.. papers];
    }

    private static Option<Length?> LengthOption(string name, string description, Func<Length, string, (string Message, string Advice)?> wrong) => new(name)
    {
        Description = description,
        HelpName = "LENGTH",
        CustomParser = result =>
        {
            var written = result.Tokens[0].Value;
            if (!LengthParser.TryParse(written, out var length, out var problem))
                result.AddError($"{name}: {problem}");
            else if (wrong(length, written) is var (message, advice))
                result.AddError($"{name}: {message} {advice}");
            else
                return length;
            return null;
        },
    };
}
