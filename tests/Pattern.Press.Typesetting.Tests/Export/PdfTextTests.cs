using Pattern.Press.Conformance;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Tests.Fonts;

namespace Pattern.Press.Typesetting.Tests.Export;

public class PdfTextTests
{
    private const double PointsPerMillimetre = 72 / 25.4;

    [Fact]
    public void Text_with_ligatures_and_fractions_comes_out_as_written()
    {
        using var file = Pdf.Read(Sample.Document());
        var text = file.GetPage(2).Text;
        Assert.Contains(Sample.Ligatures, text, StringComparison.Ordinal);
        Assert.Contains(Sample.Fractions, text, StringComparison.Ordinal);
        Assert.Contains("“Quotes”, naïve café — 3′ 6″ – ½ × ¼…", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_come_out_whole()
    {
        using var file = Pdf.Read(Sample.Document());
        var words = file.GetPage(2).GetWords().Select(word => word.Text).ToList();
        foreach (var word in Sample.Ligatures.Split(' ').Concat(["1/4", "15/16", "(57", "mm", "template", "www.example.org"]))
            Assert.Contains(word, words);
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_face_keeps_its_words(string name)
    {
        using var face = TestFonts.Open(name);
        var root = new StructureElement(Role.Document);
        var items = new List<PageItem>
        {
            Sample.Text(20, 20, Sample.Ligatures, 11, face),
            Sample.Text(20, 30, "11 mm, 2", 11, face, features: FontFeatures.TabularFigures | FontFeatures.LiningFigures),
            Sample.Text(60, 30, " 15/16", 11, face, features: FontFeatures.Fraction),
            Sample.Text(20, 40, "Small Capitals", 11, face, features: FontFeatures.SmallCapitals),
            Sample.Text(20, 50, "ÀÉÎõü ßæœ ÇŁŠŽ ½ ¼ ¾ × − ± ° ′ ″ • … €", 11, face),
        };
        var document = Sample.OnePage(root, new TaggedItem(root.Add(Role.P), items));
        using var file = Pdf.Read(document);
        var text = file.GetPage(1).Text;
        Assert.Equal(Sample.Ligatures + "11 mm, 2 15/16Small CapitalsÀÉÎõü ßæœ ÇŁŠŽ ½ ¼ ¾ × − ± ° ′ ″ • … €", text);
        Assert.Empty(PdfConformance.Check(Pdf.Write(document)));
    }

    public static TheoryData<string> Faces() => [.. TestFonts.Files()];

    [Fact]
    public void One_glyph_for_two_texts_keeps_them_apart()
    {
        // Without ligatures in the map, the same glyph stands for “a” in one run and for “b” in the other.
        var a = Shaper.Shape("a", TestFonts.Sans, 12);
        var b = a with { Text = "b" };
        var c = a with { Text = "xyz", Glyphs = [a.Glyphs[0] with { Length = 3 }] };
        var root = new StructureElement(Role.Document);
        var document = Sample.OnePage(root, new TaggedItem(root.Add(Role.P),
            [new TextItem(a, 20, 20, Colour.Black), new TextItem(b, 30, 20, Colour.Black), new TextItem(c, 40, 20, Colour.Black)]));
        using var file = Pdf.Read(document);
        var letters = file.GetPage(1).Letters;
        Assert.Equal(["a", "b", "xyz"], letters.Select(letter => letter.Value));
        Assert.Equal(letters[0].BoundingBox.Width, letters[1].BoundingBox.Width, 1e-6);
        Assert.Empty(PdfConformance.Check(Pdf.Write(document)));
    }

    [Fact]
    public void Several_glyphs_for_one_character_say_it_once()
    {
        // A letter and its mark as two glyphs, as fonts without the letter have it.
        var e = Shaper.Shape("e", TestFonts.Sans, 12).Glyphs[0];
        var mark = Shaper.Shape("´", TestFonts.Sans, 12).Glyphs[0];
        var run = new ShapedRun(TestFonts.Sans, 12, "né", [Shaper.Shape("n", TestFonts.Sans, 12).Glyphs[0], e with { Start = 1 }, mark with { Start = 1, Length = 0 }]);
        var root = new StructureElement(Role.Document);
        var document = Sample.OnePage(root, new TaggedItem(root.Add(Role.P), [new TextItem(run, 20, 20, Colour.Black)]));
        Assert.Empty(PdfConformance.Check(Pdf.Write(document)));
        using var file = Pdf.Read(document);
        Assert.Equal("né", Assert.Single(file.GetPage(1).GetMarkedContents()).ActualText);
        Assert.Equal("né", Tools.PdfToText(Pdf.Write(document)));
    }

    [Theory]
    [InlineData(60)]
    [InlineData(140)]
    [InlineData(300)]
    public void Words_set_wide_come_out_whole(int tracking)
    {
        var run = Shaper.Shape("FOR FIRST MAKERS", TestFonts.SansBold, 9, FontFeatures.NoLigatures) with { Tracking = tracking };
        var root = new StructureElement(Role.Document);
        var document = Sample.OnePage(root, new TaggedItem(root.Add(Role.P), [new TextItem(run, 20, 20, Colour.Black)]));
        Assert.Equal("FOR FIRST MAKERS", Tools.PdfToText(Pdf.Write(document)));
        using var file = Pdf.Read(document);
        Assert.Equal(["FOR", "FIRST", "MAKERS"], file.GetPage(1).GetMarkedContents().Select(mark => mark.ActualText).OfType<string>());
        Assert.Equal("FOR FIRST MAKERS", file.GetPage(1).Text);
    }

    [Fact]
    public void Glyphs_stand_where_layout_put_them()
    {
        var document = Sample.Document();
        using var file = Pdf.Read(document);
        var (checkedGlyphs, page) = (0, document.Pages[1]);
        var letters = file.GetPage(2).Letters;
        foreach (var item in Sample.TextItems(page.Items))
        {
            double pen = 0;
            foreach (var glyph in item.Run.Glyphs)
            {
                var x = (item.X + ((pen + glyph.OffsetX) * item.Run.Scale)) * PointsPerMillimetre;
                var y = (page.Height - item.Y + (glyph.OffsetY * item.Run.Scale)) * PointsPerMillimetre;
                var letter = letters[checkedGlyphs++];
                Assert.Equal(x, letter.StartBaseLine.X, 0.01 * PointsPerMillimetre);
                Assert.Equal(y, letter.StartBaseLine.Y, 0.01 * PointsPerMillimetre);
                pen += glyph.Advance + item.Run.Tracking;
            }
        }

        Assert.Equal(letters.Count, checkedGlyphs);
        Assert.True(checkedGlyphs > 200);
    }

    [Fact]
    public void Raised_and_moved_glyphs_stand_where_shaping_put_them()
    {
        var glyphs = Shaper.Shape("abc", TestFonts.Serif, 20).Glyphs;
        var run = new ShapedRun(TestFonts.Serif, 20, "abc", [glyphs[0], glyphs[1] with { OffsetX = -120, OffsetY = 350 }, glyphs[2]]);
        var root = new StructureElement(Role.Document);
        using var file = Pdf.Read(Sample.OnePage(root, new TaggedItem(root.Add(Role.P), [new TextItem(run, 50, 100, Colour.Black)])));
        var letters = file.GetPage(1).Letters;
        var unit = run.Scale * PointsPerMillimetre;
        var (left, baseline) = (50 * PointsPerMillimetre, 197 * PointsPerMillimetre);
        Assert.Equal(left + ((glyphs[0].Advance - 120) * unit), letters[1].StartBaseLine.X, 1e-3);
        Assert.Equal(baseline + (350 * unit), letters[1].StartBaseLine.Y, 1e-3);
        Assert.Equal(left + ((glyphs[0].Advance + glyphs[1].Advance) * unit), letters[2].StartBaseLine.X, 1e-3);
        Assert.Equal(baseline, letters[2].StartBaseLine.Y, 1e-3);
    }
}
