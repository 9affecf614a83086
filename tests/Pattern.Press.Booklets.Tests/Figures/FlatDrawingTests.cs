using CsCheck;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using static Pattern.Press.Booklets.Tests.Figures.Samples;

namespace Pattern.Press.Booklets.Tests.Figures;

public class FlatDrawingTests
{
    private static readonly FigureShow[] Shows =
    [
        FigureShow.Flat, FigureShow.Sheet, FigureShow.Scores, FigureShow.Diagonals, FigureShow.Waste, FigureShow.Folds, FigureShow.Glue, FigureShow.Mats,
    ];

    private static readonly Gen<(Piece Piece, Piece Other)> Pieces =
        from kind in Gen.Int[0, 2]
        from length in Gen.Int[30, 150]
        from width in Gen.Int[30, 120]
        from height in Gen.Int[24, 130]
        from small in Gen.Int[9, 20]
        select Both(kind, length, width, height, small);

    [Fact]
    public void Scores_and_waste_are_read_from_the_edges_as_makers_know_them()
    {
        // Common practice, no source: a box with a floor of 2 × 1 1/2 in, walls of 3 1/2 and gussets of 1/2 is cut from
        // 9 × 8 1/2, scored at 3 1/2 and 5 1/2 along the long side and at 3 1/2 and 5 along the short one; its corners
        // are marked at 3 and 6, and at 3 and 5 1/2.
        var box = GussetBox(In("2"), In("1 1/2"), In("3 1/2"), In("1/2"));
        Assert.Equal(["3 1/2 in", "5 1/2 in", "9 in", "3 1/2 in", "5 in", "8 1/2 in"], Values(FigureShow.Scores));
        Assert.Equal(["3 in", "6 in", "9 in", "3 in", "5 1/2 in", "8 1/2 in"], Values(FigureShow.Waste));
        Assert.Equal(["9 in", "8 1/2 in"], Values(FigureShow.Sheet));

        IEnumerable<string> Values(FigureShow show) =>
            Read(new FlatDrawing { Piece = box, Ruler = Ruler.SixteenthInches, Show = show, Words = new EnglishWords() }, 120, 120)
                .Texts.Select(text => text.Text).Where(text => text.EndsWith(" in", StringComparison.Ordinal));
    }

    [Fact]
    public void Both_columns_come_from_their_own_fit()
    {
        var metric = GussetBox(Mm(64), Mm(52), Mm(80), Mm(12));
        var inches = GussetBox(In("2 1/2"), In("2"), In("3 1/8"), In("1/2"));
        var texts = Read(Drawing(metric, inches, FigureShow.Scores), 120, 120).Texts.Select(text => text.Text).ToList();
        foreach (var (mm, inch) in new[] { ("80 mm", "3 1/8 in"), ("144 mm", "5 5/8 in"), ("224 mm", "8 3/4 in"), ("132 mm", "5 1/8 in"), ("212 mm", "8 1/4 in") })
        {
            Assert.Contains(mm, texts);
            Assert.Contains(inch, texts);
        }

        Assert.Contains("224 mm / 8 3/4 in", Read(Drawing(metric, inches, FigureShow.Sheet), 120, 120).Texts.Select(text => text.Text));
    }

    [Fact]
    public void A_sheet_that_is_to_be_cut_has_nothing_on_it_yet()
    {
        var lines = Styles.Lines;
        var reading = Read(Drawing(GussetBox(Mm(64), Mm(52), Mm(80), Mm(12)), null, FigureShow.Sheet), 120, 120);
        Assert.Equal(4, reading.Lines.Count(line => line.Stroke == lines.CutStroke));
        Assert.All(reading.Lines.Where(line => line.Stroke != lines.CutStroke), line => Assert.Equal(new Stroke(lines.Dimension, lines.ThinWidth), line.Stroke));
        Assert.Equal(["224 mm", "212 mm", "Base"], reading.Texts.Select(text => text.Text));
    }

    [Fact]
    public void Values_beside_each_other_stand_well_apart()
    {
        // The cuts of a lid lie closest together: 111 and 112 mm, 44 and 45 mm.
        var reading = Read(Drawing(DoubleLid(Mm(68), Mm(68), Mm(22), 10, Mm(1)), DoubleLid(In("2 11/16"), In("2 11/16"), In("7/8"), 10, Mm(1)), FigureShow.Waste), 62, 80);
        var values = reading.Texts.Where(IsDimension).ToList();
        foreach (var (a, b) in from a in values from b in values where a.Left < b.Left && Math.Abs(a.Bottom - b.Bottom) < 0.01 select (a, b))
            Assert.True(b.Left - a.Right > 2, $"“{a.Text}” and “{b.Text}” are {b.Left - a.Right} mm apart");
    }

