using System.Text.RegularExpressions;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Phrases;

/// <summary>
/// Reads phrase files: <c>en.yaml</c> has every phrase of a language, <c>en-us.yaml</c> those that a country spells
/// otherwise.
/// </summary>
internal static partial class PhraseReader
{
    private const string Ending = ".yaml";

    /// <summary>What the files' names begin with in problems.</summary>
    private const string Folder = "phrases/";

    private static readonly KnownTexts<(string Language, string Text, string Overlay), PhraseBook> Books = new();

    public static PhraseBook? Read(string folder, string language, Problems problems, Place place)
    {
        ArgumentNullException.ThrowIfNull(language);
        var match = Tag().Match(language);
        var known = Known(folder);
        var main = match.Groups["language"].Value;
        if (!match.Success || !known.Contains(main))
        {
            problems.Error(place, $"There are no phrases in the language “{language}”.", $"Known here: {string.Join(", ", known)}.");
            return null;
        }

        var country = match.Groups["country"];
        var spelling = country.Success ? $"{main}-{country.Value.ToLowerInvariant()}" : "";
        var all = Text(folder, main, problems);
        var overlay = spelling.Length > 0 && File.Exists(Path.Combine(folder, spelling + Ending)) ? Text(folder, spelling, problems) : "";
        if (all is null || overlay is null)
            return null;
        return Books.Get(
            (language, all, overlay),
            found =>
            {
                var phrases = new SortedDictionary<string, string>(StringComparer.Ordinal);
                return Gathered(all, main, phrases, isOverlay: false, found) && (overlay.Length == 0 || Gathered(overlay, spelling, phrases, isOverlay: true, found))
                    ? new PhraseBook(language, phrases)
                    : null;
            },
            problems);
    }

    private static string? Text(string folder, string file, Problems problems) => TextFile.Read(Path.Combine(folder, file + Ending), Folder + file + Ending, problems);

    private static List<string> Known(string folder) =>
        !Directory.Exists(folder) ? [] :
        [
            .. Directory.EnumerateFiles(folder, "*" + Ending)
                .Select(file => Path.GetFileNameWithoutExtension(file)!)
                .Where(name => !name.Contains('-', StringComparison.Ordinal))
                .Order(StringComparer.Ordinal),
        ];

    private static bool Gathered(string text, string file, SortedDictionary<string, string> phrases, bool isOverlay, Problems problems)
    {
        if (YamlSource.Read(text, Folder + file + Ending, problems) is not { } map)
            return false;
        var own = new SortedDictionary<string, (string Phrase, Place Place)>(StringComparer.Ordinal);
        var isRight = Gather(map, "", own, problems);
        foreach (var (key, (phrase, place)) in own)
        {
            if (isOverlay && !phrases.TryGetValue(key, out var plain))
            {
                problems.Error(place, $"The phrase “{key}” is not in the language’s main file.", Spelling.Advice(key, phrases.Keys));
                isRight = false;
            }
            else if (isOverlay && !PhraseBook.Names(phrase).SequenceEqual(PhraseBook.Names(phrases[key]), StringComparer.Ordinal))
            {
                problems.Error(place, $"The phrase “{key}” has other names in braces than in the language’s main file.", $"There it has: {string.Join(", ", PhraseBook.Names(phrases[key]).Select(n => "{" + n + "}"))}.");
                isRight = false;
            }

            phrases[key] = phrase;
        }

        return isRight;
    }

    private static bool Gather(YamlMap map, string before, SortedDictionary<string, (string Phrase, Place Place)> phrases, Problems problems)
    {
        var isRight = true;
        foreach (var (key, place, value) in map.Entries)
        {
            if (!Key().IsMatch(key))
            {
                problems.Error(place, $"“{key}” is not a key of a phrase.", "Keys are small letters, figures and _.");
                isRight = false;
            }
            else if (value.IsMap)
            {
                isRight &= value.AsMap() is { } inner && Gather(inner, before + key + ".", phrases, problems);
            }
            else if (value.Scalar is { Length: > 0 } phrase)
            {
                phrases[before + key] = (phrase.TrimEnd('\n'), place);
            }
            else
            {
                problems.Error(value.Place, $"The phrase “{before + key}” has no words.");
                isRight = false;
            }
        }

        return isRight;
    }

    [GeneratedRegex("^(?<language>[a-z]{2,3})(?:-(?<country>[A-Z]{2}))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Tag();

    [GeneratedRegex("^[a-z0-9_]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Key();
}
