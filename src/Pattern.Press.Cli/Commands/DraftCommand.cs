using System.CommandLine;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Drafting;
using Pattern.Press.Cli.Output;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>draft STRUCTURE --item …</c>: writes the first version of a booklet, ready to be built and edited.</summary>
internal static class DraftCommand
{
    public static Command Create(TextWriter output, TextWriter errors)
    {
        var structure = new Argument<string>("STRUCTURE") { Description = "A structure, as “pattern-press structures” lists them, or the path of a structure’s file." };
        var item = new Option<string>("--item") { Description = "What goes inside, such as \"60 mm round x 80 mm\", \"80 x 50 x 30 mm\" or \"soap: 80 x 50 x 30 mm\".", HelpName = "SIZES", Required = true };
        var name = new Option<string>("--name") { Description = "The name of the booklet’s folder.", HelpName = "NAME", Required = true };
        var into = new Option<string>("--into") { Description = "The folder that the booklet’s folder is written into; the current one if left out.", HelpName = "DIR", DefaultValueFactory = _ => "." };
        var size = new Option<string[]>("--size") { Description = "Something to set about the structure, such as \"sides: 8\" or \"mats: yes\"; may be given several times.", HelpName = "NAME: VALUE" };
        var stock = new Option<string?>("--stock") { Description = "The card, such as \"moss-green card, 250 g/m2, 305 x 305 mm\".", HelpName = "WORDS" };
        var paper = PrintOptions.Paper();
        var command = new Command("draft", "Writes the first version of a booklet: every step in plain words, with values and figures in place.") { structure, item, name, into, size, stock, paper };
        command.SetAction(parsed =>
        {
            if (!DraftItem.TryRead(parsed.GetValue(item)!, out var thing, out var wrong))
            {
                errors.WriteLine($"“{parsed.GetValue(item)}” does not say how large the item is. {wrong}");
                return ExitCode.WrongUsage;
            }

            var folderName = parsed.GetValue(name)!;
            if (folderName.Length == 0 || folderName.IndexOfAny(Path.GetInvalidFileNameChars()) >= 0 || folderName is "." or "..")
            {
                errors.WriteLine($"“{folderName}” cannot be the name of a folder. Write letters, digits and dashes, such as my-box.");
                return ExitCode.WrongUsage;
            }

            var folder = Path.Combine(parsed.GetValue(into)!, folderName);
            if (Directory.Exists(folder) || File.Exists(folder))
            {
                errors.WriteLine($"“{folder}” is there already; a draft never writes over anything. Choose another name.");
                return ExitCode.WrongUsage;
            }

            var papers = parsed.GetValue(paper) is { Length: > 0 } chosen ? chosen.Select(one => one.Id).ToList() : ["a4", "letter"];
            return Write(parsed.GetValue(structure)!, folder, found => new DraftRequest(found.Structure, found.Word, thing!, papers, parsed.GetValue(stock)) { Sizes = parsed.GetValue(size) ?? [], InInches = DraftItem.IsInInches(parsed.GetValue(item)!) }, output, errors);
        });
        return command;
    }

    private static int Write(string word, string folder, Func<(Structure Structure, string Word), DraftRequest> request, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var ofMaker = word.EndsWith(".yaml", StringComparison.Ordinal);
        var found = ofMaker
            ? Catalogue.ReadFile(word, problems)
            : Catalogue.Open(Resources.OfProgram.StructuresFolder, problems).Find(word, new Place("STRUCTURE"), problems);
        var named = ofMaker ? $"./{Path.GetFileName(word)}" : word;
        var files = found is null ? null : Draft.Write(request((found, named)), problems);
        ProblemReport.Write(problems.All, errors);
        if (files is null)
            return found is null && !ofMaker ? ExitCode.WrongUsage : ExitCode.ContentHasProblems;
        foreach (var (path, text) in files)
        {
            var file = Path.Combine(folder, path);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, text);
        }

        // A maker's own structure lies beside its booklet.
        if (ofMaker)
            File.Copy(word, Path.Combine(folder, Path.GetFileName(word)));
        output.WriteLine($"Wrote {folder} with {files.Count - 1} steps. Change the words as you like, then build it: pattern-press build {folder}");
        return ExitCode.Done;
    }
}
