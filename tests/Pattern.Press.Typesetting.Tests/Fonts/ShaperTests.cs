using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Tests.Fonts;

public class ShaperTests
{
    public static TheoryData<string> Faces() => [.. TestFonts.Files()];

    [Theory]
    [MemberData(nameof(Faces))]
    public void Pairs_with_slanting_sides_stand_closer(string name)
    {
        using var face = TestFonts.Open(name);
        Assert.True(Shaper.Shape("AV", face, 10).Width < Shaper.Shape("A", face, 10).Width + Shaper.Shape("V", face, 10).Width);
    }

    [Theory]
    [InlineData("office", "fi", 2)]
    [InlineData("fit", "fi", 0)]
    public void A_ligature_stands_for_all_its_characters(string word, string letters, int start)
    {
        var run = Shaper.Shape(word, TestFonts.Sans, 10);
        Assert.Equal(word.Length - letters.Length + 1, run.Glyphs.Count);
        var ligature = Assert.Single(run.Glyphs, glyph => glyph.Length > 1);
        Assert.Equal((start, letters.Length), (ligature.Start, ligature.Length));
        Assert.Equal(word.Length, Shaper.Shape(word, TestFonts.Sans, 10, FontFeatures.NoLigatures).Glyphs.Count);
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Clusters_cover_the_text_from_start_to_end(string name)
    {
        using var face = TestFonts.Open(name);
        const string Text = "The office’s fjord, naïve e\u0301 flaps – 15/16";
        foreach (var features in new[] { FontFeatures.None, FontFeatures.LiningFigures, FontFeatures.Fraction, FontFeatures.SmallCapitals | FontFeatures.NoLigatures })
        {
            var at = 0;
            foreach (var glyph in Shaper.Shape(Text, face, 10, features).Glyphs)
            {
                if (glyph.Length == 0)
                    continue;
                Assert.Equal(at, glyph.Start);
                at += glyph.Length;
            }

            Assert.Equal(Text.Length, at);
        }
    }

    [Theory]
    [InlineData("1/4")]
    [InlineData("15/16")]
    [InlineData("63/64")]
    public void Fractions_are_small_figures_with_a_bar_that_joins_them(string fraction)
    {
        foreach (var face in new[] { TestFonts.Sans, TestFonts.Serif })
        {
            var plain = Shaper.Shape(fraction, face, 10);
            var set = Shaper.Shape(fraction, face, 10, FontFeatures.Fraction);
            Assert.True(set.Width < 0.9 * plain.Width, $"{face.Name} {fraction}");
            Assert.Equal(fraction.Length, set.Glyphs.Sum(glyph => glyph.Length));
            Assert.All(plain.Glyphs.Zip(set.Glyphs), pair => Assert.NotEqual(pair.First.Id, pair.Second.Id));
        }
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Tabular_figures_are_of_one_width(string name)
    {
        using var face = TestFonts.Open(name);
        var widths = "0123456789".Select(figure => Shaper.Shape(figure.ToString(), face, 10, FontFeatures.TabularFigures | FontFeatures.LiningFigures).Width).ToList();

        // The italics of one family are drawn a little unevenly: by 7 of 1000 units.
        Assert.InRange(widths.Max() - widths.Min(), 0, name.StartsWith("AlegreyaSans", StringComparison.Ordinal) && face.ItalicAngle < 0 ? 0.025 : 0);
    }

    [Fact]
    public void Tracking_and_size_make_the_width()
    {
        var run = Shaper.Shape("STEP", TestFonts.SansBold, 10, FontFeatures.NoLigatures);
        Assert.Equal(2 * run.Width, Shaper.Shape("STEP", TestFonts.SansBold, 20, FontFeatures.NoLigatures).Width, 1e-9);

        // A tenth of ten points after each of four letters: four points of 1/72 in.
        Assert.Equal(4 * 25.4 / 72, (run with { Tracking = TestFonts.SansBold.UnitsPerEm / 10 }).Width - run.Width, 1e-9);
    }

    [Fact]
    public void A_face_says_what_it_covers()
    {
        Assert.True(Shaper.Covers(TestFonts.Sans, "Müller’s 2 ¼ in × 3′"));
        Assert.False(Shaper.Covers(TestFonts.Sans, "漢"));
    }

    [Fact]
    public void Text_shaped_before_or_at_once_is_shaped_alike()
    {
        var words = "Cut the card along the fixed line and fold each of the five flaps to the inside with a bone folder".Split(' ');
        using var face = TestFonts.Open("Bitter-Italic");
        var expected = words.Select(word => Shaper.Shape(word, TestFonts.Open("Bitter-Italic"), 11).Glyphs).ToList();
        Parallel.For(0, 400, i =>
        {
            var word = words[i % words.Length];
            Assert.Equal(expected[i % words.Length], Shaper.Shape(word, face, 11).Glyphs);

            // Long texts are shaped afresh each time.
            Assert.Equal(100, Shaper.Shape(new string('n', 100), face, 11).Glyphs.Count);
        });
    }

    [Fact]
    public void More_texts_than_are_kept_are_shaped_as_well()
    {
        using var face = TestFonts.Open("AlegreyaSans-Medium");
        for (var i = 0; i < 10_000; i++)
            Assert.NotEmpty(Shaper.Shape(FormattableString.Invariant($"{i}"), face, 10).Glyphs);
        Assert.Equal(4, Shaper.Shape("1234", face, 10).Glyphs.Count);
    }
}
