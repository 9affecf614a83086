using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads a booklet's folder: <c>booklet.md</c> and the files in <c>steps</c>. Nothing outside the folder is read.</summary>
public static partial class BookletReader
{
    /// <summary>The file that makes a folder a booklet.</summary>
    public const string FileName = "booklet.md";


    /// <summary>The keys of the front matter of <c>booklet.md</c>, in the order a maker would write them.</summary>
    public static IReadOnlyList<string> Keys { get; } =
    [
        "title", "subtitle", "maker", "date", "language", "licence", "credits", "item", "structure", "sizes", "stocks",
        "rulers", "primary", "papers", "printer_margin", "lap", "theme", "kits", "spare", "currency", "starts", "leave_out",
        "tools", "adhesive", "extras", "cautions", "figures",
    ];

    /// <summary>Reads a booklet's folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="problems">Takes everything that is wrong, in one go.</param>
    /// <returns>
    /// What was read; null when there is no <c>booklet.md</c> that can be read. After errors it is a value out of which more
    /// problems can be found, but no booklet should be made of it.
    /// </returns>
    public static BookletSource? Read(string folder, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(problems);
        if (FindBooklet(folder, problems) is not { } path ||
            TextFile.Read(path, FileName, problems) is not { } text)
            return null;
        var (front, body) = FrontMatter.Split(text, FileName, "title: A box for a tea tin", problems);
        if (front is not null)
            return Read(folder, front, body, problems, areStepsNeeded: true, problems);

        // Of front matter that cannot be read one thing is told, and not that every key is missing.
        var untold = new Problems();
        return Read(folder, YamlSource.Read("", FileName, untold)!, body, untold, areStepsNeeded: false, problems);
    }

    private static BookletSource Read(string folder, YamlMap keys, MarkdownText body, Problems problems, bool areStepsNeeded, Problems inSteps)
    {
        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        var top = new Place(FileName, 1);

        var titleKey = keys.Need("title", "Say what the booklet is called, such as “title: A box for a tea tin”.");
        var title = titleKey?.AsWords(problems);
        var subtitleKey = keys.Find("subtitle");
        var subtitle = subtitleKey?.AsWords(problems);
        var makerKey = keys.Find("maker");
        var maker = makerKey?.AsWords(problems);
        var date = keys.Find("date") is { } day ? Date(day) : null;
        var language = keys.Find("language");
        var licence = keys.Find("licence")?.AsWords(problems);
        var credits = keys.Find("credits")?.AsWordsList(problems);

        var before = Errors(problems);
        var itemKey = keys.Find("item");
        var item = itemKey is null ? null : ItemReader.Read(itemKey, problems);
        var structureKey = keys.Need("structure", "Say what is made, such as “structure: explosion-box”; “pattern-press structures” lists what there is.");
        var structure = structureKey?.AsWords(problems);
        var sizesKey = keys.Find("sizes");
        var sizes = sizesKey is null ? [] : Sizes(sizesKey);
        if (itemKey is null && sizesKey is null)
            problems.Error(top, "How large the thing is is missing.", "Say what goes inside with “item”, or give sizes outright with “sizes”.");
        var (stocks, stockPlaces) = Stocks(keys.Need("stocks", "Say what it is made of; for each use a name, a weight and the sheet’s size."), problems);
        var modelIsReadable = Errors(problems) == before;

        var (metric, imperial) = Rulers(keys.Find("rulers"), problems);
        var primary = keys.Find("primary")?.AsChoice(["metric", "imperial"]);
        var papers = Papers(keys.Find("papers"), problems);
        var marginKey = keys.Find("printer_margin");
        var margin = marginKey is null ? null : PrinterMargin(marginKey, problems);
        var lapKey = keys.Find("lap");
        var lap = lapKey is null ? null : Lap(lapKey, problems);
        var theme = keys.Find("theme");
        var kits = keys.Find("kits")?.AsWhole(1, PrintSettings.MostKits, "Write for how many finished things it is, such as “kits: 14”; leave the line out for one.");
        var without = Without(keys.Find("leave_out"), problems);
        var tools = keys.Find("tools")?.AsWordsList(problems);
        var extras = keys.Find("extras") is { } more ? PurchaseReader.Extras(more, problems) : null;
        var adhesive = keys.Find("adhesive") is { } glue ? PurchaseReader.Adhesive(glue, problems) : null;
        var spare = keys.Find("spare") is { } allowance ? PurchaseReader.Spare(allowance) : 0;
        var currency = keys.Find("currency")?.AsWords(problems);
        var starts = keys.Find("starts") is { } hour ? PurchaseReader.Starts(hour) : null;
        var figures = keys.Find("figures")?.AsMap()?.Entries;
        var cautions = keys.Find("cautions")?.AsWordsList(problems);
        keys.RefuseTheRest();
        if (currency is null && (stocks.Values.Any(stock => stock.Pack?.Price is not null) || adhesive?.Pack?.Price is not null || extras?.Any(extra => extra.Pack?.Price is not null) == true))
            problems.Error(top, "There are prices, but not what they are in.", "Say it with “currency”, such as “currency: £” or “currency: EUR”.");

        var (steps, unread) = StepReader.ReadAll(folder, needed: areStepsNeeded && !without.Contains(BookletPart.Steps), inSteps);
        return new BookletSource
        {
            CanBeFitted = modelIsReadable && structure is not null,
            Name = name,
            Folder = folder,
            Title = title ?? name,
            TitlePlace = titleKey?.Place ?? top,
            Subtitle = subtitle ?? "",
            SubtitlePlace = subtitleKey?.Place ?? top,
            Maker = maker ?? "",
            MakerPlace = makerKey?.Place ?? top,
            Date = date,
            Language = (language is null ? null : Language(language)) ?? "en-GB",
            LanguagePlace = language?.Place ?? new Place(FileName),
            Licence = licence ?? "",
            Credits = credits ?? [],
            Item = item,
            ItemPlace = itemKey?.Place ?? top,
            Structure = structure ?? "",
            StructurePlace = structureKey?.Place ?? top,
            Sizes = sizes,
            Stocks = stocks,
            StockPlaces = stockPlaces,
            MetricRuler = metric ?? Ruler.WholeMillimetres,
            ImperialRuler = imperial ?? Ruler.SixteenthInches,
            Primary = primary == "imperial" ? UnitSystem.Imperial : UnitSystem.Metric,
            Papers = papers,
            PrinterMargin = margin ?? Length.FromMillimetres(10),
            PrinterMarginPlace = marginKey?.Place ?? new Place(FileName),
            Lap = lap ?? Length.FromMillimetres(10),
            LapPlace = lapKey?.Place ?? new Place(FileName),
            Theme = theme?.AsWords(problems) ?? "handout",
            ThemePlace = theme?.Place ?? new Place(FileName),
            Kits = kits ?? 1,
            Without = without,
            Tools = tools ?? [],
            Extras = extras ?? [],
            Adhesive = adhesive,
            Spare = spare,
            Currency = currency ?? "",
            Starts = starts,
            Figures = figures ?? [],
            Cautions = cautions ?? [],
            Introduction = body,
            Steps = steps,
            UnreadSteps = unread,
        };
    }

