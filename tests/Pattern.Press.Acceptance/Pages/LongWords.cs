using Pattern.Press.Acceptance.Architecture;
using Pattern.Press.Acceptance.BadInput;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Pattern.Press.Acceptance.Pages;

/// <summary>
/// Names and titles longer than anybody thought of: on covers and templates they are set smaller or in more lines as far
/// as that goes; what does not fit then is said with its line.
/// </summary>
public sealed class LongWords
{
    private const string Title = "title: A Box That Opens Like a Flower";
    private const string LongTitle = "A Box That Opens Like a Flower, Made to Measure for a Round Tin of Loose Tea, With a Lid and a Platform, for the Tuesday Class";

    [Theory]
    [InlineData("handout", "a4")]
    [InlineData("market", "a4")]
    [InlineData("handout", "a5")]
    [InlineData("market", "a5")]
    [InlineData("market", "5.5x8.5in")]
    public void A_long_title_is_set_smaller_on_the_cover_and_stays_inside_the_heads_of_pages(string theme, string paper)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", Title, "title: " + LongTitle).Change("booklet.md", "theme: handout", "theme: " + theme);
        var (code, _, errors) = copy.Build("--paper", paper);
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        using var file = PdfDocument.Open(Directory.GetFiles(copy.Out).Single());
        var cover = file.GetPage(1);
        Assert.StartsWith(LongTitle, string.Concat(cover.Letters.Select(letter => letter.Value)), StringComparison.Ordinal);
        AssertInside(cover);
        var page = file.GetPage(3);
        AssertInside(page);
        var words = string.Concat(page.Letters.Select(letter => letter.Value));
        Assert.True(words.Contains(LongTitle, StringComparison.Ordinal) || words.Contains('…', StringComparison.Ordinal), words);
    }

    [Theory]
    [InlineData(Title, "title: Explosionsschachtelverpackungsanleitungsheftchenumschlag", "“Explosionsschachtelverpackungsanleitungsheftchenumschlag” in the title", "title: Ex")]
    [InlineData("subtitle: An explosion box around a small tin of loose tea", "subtitle: Teedosenexplosionsschachtelverpackungsanleitungsheftchenumschlagbildunterschriftenverzeichnisregistereintragsnummernliste", "in the subtitle", "subtitle:")]
    [InlineData("maker: Quayside Paper Evenings", "maker: Quaysidepapereveningsandallwhocometothemoneveryothertuesdayofthemonthfromseventotensharpandstayontotidyupthetables", "in the maker", "maker:")]
    public void A_word_that_is_wider_than_the_cover_is_a_problem_at_its_line(string from, string to, string says, string at)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", from, to);
        AssertRefused(copy, copy.Build("--paper", "a5"), says, at, "Shorten it");
    }

    [Theory]
    [InlineData(Title, "title", "The title takes")]
    [InlineData("subtitle: An explosion box around a small tin of loose tea", "subtitle", "The subtitle takes")]
    [InlineData("maker: Quayside Paper Evenings", "maker", "The maker takes")]
    public void More_words_than_the_cover_holds_are_a_problem_at_their_line(string from, string key, string says)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", from, key + ": " + string.Join(' ', Enumerable.Repeat("An explosion box around a small tin of loose tea", 30)));
        AssertRefused(copy, copy.Build("--paper", "a4"), says, key + ":", "Shorten it");
    }

    [Fact]
    public void Names_too_long_for_the_words_of_a_template_page_are_a_problem_at_the_line_of_the_material()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "name: moss-green card, smooth", "name: " + string.Join(' ', Enumerable.Repeat("moss-green card, smooth on one side", 160)));
        AssertRefused(copy, copy.Build("--paper", "a4", "--only", "templates"), "too long for the words of a template page", "card:", "shorter names");
    }

    [Fact]
    public void Words_too_wide_where_the_program_sets_them_are_problems_at_the_lines_that_they_are_written_on()
    {
        using var copy = new BookletCopy();
        const string Wide = "Teedosenexplosionsschachtelverpackungsanleitungsheftchenumschlagbildunterschriftenverzeichnisregistereintragsnummernliste";
        File.Copy(Path.Combine(DependencyArrows.RepositoryRoot(), "content", "structures", "explosion-box.yaml"), Path.Combine(copy.Folder, "my-box.yaml"));
        copy.Change("my-box.yaml", "name: Lid top mat", $"name: S{Wide}")
            .Change("booklet.md", "structure: explosion-box", "structure: ./my-box.yaml")
            .Change("booklet.md", "name: moss-green card", $"name: A{Wide} card")
            .Change("booklet.md", "  - scissors", $"  - B{Wide}")
            .Change("booklet.md", "of narrow ribbon", $"of “C{Wide}” ribbon")
            .Change("booklet.md", "make as many boxes as you like", $"D{Wide}")
            .Change("steps/02-score-the-base.md", "title: ", $"title: E{Wide} ");
        var (code, _, errors) = copy.Build("--paper", "a4");
        Assert.Equal(1, code);
        foreach (var (file, letter) in new[] { ("booklet.md", 'A'), ("booklet.md", 'B'), ("booklet.md", 'C'), ("booklet.md", 'D'), ("steps/02-score-the-base.md", 'E'), ("my-box.yaml", 'S') })
            Assert.Matches($"(^|\n)(\\./)?{file}:{copy.LineOf(file, letter + Wide)}(:\\d+)?: error: “+{letter}{Wide}", errors);

        // Each is told once, where there is least room for it.
        Assert.Single(errors.Split($"“B{Wide}").Skip(1));
    }

    [Fact]
    public void What_is_too_high_for_a_page_is_a_problem_at_its_own_line_and_not_where_its_table_or_its_list_starts()
    {
        using var copy = new BookletCopy();
        const string Step = "steps/04-fold-the-base.md";
        var many = string.Concat(Enumerable.Repeat("over and ", 4000));
        File.AppendAllText(Path.Combine(copy.Folder, Step), $"\n\n| Fold | Why |\n|---|---|\n| first | once |\n| {many}again | F |\n| 225 × 215 mm | {string.Concat(Enumerable.Repeat("9 × 9 mm ", 4000))}|\n");
        copy.Change("booklet.md", "of narrow ribbon", $"of {many}narrow ribbon");
        var (code, _, errors) = copy.Build("--paper", "a4");
        Assert.Equal(1, code);
        foreach (var (file, line) in new[] { (Step, copy.LineOf(Step, "again | F")), (Step, copy.LineOf(Step, "| 225 × 215 mm |")), ("booklet.md", copy.LineOf("booklet.md", "narrow ribbon")) })
            Assert.Matches($"(^|\n)(\\./)?{file}:{line}(:\\d+)?: error: A row of the table is [\\d.]+ mm high", errors);
    }

    [Theory]
    [InlineData("Lid top mat with small leaves that run upwards from the near edge to the far one, and round the corners", true)]
    [InlineData("Lidtopmatwithsmallleavesthatrunupwardsfromtheneartothefaredgeandround", false)]
    public void A_long_name_beside_a_small_template_leaves_its_size_out_and_is_refused_where_it_has_no_room(string name, bool fits)
    {
        using var copy = new BookletCopy();
        var file = Path.Combine(copy.Folder, "my-box.yaml");
        File.Copy(Path.Combine(DependencyArrows.RepositoryRoot(), "content", "structures", "explosion-box.yaml"), file);
        copy.Change("my-box.yaml", "name: Lid top mat", "name: " + name).Change("booklet.md", "structure: explosion-box", "structure: ./my-box.yaml");
        var run = copy.Build("--paper", "a4", "--only", "templates");
        if (!fits)
        {
            AssertRefused(copy, run, "has no room beside its template", "mats:", "shorter names");
            return;
        }

        Assert.Equal("", run.Errors);
        using var pdf = PdfDocument.Open(Directory.GetFiles(copy.Out).Single());
        var words = string.Join(' ', pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
        Assert.Contains("Lid top mat with small leaves", words, StringComparison.Ordinal);
        Assert.Contains("and round the corners", words, StringComparison.Ordinal);
    }

    private static void AssertRefused(BookletCopy copy, (int Code, string Output, string Errors) run, string says, string at, string advises)
    {
        Assert.Equal(1, run.Code);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        Assert.Contains($"booklet.md:{copy.LineOf("booklet.md", at)}:", run.Errors, StringComparison.Ordinal);
        Assert.Contains(advises, run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.Out) && Directory.GetFiles(copy.Out).Length > 0);
    }

    private static void AssertInside(Page page)
    {
        foreach (var letter in page.Letters)
        {
            Assert.InRange(letter.StartBaseLine.X, 0, page.Width);
            Assert.InRange(letter.EndBaseLine.X, 0, page.Width);
            Assert.InRange(letter.StartBaseLine.Y, 0, page.Height);
        }
    }
}
