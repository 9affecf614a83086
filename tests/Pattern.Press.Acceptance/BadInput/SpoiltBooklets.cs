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
    public void Something_wrong_in_the_front_matter(string from, string to, string says, string advises)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", from, to);
        Refused(copy.Build(), copy, 1, says, advises, $"booklet.md:{copy.LineOf("booklet.md", to)}");
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
