using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads the step files <c>steps/NN-name.md</c> and checks that their numbers run without a gap.</summary>
internal static partial class StepReader
{
    private const string FolderName = "steps";
    private const string NameAdvice = "Name step files with a number, a dash and a few words, such as 03-score-the-base.md.";

    /// <summary>The keys of a step's front matter.</summary>
    public static readonly IReadOnlyList<string> Keys = ["title", "kind", "piece", "figure", "time", "tools", "caution"];

    /// <summary>
    /// Reads every step of a booklet, in the order of their numbers, and says which files could not be read. Of those whose
    /// front matter is broken the words are among the steps all the same.
    /// </summary>
    public static (IReadOnlyList<StepSource> Steps, IReadOnlyList<(string File, int Number)> Unread) ReadAll(string folder, bool needed, Problems problems)
    {
        if (!Directory.Exists(Path.Combine(folder, FolderName)))
        {
            if (needed)
                problems.Error(new Place(FolderName), "There are no steps.", MissingAdvice(folder));
            return ([], []);
        }

        var numbered = Number(folder, problems);
        if (numbered.Count == 0 && needed && !problems.All.Any(p => p.File.StartsWith(FolderName + "/", StringComparison.Ordinal)))
            problems.Error(new Place(FolderName), "There are no steps.", "Write the first one in steps/01-name.md, or leave the part out with “leave_out: [steps]”.");
        CheckNumbers(numbered, problems);
        var steps = new List<StepSource>();
        var unread = new List<(string File, int Number)>();
        foreach (var (number, file) in numbered)
        {
            var (step, isWhole) = Read(folder, file, number, problems);
            if (step is not null)
                steps.Add(step);
            if (!isWhole)
                unread.Add((file, number));
        }

        return (steps, unread);
    }

    private static string MissingAdvice(string folder)
    {
        var nearest = Spelling.Nearest(FolderName, Directory.EnumerateDirectories(folder).Select(d => Path.GetFileName(d)!));
        return nearest is null
            ? "Put them into a folder named “steps”, one file each, such as steps/01-cut-the-card.md; or leave the part out with “leave_out: [steps]”."
            : $"There is a folder named “{nearest}”; its name should be “{FolderName}”.";
    }

    private static List<(int Number, string File)> Number(string folder, Problems problems)
    {
        var files = Directory.EnumerateFiles(Path.Combine(folder, FolderName))
            .Select(file => Path.GetFileName(file)!)
            .Where(file => !IsLeftover(file))
            .Order(StringComparer.Ordinal);
        var numbered = new List<(int Number, string File)>();
        foreach (var file in files)
        {
            var place = new Place($"{FolderName}/{file}");
            var match = NamePattern().Match(file);
            if (Path.GetExtension(file) is var extension && extension != ".md")
            {
                // Pictures may lie beside the steps that show them.
                if (extension.ToUpperInvariant() is not (".PNG" or ".JPG" or ".JPEG"))
                    problems.Error(place, extension.Length == 0 ? "A step’s file name ends in .md; this one has no ending." : $"A step’s file name ends in .md, not in {extension}.", NameAdvice);
            }
            else if (!match.Groups["number"].Success)
            {
                problems.Error(place, "A step’s file name starts with its number.", NameAdvice);
            }
            else if (!match.Groups["name"].Success)
            {
                problems.Error(place, "A step’s file name has a dash and a few words after its number.", NameAdvice);
            }
            else
            {
                numbered.Add((int.Parse(match.Groups["number"].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture), place.File));
            }
        }

        return numbered;
    }

