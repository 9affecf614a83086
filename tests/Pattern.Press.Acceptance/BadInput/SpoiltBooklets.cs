namespace Pattern.Press.Acceptance.BadInput;

/// <summary>
/// Bad input, one kind at a time: each is refused with the place and with advice, the exit code says what kind of trouble
/// it is, and nothing is written.
/// </summary>
public sealed class SpoiltBooklets
{
    [Fact]
    public void The_copy_itself_builds()
    {
        using var copy = new BookletCopy();
        var (code, output, errors) = copy.Build();
        Assert.Equal("", errors);
        Assert.Equal(0, code);
        Assert.Equal(["spoilt-box-a4.pdf", "spoilt-box-letter.pdf"], Directory.GetFiles(copy.Out).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("spoilt-box-a4.pdf", output, StringComparison.Ordinal);
    }

    [Fact]
    public void No_folder()
    {
        using var copy = new BookletCopy();
        var missing = Path.Combine(copy.Folder, "not-there");
        Refused(BookletCopy.Run("build", missing, "--out", copy.Out), copy, 3, "not-there");
    }

    [Fact]
    public void No_booklet_file()
    {
        using var copy = new BookletCopy();
        File.Delete(Path.Combine(copy.Folder, "booklet.md"));
        Refused(copy.Build(), copy, 1, "booklet.md");
    }

    // What is changed in booklet.md, what a line of the report must say beside the place, and a word of the advice.
    [Theory]
    [InlineData("theme: handout", "theme: [handout", "YAML", "")]
    [InlineData("subtitle: An", "subtitel: An", "subtitel", "subtitle")]
    [InlineData("round: 58 mm", "round: 58", "no unit", "58 mm")]
    [InlineData("round: 58 mm", "round: -58 mm", "-58 mm", "")]
    [InlineData("round: 58 mm", "round: 0 mm", "0 mm", "")]
    [InlineData("round: 58 mm", "round: 0.000001 mm", "0.000001 mm", "")]
    [InlineData("round: 58 mm", "round: 10 m", "10 m", "")]
    [InlineData("structure: explosion-box", "structure: explosoin-box", "explosoin-box", "explosion-box")]
    [InlineData("lid_walls: double", "lid_wals: double", "lid_wals", "lid_walls")]
    [InlineData("lid_walls: double", "lid_walls: tripel", "tripel", "double")]
    [InlineData("lid_depth: 22 mm", "lid_depth: 220 mm", "lid", "")]
    [InlineData("lid_depth: 22 mm", "gusset: 200 mm", "gusset", "")]
    [InlineData("lid_depth: 22 mm", "mat_border: 40 mm", "mat", "")]
    [InlineData("lid_depth: 22 mm", "floor_length: 40 mm", "floor", "")]
    [InlineData("papers: [a4, letter]", "papers: [a4, lettre]", "lettre", "letter")]
    [InlineData("theme: handout", "theme: handuot", "handuot", "handout")]
    [InlineData("kits: 14", "kits: 0", "whole number", "1000")]
    [InlineData("kits: 14", "kits: 2.5", "whole number", "1000")]
    [InlineData("    pack: 10", "    one_way: no", "price", "pack: 10", "    price: 5.40")]
    [InlineData("  roll: 10 m", "", "price", "roll: 10 m", "  price: 1.80")]
    [InlineData("    pack: 5", "", "price", "pack: 1", "    price: 2.25")]
    [InlineData("currency: £", "", "prices", "currency: £", "---")]
    [InlineData("weight: 250 g/m2", "weight: 80 lb ledger", "basic sheet", "80 lb cover")]
    [InlineData("weight: 250 g/m2", "weight: 80 lb", "basic sheet", "80 lb cover")]
    [InlineData("spare: 10%", "spare: 10", "to spare", "10%")]
    [InlineData("starts: 19:00", "starts: seven", "time of day", "19:00")]
    [InlineData("    pack: 10", "    pack: 10\n    trim: 200 mm", "trim", "50 mm")]
    [InlineData("    pack: 10", "    pack: 10\n    grain: long", "long", "across")]
    [InlineData("spare: 10%", "figures: {base.sheat: 225 x 225 mm}", "base.sheat", "base.sheet")]
    [InlineData("spare: 10%", "figures: {base.scores_across: 80 and x mm}", "“x mm” is not a length", "80, 144 and 160 mm")]
    public void Something_wrong_in_the_front_matter(string from, string to, string says, string advises, string at = "")
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", from, to);

        // What is missing is told where it would be needed.
        var place = at.Length > 0 ? at : to.Split('\n')[^1];
        Refused(copy.Build(), copy, 1, says, advises, $"booklet.md:{copy.LineOf("booklet.md", place)}");
    }

