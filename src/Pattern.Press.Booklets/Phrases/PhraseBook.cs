using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Phrases;

/// <summary>
/// Every word that the program itself puts into a booklet, in one language. Phrases have dotted keys; names in single
/// braces in them are filled in. Asking for a phrase that is not there, or filling it in with the wrong names, is a
/// mistake in the program and throws.
/// </summary>
public sealed partial class PhraseBook
{
    private readonly SortedDictionary<string, string> _phrases;
    private readonly ConcurrentDictionary<string, IReadOnlyList<string>> _names = new(StringComparer.Ordinal);

    internal PhraseBook(string language, SortedDictionary<string, string> phrases)
    {
        Language = language;
        _phrases = phrases;
    }

    /// <summary>The BCP 47 tag of the language: <c>en-GB</c>.</summary>
    public string Language { get; }

    /// <summary>Every key, in order.</summary>
    public IReadOnlyCollection<string> Keys => _phrases.Keys;

    /// <summary>The phrases of a language.</summary>
    /// <param name="folder">The folder of phrase files.</param>
    /// <param name="language">The BCP 47 tag: a language, or a language and a country with a spelling of its own.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="place">Where the maker named the language, for problems.</param>
    /// <returns>The phrases, or null when a problem was noted.</returns>
    public static PhraseBook? Load(string folder, string language, Problems problems, Place place = default) =>
        PhraseReader.Read(folder, language, problems, place);

    /// <summary>A phrase with nothing to fill in.</summary>
    /// <exception cref="ArgumentException">There is no such phrase, or it has names to fill in.</exception>
    public string this[string key] => Format(key);

    /// <summary>The mark between whole numbers and decimals.</summary>
    public string DecimalMark => this["number.decimal_mark"];

    /// <summary>A phrase with its names filled in.</summary>
    /// <exception cref="ArgumentException">There is no such phrase, or the names are not those of the phrase.</exception>
    public string Format(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var phrase = Find(key);
        Check(key, phrase, values);
        foreach (var (name, value) in values)
            phrase = phrase.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return phrase;
    }

    /// <summary>
    /// A phrase that depends on a number: <c>key.one</c> for one, <c>key.other</c> for any other. The number itself fills
    /// in <c>{count}</c>.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such phrase, or the names are not those of the phrase.</exception>
    public string Plural(string key, int count, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var form = key + (count == 1 ? ".one" : ".other");
        var phrase = Find(form);
        // “One sheet” need not say the number again.
        return phrase.Contains("{count}", StringComparison.Ordinal)
            ? Format(form, [.. values, ("count", count.ToString(CultureInfo.InvariantCulture))])
            : Format(form, values);
    }

    /// <summary>
    /// A phrase as inlines, read as Markdown of one line: its measurements are set as such, its names filled in by
    /// inlines.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such phrase, or the names are not those of the phrase.</exception>
    public IReadOnlyList<Inline> Inlines(string key, params ReadOnlySpan<(string Name, IReadOnlyList<Inline> Value)> values)
    {
        var phrase = Find(key);
        Check(key, phrase, values);
        var problems = new Problems();
        var inlines = MarkdownReader.ToInlines(
            new MarkdownText(Gap().Replace(phrase, "{{$1}}"), new Place(key, 1, 1)),
            "",
            new FilledIn(values.ToArray()),
            problems,
            new MarkdownOptions { TipTitle = "", CautionTitle = "" });
        return problems.HasErrors
            ? throw new ArgumentException($"The phrase “{key}” is not one line of Markdown: {problems.All[0].Message}", nameof(key))
            : inlines;
    }

    /// <summary>Several things in a row: <c>a, b and c</c>.</summary>
    public string Join(IReadOnlyList<string> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return items.Count switch
        {
            0 => "",
            1 => items[0],
            2 => Format("list.two", ("first", items[0]), ("last", items[1])),
            _ => Format("list.many", ("first", string.Join(this["list.comma"], items.Take(items.Count - 1))), ("last", items[^1])),
        };
    }

    /// <summary>A day in words: <c>12 November 2026</c>.</summary>
    public string Date(DateOnly date)
    {
        var month = this[$"date.months.{date.Month.ToString(CultureInfo.InvariantCulture)}"];
        return Format(
            "date.long",
            ("day", date.Day.ToString(CultureInfo.InvariantCulture)),
            ("month", month),
            ("year", date.Year.ToString(CultureInfo.InvariantCulture)));
    }

    /// <summary>A time in words: <c>45 min</c>, <c>1 h 30 min</c>.</summary>
    public string Minutes(int minutes)
    {
        var (hours, rest) = Math.DivRem(minutes, 60);
        return (hours, rest) switch
        {
            (0, _) => Format("time.minutes", ("minutes", Whole(rest))),
            (_, 0) => Format("time.hours", ("hours", Whole(hours))),
            _ => Format("time.both", ("hours", Whole(hours)), ("minutes", Whole(rest))),
        };

        static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>The names a phrase has to fill in, in alphabetical order.</summary>
    internal static IReadOnlyList<string> Names(string phrase) =>
        [.. Gap().Matches(phrase).Select(match => match.Groups[1].Value).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <summary>The names that a phrase of this book has to fill in, in alphabetical order.</summary>
    internal IReadOnlyList<string> NamesIn(string phrase) => _names.GetOrAdd(phrase, Names);

    /// <summary>A phrase as it stands in the file.</summary>
    internal string Find(string key) =>
        _phrases.TryGetValue(key, out var phrase)
            ? phrase
            : throw new ArgumentException($"There is no phrase “{key}”. {Spelling.Advice(key, _phrases.Keys)}".TrimEnd(), nameof(key));

    private void Check<T>(string key, string phrase, ReadOnlySpan<(string Name, T Value)> values)
    {
        var needed = NamesIn(phrase);
        var isRight = values.Length == needed.Count;
        for (var i = 0; isRight && i < needed.Count; i++)
            isRight = IsGiven(needed[i], values);
        if (isRight)
            return;
        var given = values.ToArray().Select(pair => pair.Name).Order(StringComparer.Ordinal);
        throw new ArgumentException($"The phrase “{key}” is filled in with ({string.Join(", ", given)}) but needs ({string.Join(", ", needed)}).", nameof(key));
    }

    private static bool IsGiven<T>(string name, ReadOnlySpan<(string Name, T Value)> values)
    {
        foreach (var value in values)
        {
            if (value.Name == name)
                return true;
        }

        return false;
    }

    [GeneratedRegex(@"\{([a-z_]+)\}", RegexOptions.CultureInvariant)]
    private static partial Regex Gap();

    private sealed class FilledIn((string Name, IReadOnlyList<Inline> Value)[] pairs) : IBindings
    {
        public IReadOnlyCollection<string> Names => [.. pairs.Select(pair => pair.Name)];

        public IReadOnlyList<Inline>? Value(string name) => Array.Find(pairs, pair => pair.Name == name).Value;

        public Block? Figure(FigureSource figure, Problems problems) => null;
    }
}
