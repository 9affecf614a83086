using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using static Pattern.Press.Booklets.Tests.Markdown.Reading;

namespace Pattern.Press.Booklets.Tests.Markdown;

public sealed class BlockTests
{
    /// <summary>Examples of CommonMark 0.31.2, by their number there (from memory), and what they come to in a booklet.</summary>
    [Theory]
    [InlineData("a\n\nb", "p(a) p(b)")]
    [InlineData("  aaa\n bbb", "p(aaa bbb)")] // 222
    [InlineData("aaa     \nbbb     ", "p(aaa⏎bbb)")] // 226
    [InlineData("foo\\\nbar", "p(foo⏎bar)")]
    [InlineData("***\n---\n___", "rule rule rule")] // 43
    [InlineData("- foo\n***\n- bar", "ul[p(foo)] rule ul[p(bar)]")] // 57
    [InlineData("Foo\n***\nbar", "p(Foo) rule p(bar)")] // 58
    [InlineData("# foo *bar* \\*baz\\*", "h3(foo *bar* *baz*)")] // 66
    [InlineData("#5 bolt\n\n#hashtag", "p(#5 bolt) p(#hashtag)")] // 64
    [InlineData("## foo ##", "h3(foo)")] // 71
    [InlineData("Foo *bar*\n=========", "h3(Foo *bar*)")] // 80
    [InlineData("    a simple\n      indented code block", "literal(a simple⏎  indented code block)")] // 107
    [InlineData("```\n<\n >\n```", "literal(<⏎ >)")] // 119
    [InlineData("~~~\n<\n >\n~~~", "literal(<⏎ >)")] // 120
    [InlineData("````\naaa\n```\n``````", "literal(aaa⏎```)")] // 124
    [InlineData("```ruby\ndef foo(x)\n```", "literal(def foo(x))")] // 142
    [InlineData("[foo]: /url \"title\"\n\nwords", "p(words)")]
    [InlineData("> # Foo\n> bar\n> baz", "quote[h3(Foo) p(bar baz)]")] // 228
    [InlineData("> bar\nbaz\n> foo", "quote[p(bar baz foo)]")] // 233
    [InlineData("> > > foo\nbar", "quote[quote[quote[p(foo bar)]]]")] // 250
    [InlineData("- one\n\n  two", "ul[p(one) p(two)]")] // 256
    [InlineData("1.  foo\n\n    ```\n    bar\n    ```\n\n    baz\n\n    > bam", "ol1[p(foo) literal(bar) p(baz) quote[p(bam)]]")] // 263
    [InlineData("3. a\n4. b", "ol3[p(a); p(b)]")]
    [InlineData("- foo\n  - bar\n    - baz\n      - boo", "ul[p(foo) ul[p(bar) ul[p(baz) ul[p(boo)]]]]")] // 307
    [InlineData("- foo\n- bar\n+ baz", "ul[p(foo); p(bar)] ul[p(baz)]")] // 301
    [InlineData("1. foo\n2. bar\n3) baz", "ol1[p(foo); p(bar)] ol3[p(baz)]")] // 302
    [InlineData("- a\n-\n- c", "ul[p(a); ; p(c)]")]
    [InlineData("Foo\nbar\n---\nbaz", "h3(Foo bar) p(baz)")]
    [InlineData("# A\n\nB\n-\n\nC", "h3(A) h4(B) p(C)")]
    [InlineData("# `a` [b](https://example.org) &amp; **c**", "h3(`a` [b→https://example.org] & **c**)")]
    [InlineData("> a\n>\n> - b\n>   1. c\n>\n> > d", "quote[p(a) ul[p(b) ol1[p(c)]] quote[p(d)]]")]
    [InlineData("- a\n\n- b\n\n  c\n- d", "ul[p(a); p(b) p(c); p(d)]")]
    [InlineData("10) a\n\n    b\n11) c", "ol10[p(a) p(b); p(c)]")]
    [InlineData("- a\n  > b\n  ```\n  c\n  ```\n- d", "ul[p(a) quote[p(b)] literal(c); p(d)]")]
    [InlineData("The number\n14. of pages", "p(The number 14. of pages)")]
    [InlineData("- a\n\n      b", "ul[p(a) literal(b)]")]
    [InlineData("1. a\n   - b\n\n     c\n2. d", "ol1[p(a) ul[p(b) p(c)]; p(d)]")]
    [InlineData("a\n- b\n\nc", "p(a) ul[p(b)] p(c)")]
    [InlineData("[foo]: https://example.org 'the\ntitle'\n\n[Foo] and [bar][FOO]", "p([Foo→https://example.org] and [bar→https://example.org])")]
    [InlineData("*(**foo**)* **foo*bar*baz**", "p(*(****foo****)* **foo*****bar*****baz**)")]
    [InlineData("**not closed and *this is*", "p(**not closed and *this is*)")]
    [InlineData("`` a`b `` and \\` no code", "p(`a`b` and ` no code)")]
    [InlineData("&#x22;a&#34; &lt;b&gt; &nosuch;", "p(\"a\" <b> &nosuch;)")]
    [InlineData("", "")]
    public void CommonMark_becomes_blocks(string text, string shape) => Assert.Equal(shape, Shape(Blocks(text)));

