using CsCheck;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using static Pattern.Press.Booklets.Tests.Markdown.Reading;

namespace Pattern.Press.Booklets.Tests.Markdown;

public sealed class InlineTests
{
    private static string Set(string text)
    {
        var block = Assert.Single(Blocks(text));
        return Shape(((ParagraphBlock)block).Content);
    }

    [Theory]
    [InlineData("a *b* **c** ***d*** _e_ __f__", "a *b* **c** ***d*** *e* **f**")]
    [InlineData("foo*bar*baz snake_case_name", "foo*bar*baz snake_case_name")]
    [InlineData("**a *b* c**", "**a *****b***** c**")]
    [InlineData("`a  *b*` and ``c`d``", "`a  *b*` and `c`d`")]
    [InlineData("\\*a\\* \\# \\[x\\]", "*a* # [x]")]
    [InlineData("&copy; &amp; &#189; &frac14;", "© & ½ ¼")]
    [InlineData("a\nb\n c", "a b c")]
    [InlineData("a  \nb", "a⏎b")]
    [InlineData("[a *b*](https://example.org \"t\") c", "[a *b*→https://example.org] c")]
    [InlineData("[a][x] [x]\n\n[x]: https://example.org", "[a→https://example.org] [x→https://example.org]")]
    [InlineData("<https://example.org/a--b> <me@example.org>", "[https://example.org/a--b→https://example.org/a--b] [me@example.org→mailto:me@example.org]")]
    [InlineData("[a](#lid)", "[a→lid#]")]
    public void CommonMark_s_inlines_are_read(string text, string shape) => Assert.Equal(shape, Set(text));

    [Theory]
    [InlineData("Walls are {{size.wall_height}} high.", "Walls are ⟨64 mm⟩ (⟨2 1/2 in⟩) high.")]
    [InlineData("A *{{ base.sheet }} **{{base.sheet}}*** b", "A *⟨225 × 215 mm⟩** ****⟨225 × 215 mm⟩*** b")]
    [InlineData("[{{item.name}}](#lid)", "[tin→lid#]")]
    [InlineData("`{{item.name}}` \\{\\{item.name}}", "`{{item.name}}` {{item.name}}")]
    [InlineData("{a} {", "{a} {")]
    public void Values_stand_wherever_words_do(string text, string shape) => Assert.Equal(shape, Set(text));

    [Fact]
    public void Values_stand_in_headings_lists_tables_and_callouts() =>
        Assert.Equal(
            "h3(For a tin) ul[p(*tin*)] table(LR: tin | b / c | ⟨225 × 215 mm⟩) caution“hot tin”[p(tin)]",
            Shape(Blocks("# For a {{item.name}}\n\n- *{{item.name}}*\n\n| {{item.name}} | b |\n|---|---|\n| c | {{base.sheet}} |\n\n::: caution Hot {{item.name}}\n{{item.name}}\n:::")));

    [Theory]
    [InlineData("Walls: {{size.wall_hieght}}.", 10, 8, "There is no value “size.wall_hieght”.", "“size.wall_height”")]
    [InlineData("a\nb *c\n  {{itm.name}}* d", 12, 3, "There is no value “itm.name”.", "“item.name”")]
    [InlineData("> - a\n>   b {{x}}", 11, 7, "There is no value “x”.", "Known here")]
    [InlineData("| a | b |\n|---|---|\n| c | d {{x}} |", 12, 9, "There is no value “x”.", "Known here")]
    [InlineData("# A {{x}}", 10, 5, "There is no value “x”.", "Known here")]
    [InlineData("- [ ] a\n- [ ] {{x}}", 11, 7, "There is no value “x”.", "Known here")]
    [InlineData("::: tip\na\n\nb {{x}}\n:::", 13, 3, "There is no value “x”.", "Known here")]
    [InlineData("[a {{x}}](#b)", 10, 4, "There is no value “x”.", "Known here")]
    [InlineData("é–ü {{x}}", 10, 5, "There is no value “x”.", "Known here")]
    [InlineData("a {{item.name b", 10, 3, "never closed", "{{size.wall_height}}")]
    [InlineData("a {{item\nname}} b", 10, 3, "never closed", "{{size.wall_height}}")]
    [InlineData("a {{}} b", 10, 3, "There is no value “”.", "")]
    public void A_value_that_is_not_there_is_said_with_its_exact_place(string text, int line, int column, string message, string advice) =>
        Content.Found.One(Read(text).Problems, Reading.FileName, line, column, message, advice);