    [Fact]
    public void An_item_that_does_not_fit_the_sizes_given()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "  lid_walls: double", "  floor_length: 40 mm\n  floor_width: 40 mm\n  lid_walls: double");
        Refused(copy.Build(), copy, 1, "floor", "", "booklet.md");
    }

    [Fact]
    public void A_sheet_larger_than_the_stock_says_by_how_much()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "    caliper: 0.32 mm\n    sheet: 12 x 12 in", "    caliper: 0.32 mm\n    sheet: 200 x 200 mm");
        Refused(copy.Build(), copy, 1, "200 × 200 mm", "", "booklet.md");
    }

    [Fact]
    public void A_sheet_larger_than_the_stock_names_one_that_does_and_the_item_that_this_one_does_for()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "    caliper: 0.32 mm\n    sheet: 12 x 12 in", "    caliper: 0.32 mm\n    sheet: 200 x 200 mm");
        var run = copy.Build();

        // The base of 225 × 225 mm goes on neither A4 (210 × 297) nor Letter (215.9 × 279.4); 12 × 12 in is the smallest
        // common sheet that holds it.
        Refused(run, copy, 1, "The nearest size that holds every piece of it is 12 × 12 in.");
        var item = System.Text.RegularExpressions.Regex.Match(run.Errors, @"holds a box for is (\d+) mm across and (\d+) mm tall");
        Assert.True(item.Success, run.Errors);

        // That item's box can indeed be cut from it; with lid and platform as they were, one 4 mm larger both ways cannot.
        int Across(int more) => int.Parse(item.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) + more;
        int Tall(int more) => int.Parse(item.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture) + more;
        copy.Change("booklet.md", "round: 58 mm", $"round: {Across(0)} mm").Change("booklet.md", "height: 64 mm", $"height: {Tall(0)} mm");
        Assert.DoesNotContain("comes in sheets of", BookletCopy.Run("check", copy.Folder).Errors, StringComparison.Ordinal);
        copy.Change("booklet.md", $"round: {Across(0)} mm", $"round: {Across(4)} mm").Change("booklet.md", $"  height: {Tall(0)} mm", $"  height: {Tall(4)} mm");
        Assert.Contains("comes in sheets of", BookletCopy.Run("check", copy.Folder).Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("metric")]
    [InlineData("imperial")]
    public void The_nearest_stock_and_the_largest_item_hold_in_both_columns(string primary)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "primary: metric", $"primary: {primary}");
        if (primary == "imperial")
            copy.Change("booklet.md", "lid_depth: 22 mm", "lid_depth: 7/8 in").Change("booklet.md", "platform_height: 12 mm", "platform_height: 1/2 in");

        // The stock that will be named holds both columns.
        Assert.Equal(0, BookletCopy.Run("check", copy.Folder).Code);
        copy.Change("booklet.md", "    caliper: 0.32 mm\n    sheet: 12 x 12 in", "    caliper: 0.32 mm\n    sheet: 200 x 200 mm");
        var errors = BookletCopy.Run("check", copy.Folder).Errors;
        Assert.Contains("The nearest size that holds every piece of it is 12 × 12 in.", errors, StringComparison.Ordinal);
        var item = System.Text.RegularExpressions.Regex.Match(errors, @"holds a box for is ([\d /]+ (?:mm|in)) across and ([\d /]+ (?:mm|in)) tall");
        Assert.True(item.Success, errors);
        Assert.EndsWith(primary == "metric" ? "mm" : "in", item.Groups[1].Value, StringComparison.Ordinal);

        // So does the small one, with the item that was named.
        copy.Change("booklet.md", "round: 58 mm", $"round: {item.Groups[1].Value}").Change("booklet.md", "height: 64 mm", $"height: {item.Groups[2].Value}");
        Assert.DoesNotContain("comes in sheets of", BookletCopy.Run("check", copy.Folder).Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("materials")]
    [InlineData("sheets, class, costs, scoring, materials, measurements")]
    public void A_sheet_larger_than_the_stock_is_refused_whichever_parts_are_left_out(string parts)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "    caliper: 0.32 mm\n    sheet: 12 x 12 in", "    caliper: 0.32 mm\n    sheet: 200 x 200 mm")
            .Change("booklet.md", "kits: 14", $"kits: 14\nleave_out: [{parts}]");
        Refused(copy.Build(), copy, 1, "Base needs 225 × 225 mm", "", "booklet.md");
    }

    [Fact]
    public void Figures_of_the_makers_own_that_cannot_be_right_are_told_with_what_they_break()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "spare: 10%", """
            spare: 10%
            figures:
              base.sheet: 225 x 225 mm
              base.scores_across: 81 and 145 mm
              lid.scores_down: [22 mm, 44 mm, 111 mm, 133 mm]
              lid.sheet: 150 x 150 mm
              size.wall_height: 78 mm
              size.ease: 3 mm
              base.width: 8 15/16 in
            """);
        var (code, output, errors) = BookletCopy.Run("check", copy.Folder);
        Assert.Equal(1, code);
        Assert.Contains("base.sheet is 225 × 225 mm, as you have it", output, StringComparison.Ordinal);
        Assert.Contains("base.width is 8 15/16 in, as you have it", output, StringComparison.Ordinal);

        // A sheet too small, scored where the model says, has its last walls too narrow.
        Assert.Contains("6 mm too little both ways", errors, StringComparison.Ordinal);
        Assert.Contains("the right inner wall would be 16 mm instead of 22 mm", errors, StringComparison.Ordinal);

        // One wall 81 mm high beside three of 80: its gussets no longer close.
        Assert.Contains("the left side wall would be 81 mm instead of 80 mm", errors, StringComparison.Ordinal);
        Assert.Contains("do not meet", errors, StringComparison.Ordinal);

        // A lid 1 mm narrower belongs to a floor 1 mm narrower, which leaves the tin 3.5 mm where it is to have 4.
        Assert.Contains("floor_width 64 mm", errors, StringComparison.Ordinal);
        Assert.Contains("there is 3.5 mm where 4 mm is needed", errors, StringComparison.Ordinal);
        Assert.Contains("there is 1.37 mm where 3 mm is needed", errors, StringComparison.Ordinal);

        // Of several marks it is said which are out.
        Assert.Contains(": the first mark is 1 mm too far from the edge; the other is right", errors, StringComparison.Ordinal);
        Assert.Contains(": the third and last marks are 1 mm too near the edge; the others are right", errors, StringComparison.Ordinal);

        // What works, but is another box, is no error.
        Assert.Contains($"booklet.md:{copy.LineOf("booklet.md", "size.ease")}:3: warning", errors, StringComparison.Ordinal);
        Assert.Equal(0, copy.Build().Code);
    }

    [Fact]
    public void An_unknown_value_in_a_step()
    {
        using var copy = new BookletCopy();
        const string file = "steps/02-score-the-base.md";
        copy.Change(file, "{{size.wall_height}}", "{{size.wall_hight}}");
        Refused(copy.Build(), copy, 1, "size.wall_hight", "size.wall_height", $"{file}:{copy.LineOf(file, "size.wall_hight")}");
    }

    [Fact]
    public void An_unknown_piece_in_a_step()
    {
        using var copy = new BookletCopy();
        const string file = "steps/02-score-the-base.md";
        copy.Change(file, "piece: base", "piece: bsae");
        Refused(copy.Build(), copy, 1, "bsae", "base", $"{file}:{copy.LineOf(file, "bsae")}");
    }

    [Theory]
    [InlineData("../outside.png", "outside")]
    [InlineData("missing.png", "missing.png")]
    [InlineData("booklet.md", "booklet.md")]
    public void An_image_that_cannot_be_used(string image, string says)
    {
        using var copy = new BookletCopy();
        File.WriteAllBytes(Path.Combine(copy.Folder, "..", "outside.png"), [0x89, (byte)'P', (byte)'N', (byte)'G']);
        const string file = "steps/04-fold-the-base.md";
        copy.Change(file, "Fold every long score", $"![A fold]({image})\n\nFold every long score");
        Refused(copy.Build(), copy, 1, says, "", $"{file}:{copy.LineOf(file, image)}");
    }

    [Fact]
    public void Steps_with_the_same_number()
    {
        using var copy = new BookletCopy();
        File.Move(Path.Combine(copy.Folder, "steps/05-score-and-cut-the-lid.md"), Path.Combine(copy.Folder, "steps/04-score-and-cut-the-lid.md"));
        Refused(copy.Build(), copy, 1, "04-score-and-cut-the-lid.md");
    }

    [Fact]
    public void Steps_with_a_gap()
    {
        using var copy = new BookletCopy();
        File.Delete(Path.Combine(copy.Folder, "steps/05-score-and-cut-the-lid.md"));
        Refused(copy.Build(), copy, 1, "05");
    }

    [Fact]
    public void All_problems_come_in_one_go()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "round: 58 mm", "round: 58").Change("steps/02-score-the-base.md", "piece: base", "peice: base");
        var (code, _, errors) = copy.Build();
        Assert.Equal(1, code);
        Assert.Contains("no unit", errors, StringComparison.Ordinal);
        Assert.Contains("peice", errors, StringComparison.Ordinal);
    }

    // Each keeps the booklet from being fitted in a way of its own; what is wrong in the words is told all the same.
    [Theory]
    [InlineData("round: 58 mm", "round: 58", "item.dameter", "“item.diameter”")]
    [InlineData("structure: explosion-box", "structure: explosoin-box", null, "explosion-box")]
    [InlineData("lid_depth: 22 mm", "lid_depth: 220 mm", "lid.shet", "“lid.sheet”")]
    [InlineData("weight: 250 g/m2", "weight: 250", "size.gussett", "“size.gusset”")]
    [InlineData("theme: handout", "theme: handuot", "lid.shet", "“lid.sheet”")]
    public void What_is_wrong_in_the_words_is_told_together_with_the_front_matter(string from, string to, string? name, string advice)
    {
        using var copy = new BookletCopy();
        const string file = "steps/04-fold-the-base.md";
        copy.Change("booklet.md", from, to)
            .Change("booklet.md", "give them away", "give [them](#figure-nowhere) away")
            .Change(file, "Fold every long score", $$$"""
                <i>x</i> ![A fold](fold.png) [there](#nowhere) {{{{{(name ?? "size.anything")}}}}} {{lid.sheet}} {{card.name}} [first](01-cut-the-card.md)

                Fold every long score
                """);
        var (code, _, errors) = BookletCopy.Run("check", copy.Folder);
        Assert.Equal(1, code);
        var at = $"{file}:{copy.LineOf(file, "<i>x</i>")}:";
        string[] wrong =
        [
            $"booklet.md:{copy.LineOf("booklet.md", to)}:",
            $"booklet.md:{copy.LineOf("booklet.md", "#figure-nowhere")}",
            at + "1: error: HTML", at + "5: error: HTML", at + "10: error: There is no picture fold.png", at + "30: error: The link leads to “#nowhere”",
            .. name is null ? Array.Empty<string>() : [$"error: There is no value “{name}”"],
        ];
        Assert.All(wrong, part => Assert.Contains(part, errors, StringComparison.Ordinal));
        Assert.Contains(advice, errors, StringComparison.Ordinal);
        Assert.Equal(wrong.Length, errors.Split(": error: ").Length - 1);
    }

    [Theory]
    [InlineData("theme: handout", "theme: [handout", "never be closed")]
    [InlineData("maker: ", "maker: ink: ", "cannot be read here")]
    public void What_is_wrong_in_the_steps_is_told_even_when_nothing_is_known_of_the_front_matter(string from, string to, string message)
    {
        using var copy = new BookletCopy();
        const string file = "steps/04-fold-the-base.md";
        copy.Change("booklet.md", from, to).Change(file, "Fold every long score", "<i>x</i> Fold {{size.anything}}, every long score");
        var (code, _, errors) = BookletCopy.Run("check", copy.Folder);
        Assert.Equal(1, code);
        Assert.StartsWith($"booklet.md:{copy.LineOf("booklet.md", to)}:", errors, StringComparison.Ordinal);
        Assert.Contains(message, errors, StringComparison.Ordinal);
        Assert.Contains($"{file}:{copy.LineOf(file, "<i>x</i>")}:1: error: HTML", errors, StringComparison.Ordinal);
        Assert.Equal(3, errors.Split(": error: ").Length - 1);
    }

    [Fact]
    public void A_step_that_cannot_be_read_is_told_once_and_not_where_links_lead_to_it()
    {
        using var copy = new BookletCopy();
        const string file = "steps/04-fold-the-base.md";
        File.WriteAllText(Path.Combine(copy.Folder, file), "No front matter.\n\nA {{lid.shet}} without.");
        copy.Change("steps/02-score-the-base.md", "Lay the base", "See [here](04-fold-the-base.md) and [there](#step-4) and [this](#figure-in-it). Lay the base");
        var (code, _, errors) = BookletCopy.Run("check", copy.Folder);
        Assert.Equal(1, code);
        Assert.StartsWith($"{file}:1: error: The front matter is missing.", errors, StringComparison.Ordinal);
        Assert.Contains($"{file}:3:3: error: There is no value “lid.shet”.", errors, StringComparison.Ordinal);
        Assert.Equal(2, errors.Split(": error: ").Length - 1);
    }

    [Fact]
    public void A_place_that_cannot_be_written_to()
    {
        using var copy = new BookletCopy();
        File.WriteAllText(copy.Out, "a file where a folder should be");
        var (code, _, errors) = copy.Build();
        Assert.Equal(3, code);
        Assert.Contains("out", errors, StringComparison.Ordinal);
        Assert.Contains("--out", errors, StringComparison.Ordinal);
        File.Delete(copy.Out);
    }

    [Fact]
    public void A_full_disk_leaves_nothing_half_written()
    {
        // /dev/full takes a file and refuses every byte. A name that leads there stands in for a full disk.
        if (!File.Exists("/dev/full"))
            return;
        using var copy = new BookletCopy();
        Directory.CreateDirectory(copy.Out);
        File.CreateSymbolicLink(Path.Combine(copy.Out, "spoilt-box-letter.pdf.part"), "/dev/full");
        var (code, _, errors) = copy.Build();
        Assert.Equal(3, code);
        Assert.Contains("cannot be written", errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(copy.Out, "*.pdf"));
    }

    [Theory]
    [InlineData("build")]
    [InlineData("build", "content/tea-tin-box", "--papre", "a4")]
    [InlineData("build", "content/tea-tin-box", "--paper", "a44")]
    [InlineData("buidl", "content/tea-tin-box")]
    [InlineData("structures", "explosoin-box")]
    public void Wrong_usage(params string[] arguments)
    {
        var (code, _, errors) = BookletCopy.Run(arguments);
        Assert.Equal(2, code);
        Assert.NotEqual("", errors);
    }

    [Fact]
    public void Check_finds_the_same_and_writes_nothing()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "round: 58 mm", "round: 58");
        var before = Directory.GetFileSystemEntries(copy.Folder, "*", SearchOption.AllDirectories);
        var (code, _, errors) = BookletCopy.Run("check", copy.Folder);
        Assert.Equal(1, code);
        Assert.Contains("no unit", errors, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFileSystemEntries(copy.Folder, "*", SearchOption.AllDirectories));
    }

    private static void Refused((int Code, string Output, string Errors) run, BookletCopy copy, int code, string says, string advises = "", string place = "")
    {
        Assert.Equal(code, run.Code);
        Assert.Contains(says, run.Errors, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(advises, run.Errors, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(place, run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", run.Errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.Out) && Directory.EnumerateFileSystemEntries(copy.Out).Any(), "Something was written.");
    }
}