    [Theory]
    [InlineData("- [ ] a\n- [x] *b*", "check[p(a); p(*b*)]")]
    [InlineData("| a | b |\n|---|---|\n| *c* | d |", "table(LL: a | b / *c* | d)")]
    [InlineData("| a | b | c |\n|:--|:-:|--:|\n| c | d | e |\n| f |", "table(LCR: a | b | c / c | d | e / f |  | )")]
    [InlineData("| part | size | n |\n|---|---|---|\n| lid | 20 mm | 2 |\n| base | 2 1/4 in | 10 |", "table(LRR: part | size | n / lid | ⟨20 mm⟩ | 2 / base | ⟨2 1/4 in⟩ | 10)")]
    [InlineData("::: tip\nA\n\n- b\n:::", "tip“tip”[p(a) ul[p(b)]]")]
    [InlineData("::: caution Sharp *blades*\nA\n:::", "caution“sharp blades”[p(a)]")]
    [InlineData("> [!TIP]\n> A\n>\n> - b", "tip“tip”[p(a) ul[p(b)]]")]
    [InlineData("- a\n\n  > [!caution]\n  > *B*", "ul[p(a) caution“take care”[p(*b*)]]")]
    [InlineData("> [TIP]\n> A", "quote[p([TIP] A)]")]
    [InlineData("::: figure\nshow: scores\n:::", "figure(base Scores)")]
    [InlineData("::: figure\nof: lid\nshow: flat\nemphasise: [tab, gusset]\ncaption: \"The *lid*\"\n:::", "figure(lid Flat tab+gusset The *lid*)")]
    [InlineData("1. a\n\n   ::: figure\n   show: folds\n   :::\n2. b", "ol1[p(a) figure(base Folds); p(b)]")]
    [InlineData("> ::: figure\n> show: folds\n> :::", "quote[figure(base Folds)]")]
    [InlineData(":::: tip\n::: caution\nA\n:::\n::::", "tip“tip”[caution“take care”[p(a)]]")]
    public void Tables_lists_to_tick_and_containers_become_blocks(string text, string shape) => Assert.Equal(shape, Shape(Blocks(text)));

    [Fact]
    public void Blocks_know_the_line_they_were_written_on()
    {
        var blocks = Blocks("\nOne.\n\n## Two\n\n- a\n- b\n\n  c\n\n> d\n\n| e |\n|---|\n\n```\nf\n```\n\n---\n\n::: tip\ng\n:::\n\n::: figure\nof: lid\n:::\n");
        Assert.Equal([11, 13, 15, 20, 22, 25, 29, 31, 35], blocks.Select(block => block.Source!.Value.Line));
        Assert.All(blocks, block => Assert.Equal(Reading.FileName, block.Source!.Value.File));
        Assert.Equal(18, ((ListBlock)blocks[2]).Items[1][1].Source!.Value.Line);
        Assert.Equal(32, ((CalloutBlock)blocks[7]).Content[0].Source!.Value.Line);
    }

    [Theory]
    [InlineData("## A\n\n### B\n\n## C", 3, "h3(A) h4(B) h3(C)")]
    [InlineData("# A\n\n## B", 2, "h2(A) h3(B)")]
    [InlineData("### B\n\n# A", 2, "h2(B) h2(A)")]
    [InlineData("## A\n\n#### B", 2, "h2(A) h3(B)")]
    [InlineData("# A\n\n## B\n\n### C", 3, "h3(A) h4(B) h4(C)")]
    public void Headings_start_at_the_level_that_is_asked_for_and_leave_none_out(string text, int top, string shape)
    {
        var (blocks, problems) = Read(text, options: Options with { TopHeading = top });
        Assert.Equal(shape, Shape(blocks));
        Assert.False(problems.HasErrors);
    }

    [Fact]
    public void A_heading_that_leaves_a_level_out_or_is_too_deep_is_a_warning()
    {
        var (_, problems) = Read("## A\n\n#### B", options: Options with { TopHeading = 2 });
        Content.Found.One(Severity.Warning, problems, Reading.FileName, 12, 1, "more than one level below", "Write it with ###");
        (_, problems) = Read("# A\n\n## B\n\n### C");
        Content.Found.One(Severity.Warning, problems, Reading.FileName, 14, 1, "at most 2 levels", "deepest");
    }

    [Fact]
    public void Headings_can_be_led_to_each_by_a_name_of_its_own()
    {
        var (blocks, _) = Read("# Score & fold\n\n# It’s {{item.name}}\n\n# Score, fold", options: Options with { DestinationPrefix = "step-2-", Bookmarks = true });
        Assert.Equal(["step-2-score-fold", "step-2-its-tin", "step-2-score-fold-2"], blocks.Select(block => block.Destination));
        Assert.Equal(["Score & fold", "It’s tin", "Score, fold"], blocks.Select(block => ((HeadingBlock)block).Bookmark));
        Assert.All(Blocks("# A"), block => Assert.Null(((HeadingBlock)block).Bookmark));
    }