    [Theory]
    [InlineData("It's the maker's \"first\" box.", "It’s the maker’s “first” box.")]
    [InlineData("\"*First*,\" she said, 'then \"second\"'.", "“*First*,” she said, ‘then “second”’.")]
    [InlineData("(\"a\") [\"b\"] \"c\"", "(“a”) [“b”] “c”")]
    [InlineData("the '90s and rock 'n' roll, 'tis so", "the ’90s and rock ’n’ roll, ’tis so")]
    [InlineData("the boxes' lids", "the boxes’ lids")]
    [InlineData("one -- two --- three - four -----", "one – two — three – four -----")]
    [InlineData("3-4 minutes, pages 12-15.", "3–4 minutes, pages 12–15.")]
    [InlineData("2026-11-12 and A4-80 and 1-800-55 and 07-2", "2026-11-12 and A4-80 and 1-800-55 and 07–2")]
    [InlineData("well-known, wait...", "well-known, wait…")]
    [InlineData("\\\"a\\\" `\"b\" -- c`", "\"a\" `\"b\" -- c`")]
    [InlineData("-- a", "– a")]
    public void Quotation_marks_and_dashes_are_those_of_print(string text, string shape) => Assert.Equal(shape, Set(text));

    [Theory]
    [InlineData("58 mm", "⟨58 mm⟩")]
    [InlineData("58mm, 5.8 cm; 1 m.", "⟨58 mm⟩, ⟨5.8 cm⟩; ⟨1 m⟩.")]
    [InlineData("(2 1/4 in)", "(⟨2 1/4 in⟩)")]
    [InlineData("2¼\" and 2 ¼ in and 2-1/4\" and ½in", "⟨2 1/4 in⟩ and ⟨2 1/4 in⟩ and ⟨2 1/4 in⟩ and ⟨1/2 in⟩")]
    [InlineData("12 inches or 1 inch", "⟨12 inches⟩ or ⟨1 inch⟩")]
    [InlineData("225 x 215 mm; 225×215mm; 12\" x 12\"; 8 1/2 x 11 in", "⟨225 × 215 mm⟩; ⟨225 × 215 mm⟩; ⟨12 in × 12 in⟩; ⟨8 1/2 × 11 in⟩")]
    [InlineData("80 x 50 x 30 mm", "⟨80 × 50 × 30 mm⟩")]
    [InlineData("3-4 mm and 3–4 mm", "⟨3–4 mm⟩ and ⟨3–4 mm⟩")]
    [InlineData("**58 mm** *wide*", "**⟨58 mm⟩** *wide*")]
    [InlineData("a 58\nmm side", "a ⟨58 mm⟩ side")]
    [InlineData("250 g/m2, 45°, 180 °C", "⟨250 g/m²⟩, ⟨45°⟩, ⟨180 °C⟩")]
    [InlineData("±0.5 mm or -1 mm", "⟨±0.5 mm⟩ or ⟨−1 mm⟩")]
    [InlineData("58\u00A0mm", "⟨58 mm⟩")]
    [InlineData("1/2 sheet, 58 mmm, A58 mm, 5 minutes, no. 7 m4", "1/2 sheet, 58 mmm, A58 mm, 5 minutes, no. 7 m4")]
    [InlineData("`58 mm`", "`58 mm`")]
    [InlineData("58,5 mm", "⟨58,5 mm⟩")]
    [InlineData("\"cut at 58\" he said", "“cut at 58” he said")]
    [InlineData("a 2\" strip and a 3\" strip", "a ⟨2 in⟩ strip and a ⟨3 in⟩ strip")]
    [InlineData("{{base.sheet}} and 5 mm", "⟨225 × 215 mm⟩ and ⟨5 mm⟩")]
    public void Measurements_that_are_typed_are_set_as_such(string text, string shape) => Assert.Equal(shape, Set(text));

    [Fact]
    public void A_measurement_set_in_two_ways_still_does_not_part() =>
        Assert.Equal("a **58**\u00A0mm side", Set("a **58** mm side"));

