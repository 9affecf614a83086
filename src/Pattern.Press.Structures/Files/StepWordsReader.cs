using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>A sentence that a draft says, and when it does; always when nothing is said.</summary>
internal sealed record StepSentence(string Words, Formula? When);

/// <summary>The section <c>steps</c> with its conditions still to be worked out.</summary>
internal sealed record StepWordsDefinition
{
    public IReadOnlyList<StepSentence> Cautions { get; init; } = [];

    public IReadOnlyDictionary<string, IReadOnlyList<StepSentence>> Cut { get; init; } = new Dictionary<string, IReadOnlyList<StepSentence>>();

    public IReadOnlyDictionary<string, IReadOnlyList<StepSentence>> Fold { get; init; } = new Dictionary<string, IReadOnlyList<StepSentence>>();

    public IReadOnlyDictionary<string, IReadOnlyList<StepSentence>> Place { get; init; } = new Dictionary<string, IReadOnlyList<StepSentence>>();

    public IReadOnlyList<StepSentence> Close { get; init; } = [];

    /// <summary>The words of a fit.</summary>
    /// <exception cref="FormulaException">A condition cannot be worked out.</exception>
    public StepWords For(Evaluation values)
    {
        return new StepWords { Cautions = Said(Cautions), Cut = Each(Cut), Fold = Each(Fold), Place = Each(Place), Close = Said(Close) };

        IReadOnlyList<string> Said(IReadOnlyList<StepSentence> sentences) =>
            [.. sentences.Where(sentence => sentence.When is null || sentence.When.Evaluate(values).Flag).Select(sentence => sentence.Words)];

        Dictionary<string, IReadOnlyList<string>> Each(IReadOnlyDictionary<string, IReadOnlyList<StepSentence>> all) =>
            all.ToDictionary(one => one.Key, one => Said(one.Value), StringComparer.Ordinal);
    }
}

/// <summary>Reads the section <c>steps</c>.</summary>
internal static class StepWordsReader
{
    private const int MostSentences = 30;
    private const int MostCharacters = 600;

    /// <summary>Reads the section; empty when there is none.</summary>
    /// <param name="map">The file.</param>
    /// <param name="ids">The ids of all its pieces.</param>
    /// <param name="reading">What the file gathers.</param>
    public static StepWordsDefinition Read(YamlMap map, IReadOnlyList<string> ids, FileReading reading)
    {
        if (map.Find("steps")?.AsMap() is not { } steps)
            return new StepWordsDefinition();
        var words = new StepWordsDefinition
        {
            Cautions = Sentences(steps.Find("cautions"), reading),
            Cut = Each("cut", ids),
            Fold = Each("fold", ids),
            Place = Each("place", [.. ids, Assembly.Item]),
            Close = Sentences(steps.Find("close"), reading),
        };
        steps.RefuseTheRest();
        return words;

        Dictionary<string, IReadOnlyList<StepSentence>> Each(string key, IReadOnlyList<string> of)
        {
            var all = new Dictionary<string, IReadOnlyList<StepSentence>>(StringComparer.Ordinal);
            foreach (var (id, place, value) in reading.Section(steps, key, 50))
            {
                if (!of.Contains(id))
                    reading.Problems.Error(place, $"“{id}” is not one of the pieces.", Spelling.Advice(id, of));
                else
                    all[id] = Sentences(value, reading);
            }

            return all;
        }
    }

    private static List<StepSentence> Sentences(YamlItem? written, FileReading reading)
    {
        var sentences = new List<StepSentence>();
        if (written is null)
            return sentences;
        var list = written.AsList();
        if (list.Count > MostSentences)
            reading.Problems.Error(written.Place, $"There are {list.Count} sentences here; there can be at most {MostSentences}.");
        foreach (var one in list.Take(MostSentences))
        {
            var (words, when) = (one, default(Formula));
            if (one.IsMap && one.AsMap() is { } entry)
            {
                words = entry.Need("say", "Write the sentence: {say: Fold the lid over., when: lid}.");
                when = entry.Find("when") is { } condition ? reading.Formula(condition, Kind.YesNo) : null;
                entry.RefuseTheRest();
            }

            if (words?.AsText() is not { } text)
                continue;
            if (text.Length > MostCharacters)
                reading.Problems.Error(words.Place, $"This sentence is longer than {MostCharacters} characters.", "Make two of it.");
            sentences.Add(new StepSentence(text, when));
        }

        return sentences;
    }
}
