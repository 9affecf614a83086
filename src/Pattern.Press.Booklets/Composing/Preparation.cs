using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Reads a booklet and fits its structure, as far as problems let it.</summary>
internal static class Preparation
{
    /// <summary>Reads the folder, the theme and the phrases, and fits the structure on both rulers.</summary>
    /// <returns>What the parts are composed from, or null when too little of it is right; the words have been checked then.</returns>
    public static BookletContext? Prepare(string folder, BuildOptions options, Resources resources, Problems problems)
    {
        var source = BookletReader.Read(folder, problems);
        if (source is null)
            return null;
        source = Overrides.Apply(source, options, problems);

        var (phrases, styles, structure) = ReadOthers(source, options, resources, problems);
        if (structure is null)
            return WordsOnly();

        var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        foreach (var (name, place, value) in source.Sizes)
        {
            if (structure.ReadGiven(name, place, value, problems) is { } read)
                given[name] = read;
        }

        RefuseUnusedStocks(source, structure, problems);
        if (!source.CanBeFitted)
            return WordsOnly();
        var (metric, imperial) = FitBoth(structure, source, given, problems);
        if (metric is null || imperial is null || phrases is null || styles is null)
            return WordsOnly();
        var context = new BookletContext
        {
            Source = source,
            Structure = structure,
            Metric = metric,
            Imperial = imperial,
            Given = given,
            Phrases = phrases,
            Styles = styles,
            Options = options,
        };
        context = Worked(context);
        ReportRounded(context, problems);
        SheetsOfStock.Check(context, problems);
        ProvenFits.Check(context, problems);
        return context with { OwnFigures = OwnFigure.ReadAll(context, problems) };

        // What is wrong in the words is told together with what is wrong above them.
        BookletContext? WordsOnly()
        {
            const string Usual = "en-GB";
            if ((phrases ?? PhraseBook.Load(resources.PhrasesFolder, Usual, new Problems())) is { } any)
                WordsAlone.Check(source, any, structure, problems);
            return null;
        }
    }

    // What takes longest, all at once: the proofs of both fits, and their sheets if a part of the booklet is about them.
    private static BookletContext Worked(BookletContext context)
    {
        var materials = new KitMaterials(context, context.Source.Kits);
        var perKit = context.IsForSeveral ? new KitMaterials(context, kits: 1) : materials;
        IReadOnlyList<FoldingProof> here = [], there = [];
        var work = new List<Action>
        {
            () => here = ProvenFits.Of(context, context.Primary),
            () => there = ProvenFits.Of(context, context.Secondary),
        };
        if (new[] { BookletPart.Materials, BookletPart.Sheets, BookletPart.Class }.Any(part => !context.Source.Without.Contains(part)))
        {
            foreach (var list in new[] { materials, perKit }.Distinct())
                work.AddRange([() => _ = list.Primary, () => _ = list.Secondary]);
        }

        AtOnce.Do(work);
        return context with { Folding = (here, there), Materials = materials, PerKit = perKit };
    }

    // The files that the booklet names, all at once.
    private static (PhraseBook? Phrases, StyleSheet? Styles, Structure? Structure) ReadOthers(BookletSource source, BuildOptions options, Resources resources, Problems problems)
    {
        (PhraseBook? Phrases, StyleSheet? Styles, Structure? Structure) read = default;
        var (inPhrases, inTheme, inStructure) = (new Problems(), new Problems(), new Problems());
        AtOnce.Do(
        [
            () => read.Phrases = PhraseBook.Load(resources.PhrasesFolder, source.Language, inPhrases),
            () => read.Styles = options.Theme is { } other
                ? ThemeReader.Read(resources.ThemesFolder, other, source.Language, inTheme, new Place("--theme"))
                : ThemeReader.Read(resources.ThemesFolder, source.Theme, source.Language, inTheme, source.ThemePlace),
            () => read.Structure = source.Structure.Length == 0 ? null : StructureOf(source, resources, inStructure),
        ]);
        problems.AddRange([.. inPhrases.All, .. inTheme.All, .. inStructure.All]);
        return read;
    }

    // What is wrong in the maker's own units is said in those. Of the other column only what is wrong there alone is said.
    private static (Model? Metric, Model? Imperial) FitBoth(Structure structure, BookletSource source, SortedDictionary<string, GivenValue> given, Problems problems)
    {
        var isMetric = source.Primary == UnitSystem.Metric;
        var (here, there) = isMetric ? (source.MetricRuler, source.ImperialRuler) : (source.ImperialRuler, source.MetricRuler);
        var (mine, others) = (new Problems(), new Problems());
        Model? primary = null, secondary = null;
        AtOnce.Do(
        [
            () => primary = Fit(structure, source, given, here, mine),
            () => secondary = Fit(structure, source, given, there, others),
        ]);
        problems.AddRange(mine.All);
        if (!mine.HasErrors)
        {
            foreach (var problem in others.All)
                problems.Add(problem with { Message = $"In the {(isMetric ? "inch" : "metric")} column: {problem.Message}" });
        }

        return isMetric ? (primary, secondary) : (secondary, primary);
    }

    private static Model? Fit(Structure structure, BookletSource source, SortedDictionary<string, GivenValue> given, Ruler ruler, Problems problems) =>
        structure.Fit(
            new FitRequest
            {
                Ruler = ruler,
                Item = source.Item,
                ItemPlace = source.ItemPlace,
                Given = given,
                Stocks = source.Stocks,
            },
            problems);

    private static void RefuseUnusedStocks(BookletSource source, Structure structure, Problems problems)
    {
        var uses = structure.Stocks.Select(stock => stock.Id).ToList();
        foreach (var (use, place) in source.StockPlaces)
        {
            if (!uses.Contains(use))
                problems.Error(place, $"“{use}” is not a stock of this structure.", Spelling.Advice(use, uses));
        }
    }

    // On the maker's own ruler a size off its marks cannot be measured, so it is not silently changed.
    private static void ReportRounded(BookletContext context, Problems problems)
    {
        var ruler = context.Primary.Kit.Ruler;
        foreach (var size in context.Primary.Rounded)
        {
            var below = LengthFormat.Format(ruler.Round(size.Given, Rounding.Down), ruler);
            var above = LengthFormat.Format(ruler.Round(size.Given, Rounding.Up), ruler);
            problems.Error(
                size.Place,
                $"{size.Name} is {LengthFormat.Format(size.Given, ruler)}, which is not on a mark of the ruler ({LengthFormat.Format(ruler.Step, ruler)}).",
                $"Write {below} or {above}, or set a finer ruler under “rulers”.");
        }
    }

    // One of the catalogue by its id, or a maker's own by the path of its file beside the booklet.
    private static Structure? StructureOf(BookletSource source, Resources resources, Problems problems)
    {
        const string Ending = ".yaml";
        if (!source.Structure.EndsWith(Ending, StringComparison.OrdinalIgnoreCase))
            return Catalogue.Open(resources.StructuresFolder, problems).Find(source.Structure, source.StructurePlace, problems);
        var relative = source.Structure.StartsWith("./", StringComparison.Ordinal) ? source.Structure[2..] : source.Structure;
        var (kind, path) = FolderPaths.Follow(source.Folder, relative);
        if (kind == PathKind.Inside)
            return Catalogue.ReadFile(path, problems);
        problems.Error(
            source.StructurePlace,
            kind == PathKind.Missing ? $"There is no structure file “{source.Structure}” in the booklet’s folder." : $"“{source.Structure}” does not lie in the booklet’s folder.",
            "Put the file beside booklet.md and write its name: structure: ./my-box.yaml.");
        return null;
    }
}
