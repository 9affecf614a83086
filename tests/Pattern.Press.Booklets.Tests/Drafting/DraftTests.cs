using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Drafting;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Drafting;

public class DraftTests
{
    private static readonly Resources Program = new(Repository.Root);

    public static TheoryData<string> Ids => [.. Catalogue.Open(Program.StructuresFolder, new Problems()).Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_draft_of_every_structure_builds_at_once(string id)
    {
        var problems = new Problems();
        var structure = Catalogue.Open(Program.StructuresFolder, problems).Find(id, new Place("test"), problems)!;
        var round = structure.Takes.Contains(ItemShape.Round);
        Assert.True(DraftItem.TryRead(round ? "jar: 44 mm round x 40 mm" : "card: 120 x 80 x 10 mm", out var item, out _));
        var files = Draft.Write(new DraftRequest(structure, id, item!, ["a4"], null), problems);
        Assert.Equal("", string.Join("\n", problems.All));

        var folder = Directory.CreateTempSubdirectory("draft-");
        try
        {
            foreach (var (path, text) in files!)
            {
                var file = Path.Combine(folder.FullName, path);
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllText(file, text);
            }

            var laidOut = new BookletPress(Program).LayOut(folder.FullName, new BuildOptions(), problems);
            Assert.Equal("", string.Join("\n", problems.All.Where(problem => problem.Severity == Severity.Error)));
            Assert.True(Assert.Single(laidOut!).TemplatePages > 0);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("divided-tray", "jar: 44 mm round x 40 mm", "its slots open at the top|slots open at the bottom|half-lap|figure: insert|Fold the long divider")]
    [InlineData("gable-top-box", "cake: 100 x 70 x 80 mm", "Push both gables in|Tuck it in behind the roof of the front|Bring the two handles together|food-safe")]
    [InlineData("open-tray", "soap: 80 x 55 x 25 mm", "on the inside. Keep for later: tabs are glued there first|Glue in the last mats|they hide the tabs|mats: yes")]
    [InlineData("pyramid-box", "egg: 45 mm round x 45 mm", "Trace them from their full-size templates|Turn the card over first: they go on the outside")]
    [InlineData("lantern", "lamp: 40 mm round x 30 mm", "electric light only|set the shade over it")]
    [InlineData("cylinder-band", "jar: 70 mm round x 80 mm", "Slide the band over the {{item.name}}")]
    [InlineData("flared-tray", "sweets: 70 mm round x 30 mm", "bring each tab inside the short wall next to it|traced from their full-size templates")]
    [InlineData("polygon-box", "jar: 44 mm round x 40 mm", "Trace the lid in the same way|as you did with the box|bring each tab inside the next wall")]
    public void Steps_say_what_hands_do(string id, string item, string words)
    {
        var text = Drafted(id, item);
        Assert.All(words.Split('|'), said => Assert.Contains(said, text, StringComparison.Ordinal));
        Assert.DoesNotContain("Close the box as the figure shows", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_set_is_in_the_booklet_and_in_its_steps_and_inches_stay_inches()
    {
        var problems = new Problems();
        var structure = Catalogue.Open(Program.StructuresFolder, problems).Find("open-tray", new Place("test"), problems)!;
        Assert.True(DraftItem.TryRead("soap bar: 3 x 2 x 1 in", out var item, out _));
        Assert.True(DraftItem.IsInInches("soap bar: 3 x 2 x 1 in"));
        Assert.False(DraftItem.IsInInches("3 tins: 30 mm round x 20 mm"));
        var request = new DraftRequest(structure, "open-tray", item!, ["letter"], null) { Sizes = ["in_a_row: 3"], InInches = true };
        var text = string.Join("\n", Draft.Write(request, problems)!.Select(file => file.Text));
        Assert.All(new[] { "width: 3 in\n", "primary: imperial\n", "sizes:\n  in_a_row: 3\n", "Made to fit three soap bars", "Put in the soap bars", "sheet: 12 x 12 in\n", "into each of the three places" }, words => Assert.Contains(words, text, StringComparison.Ordinal));

        // All mistakes in one go, none of them half-written.
        Assert.Null(Draft.Write(request with { Sizes = ["in_a_rwo: 3", "mats: perhaps", "ease"] }, problems));
        Assert.Equal(3, problems.All.Count);
        Assert.Contains("Did you mean “in_a_row”?", problems.All[0].Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Cautions_about_curves_are_for_what_has_curves()
    {
        Assert.DoesNotContain("On curves", Drafted("pyramid-box", "egg: 45 mm round x 45 mm"), StringComparison.Ordinal);
        Assert.Contains("On curves", Drafted("pillow-box", "candle: 22 mm round x 120 mm"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tin", "a tin")]
    [InlineData("egg", "an egg")]
    [InlineData("playing cards", "playing cards")]
    [InlineData("bag of sweets", "a bag of sweets")]
    [InlineData("sweets of all kinds", "sweets of all kinds")]
    [InlineData("my grandmother’s brooch", "my grandmother’s brooch")]
    [InlineData("3 tins", "3 tins")]
    [InlineData("two eggs", "two eggs")]
    [InlineData("magnifying glass", "a magnifying glass")]
    [InlineData("cactus", "a cactus")]
    public void A_thing_has_the_article_that_it_would_have_in_speech(string thing, string said) => Assert.Equal(said, DraftWords.A(thing));

    private static string Drafted(string id, string said)
    {
        var problems = new Problems();
        var structure = Catalogue.Open(Program.StructuresFolder, problems).Find(id, new Place("test"), problems)!;
        Assert.True(DraftItem.TryRead(said, out var item, out _));
        var files = Draft.Write(new DraftRequest(structure, id, item!, ["a4"], null), problems)!;
        Assert.Equal("", string.Join("\n", problems.All));
        return string.Join("\n", files.Select(file => file.Text));
    }

    [Theory]
    [InlineData("blue card, 80 lb cover, 12 x 12 in", "80 lb cover", "blue card")]
    [InlineData("moss-green card, 270 g/m2", "270 g/m2", "moss-green card")]
    public void A_stock_is_taken_as_it_is_said(string said, string weight, string name)
    {
        var text = BookletOf(said, out var problems)!;
        Assert.Empty(problems.All);
        Assert.Contains($"name: \"{name}\"", text, StringComparison.Ordinal);
        Assert.Contains($"weight: {weight}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pounds_without_a_basic_sheet_are_refused()
    {
        Assert.Null(BookletOf("blue card, 80 lb", out var problems));
        Assert.Contains("basic sheet", Assert.Single(problems.All).Message, StringComparison.Ordinal);
    }

    private static string? BookletOf(string stock, out Problems problems)
    {
        problems = new Problems();
        var structure = Catalogue.Open(Program.StructuresFolder, problems).Find("open-tray", new Place("test"), problems)!;
        Assert.True(DraftItem.TryRead("jar: 44 mm round x 40 mm", out var item, out _));
        return Draft.Write(new DraftRequest(structure, "open-tray", item!, ["a4"], stock), problems)?[0].Text;
    }

    [Theory]
    [InlineData("60 mm round x 80 mm", true, 60, 60, 80)]
    [InlineData("tin: 58 mm round x 64 mm", true, 58, 58, 64)]
    [InlineData("80 x 50 x 30 mm", false, 80, 50, 30)]
    [InlineData("8 cm × 5 cm × 30 mm", false, 80, 50, 30)]
    [InlineData("6 by 4 by 2 in", false, 152.4, 101.6, 50.8)]
    [InlineData("148 x 105 mm", false, 148, 105, 1)]
    public void Items_are_read_as_makers_say_them(string text, bool round, double width, double depth, double height)
    {
        Assert.True(DraftItem.TryRead(text, out var item, out _));
        Assert.Equal(round ? ItemShape.Round : ItemShape.Rectangular, item!.Shape);
        Assert.Equal((width, depth, height), (item.Width.Millimetres, item.Depth.Millimetres, item.Height.Millimetres));
    }

    [Theory]
    [InlineData("")]
    [InlineData("60")]
    [InlineData("60 x 80")]
    [InlineData("60 mm round")]
    [InlineData("1 x 2 x 3 x 4 mm")]
    [InlineData("0 x 20 x 30 mm")]
    public void What_is_no_item_is_told_with_an_example(string text)
    {
        Assert.False(DraftItem.TryRead(text, out var item, out var problem));
        Assert.Null(item);
        Assert.NotEmpty(problem);
    }
}