    private static int Errors(Problems problems) => problems.All.Count(problem => problem.Severity == Severity.Error);

    private static string? FindBooklet(string folder, Problems problems)
    {
        if (!Directory.Exists(folder))
        {
            var parent = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
            if (File.Exists(folder))
                problems.Error(new Place(folder), "This is a file, not a folder.", $"Name the folder that holds {FileName}.");
            else
                problems.Error(new Place(folder), "There is no such folder.", Meant(folder, parent));
            return null;
        }

        var (kind, path) = FolderPaths.Follow(folder, FileName);
        if (kind == PathKind.Inside)
            return path;
        if (kind == PathKind.Outside)
        {
            problems.Error(new Place(FileName), $"{FileName} is a link that leads out of the booklet’s folder.", "Put the file itself into the folder; nothing outside it is read.");
            return null;
        }

        var nearest = Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)!)
            .Where(file => file.StartsWith("booklet.", StringComparison.OrdinalIgnoreCase) || file.Equals("readme.md", StringComparison.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal).FirstOrDefault();
        problems.Error(
            new Place(FileName),
            $"The folder {folder} has no {FileName}.",
            nearest is null ? "A booklet’s folder holds a file of that name with the front matter and the introduction." : $"Rename {nearest} to {FileName} if that is it.");
        return null;
    }

    private static string Meant(string folder, string? parent)
    {
        if (parent is null || !Directory.Exists(parent))
            return "";
        var name = Path.GetFileName(Path.TrimEndingDirectorySeparator(folder));
        return Spelling.Nearest(name, Directory.EnumerateDirectories(parent).Select(other => Path.GetFileName(other)!)) is { } nearest
            ? $"Did you mean “{nearest}”?"
            : "";
    }

    private static DateOnly? Date(YamlItem written)
    {
        if (written.AsText()?.Trim() is not { } text)
            return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return date;
        written.Refuse(
            DatePattern().IsMatch(text) ? $"“{text}” is not a day of the calendar." : $"“{text}” is not a date.",
            "Write year, month and day, such as “date: 2026-11-12”.");
        return null;
    }

    private static string? Language(YamlItem written)
    {
        if (written.AsText()?.Trim() is not { } text)
            return null;
        if (!LanguagePattern().IsMatch(text))
        {
            written.Refuse($"“{text}” is not the code of a language.", "Write it as “language: en-GB” or “language: en-US”.");
            return null;
        }

        if (!text.EndsWith("-UK", StringComparison.Ordinal))
            return text;
        written.Refuse($"“{text}” is not the code of a language.", "The country code of the United Kingdom is GB; write en-GB.");
        return null;
    }

    private static IReadOnlyList<(string Name, Place Place, YamlItem Value)> Sizes(YamlItem written) => written.AsMap()?.Entries ?? [];

    private static (IReadOnlyDictionary<string, Stock> Stocks, IReadOnlyDictionary<string, Place> Places) Stocks(YamlItem? written, Problems problems)
    {
        var stocks = new SortedDictionary<string, Stock>(StringComparer.Ordinal);
        var places = new SortedDictionary<string, Place>(StringComparer.Ordinal);
        foreach (var (use, place, value) in written?.AsMap()?.Entries ?? [])
        {
            if (StockReader.Read(use, value, problems) is not { } stock)
                continue;
            stocks[use] = stock;
            places[use] = place;
        }

        return (stocks, places);
    }

    private static (Ruler? Metric, Ruler? Imperial) Rulers(YamlItem? written, Problems problems)
    {
        if (written?.AsMap() is not { } map)
            return (null, null);
        var metric = Ruler("metric", UnitSystem.Metric, "A metric ruler’s step is in whole tenths of a millimetre, from 0.1 mm to 50 mm; write “metric: 1 mm”.");
        var imperial = Ruler("imperial", UnitSystem.Imperial, "An inch ruler’s step is 1, 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64 in; write “imperial: 1/16 in”.");
        map.RefuseTheRest();
        return (metric, imperial);

        Ruler? Ruler(string key, UnitSystem system, string advice)
        {
            if (map.Find(key) is not { } item || item.AsLength() is not { } step)
                return null;
            try
            {
                // Millimetres on an inch ruler never fall on its marks, but a whole number of inches does on a metric one.
                if (system == UnitSystem.Imperial || !InchPattern().IsMatch(item.Scalar ?? ""))
                    return new Ruler(system, step);
            }
            catch (ArgumentOutOfRangeException)
            {
                // Said below, in the maker's words.
            }

            problems.Error(item.Place, $"No ruler has steps of {item.Scalar} here.", advice);
            return null;
        }
    }

    private static IReadOnlyList<PaperSize> Papers(YamlItem? written, Problems problems)
    {
        if (written is null)
            return [PaperSize.A4, PaperSize.Letter];
        var papers = new List<PaperSize>();
        foreach (var item in written.AsList())
        {
            if (item.AsText()?.Trim() is not { } text)
                continue;
            if (!PaperSize.TryParse(text, out var paper, out var problem))
                item.Refuse(problem.Length > 0 ? problem : PrintSettings.UnknownPaper(text), problem.Length > 0 ? "" : PrintSettings.KnownPapers(text));
            else if (papers.Exists(other => other.Size == paper.Size))
                problems.Error(item.Place, $"{paper.Name} is in the list twice.", "One file is written for each paper; name it once.");
            else
                papers.Add(paper);
        }

        if (written.IsList && written.AsList().Count == 0)
            problems.Error(written.Place, "There is no paper to print on.", "Name at least one, such as “papers: [a4, letter]”.");
        return papers.Count > 0 ? papers : [PaperSize.A4, PaperSize.Letter];
    }

    private static Length? PrinterMargin(YamlItem written, Problems problems)
    {
        if (written.AsLength() is not { } margin)
            return null;
        if (PrintSettings.WrongMargin(margin, written.Scalar!) is var (wrong, instead))
        {
            problems.Error(written.Place, wrong, instead);
            return null;
        }

        if (PrintSettings.CarefulMargin(margin, written.Scalar!) is var (careful, safe))
            problems.Warning(written.Place, careful, safe);
        return margin;
    }

    private static Length? Lap(YamlItem written, Problems problems)
    {
        if (written.AsLength() is not { } lap)
            return null;
        if (PrintSettings.WrongLap(lap, written.Scalar!) is not var (wrong, instead))
            return lap;
        problems.Error(written.Place, wrong, instead);
        return null;
    }

    private static SortedSet<BookletPart> Without(YamlItem? written, Problems problems)
    {
        var without = new SortedSet<BookletPart>();
        foreach (var item in written?.AsList() ?? [])
        {
            if (item.AsChoice(PartNames) is { } word)
                without.Add(Enum.Parse<BookletPart>(word, ignoreCase: true));
        }

        if (without.Count == PartNames.Count)
            problems.Error(written!.Place, "Every part of the booklet is left out; nothing remains to print.");
        return without;
    }

    /// <summary>The words for the parts of a booklet, in order.</summary>
    public static IReadOnlyList<string> PartNames { get; } = [.. Enum.GetNames<BookletPart>().Select(name => name.ToLowerInvariant())];

    [GeneratedRegex(@"^\d{4}-\d{2}-\d{2}$", RegexOptions.CultureInvariant)]
    private static partial Regex DatePattern();

    [GeneratedRegex(@"^[a-z]{2,3}(-[A-Z]{2})?$", RegexOptions.CultureInvariant)]
    private static partial Regex LanguagePattern();

    [GeneratedRegex("""(in|inch|inches|["″])\.?\s*$""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex InchPattern();
}