    [Fact]
    public void Every_measurement_the_program_writes_is_found_again_unchanged()
    {
        var length = Gen.Int[1, 64 * 40].Select(n => Pattern.Press.Measure.Length.Inch / 64 * n);
        var inches = length.Select(l => Pattern.Press.Measure.LengthFormat.Format(l, Pattern.Press.Measure.Ruler.SixteenthInches));
        var metric = Gen.Int[1, 10_000].Select(n => Pattern.Press.Measure.LengthFormat.Format(Pattern.Press.Measure.Length.FromMillimetres(n / 10m), Pattern.Press.Measure.Ruler.WholeMillimetres));
        Gen.OneOf(inches, metric).Sample(text => Set($"Cut {text} off.") == $"Cut ⟨{text}⟩ off.", iter: 300);
    }

    [Theory]
    [InlineData("[a](#ldi)", 10, 1, "leads to “#ldi”", "“lid”")]
    [InlineData("b [a](javascript:x)", 10, 3, "readers cannot follow", "https://")]
    [InlineData("b [a](file:///etc/passwd)", 10, 3, "readers cannot follow", "https://")]
    [InlineData("[a](03-glu.md)", 10, 1, "is not a file of this booklet", "03-glue.md")]
    [InlineData("[a](example.org)", 10, 1, "is not a file of this booklet", "https:// and all")]
    [InlineData("[a]()", 10, 1, "The link leads nowhere.", "#lid")]
    [InlineData("[](https://example.org)", 10, 1, "The link has no words.", "[the lid](#lid)")]
    public void A_link_that_leads_nowhere_is_said(string text, int line, int column, string message, string advice)
    {
        var options = Options with
        {
            Destinations = ["lid", "base"],
            Files = new Dictionary<string, string> { ["steps/03-glue.md"] = "step-3" },
        };
        Content.Found.One(Read(text, options: options).Problems, Reading.FileName, line, column, message, advice);
    }

    [Fact]
    public void Links_lead_to_steps_places_and_headings_of_the_same_text()
    {
        var options = Options with
        {
            Destinations = ["lid"],
            DestinationPrefix = "step-2-",
            Files = new Dictionary<string, string> { ["steps/03-glue.md"] = "step-3" },
        };
        var (blocks, problems) = Read("[a](03-glue.md) [b](steps/03-glue.md) [c](../steps/03-glue.md) [d](#lid) [e](#why)\n\n# Why", options: options);
        Assert.Empty(problems.All);
        Assert.Equal("p([a→step-3#] [b→step-3#] [c→step-3#] [d→lid#] [e→step-2-why#]) h3(Why)", Shape(blocks));
        Assert.Equal("step-2-why", blocks[1].Destination);
    }

    [Fact]
    public void Nothing_a_maker_can_type_breaks_the_reader()
    {
        var pieces = OneOf("{{", "}}", "item.name", "*", "**", "_", "`", "[", "](", ")", "!", "<", ">", "\n", "\n\n", " ", "    ", "- ", "1. ", "# ", "|", "|-|\n", ":::", " figure\n", " tip\n", "of: ", "\\", "&amp;", "58 mm", "1/2", "\"", "'", "--", "[ ]", "~~~", "é", "\t", "://", "#");
        pieces.Array[0, 30].Sample(
            all =>
            {
                var text = string.Concat(all);
                var (blocks, problems) = Read(text);
                var lines = text.Split('\n');
                return problems.All.All(p => p.Line > LinesBefore && p.Line <= LinesBefore + lines.Length + 1 && p.Message.Length > 0)
                    && blocks.All(block => block.Source is { } source && source.Line > LinesBefore && source.Line <= LinesBefore + lines.Length);
            },
            iter: 3000);
    }

    [Fact]
    public void Words_are_neither_lost_nor_doubled()
    {
        var word = OneOf("fold", "tab", "*score*", "**cut**", "`glue`", "{{item.name}}", "[lid](#lid)", "it's", "\"so\"", "58 mm", "2 1/4 in", "3-4 mm");
        word.Array[1, 20].Sample(
            words =>
            {
                var (blocks, problems) = Read(string.Join(' ', words));
                var expected = string.Join(' ', words)
                    .Replace("*", "", StringComparison.Ordinal).Replace("`", "", StringComparison.Ordinal)
                    .Replace("{{item.name}}", "tin", StringComparison.Ordinal).Replace("[lid](#lid)", "lid", StringComparison.Ordinal)
                    .Replace("'", "’", StringComparison.Ordinal).Replace("\"so\"", "“so”", StringComparison.Ordinal).Replace("3-4", "3–4", StringComparison.Ordinal);
                return problems.All.Count == 0 && Booklets.Markdown.InlineConverter.Text(((ParagraphBlock)blocks.Single()).Content) == expected;
            },
            iter: 500);
    }

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);
}