    [Fact]
    public void Words_stand_only_along_folds_that_go_right_over()
    {
        Assert.DoesNotContain(Texts(GussetBox(Mm(64), Mm(52), Mm(80), Mm(12))), text => text.StartsWith("valley", StringComparison.Ordinal) && !text.Contains(':', StringComparison.Ordinal));
        var lid = Texts(DoubleLid(Mm(68), Mm(68), Mm(22), 10, Mm(1)));
        Assert.Contains("valley, right over", lid);
        Assert.DoesNotContain("valley", lid);

        static List<string> Texts(Piece piece) => [.. Read(Drawing(piece, null, FigureShow.Folds), 120, 120).Texts.Select(text => text.Text)];
    }

    [Fact]
    public void Every_score_of_any_piece_is_measured() => Pieces.Select(Gen.Double[50, 170]).Sample(
        (pieces, width) =>
        {
            var texts = Read(Drawing(pieces.Piece, pieces.Other, FigureShow.Scores), width, 150).Texts;
            var said = texts.SelectMany(text => text.Text.Split(" / ")).ToHashSet(StringComparer.Ordinal);
            foreach (var (piece, ruler) in new[] { (pieces.Piece, Ruler.WholeMillimetres), (pieces.Other, Ruler.SixteenthInches) })
            {
                foreach (var fold in piece.Folds)
                {
                    if (fold.From.X == fold.To.X)
                        Assert.Contains(LengthFormat.Format(Length.FromMillimetres(fold.From.X), ruler), said);
                    if (fold.From.Y == fold.To.Y)
                        Assert.Contains(LengthFormat.Format(Length.FromMillimetres(fold.From.Y), ruler), said);
                }
            }
        },
        iter: 60);

    // Beside chance: a letter that had no room right of its figure, and a label led out below it.
    [Theory]
    [InlineData(null)]
    [InlineData("470ecQf-DnU4")]
    [InlineData("cSAwkax-xP72")]
    public void Lettering_never_touches_lettering_or_a_line_and_stays_inside_the_figure(string? seed) =>
        Pieces.Select(Gen.Int[0, Shows.Length - 1].Select(i => Shows[i]), Gen.Double[60, 170]).Sample(
            (pieces, show, width) =>
            {
                var figure = Drawing(pieces.Piece, pieces.Other, show).Draw(width, 160, Styles);
                var reading = new Reading(figure.Items);
                Assert.True(figure.Width <= width + 1e-6, $"{figure.Width} wide in {width}");
                Assert.True(figure.Height <= 160 + 1e-6);
                AssertClear(reading);
                foreach (var text in reading.Texts)
                {
                    Assert.True(text.Size >= (IsDimension(text) ? 7.5 : 6.5));
                    Assert.True(text.Left > -0.01 && text.Right < figure.Width + 0.01, $"“{text.Text}” from {text.Left} to {text.Right} of {figure.Width}");
                    Assert.True(text.Top > -0.01 && text.Bottom < figure.Height + 0.01, $"“{text.Text}” from {text.Top} to {text.Bottom} of {figure.Height}");
                }
            },
            seed: seed,
            iter: seed is null ? 200 : 1);

    [Fact]
    public void Cuts_and_folds_are_drawn_to_one_scale_and_never_enlarged() => Pieces.Select(Gen.Double[60, 400]).Sample(
        (pieces, width) =>
        {
            var lines = Styles.Lines;
            var reading = Read(Drawing(pieces.Piece, pieces.Other, FigureShow.Flat), width, 400);
            var cuts = reading.Lines.Where(line => line.Stroke == lines.CutStroke).ToList();
            var left = cuts.Min(line => Math.Min(line.From.X, line.To.X));
            var top = cuts.Min(line => Math.Min(line.From.Y, line.To.Y));
            var right = cuts.Max(line => Math.Max(line.From.X, line.To.X));
            var scale = (right - left) / pieces.Piece.Sheet.Width.Millimetres;
            Assert.InRange(scale, 0.01, 1 + 1e-9);
            Assert.Equal(pieces.Piece.Cuts.Sum(cut => cut.From.DistanceTo(cut.To)) * scale, cuts.Sum(line => line.Length), 1e-6);
            foreach (var (colour, direction) in new[] { (lines.Valley, FoldDirection.Valley), (lines.Mountain, FoldDirection.Mountain) })
            {
                var drawn = reading.Lines.Where(line => line.Stroke.Colour == colour && line.Stroke.Width == lines.FoldWidth).ToList();
                var folds = pieces.Piece.Folds.Where(fold => fold.Direction == direction).ToList();
                Assert.Equal(folds.Sum(fold => fold.From.DistanceTo(fold.To)) * scale, drawn.Sum(line => line.Length), 1e-6);
                foreach (var fold in folds)
                {
                    var middle = (fold.From + fold.To) * 0.5;
                    var at = new Point((middle.X * scale) + left, (middle.Y * scale) + top);
                    Assert.Contains(drawn, line => Distance(line, at) < 1e-6);
                }
            }
        },
        iter: 40);

