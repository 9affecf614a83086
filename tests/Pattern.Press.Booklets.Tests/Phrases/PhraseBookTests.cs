using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Tests.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using static Pattern.Press.Booklets.Tests.Markdown.Reading;

namespace Pattern.Press.Booklets.Tests.Phrases;

public sealed class PhraseBookTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public PhraseBookTests()
    {
        _folder.Write("phrases/en.yaml", """
            number: {decimal_mark: "."}
            list: {two: "{first} and {last}", many: "{first} and {last}", comma: ", "}
            date:
              long: "{day} {month} {year}"
              months: {1: January, 2: February, 11: November}
            time: {minutes: "{minutes} min", hours: "{hours} h", both: "{hours} h {minutes} min"}
            tools:
              pencil: a pencil and a rubber
            cut:
              one: Cut 1 from {stock}
              other: Cut {count} from {stock}
            square: "Each side is **{size}**, not 48 mm."
            """);
        _folder.Write("phrases/en-us.yaml", """
            tools: {pencil: a pencil and an eraser}
            list: {many: "{first}, and {last}"}
            date: {long: "{month} {day}, {year}"}
            """);
        _folder.Write("phrases/nl.yaml", "number: {decimal_mark: \",\"}\n");
    }

    public void Dispose() => _folder.Dispose();

    private PhraseBook Load(string language)
    {
        var problems = new Problems();
        var phrases = PhraseBook.Load(Path.Combine(_folder.Path, "phrases"), language, problems);
        Assert.Empty(problems.All);
        return phrases!;
    }

    [Theory]
    [InlineData("en", "a pencil and a rubber")]
    [InlineData("en-GB", "a pencil and a rubber")]
    [InlineData("en-US", "a pencil and an eraser")]
    public void A_country_s_spelling_lies_over_the_language(string language, string pencil)
    {
        var phrases = Load(language);
        Assert.Equal((language, pencil), (phrases.Language, phrases["tools.pencil"]));
        Assert.Equal("Cut 1 from card", phrases.Plural("cut", 1, ("stock", "card")));
    }

    [Fact]
    public void Names_are_filled_in()
    {
        var phrases = Load("en-GB");
        Assert.Equal("Cut 3 from {stock}", phrases.Plural("cut", 3, ("stock", "{stock}")));
        Assert.Equal("Cut 1 from card", phrases.Plural("cut", 1, ("stock", "card")));
        Assert.Equal(["", "a", "a and b", "a, b and c"], new[] { 0, 1, 2, 3 }.Select(n => phrases.Join([.. "abc"[..n].Select(c => c.ToString())])));
        Assert.Equal(("5 min", "2 h", "1 h 5 min"), (phrases.Minutes(5), phrases.Minutes(120), phrases.Minutes(65)));
        Assert.Equal(".", phrases.DecimalMark);
        Assert.Equal(",", Load("nl").DecimalMark);
    }

    [Fact]
    public void Days_and_lists_are_written_as_the_country_does()
    {
        var day = new DateOnly(2026, 11, 12);
        Assert.Equal(("12 November 2026", "November 12, 2026"), (Load("en-GB").Date(day), Load("en-US").Date(day)));
        Assert.Equal(("a, b and c", "a, b, and c"), (Load("en-GB").Join(["a", "b", "c"]), Load("en-US").Join(["a", "b", "c"])));
    }

    [Fact]
    public void A_phrase_as_inlines_has_its_measurements_set_as_such() =>
        Assert.Equal("Each side is **⟨50 mm⟩**, not ⟨48 mm⟩.", Shape(Load("en-GB").Inlines("square", ("size", [new MeasureInline("50 mm")]))));

    [Fact]
    public void Asking_wrongly_is_a_mistake_in_the_program()
    {
        var phrases = Load("en-GB");
        Assert.Contains("There is no phrase “tool.pencil”. Did you mean “tools.pencil”?", Assert.Throws<ArgumentException>(() => phrases["tool.pencil"]).Message, StringComparison.Ordinal);
        Assert.Contains("with () but needs (stock)", Assert.Throws<ArgumentException>(() => phrases["cut.one"]).Message, StringComparison.Ordinal);
        Assert.Contains("with (sheet) but needs (stock)", Assert.Throws<ArgumentException>(() => phrases.Format("cut.one", ("sheet", "x"))).Message, StringComparison.Ordinal);
        Assert.Contains("with (x) but needs ()", Assert.Throws<ArgumentException>(() => phrases.Format("tools.pencil", ("x", "y"))).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fr")]
    [InlineData("en_GB")]
    [InlineData("../en")]
    [InlineData("")]
    public void A_language_without_phrases_is_said(string language)
    {
        var problems = new Problems();
        Assert.Null(PhraseBook.Load(Path.Combine(_folder.Path, "phrases"), language, problems, new Place("booklet.md", 5, 11)));
        Found.One(problems, "booklet.md", 5, 11, $"There are no phrases in the language “{language}”.", "Known here: en, nl.");
    }

    [Theory]
    [InlineData("en.yaml", "Bad-Key: x", 1, 1, "“Bad-Key” is not a key of a phrase.", "small letters")]
    [InlineData("en.yaml", "a:\n  b: []", 2, 6, "The phrase “a.b” has no words.", "")]
    [InlineData("en.yaml", "a: b: c", 1, 5, "cannot be read here", "")]
    [InlineData("en-us.yaml", "tools:\n  pencli: x", 2, 3, "The phrase “tools.pencli” is not in the language’s main file.", "“tools.pencil”")]
    [InlineData("en-us.yaml", "cut: {one: Cut one}", 1, 7, "has other names in braces", "{stock}")]
    public void A_phrase_file_with_a_mistake_is_said(string file, string text, int line, int column, string message, string advice)
    {
        _folder.Write("phrases/" + file, text);
        var problems = new Problems();
        Assert.Null(PhraseBook.Load(Path.Combine(_folder.Path, "phrases"), "en-US", problems));
        Found.Is(problems.All.First(p => p.Severity == Severity.Error && p.File == "phrases/" + file), Severity.Error, "phrases/" + file, line, column, message, advice);
    }
}
