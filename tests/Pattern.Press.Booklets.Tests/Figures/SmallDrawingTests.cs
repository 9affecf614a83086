using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Sheets;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using static Pattern.Press.Booklets.Tests.Figures.Samples;

namespace Pattern.Press.Booklets.Tests.Figures;

public class SmallDrawingTests
{
    [Theory]
    [InlineData(170, 200)]
    [InlineData(20, 10)]
    public void The_check_square_is_50_mm_and_the_bar_2_in_whatever_the_room(double width, double height)
    {
        var figure = new CheckSquare().Draw(width, height, Styles);
        var reading = new Reading(figure.Items);
        var square = Assert.Single(reading.Paths, path => path.Verbs.Count == 5 && path.Verbs[^1] == PathVerb.Close);
        // 1 in = 25.4 mm exactly (NIST SP 811, 2008, appendix B).
        Assert.Equal(50, square.Points.Max(p => p.X) - square.Points.Min(p => p.X), 9);
        Assert.Equal(50, square.Points.Max(p => p.Y) - square.Points.Min(p => p.Y), 9);
        Assert.Contains(reading.Lines, line => line.From.Y == line.To.Y && Math.Abs(line.Length - (2 * 25.4)) < 1e-9);
        Assert.Equal(2, reading.Texts.Count(text => text.Text == "50 mm"));
        Assert.Single(reading.Texts, text => text.Text == "2 in");
        FlatDrawingTests.AssertClear(reading);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(90)]
    public void The_key_shows_every_kind_of_line_with_its_word(double width)
    {
        var figure = new LineKey(new EnglishWords()).Draw(width, 300, Styles);
        var reading = new Reading(figure.Items);
        Assert.True(figure.Width <= width);
        var lines = Styles.Lines;
        foreach (var stroke in new[] { lines.CutStroke, lines.ValleyStroke, lines.MountainStroke, DrawingStrokes.Trim(lines), DrawingStrokes.Sheet(lines) })
            Assert.Contains(reading.Lines, line => line.Stroke.Width == stroke.Width && line.Stroke.Dash.SequenceEqual(stroke.Dash));
        foreach (var side in new[] { SheetSide.Facing, SheetSide.Away })
            Assert.Contains(reading.Paths, path => path.Stroke is { } stroke && stroke.Colour == lines.Glue && stroke.Dash.SequenceEqual(DrawingStrokes.Glue(lines, side).Dash));
        Assert.Contains(reading.Paths, path => path.Verbs.Contains(PathVerb.Curve));
        Assert.Contains(reading.Paths, path => path.Fill == Styles.Palette.Tint);

        // A word for each of them, and those along the fold that goes right over.
        Assert.Equal(14 + 1, reading.Texts.Count);
        Assert.Contains(reading.Texts, text => text.Text == new EnglishWords().Say("drawing.fold.valley_flat"));
        FlatDrawingTests.AssertClear(reading);
    }

    [Fact]
    public void Cuts_of_a_sheet_that_would_run_together_count_as_crowded_and_larger_ones_do_not()
    {
        // Twenty strips of 6 mm on a sheet of 305 mm.
        var strip = new Size(Length.FromMillimetres(74), Length.FromMillimetres(6));
        var plan = SheetPlan.Make([new WantedRectangle("Strip", strip, 20)], new Size(Length.FromMillimetres(305), Length.FromMillimetres(305)), new SheetOptions());
        var drawing = new SheetPlanDrawing(plan.Layouts[0].Sheet, plan.Sheet, _ => "A");
        double Crowding(double side) => drawing.Draw(side, side, Styles).Crowding;
        Assert.True(drawing.Draw(44, 44, Styles).IsCrowded);
        Assert.False(drawing.Draw(65, 65, Styles).IsCrowded);
        Assert.Equal(0, Crowding(65));
        Assert.True(Crowding(44) < Crowding(30));
    }

    [Fact]
    public void A_piece_that_is_lost_among_its_dimensions_counts_as_crowded_and_a_larger_one_does_not()
    {
        static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
        var piece = GussetBox(Mm(65), Mm(65), Mm(76), Mm(12));
        var drawing = FlatDrawingTests.Drawing(piece, piece, FigureShow.Flat);
        var small = drawing.Draw(52, 90, Styles);
        Assert.Equal(1, small.Crowding);
        Assert.True(new Reading(small.Items).Texts.Count > 5);
        Assert.False(drawing.Draw(120, 120, Styles).IsCrowded);

        // Nothing is around a drawing without dimensions.
        Assert.True(FlatDrawingTests.Drawing(piece, null, FigureShow.Folds).Draw(63, 90, Styles).Crowding < 1);
    }

    [Fact]
    public void Fractions_are_real_fractions_and_read_as_written()
    {
        var face = Styles.Text.Regular;
        var line = Lettering.Set("90 mm / 3 1/2 in", face, 7);
        Assert.Equal("90 mm / 3 1/2 in", line.Text);
        var fraction = Assert.Single(line.Runs, run => run.Run.Text == "1/2").Run;
        var plain = Shaper.Shape("1/2", face, 7);
        Assert.NotEqual(plain.Glyphs.Select(glyph => glyph.Id), fraction.Glyphs.Select(glyph => glyph.Id));
        // The space before the fraction is narrower than one between words, and the runs follow each other without a gap.
        Assert.True(Assert.Single(line.Runs, run => run.Run.Text == " ").Run.Width < Shaper.Shape(" ", face, 7).Width);
        for (var i = 1; i < line.Runs.Count; i++)
            Assert.Equal(line.Runs[i - 1].X + line.Runs[i - 1].Run.Width, line.Runs[i].X, 9);
    }

    [Fact]
    public void A_fold_too_short_for_its_pattern_has_a_shorter_one_of_the_same_kind()
    {
        var whole = Styles.Lines.MountainStroke;
        Assert.Same(whole, DrawingStrokes.ForLength(whole, 40));
        var small = DrawingStrokes.ForLength(whole, 8);
        // A long dash, a gap, a dot, a gap and a long dash again (ISO 128-2, from memory) fit on the line.
        Assert.Equal(8, small.Dash.Sum() + small.Dash[0], 9);
        Assert.Equal(whole.Dash[0] / whole.Dash[2], small.Dash[0] / small.Dash[2], 9);
    }
}