    [Fact]
    public void A_step_shows_its_own_lines_in_full_and_the_rest_faded()
    {
        var box = GussetBox(Mm(64), Mm(52), Mm(80), Mm(12));
        var lines = Styles.Lines;
        foreach (var (show, valley, mountain) in new[] { (FigureShow.Scores, true, false), (FigureShow.Diagonals, false, true), (FigureShow.Folds, true, true), (FigureShow.Waste, false, false) })
        {
            var strokes = Read(Drawing(box, null, show), 120, 120).Lines.Select(line => line.Stroke).Where(stroke => stroke.Dash.Count > 0).ToList();
            Assert.Equal(valley, strokes.Any(stroke => stroke.Colour == lines.Valley && stroke.Width == lines.FoldWidth));
            Assert.Equal(mountain, strokes.Any(stroke => stroke.Colour == lines.Mountain && stroke.Width == lines.FoldWidth));
            Assert.Equal(!(valley && mountain), strokes.Any(stroke => stroke.Colour == lines.Faded));
        }
    }

    [Fact]
    public void Dashes_keep_their_size_on_paper_whatever_the_scale()
    {
        var box = GussetBox(Mm(140), Mm(110), Mm(150), Mm(20));
        var dashes = new[] { 70.0, 150.0 }.Select(width => Read(Drawing(box, null, FigureShow.Scores), width, 160).Lines
            .Where(line => line.Stroke.Colour == Styles.Lines.Valley).SelectMany(line => line.Stroke.Dash).Distinct().ToArray()).ToArray();
        Assert.Equal(Styles.Lines.ValleyStroke.Dash, dashes[0]);
        Assert.Equal(dashes[0], dashes[1]);
    }

    [Fact]
    public void Diagonals_have_a_letter_at_each_end()
    {
        var box = GussetBox(Mm(64), Mm(52), Mm(80), Mm(12));
        var diagonals = Diagonals.Of(box);
        Assert.Equal(["A–B", "C–D", "E–F", "G–H"], diagonals.Select(line => $"{line.FromLetter}–{line.ToLetter}"));
        // From the corner of the floor to the corner of the waste, the top-left one first.
        Assert.Equal(new Point(80, 80), diagonals[0].From);
        Assert.Equal(new Point(68, 68), diagonals[0].To);
        var texts = Read(Drawing(box, null, FigureShow.Diagonals), 100, 100).Texts.Select(text => text.Text).ToList();
        Assert.All("ABCDEFGH", letter => Assert.Single(texts, text => text == letter.ToString()));
    }

    [Fact]
    public void Mats_lie_on_the_panels_they_are_for_with_an_even_border()
    {
        var kit = Box(64, 52, 80, 12, 18);
        var mats = MatPlacing.On(kit.Parts[0].Piece, kit.Parts);
        Assert.Equal(["long wall", "long wall", "short wall", "short wall"], mats.Select(mat => mat.Panel.Kind));
        Assert.Equal(4, mats.Select(mat => mat.Panel.Name).Distinct().Count());
        Assert.All(mats, mat =>
        {
            var (panel, corners) = (mat.Panel.Outline.Corners.ToList(), mat.Corners);
            Assert.Equal(3, corners.Min(p => p.X) - panel.Min(p => p.X), 6);
            Assert.Equal(3, panel.Max(p => p.X) - corners.Max(p => p.X), 6);
            Assert.Equal(3, corners.Min(p => p.Y) - panel.Min(p => p.Y), 6);
            Assert.Equal(3, panel.Max(p => p.Y) - corners.Max(p => p.Y), 6);
        });
        var texts = Read(new FlatDrawing { Piece = kit.Parts[0].Piece, Ruler = kit.Ruler, Show = FigureShow.Mats, Parts = kit.Parts, Words = new EnglishWords() }, 120, 120).Texts;
        Assert.Equal(2, texts.Count(text => text.Text == "Long wall mat"));
    }