    // Files come in the order in which a folder lists them, by name. The numbers have to run in the same order, or the
    // maker sees one order and the reader another.
    private static void CheckNumbers(List<(int Number, string File)> numbered, Problems problems)
    {
        for (var i = 1; i < numbered.Count; i++)
        {
            if (numbered[i].Number < numbered[i - 1].Number)
                problems.Error(new Place(numbered[i].File), $"The step comes after {numbered[i - 1].File} by name but before it by number.", "Write all numbers with the same number of digits: 01, 02 … 10.");
        }

        numbered.Sort((a, b) => a.Number != b.Number ? a.Number.CompareTo(b.Number) : string.CompareOrdinal(a.File, b.File));
        var expected = 1;
        for (var i = 0; i < numbered.Count; i++)
        {
            var (number, file) = numbered[i];
            if (i > 0 && number == numbered[i - 1].Number)
            {
                problems.Error(new Place(file), $"The number {number} is taken by {numbered[i - 1].File} already.", "Give every step a number of its own.");
                continue;
            }

            if (number != expected)
            {
                problems.Error(
                    new Place(file),
                    i == 0 ? $"The first step has the number {number}; steps are numbered from 1." : $"Step {expected} is missing before this one, which is number {number}.",
                    $"Rename the file to start with {expected.ToString("00", CultureInfo.InvariantCulture)}-, or put the missing step in.");
            }

            expected = number + 1;
        }
    }

    private static (StepSource? Step, bool IsWhole) Read(string folder, string file, int number, Problems problems)
    {
        var (kind, path) = FolderPaths.Follow(folder, file);
        if (kind != PathKind.Inside)
        {
            problems.Error(new Place(file), "The step is a link that leads out of the booklet’s folder.", "Put the file itself into the folder; nothing outside it is read.");
            return default;
        }

        if (TextFile.Read(path, file, problems) is not { } text)
            return default;
        if (string.IsNullOrWhiteSpace(text))
        {
            problems.Error(new Place(file), "The step is empty.", "Write a title between two lines “---”, and below it what to do; or delete the file.");
            return default;
        }

        var (keys, body) = FrontMatter.Split(text, file, "title: Score the base", problems);
        if (keys is null)
            return (new StepSource { File = file, Number = number, Title = "", PiecePlace = new Place(file, 1), Body = body }, false);

        var title = keys.Need("title", "Say what is done in this step, such as “title: Score the base”.")?.AsWords(problems);
        var pieceKey = keys.Find("piece");
        var piece = pieceKey?.AsWords(problems);
        var figureKey = keys.Find("figure");
        var kindKey = keys.Find("kind");
        var timeKey = keys.Find("time");
        var tools = keys.Find("tools")?.AsWordsList(problems);
        var caution = keys.Find("caution")?.AsWords(problems);
        keys.RefuseTheRest();
        var figure = figureKey is not null ? FigureReader.Read(figureKey, piece, problems) : kindKey is null ? null : FigureReader.OfKind(kindKey, piece, problems);
        var minutes = timeKey is null ? null : Minutes(timeKey);
        if (string.IsNullOrWhiteSpace(body.Text))
            problems.Error(body.Start with { Column = 0 }, "The step has a title but no words.", "Write below the front matter what to do.");

        // Without its title, too, the words of a step are read on, so that what is wrong in them is told in one go.
        var step = new StepSource
        {
            File = file,
            Number = number,
            Title = title ?? "",
            Piece = piece,
            PiecePlace = pieceKey?.Place ?? new Place(file, 1),
            Figure = figure,
            Minutes = minutes,
            Tools = tools ?? [],
            Caution = caution ?? "",
            Body = body,
        };
        return (step, true);
    }

    private static int? Minutes(YamlItem written)
    {
        if (written.AsText() is not { } text)
            return null;
        if (Duration.TryParse(text, out var minutes, out var problem))
            return minutes;
        written.Refuse(problem);
        return null;
    }

    // What file managers and editors leave behind.
    private static bool IsLeftover(string file) =>
        file.StartsWith('.') || file.EndsWith('~') || file.ToUpperInvariant() is "THUMBS.DB" or "DESKTOP.INI";

    [GeneratedRegex(@"^(?:(?<number>\d{1,4})(?:-(?<name>[^.\s][^.]*))?)?.*\.md$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NamePattern();
}
