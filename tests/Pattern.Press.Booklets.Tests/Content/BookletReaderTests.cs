using System.Text;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Content;

public sealed class BookletReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_plain_booklet_is_read_with_the_usual_settings()
    {
        var (source, problems) = _folder.Read();
        Assert.Empty(problems.All);
        Assert.NotNull(source);
        Assert.Equal("soap-box", source.Name);
        Assert.Equal("A box for a bar of soap", source.Title);
        Assert.Equal(new DateOnly(2026, 11, 12), source.Date);
        Assert.Equal(new Item("bar of soap", ItemShape.Rectangular, Length.FromMillimetres(80), Length.FromMillimetres(50), Length.FromMillimetres(30)), source.Item);
        Assert.Equal(("explosion-box", new Place("booklet.md", 10, 12)), (source.Structure, source.StructurePlace));
        var size = Assert.Single(source.Sizes);
        Assert.Equal(("lid_depth", new Place("booklet.md", 12, 3), "20 mm"), (size.Name, size.Place, size.Value.Scalar));
        Assert.Equal([PaperSize.A4, PaperSize.Letter], source.Papers);
        Assert.Equal((Ruler.WholeMillimetres, Ruler.SixteenthInches, UnitSystem.Metric), (source.MetricRuler, source.ImperialRuler, source.Primary));
        Assert.Equal(("en-GB", "handout", 1), (source.Language, source.Theme, source.Kits));
        Assert.Empty(source.Without);
        Assert.Equal(new Place("booklet.md", 19, 1), source.Introduction.Start);
        Assert.Equal("A box that opens.", source.Introduction.Text.Trim());
        Assert.Equal((1, "Cut the card", "base", "steps/01-cut.md"), (source.Steps[0].Number, source.Steps[0].Title, source.Steps[0].Piece, source.Steps[0].File));
    }

    [Fact]
    public void Every_key_is_read()
    {
        _folder.Write("booklet.md", """
            ---
            title: A box
            subtitle: For two
            maker: Me
            date: 2026-02-28
            language: en-US
            licence: >-
              Copy it as you like,
              and keep my name.
            credits: [Thanks to A, Thanks to B]
            item: {name: tin, round: 2 1/4 in, height: 5.8 cm}
            structure: explosion-box
            sizes: {platform: yes, lid_walls: double}
            stocks:
              card: {name: Card, weight: 80 lb cover, sheet: 12 x 12 in}
              mats: {name: Paper, caliper: 0.15 mm, sheet: 305 × 305 mm, one_way: yes}
            rulers: {metric: 0.5 mm, imperial: 1/8 in}
            primary: imperial
            papers: Letter
            printer_margin: 6 mm
            lap: 12 mm
            theme: market
            kits: 25
            leave_out: [contents, key]
            tools: Scissors
            extras: [Ribbon]
            cautions: ["Mind the steam."]
            ---
            """);
        var (source, problems) = _folder.Read();
        Assert.Empty(problems.All);
        Assert.NotNull(source);
        Assert.Equal(("For two", "Me", "en-US", "Copy it as you like, and keep my name."), (source.Subtitle, source.Maker, source.Language, source.Licence));
        Assert.Equal(["Thanks to A", "Thanks to B"], source.Credits);
        Assert.Equal(new Item("tin", ItemShape.Round, Length.FromInches(2.25m), Length.FromInches(2.25m), Length.FromMillimetres(58)), source.Item);
        Assert.Equal(["platform", "lid_walls"], source.Sizes.Select(size => size.Name));
        // 80 lb cover is 216 g/m2: one pound of cover is 2.70 g/m2 (paper merchants' basis-weight tables).
        Assert.Equal(216, source.Stocks["card"].Grammage!.Value.GramsPerSquareMetre, 0.5);
        Assert.True(source.Stocks["card"].CaliperIsEstimate);
        Assert.Equal(Stock.EstimateCaliper(source.Stocks["card"].Grammage!.Value), source.Stocks["card"].Caliper);
        Assert.Equal(new Size(Length.FromInches(12), Length.FromInches(12)), source.Stocks["card"].Sheet);
        Assert.Equal(
            new Stock("mats", "Paper", Length.FromMillimetres(0.15m), null, new Size(Length.FromMillimetres(305), Length.FromMillimetres(305)), false, true),
            source.Stocks["mats"]);
        Assert.Equal((Length.FromMillimetres(0.5m), Length.Inch / 8, UnitSystem.Imperial), (source.MetricRuler.Step, source.ImperialRuler.Step, source.Primary));
        Assert.Equal([PaperSize.Letter], source.Papers);
        Assert.Equal((Length.FromMillimetres(6), Length.FromMillimetres(12), "market", 25), (source.PrinterMargin, source.Lap, source.Theme, source.Kits));
        Assert.Equal([BookletPart.Contents, BookletPart.Key], source.Without);
        Assert.Equal(["Scissors", "Ribbon", "Mind the steam."], source.Tools.Concat(source.Extras.Select(extra => extra.Name)).Concat(source.Cautions));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said_with_the_nearest_that_is()
    {
        var problems = new Problems();
        var wrong = _folder.Path[..^1];
        Assert.Null(BookletReader.Read(wrong, problems));
        Found.One(problems, wrong, 0, 0, "There is no such folder.", "“soap-box”");
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_said()
    {
        var problems = new Problems();
        var file = Path.Combine(_folder.Path, "booklet.md");
        Assert.Null(BookletReader.Read(file, problems));
        Found.One(problems, file, 0, 0, "is a file, not a folder", "Name the folder that holds booklet.md.");
    }

    [Fact]
    public void A_folder_without_booklet_md_is_said_with_the_file_that_may_be_it()
    {
        _folder.Delete("booklet.md");
        _folder.Write("booklet.markdown", "x");
        var (source, problems) = _folder.Read();
        Assert.Null(source);
        Found.One(problems, "booklet.md", 0, 0, "has no booklet.md", "Rename booklet.markdown to booklet.md");
    }

    [Theory]
    [InlineData("title: A box for a bar of soap", "title: A box: the second", 2, 13, "cannot be read here", "colons")]
    [InlineData("title: A box for a bar of soap", "title: \"A box", 2, 8, "cannot be read here", "quotation marks")]
    [InlineData("  name: bar of soap", "  name: bar of soap\n  name: cake of soap", 7, 3, "uplicate key", "")]
    [InlineData("title: A box for a bar of soap", "title: *box", 2, 1, "cannot be read here", "")]
    [InlineData("sizes:", "sizes: [", 12, 3, "cannot be read from here on", "")]
    public void Broken_yaml_is_said_with_its_line_and_column(string line, string instead, int atLine, int atColumn, string message, string advice)
    {
        var (source, problems) = _folder.ReadWith(line, instead);
        NothingButItsSteps(source);
        var problem = Assert.Single(problems.All);
        Assert.Equal("booklet.md", problem.File);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(advice, problem.Advice, StringComparison.Ordinal);
        Assert.Equal((atLine, atColumn), (problem.Line, problem.Column));
    }

    [Fact]
    public void Yaml_made_to_exhaust_the_stack_is_refused()
    {
        foreach (var bomb in new[] { new string('[', 50_000), string.Concat(Enumerable.Repeat("- ", 50_000)), string.Concat(Enumerable.Repeat("? ", 50_000)) })
        {
            var (source, problems) = _folder.ReadWith("title: A box for a bar of soap", "title:\n  " + bomb);
            NothingButItsSteps(source);
            Found.One(problems, "booklet.md", 3, 0, "nests too deep", "");
        }
    }

    [Theory]
    [InlineData("Hello.\n", 1, "The front matter is missing.", "---")]
    [InlineData("", 1, "The front matter is missing.", "---")]
    [InlineData("---\ntitle: A\n\nHello.\n", 1, "is never closed", "between it and the words")]
    public void Front_matter_has_to_be_there(string text, int line, string message, string advice)
    {
        _folder.Write("booklet.md", text);
        var (source, problems) = _folder.Read();
        NothingButItsSteps(source);
        Found.One(problems, "booklet.md", line, 0, message, advice);
    }

    [Theory]
    [InlineData("maker:", "makre:", 3, 1, "“makre” is not known here.", "“maker”")]
    [InlineData("maker:", "Maker:", 3, 1, "“Maker” is not known here.", "“maker”")]
    [InlineData("maker:", "license:", 3, 1, "“license” is not known here.", "“licence”")]
    [InlineData("  name: bar of soap", "  name: bar of soap\n  hight: 2 mm", 7, 3, "“hight” is not known here.", "“height”")]
    [InlineData("    weight: 250 g/m2", "    weight: 250 g/m2\n    calliper: 1 mm", 17, 5, "“calliper” is not known here.", "“caliper”")]
    [InlineData("date: 2026-11-12", "rulers: {metrik: 1 mm}", 4, 10, "“metrik” is not known here.", "“metric”")]
    public void An_unknown_key_is_said_with_the_nearest_right_one(string line, string instead, int atLine, int atColumn, string message, string advice)
    {
        var (_, problems) = _folder.ReadWith(line, instead);
        Found.One(problems, "booklet.md", atLine, atColumn, message, advice);
    }

    [Theory]
    [InlineData("title: A box for a bar of soap\n", 2, "“title” is missing.", "title: A box for a tea tin")]
    [InlineData("structure: explosion-box\n", 2, "“structure” is missing.", "pattern-press structures")]
    [InlineData("  name: bar of soap\n", 6, "“name” is missing.", "a round tin of loose tea")]
    [InlineData("  depth: 50 mm\n", 6, "“depth” is missing.", "two sides")]
    [InlineData("  height: 30 mm\n", 6, "“height” is missing.", "height: 40 mm")]
    [InlineData("    name: Smooth card\n", 15, "“name” is missing.", "Smooth card, sage green")]
    [InlineData("    weight: 250 g/m2\n", 15, "How heavy or how thick", "caliper: 0.36 mm")]
    public void A_key_that_is_needed_is_said_to_be_missing(string line, int atLine, string message, string advice)
    {
        var (_, problems) = _folder.ReadWith(line, "");
        var problem = Assert.Single(problems.All);
        Assert.Equal(("booklet.md", atLine), (problem.File, problem.Line));
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(advice, problem.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("58", "has no unit", "58 mm or 58 in")]
    [InlineData("-58 mm", "is less than nothing", "from 1 mm to 1 m")]
    [InlineData("0 mm", "is nothing at all", "from 1 mm to 1 m")]
    [InlineData("0.000001 mm", "is too short", "from 1 mm to 1 m")]
    [InlineData("10 m", "is too long", "from 1 mm to 1 m")]
    [InlineData("58,5 mm", "uses a comma", "58.5 mm")]
    [InlineData("58 furlongs", "is not a length", "58 mm or 2 1/4 in")]
    [InlineData("2 1/0 in", "divides by zero", "2 1/4 in")]
    [InlineData("99999999999999999999999999 mm", "far too long", "")]
    [InlineData("[1 mm]", "a length is needed here", "58 mm or 2 1/4 in")]
    public void A_length_that_cannot_be_is_said(string length, string message, string advice)
    {
        var (source, problems) = _folder.ReadWith("  width: 80 mm", "  width: " + length);
        Assert.False(source!.CanBeFitted);
        Found.One(problems, "booklet.md", 7, 10, message, advice);
    }

    [Fact]
    public void A_round_item_has_no_sides()
    {
        var (_, problems) = _folder.ReadWith("  width: 80 mm", "  round: 58 mm");
        Found.One(problems, "booklet.md", 8, 10, "A round item has a diameter and no sides.", "Leave out");
    }

    [Fact]
    public void An_item_needs_its_size_seen_from_above()
    {
        var (_, problems) = _folder.ReadWith("  width: 80 mm\n  depth: 50 mm\n", "");
        Found.One(problems, "booklet.md", 6, 3, "seen from above is missing", "round: 58 mm");
    }

    [Fact]
    public void Either_an_item_or_sizes_are_needed()
    {
        _folder.Write("booklet.md", "---\ntitle: A\nstructure: explosion-box\nstocks: {card: {name: Card, weight: 250 gsm, sheet: A4}}\n---\n");
        var (source, problems) = _folder.Read();
        Assert.False(source!.CanBeFitted);
        Found.One(problems, "booklet.md", 1, 0, "How large the thing is is missing.", "“sizes”");
    }

    [Theory]
    [InlineData("2026-02-30", "is not a day of the calendar", "2026-11-12")]
    [InlineData("12/11/2026", "is not a date", "2026-11-12")]
    [InlineData("November", "is not a date", "year, month and day")]
    public void A_date_has_to_be_one(string date, string message, string advice)
    {
        var (_, problems) = _folder.ReadWith("date: 2026-11-12", "date: " + date);
        Found.One(problems, "booklet.md", 4, 7, message, advice);
    }

    [Theory]
    [InlineData("papers: [a4, leter]", 14, "“leter” is not a paper", "“letter”")]
    [InlineData("papers: [a4, A4]", 14, "A4 is in the list twice.", "once")]
    [InlineData("papers: []", 9, "There is no paper to print on.", "papers: [a4, letter]")]
    [InlineData("papers: [a4, 210 x 297 mm]", 14, "A4 is in the list twice.", "once")]
    [InlineData("papers: 330 x 483", 9, "papers: “330 x 483” has no unit; write 330 x 483 mm or 330 x 483 in.", "")]
    [InlineData("papers: 100 x 150 mm", 9, "A paper of 100 x 150 mm is of no use", "")]
    [InlineData("papers: 300 x 2100 mm", 9, "up to 2 m", "")]
    [InlineData("papers: [a9x]", 10, "papers: “a9x” is not a paper", "two sides, such as 330 x 483 mm")]
    [InlineData("papers: foolscap", 9, "“foolscap” is not a paper", "two sides, such as 330 x 483 mm")]
    [InlineData("printer_margin: -1 mm", 17, "is less than nothing", "from 1 mm to 40 mm")]
    [InlineData("printer_margin: 0 mm", 17, "No printer prints as close to the edge as 0 mm", "4 mm or more")]
    [InlineData("printer_margin: 41 mm", 17, "is too long", "from 1 mm to 40 mm")]
    [InlineData("printer_margin: 6", 17, "“6” has no unit", "")]
    [InlineData("lap: -2 mm", 6, "is less than nothing", "from 0 mm to 20 mm")]
    [InlineData("lap: 21 mm", 6, "is too long", "from 0 mm to 20 mm")]
    [InlineData("primary: inches", 10, "is not one of the choices", "imperial")]
    [InlineData("kits: 0", 7, "kits: “0” should be a whole number from 1 to 1000.", "“kits: 14”; leave the line out for one")]
    [InlineData("kits: many", 7, "whole number from 1 to 1000", "")]
    [InlineData("leave_out: [contnets]", 13, "is not one of the choices", "“contents”")]
    [InlineData("leave_out: [cover, contents, before, materials, measurements, scoring, costs, sheets, steps, templates, key, licence, proofs, class]", 12, "Every part", "")]
    [InlineData("rulers: {metric: 0.25 mm}", 18, "No ruler has steps of 0.25 mm", "metric: 1 mm")]
    [InlineData("rulers: {metric: 1 in}", 18, "No ruler has steps of 1 in", "metric: 1 mm")]
    [InlineData("rulers: {imperial: 1/10 in}", 20, "No ruler has steps of 1/10 in", "1/16 in")]
    [InlineData("rulers: {imperial: 1 mm}", 20, "No ruler has steps of 1 mm", "1/16 in")]
    [InlineData("language: english", 11, "is not the code of a language", "en-GB")]
    [InlineData("language: en-UK", 11, "is not the code of a language", "write en-GB")]
    [InlineData("tools: [Cut: carefully]", 9, "A colon makes these words", "quotation marks")]
    [InlineData("subtitle: [a, b]", 11, "subtitle: a few words are needed here.", "")]
    public void A_setting_that_cannot_be_is_said(string line, int column, string message, string advice)
    {
        var (_, problems) = _folder.ReadWith("date: 2026-11-12", line);
        Found.One(problems, "booklet.md", 4, column, message, advice);
    }

    [Fact]
    public void A_margin_that_few_printers_manage_is_a_warning()
    {
        var (source, problems) = _folder.ReadWith("date: 2026-11-12", "printer_margin: 3 mm");
        Found.One(Severity.Warning, problems, "booklet.md", 4, 17, "Few printers reach", "4 mm or more");
        Assert.Equal(Length.FromMillimetres(3), source!.PrinterMargin);
        (_, problems) = _folder.ReadWith("date: 2026-11-12", "printer_margin: 4 mm");
        Assert.Empty(problems.All);
    }

    [Fact]
    public void Papers_of_any_size_and_laps_of_nothing_are_read()
    {
        var (source, problems) = _folder.ReadWith("date: 2026-11-12", "papers: [13 x 19 in, a3, 483 x 330 mm]\nlap: 0 mm");
        Assert.Empty(problems.All);
        Assert.Equal(["13x19in", "a3", "330x483mm"], source!.Papers.Select(paper => paper.Id));
        Assert.Equal(["13 × 19 in", "A3", "330 × 483 mm"], source.Papers.Select(paper => paper.Name));
        Assert.Equal(new Size(Length.FromMillimetres(330), Length.FromMillimetres(483)), source.Papers[2].Size);
        Assert.Equal(Length.Zero, source.Lap);
        Assert.Equal(5, source.LapPlace.Line);
    }

    [Theory]
    [InlineData("    weight: 250 g/m2", "    weight: heavy", 16, 13, "is not a paper weight", "220 g/m2")]
    [InlineData("    weight: 250 g/m2", "    weight: 80 lb", 16, 13, "does not name a basic sheet", "80 lb cover")]
    [InlineData("    weight: 250 g/m2", "    weight: 25000 g/m2", 16, 13, "is no weight of paper", "160 to 400 g/m2")]
    [InlineData("    weight: 250 g/m2", "    caliper: 36 mm", 16, 14, "no thickness of paper", "0.3 mm")]
    [InlineData("    weight: 250 g/m2", "    caliper: 0.36", 16, 14, "has no unit", "0.36 mm")]
    [InlineData("    sheet: A4", "    sheet: B9", 17, 12, "is not the size of a sheet", "305 x 305 mm")]
    [InlineData("    sheet: A4", "    sheet: 12 x 12", 17, 12, "has no unit", "12 x 12 mm or 12 x 12 in")]
    [InlineData("    sheet: A4", "    sheet: 12 x 1200 in", 17, 12, "not one that can be bought", "10 mm to 2 m")]
    [InlineData("    sheet: A4", "    sheet: A4\n    one_way: perhaps", 18, 14, "should be yes or no", "")]
    public void A_stock_that_cannot_be_is_said(string line, string instead, int atLine, int atColumn, string message, string advice)
    {
        var (source, problems) = _folder.ReadWith(line, instead);
        Assert.False(source!.CanBeFitted);
        Found.One(problems, "booklet.md", atLine, atColumn, message, advice);
    }

    [Theory]
    [InlineData("A4", 210, 297)]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("8 1/2 x 11 in", 215.9, 279.4)]
    [InlineData("12in x 12in", 304.8, 304.8)]
    [InlineData("50 x 70 cm", 500, 700)]
    [InlineData("305 mm × 305 mm", 305, 305)]
    [InlineData("12\" x 12\"", 304.8, 304.8)]
    public void The_size_of_a_sheet_is_read_as_it_stands_on_the_packet(string sheet, double width, double height)
    {
        var (source, problems) = _folder.ReadWith("    sheet: A4", $"    sheet: '{sheet}'");
        Assert.Empty(problems.All);
        Assert.Equal((width, height), (source!.Stocks["card"].Sheet.Width.Millimetres, source.Stocks["card"].Sheet.Height.Millimetres));
    }

    [Fact]
    public void All_problems_come_in_one_go()
    {
        _folder.Write("steps/02-x.txt", "x");
        _folder.Write("steps/03-fold.md", "---\ntitle: Fold\n---\n");
        _folder.Write("booklet.md", TemporaryFolder.Booklet
            .Replace("title: A box", "titel: A box", StringComparison.Ordinal)
            .Replace("80 mm", "80", StringComparison.Ordinal)
            .Replace("A4", "A44", StringComparison.Ordinal)
            .Replace("2026-11-12", "soon", StringComparison.Ordinal));
        var (_, problems) = _folder.Read();
        Assert.Equal(
            ["booklet.md:2:0", "booklet.md:2:1", "booklet.md:4:7", "booklet.md:7:10", "booklet.md:17:12", "steps/02-x.txt:0:0", "steps/03-fold.md:0:0", "steps/03-fold.md:4:0"],
            problems.All.Select(p => $"{p.File}:{p.Line}:{p.Column}"));
    }

    [Fact]
    public void A_file_that_is_not_utf8_is_said_with_the_line()
    {
        _folder.Write("booklet.md", [.. Encoding.UTF8.GetBytes("---\ntitle: Caf"), 0xE9, .. Encoding.UTF8.GetBytes("\n---\n")]);
        var (source, problems) = _folder.Read();
        Assert.Null(source);
        Found.One(problems, "booklet.md", 2, 0, "not saved as UTF-8", "UTF-8");
    }

    [Fact]
    public void A_file_saved_as_utf16_is_said()
    {
        _folder.Write("booklet.md", [.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes(TemporaryFolder.Booklet)]);
        var (_, problems) = _folder.Read();
        Found.One(problems, "booklet.md", 0, 0, "saved as UTF-16", "UTF-8");
    }

    [Fact]
    public void A_file_with_other_line_ends_and_a_mark_at_its_start_reads_the_same()
    {
        var (plain, _) = _folder.Read();
        _folder.Write("booklet.md", [.. Encoding.UTF8.GetPreamble(), .. Encoding.UTF8.GetBytes(TemporaryFolder.Booklet.Replace("\n", "\r\n", StringComparison.Ordinal))]);
        var (windows, problems) = _folder.Read();
        Assert.Empty(problems.All);
        Assert.Equal(plain!.Introduction, windows!.Introduction);
        Assert.Equal(plain.Title, windows.Title);
    }

    [Fact]
    public void A_file_that_is_too_large_or_no_text_is_refused()
    {
        _folder.Write("booklet.md", new byte[TextFile.MostBytes + 1]);
        Found.One(_folder.Read().Problems, "booklet.md", 0, 0, "1024 KiB long", "text file");
        _folder.Write("booklet.md", "---\ntitle: a\0b\n---\n");
        Found.One(_folder.Read().Problems, "booklet.md", 2, 9, "a character that is no text", "text file");
    }

    [Fact]
    public void A_booklet_that_is_a_link_out_of_its_folder_is_refused()
    {
        var outside = _folder.Write("../elsewhere.md", TemporaryFolder.Booklet);
        _folder.Delete("booklet.md");
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "booklet.md"), outside);
        var (source, problems) = _folder.Read();
        Assert.Null(source);
        Found.One(problems, "booklet.md", 0, 0, "leads out of the booklet’s folder", "nothing outside it is read");
    }

    [Fact]
    public void A_folder_that_is_itself_a_link_is_read()
    {
        var link = Path.Combine(_folder.Path, "..", "linked");
        Directory.CreateSymbolicLink(link, _folder.Path);
        var problems = new Problems();
        Assert.Equal("linked", BookletReader.Read(link, problems)?.Name);
        Assert.Empty(problems.All);
    }

    private static void NothingButItsSteps(BookletSource? source)
    {
        Assert.False(source!.CanBeFitted);
        Assert.Equal("", source.Structure);
        Assert.NotEmpty(source.Steps);
    }
}