    [Fact]
    public void Alternative_text_says_what_the_figure_shows()
    {
        var metric = GussetBox(Mm(64), Mm(52), Mm(80), Mm(12));
        var inches = GussetBox(In("2 1/2"), In("2"), In("3 1/8"), In("1/2"));
        Assert.Equal(
            "Score lines of the Base on its sheet of 224 × 212 mm / 8 3/4 × 8 1/4 in. From the left edge: 80 mm / 3 1/8 in and 144 mm / 5 5/8 in. From the top edge: 80 mm / 3 1/8 in and 132 mm / 5 1/8 in.",
            AlternativeText.Of(Drawing(metric, inches, FigureShow.Scores)));
        var folds = AlternativeText.Of(Drawing(metric, inches, FigureShow.Folds));
        Assert.Contains("12 valley folds and 4 mountain folds", folds, StringComparison.Ordinal);
        var diagonals = AlternativeText.Of(Drawing(metric, inches, FigureShow.Diagonals));
        Assert.Contains("From A to B.", diagonals, StringComparison.Ordinal);
        Assert.Contains("A lies 80 mm / 3 1/8 in from the left edge and 80 mm / 3 1/8 in from the top edge.", diagonals, StringComparison.Ordinal);
        // What lies beside walls of 80 mm is less high by gussets of 12 mm, on both sides.
        Assert.Contains(
            "4 areas are cut away. Rectangles to cut off: 4 of 68 × 68 mm / 2 5/8 × 2 5/8 in.",
            AlternativeText.Of(Drawing(metric, inches, FigureShow.Waste)),
            StringComparison.Ordinal);
        foreach (var show in Shows)
            Assert.Contains("224 × 212 mm / 8 3/4 × 8 1/4 in", AlternativeText.Of(Drawing(metric, inches, show)), StringComparison.Ordinal);
    }

    internal static FlatDrawing Drawing(Piece piece, Piece? other, FigureShow show) => new()
    {
        Piece = piece,
        Ruler = Ruler.WholeMillimetres,
        Other = other,
        OtherRuler = other is null ? null : Ruler.SixteenthInches,
        Show = show,
        Words = new EnglishWords(),
    };

    internal static void AssertClear(Reading reading, Func<DrawnLine, bool>? counts = null)
    {
        var lines = reading.Lines.Where(line => counts is null || counts(line)).ToList();
        for (var i = 0; i < reading.Texts.Count; i++)
        {
            var text = reading.Texts[i];
            for (var j = i + 1; j < reading.Texts.Count; j++)
            {
                var other = reading.Texts[j];
                Assert.False(
                    text.Left < other.Right - 0.01 && other.Left < text.Right - 0.01 && text.Top < other.Bottom - 0.01 && other.Top < text.Bottom - 0.01,
                    $"“{text.Text}” touches “{other.Text}”");
            }

            foreach (var line in lines)
                Assert.False(Reading.Crosses(line, text, 0.02), $"A line from {line.From} to {line.To} crosses “{text.Text}”");
        }
    }

    private static bool IsDimension(DrawnText text) =>
        text.Text.EndsWith(" mm", StringComparison.Ordinal) || text.Text.EndsWith(" in", StringComparison.Ordinal);

    private static Reading Read(FlatDrawing drawing, double width, double height) => new(drawing.Draw(width, height, Styles).Items);

    private static double Distance(DrawnLine line, Point p)
    {
        var (dx, dy) = (line.To.X - line.From.X, line.To.Y - line.From.Y);
        var t = Math.Clamp((((p.X - line.From.X) * dx) + ((p.Y - line.From.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return p.DistanceTo(new Point(line.From.X + (t * dx), line.From.Y + (t * dy)));
    }

    private static (Piece Piece, Piece Other) Both(int kind, int length, int width, int height, int small)
    {
        // The other fit is near the first but on its own ruler.
        static Length Near(int mm) => Ruler.SixteenthInches.Round(Length.FromMillimetres(mm), Rounding.Nearest);
        return kind switch
        {
            0 => (GussetBox(Mm(length), Mm(width), Mm(height), Mm(small)), GussetBox(Near(length), Near(width), Near(height), Near(small))),
            1 => (DoubleLid(Mm(length), Mm(width), Mm(small), 10, Mm(0.5)), DoubleLid(Near(length), Near(width), Near(small), 10, Mm(0.5))),
            _ => (Platform(Mm(length), Mm(width), Mm(small + 2), Mm(small)), Platform(Near(length), Near(width), Near(small + 2), Near(small))),
        };
    }
}
