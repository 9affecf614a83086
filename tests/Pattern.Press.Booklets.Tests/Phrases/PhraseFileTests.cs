using System.Text.RegularExpressions;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Phrases;

/// <summary>The phrase files that the program travels with, against the sources that use them.</summary>
public sealed partial class PhraseFileTests
{
    private static PhraseBook Load(string language)
    {
        var problems = new Problems();
        var phrases = PhraseBook.Load(Resources.OfProgram.PhrasesFolder, language, problems);
        Assert.Empty(problems.All);
        return phrases!;
    }

    private static List<(string File, string Text)> Sources { get; } =
    [
        .. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "obj" or "bin"))
            .Select(file => (Path.GetRelativePath(Repository.Root, file), Comment().Replace(File.ReadAllText(file), ""))),
    ];

    [Fact]
    public void Every_phrase_that_the_program_asks_for_is_there()
    {
        var keys = Load("en-GB").Keys;
        var missing = new List<string>();
        var asked = 0;
        foreach (var (file, text) in Sources)
        {
            foreach (Match match in Asked().Matches(text))
            {
                asked++;
                var (method, key) = (match.Groups["method"].Value, match.Groups["key"].Value);
                var isThere = method switch
                {
                    "Plural" => IsThere(key + ".one") && IsThere(key + ".other"),
                    "Count" => IsThere(key + ".one") && IsThere(key + ".other"),
                    "Say" => IsThere(key),
                    _ => IsThere(key),
                };
                if (!isThere)
                    missing.Add($"{file}: {key}");
            }
        }

        Assert.True(missing.Count == 0, "Not in the file: " + string.Join(", ", missing));
        Assert.InRange(asked, 20, int.MaxValue);

        bool IsThere(string key) => keys.Any(Pattern(key).IsMatch);
    }

    [Fact]
    public void Every_phrase_is_asked_for()
    {
        // A text in the sources that looks like a key may be one, as it stands or as figures ask for it. What is put into
        // a key, or behind it, while the program runs can be anything.
        var patterns = Sources
            .SelectMany(source => Literal().Matches(source.Text))
            .Select(match => match.Groups["key"].Value)
            .SelectMany(key => new[] { key, key + ".one", key + ".other" })
            .Distinct(StringComparer.Ordinal)
            .Select(key => Pattern(key.EndsWith('.') ? key + "{}" : key))
            .ToList();
        var unused = Load("en-GB").Keys.Where(key => !IsUsed(key) && !(PluralForm().IsMatch(key) && IsUsed(PluralForm().Replace(key, ""))));
        Assert.True(!unused.Any(), "Asked for by nothing: " + string.Join(", ", unused));

        bool IsUsed(string key) => patterns.Exists(pattern => pattern.IsMatch(key));
    }

    private static Regex Pattern(string key) =>
        new("^" + string.Join("[a-z0-9_.]+", Hole().Split(key).Select(Regex.Escape)) + "$", RegexOptions.CultureInvariant);

    [Fact]
    public void Every_phrase_that_counts_has_both_forms()
    {
        var keys = Load("en-GB").Keys;
        foreach (var key in keys.Where(key => key.EndsWith(".one", StringComparison.Ordinal)))
            Assert.Contains(key[..^4] + ".other", keys);
        foreach (var key in keys.Where(key => key.EndsWith(".other", StringComparison.Ordinal)))
            Assert.Contains(key[..^6] + ".one", keys);
    }

    [Fact]
    public void American_spelling_says_only_what_differs()
    {
        var (british, american) = (Load("en-GB"), Load("en-US"));
        var file = File.ReadAllText(Path.Combine(Resources.OfProgram.PhrasesFolder, "en-us.yaml"));
        var written = YamlSource.Read(file, "en-us.yaml", new Problems())!;
        var leaves = Leaves(written).ToList();
        Assert.NotEmpty(leaves);
        Assert.All(leaves, key => Assert.NotEqual(british.Find(key), american.Find(key)));
    }

    [Fact]
    public void Each_country_s_spelling_is_its_own()
    {
        var (british, american) = (Load("en-GB"), Load("en-US"));
        Assert.All(british.Keys, key => Assert.DoesNotMatch(AmericanSpelling(), british.Find(key)));
        Assert.All(american.Keys, key => Assert.DoesNotMatch(BritishSpelling(), american.Find(key)));
    }

    [Fact]
    public void Every_phrase_is_one_line_that_can_be_set()
    {
        var phrases = Load("en-GB");
        foreach (var key in phrases.Keys)
        {
            var values = PhraseBook.Names(phrases.Find(key)).Select(name => (name, (IReadOnlyList<Inline>)[new TextInline(name)])).ToArray();
            Assert.NotEmpty(phrases.Inlines(key, values));
            Assert.DoesNotContain('\n', phrases.Find(key));
            Assert.Equal(phrases.Find(key).Trim(' '), key is "list.comma" ? "," : phrases.Find(key));
        }
    }

    private static IEnumerable<string> Leaves(YamlMap map) =>
        map.Entries.SelectMany(entry => entry.Value.IsMap ? Leaves(entry.Value.AsMap()!).Select(key => entry.Key + "." + key) : [entry.Key]);

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex("""(?:[Pp]hrases\??(?:\.(?<method>Format|Plural|Inlines)\(|\[)\s*|(?<![\w.])(?:this\[|(?<method>Format|Plural|Inlines)\(\s*)|[Ww]ords\.(?<method>Say|Count)\(\s*|Phrase\([\w.]*[Pp]hrases,\s*)\$?"(?<key>[a-z0-9_-]+\.[^"]+)"(?!\s*\+)""")]
    private static partial Regex Asked();

    [GeneratedRegex("""\$?"(?<key>[a-z0-9_]+\.(?:[a-z0-9_-]+|\{[^"{}]+\}|\.)*)["]""")]
    private static partial Regex Literal();

    [GeneratedRegex(@"\.(one|other)$")]
    private static partial Regex PluralForm();

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Hole();

    [GeneratedRegex(@"(?i)\b(color|center|gray|millimeter|license[sd]?\b(?<!the SIL Open Font License))", RegexOptions.CultureInvariant)]
    private static partial Regex AmericanSpelling();

    [GeneratedRegex(@"(?i)\b(colour|centre|grey|millimetre|licence|rubber)", RegexOptions.CultureInvariant)]
    private static partial Regex BritishSpelling();
}
