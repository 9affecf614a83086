using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Tests.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Tests.Themes;

public sealed class ThemeReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _good = File.ReadAllText(Path.Combine(Resources.OfProgram.ThemesFolder, "handout", "theme.yaml"));

    public ThemeReaderTests()
    {
        Directory.CreateDirectory(Path.Combine(_folder.Path, "themes"));
        Copy("alegreya-sans");
        Copy("bitter");
    }

    private string Themes => Path.Combine(_folder.Path, "themes");

    public void Dispose() => _folder.Dispose();

    private void Copy(string family)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Resources.OfProgram.ThemesFolder, "fonts", family), "*.ttf"))
            _folder.Write($"themes/fonts/{family}/{Path.GetFileName(file)}", File.ReadAllBytes(file));
    }

    private Problems ReadWith(string line, string instead)
    {
        Assert.Contains(line, _good, StringComparison.Ordinal);
        _folder.Write("themes/mine/theme.yaml", _good.Replace(line, instead, StringComparison.Ordinal));
        var problems = new Problems();
        var styles = ThemeReader.Read(Themes, "mine", "en-GB", problems);
        Assert.Equal(problems.HasErrors, styles is null);
        return problems;
    }

    private int LineOf(string key) => 1 + Array.FindIndex(_good.Split('\n'), line => line.TrimStart().StartsWith(key + ":", StringComparison.Ordinal));

    public static TheoryData<string> Every => [.. ThemeReader.Names(Resources.OfProgram.ThemesFolder)];

    private static StyleSheet Read(string name)
    {
        var problems = new Problems();
        var styles = ThemeReader.Read(Resources.OfProgram.ThemesFolder, name, "en-GB", problems);
        Assert.Empty(problems.All);
        return styles!;
    }

    // WCAG 2.2, success criteria 1.4.3 (text, 4.5:1) and 1.4.11 (graphics that carry meaning, 3:1), worked out here from
    // the definition of relative luminance, apart from the reader's own check.
    [Theory]
    [MemberData(nameof(Every))]
    public void Every_theme_has_enough_contrast(string name)
    {
        var styles = Read(name);
        var palette = styles.Palette;
        foreach (var text in new[] { palette.Text, palette.Heading, palette.Accent, palette.Muted, palette.Caution })
        {
            Assert.InRange(Contrast(text, Colour.White), 4.5, 21);
            Assert.InRange(Contrast(text, palette.Tint), 4.5, 21);
        }

        Assert.InRange(Contrast(palette.CoverText, palette.CoverGround), 4.5, 21);
        var lines = styles.Lines;
        foreach (var ground in new[] { Colour.White, lines.Card, lines.CardAway })
        {
            foreach (var line in new[] { lines.Cut, lines.Valley, lines.Mountain, lines.Glue, lines.Waste, lines.Faded })
                Assert.InRange(Contrast(line, ground), 3, 21);
            Assert.InRange(Contrast(lines.Dimension, ground), 4.5, 21);
        }

        // In grey, too, because a grey has the luminance of its colour.
        Assert.InRange(Contrast(lines.Faded.Grey, Colour.White), 3, 21);
    }

    [Fact]
    public void Contrast_is_that_of_the_standard()
    {
        // Black on white 21:1; #767676 on white 4.54:1 (reference values of WCAG 2.2).
        Assert.Equal(21, Contrast(Colour.Black, Colour.White), 6);
        Assert.Equal(4.54, Contrast(new Colour(0x76, 0x76, 0x76), Colour.White), 2);
    }

    private static double Contrast(Colour a, Colour b)
    {
        var (light, dark) = (Luminance(a), Luminance(b));
        return (Math.Max(light, dark) + 0.05) / (Math.Min(light, dark) + 0.05);

        static double Luminance(Colour colour)
        {
            double[] channels = [colour.Red / 255.0, colour.Green / 255.0, colour.Blue / 255.0];
            var linear = channels.Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToArray();
            return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
        }
    }

    [Fact]
    public void The_two_themes_differ_in_character()
    {
        var (handout, market) = (Read("handout"), Read("market"));
        Assert.Equal((CoverStyle.Plain, CoverStyle.Field), (handout.Cover, market.Cover));
        Assert.Equal("AlegreyaSans-Regular", handout.Text.Regular.PostScriptName);
        Assert.StartsWith("AlegreyaSans", handout.Display.Bold.PostScriptName, StringComparison.Ordinal);
        Assert.StartsWith("Bitter", market.Display.Bold.PostScriptName, StringComparison.Ordinal);
        Assert.Equal(market.Palette.CoverGround, market.Palette.Heading);
        Assert.Equal(Colour.White, handout.Palette.CoverGround);
        // Little ink: the handout's tints are as good as white.
        Assert.InRange(handout.Palette.Tint.Luminance, 0.88, 1);
        Assert.True(market.Scale.Title > handout.Scale.Title);
    }

    [Fact]
    public void Parts_stand_in_the_columns_a_theme_asks_for_and_else_in_one()
    {
        Assert.Equal(new ColumnCounts(2, 2, 2, 1), Read("market").Columns);
        Assert.Equal(new ColumnCounts(1, 2, 1, 1), Read("handout").Columns);
        Assert.Empty(ReadWith("columns:\n  materials: 2\n", "").All);
    }

    [Theory]
    [InlineData("materials: two", "“two” is not a number for columns.materials.", "1 to 3")]
    [InlineData("materials: 0", "“0” is not a number for columns.materials.", "1 to 3")]
    [InlineData("materials: 4", "“4” is not a number for columns.materials.", "1 to 3")]
    [InlineData("materiels: 2", "materiels", "materials")]
    public void Columns_that_cannot_be_are_said_with_their_line(string written, string message, string advice)
    {
        var problem = Assert.Single(ReadWith("  materials: 2", "  " + written).All);
        Assert.Equal(LineOf("columns") + 1, problem.Line);
        Assert.Contains(message, problem.Message, StringComparison.Ordinal);
        Assert.Contains(advice, problem.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void A_theme_that_is_not_there_is_said_with_the_nearest_that_is()
    {
        var problems = new Problems();
        Assert.Null(ThemeReader.Read(Resources.OfProgram.ThemesFolder, "handuot", "en-GB", problems, new Place("booklet.md", 9, 8)));
        Found.One(problems, "booklet.md", 9, 8, "There is no theme “handuot”.", "“handout”");
        problems = new Problems();
        Assert.Null(ThemeReader.Read(Resources.OfProgram.ThemesFolder, "fonts", "en-GB", problems));
        Assert.Contains("handout, market", problems.All[0].Advice, StringComparison.Ordinal);
        Assert.Null(ThemeReader.Read(Themes, "../themes/mine", "en-GB", new Problems()));
    }

    [Theory]
    [InlineData("text: \"#1c1c1c\"", "text: #1c1c1c", "text", 0, "“text” is missing.", "quotation marks")]
    [InlineData("accent: \"#3f5a52\"", "accent: green", "accent", 11, "“green” is not a colour.", "\"#1f6f5c\"")]
    [InlineData("muted: \"#5a5a5a\"", "muted: \"#5a5a5\"", "muted", 10, "“#5a5a5” is not a colour.", "\"#1f6f5c\"")]
    [InlineData("body: 11 pt", "body: 11", "body", 9, "“11” is not a size of type.", "body: 11 pt")]
    [InlineData("body: 11 pt", "body: 4 mm", "body", 9, "“4 mm” is not a size of type.", "body: 11 pt")]
    [InlineData("drawing: 8 pt", "drawing: 5 pt", "drawing", 12, "A scale.drawing of 5 pt cannot be.", "from 6 pt to 14 pt")]
    [InlineData("leading: 15 pt", "leading: 11 pt", "leading", 12, "The leading does not suit", "1.3 to 1.4")]
    [InlineData("heading_2: 15.5 pt", "heading_2: 23 pt", "heading_2", 14, "scale.heading_2 is larger than scale.heading_1", "")]
    [InlineData("lead: 13 pt", "lead: big", "lead", 9, "“big” is not a size of type.", "lead: 13 pt")]
    [InlineData("lead: 13 pt", "lead: [13 pt]", "lead", 9, "A list is not a size of type.", "lead: 13 pt")]
    [InlineData("fold_width: 0.35 mm", "fold_width: {a: b}", "fold_width", 15, "A group of lines is not a distance.", "fold_width: 0.35 mm")]
    [InlineData("tint: \"#f4f4f1\"", "tint: \"#404040\"", "muted", 10, "muted (#5a5a5a) on colours.tint (#404040)", "Make it darker, or colours.tint lighter.")]
    [InlineData("gutter: 8 mm", "gutter: 8", "gutter", 11, "has no unit", "8 mm")]
    [InlineData("gutter: 8 mm", "gutter: 80 mm", "gutter", 11, "A spacing.gutter of 80 mm cannot be.", "from 2 mm to 25 mm")]
    [InlineData("cut_width: 0.5 mm", "cut_width: 0.35 mm", "cut_width", 14, "no wider than folds", "wider")]
    [InlineData("fold_width: 0.35 mm", "fold_width: 0.12 mm", "fold_width", 15, "Folds are thinner", "")]
    [InlineData("cover: plain", "cover: plane", "cover", 8, "“plane” is not one of the choices", "“plain”")]
    [InlineData("justified: no", "justified: maybe", "justified", 12, "should be yes or no", "")]
    [InlineData("justified: no", "justfied: no", "justified", 1, "“justfied” is not known here.", "“justified”")]
    [InlineData("rule: \"#b0b0b0\"", "rulers: \"#b0b0b0\"", "rule", 3, "“rulers” is not known here.", "“rule”")]
    [InlineData("accent: \"#3f5a52\"", "accent: \"#999999\"", "accent", 11, "(#999999) on white paper (#ffffff) has a contrast of 2.84:1; it needs 4.5:1.", "Make it darker.")]
    [InlineData("cover_text: \"#1c1c1c\"", "cover_text: \"#888888\"", "cover_text", 15, "on colours.cover_ground (#ffffff) has a contrast of 3.54:1", "Make it darker.")]
    [InlineData("faded: \"#7c7c7c\"", "faded: \"#8a8a8a\"", "faded", 10, "on lines.card_away (#eae4d9) has a contrast of 2.72:1; it needs 3:1.", "Make it darker.")]
    [InlineData("dimension: \"#4a4a4a\"", "dimension: \"#757575\"", "dimension", 14, "on lines.card (#f8f5ef) has a contrast of 4.23:1; it needs 4.5:1.", "Make it darker.")]
    public void A_setting_that_cannot_be_is_said(string line, string instead, string key, int column, string message, string advice)
    {
        var problems = ReadWith(line, instead).All;
        var problem = problems.FirstOrDefault(p => p.Message.Contains(message, StringComparison.Ordinal));
        Assert.True(problem is not null, string.Join("\n", problems));
        // What is missing is said of the mapping it is missing from.
        Found.Is(problem, Severity.Error, "themes/mine/theme.yaml", column == 0 ? LineOf("colours") + 1 : LineOf(key), column == 0 ? 3 : column, message, advice);
    }

    [Theory]
    [InlineData("AlegreyaSans-Regular.ttf", "AlegreyaSans-Regluar.ttf", "There is no font alegreya-sans/AlegreyaSans-Regluar.ttf", "“alegreya-sans/AlegreyaSans-Regular.ttf”")]
    [InlineData("alegreya-sans/AlegreyaSans-Regular.ttf", "../mine/theme.yaml", "lies outside the themes’ folder of fonts", "licence")]
    [InlineData("alegreya-sans/AlegreyaSans-Regular.ttf", "/etc/hostname", "lies outside the themes’ folder of fonts", "licence")]
    [InlineData("alegreya-sans/AlegreyaSans-Regular.ttf", "broken.ttf", "The font broken.ttf cannot be used", "static TrueType font")]
    [InlineData("alegreya-sans/AlegreyaSans-Regular.ttf", "alegreya-sans/AlegreyaSans-Bold.ttf", "is no bolder than", "mixed up")]
    [InlineData("alegreya-sans/AlegreyaSans-Italic.ttf", "alegreya-sans/AlegreyaSans-Regular.ttf", "AlegreyaSans-Regular.ttf is not an italic face.", "mixed up")]
    public void A_font_that_cannot_be_had_is_said(string font, string instead, string message, string advice)
    {
        _folder.Write("themes/fonts/broken.ttf", "not a font at all, but long enough to be looked at");
        var problems = ReadWith(font, instead).All;
        Assert.Contains(problems, p => p.Line > 0 && p.Message.Contains(message, StringComparison.Ordinal) && p.Advice.Contains(advice, StringComparison.Ordinal));
    }

    // Every value unreadable at once: each is told, and nothing is made of what could not be read.
    [Fact]
    public void Everything_wrong_in_a_theme_is_told_in_one_go_and_once()
    {
        var file = File.ReadAllText(Path.Combine(Resources.OfProgram.ThemesFolder, "handout", "theme.yaml"));
        var spoilt = System.Text.RegularExpressions.Regex.Replace(file, @"(?m)^(\s+\w+|justified|cover): .+$", "$1: [lots]");
        _folder.Write("themes/spoilt/theme.yaml", spoilt);
        var problems = new Problems();
        Assert.Null(ThemeReader.Read(Themes, "spoilt", "en-GB", problems));
        var values = spoilt.Split('\n').Select((line, i) => (Line: line, Number: i + 1)).Where(one => one.Line.Contains("[lots]", StringComparison.Ordinal)).Select(one => one.Number);
        Assert.Equal(values, problems.All.Select(problem => problem.Line));
        Assert.All(problems.All, problem => Assert.False(problem.Advice.Length == 0 || problem.Message.Contains("“”", StringComparison.Ordinal), problem.ToString()));
    }

    [Fact]
    public void A_font_is_opened_once_even_from_many_threads()
    {
        var faces = Enumerable.Range(0, 32).AsParallel().WithDegreeOfParallelism(8).Select(_ => Read("handout").Text.Regular).ToList();
        Assert.Single(faces.Distinct());
        Assert.Same(Read("market").Text.Bold, Read("handout").Text.Bold);
    }
}