    [Theory]
    [InlineData("a\n\n<div>\nb\n</div>", 12, 1, "HTML cannot be read here: “<div>”.", "Markdown")]
    [InlineData("a <b>b", 10, 3, "HTML cannot be read here: “<b>”.", "\\")]
    [InlineData("a\n\n<!-- note -->", 12, 1, "A comment in HTML", "notes")]
    [InlineData("| a |\n|---|\n| <br> |", 12, 3, "HTML cannot be read here: “<br>”.", "Markdown")]
    [InlineData("a\n\n<?php x ?>", 12, 1, "HTML cannot be read here: “<?php x ?>”.", "Markdown")]
    [InlineData("a\n\n<![CDATA[x]]>", 12, 1, "HTML cannot be read here: “<![CDATA[x]]>”.", "Markdown")]
    [InlineData("a\n\n<script>\nb\n</script>", 12, 1, "HTML cannot be read here: “<script>”.", "Markdown")]
    [InlineData("> - a <br/> b", 10, 7, "HTML cannot be read here: “<br/>”.", "Markdown")]
    [InlineData("a <!-- b --> c", 10, 3, "A comment in HTML", "notes")]
    [InlineData("::: tip\na\n\n<p>\n:::", 13, 1, "HTML cannot be read here: “<p>”.", "Markdown")]
    [InlineData("#", 10, 1, "The heading has no words.", "")]
    [InlineData("::: tipp\na\n:::", 10, 1, "There is no container “tipp”.", "“tip”")]
    [InlineData("a\n\n:::\na\n:::", 12, 1, "The container has no name.", "::: caution")]
    [InlineData("a\n\n::: tip\na\n", 12, 1, "never closed", "“:::”")]
    [InlineData("::: tip\n:::", 10, 1, "The container has no words.", "")]
    [InlineData("a\n\n> [!NOTE]\n> b", 12, 1, "There is no “[!NOTE]”.", "[!CAUTION]")]
    [InlineData("> [!TIP] a", 10, 1, "“[!TIP]” has to stand on a line of its own", "lines below it")]
    [InlineData("a\n\n> [!TIP]", 12, 1, "“[!TIP]” has no words.", "lines below it")]
    [InlineData("a\n\n::: figure\nof: lid\nshow: socres\n:::", 14, 7, "“socres” is not one of the choices", "“scores”")]
    [InlineData("- a\n\n  ::: figure\n  off: lid\n  :::", 13, 3, "“off” is not known here.", "“of”")]
    [InlineData("> ::: figure\n> off: lid\n> :::", 11, 3, "“off” is not known here.", "“of”")]
    [InlineData("::: figure\nof: [a\nb\n:::", 11, 5, "cannot be read", "")]
    [InlineData("::: figure\nof: nothing\n:::", 11, 5, "There is no part “nothing”.", "")]
    public void What_cannot_be_set_is_said_with_its_place(string text, int line, int column, string message, string advice) =>
        Content.Found.One(Read(text).Problems, Reading.FileName, line, column, message, advice);

    [Fact]
    public void Literal_lines_that_are_never_closed_are_a_warning() =>
        Content.Found.One(Severity.Warning, Read("```\na\n\nb").Problems, Reading.FileName, 10, 1, "never closed", "same marks");

    [Fact]
    public void Text_nested_too_deep_is_refused()
    {
        Content.Found.One(Read(new string('>', 5_000) + " a").Problems, Reading.FileName, 10, 0, "nested too deep", "quotations");
    }

    [Fact]
    public void A_text_of_one_line_is_one_paragraph_whatever_it_starts_with()
    {
        var problems = new Problems();
        var text = new Booklets.Content.MarkdownText("- 3 cuts of 58mm, *no* more", new Place("booklet.md", 4, 10));
        var inlines = Booklets.Markdown.MarkdownReader.ToInlines(text, "/nowhere", new NoBindings(), problems, Options);
        Assert.Equal("- 3 cuts of ⟨58 mm⟩, *no* more", Shape(inlines));
        Assert.Empty(problems.All);

        Booklets.Markdown.MarkdownReader.ToInlines(text with { Text = "Cut {{size.wall}} here" }, "/nowhere", new NoBindings(), problems, Options);
        Content.Found.One(problems, "booklet.md", 4, 14, "There is no value “size.wall”.", "");
        Booklets.Markdown.MarkdownReader.ToInlines(text with { Text = "One.\n\nTwo." }, "/nowhere", new NoBindings(), problems, Options);
        Content.Found.Is(problems.All[^1], Severity.Error, "booklet.md", 6, 1, "Only one paragraph can stand here.", "empty lines");
    }

    private sealed class NoBindings : Booklets.Markdown.IBindings
    {
        public IReadOnlyCollection<string> Names => [];

        public IReadOnlyList<Inline>? Value(string name) => null;

        public Block? Figure(Booklets.Content.FigureSource figure, Problems problems) => null;
    }
}
