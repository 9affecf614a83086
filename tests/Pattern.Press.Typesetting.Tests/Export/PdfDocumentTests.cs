using System.Text;
using Pattern.Press.Conformance;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Export;

public class PdfDocumentTests
{
    [Fact]
    public void The_same_document_gives_the_same_bytes() =>
        Assert.Equal(Pdf.Write(Sample.Document()), Pdf.Write(Sample.Document()));

    [Fact]
    public void Documents_written_at_once_equal_those_written_in_turn()
    {
        var root = new StructureElement(Role.Document);
        var other = Sample.OnePage(root, new TaggedItem(root.Add(Role.P), [Sample.Text(20, 20, "Quite another text, set in the same face.")]));
        var (first, second) = (Pdf.Write(Sample.Document()), Pdf.Write(other));
        Parallel.For(0, 24, i => Assert.Equal(i % 2 == 0 ? first : second, Pdf.Write(i % 2 == 0 ? Sample.Document() : other)));
    }

    [Fact]
    public void The_identifier_follows_the_content()
    {
        static string Identifier(PressDocument document)
        {
            using var file = Pdf.Read(document);
            return string.Join(' ', file.Structure.Trailer!.Identifier.Select(part => part.Data));
        }

        var document = Sample.Document();
        Assert.Equal(Identifier(document), Identifier(Sample.Document()));
        Assert.NotEqual(Identifier(document), Identifier(document with { Title = "Another title" }));
    }

    [Fact]
    public void Information_is_what_the_document_says()
    {
        var document = Sample.Document();
        using var file = Pdf.Read(document);
        Assert.Equal(document.Title, file.Information.Title);
        Assert.Equal(document.Author, file.Information.Author);
        Assert.Equal(document.Subject, file.Information.Subject);
        Assert.Equal("D:20240309", file.Information.CreationDate);
    }

    [Fact]
    public void A_document_without_a_date_has_none_in_its_file()
    {
        var file = Pdf.Write(Sample.Document() with { Date = null });
        Assert.DoesNotContain("CreateDate", Encoding.Latin1.GetString(file), StringComparison.Ordinal);
        using var read = PdfDocument.Open(file);
        Assert.Null(read.Information.CreationDate);
        Assert.Null(read.Information.ModifiedDate);
    }

    [Fact]
    public void Bookmarks_lead_to_their_places()
    {
        using var file = Pdf.Read(Sample.Document());
        Assert.True(file.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            [("Making", 0, 2), ("What you need", 1, 2), ("Template 1", 0, 3)],
            bookmarks.GetNodes().Cast<DocumentBookmarkNode>().Select(node => (node.Title, node.Level, node.PageNumber)));
        var making = bookmarks.GetNodes().Cast<DocumentBookmarkNode>().First();
        Assert.Equal((297 - 25) * 72 / 25.4, making.Destination.Coordinates.Top!.Value, 0.01);
    }

    [Theory]
    [InlineData(new[] { "", "1", "2", "3", "T1", "T2" }, "0:; 1:D1; 4:T D1")]
    [InlineData(new[] { "", "" }, "0:")]
    [InlineData(new[] { "5", "6", "9" }, "0:D5; 2:D9")]
    [InlineData(new[] { "iv", "007", "A-10", "A-11" }, "0:iv; 1:00 D7; 2:A- D10")]
    public void Page_labels_are_those_printed(string[] labels, string ranges)
    {
        var document = Sample.OnePage(new StructureElement(Role.Document)) with
        {
            Pages = [.. labels.Select(label => new Page { Width = 100, Height = 100, Items = [], Label = label })],
        };
        using var file = Pdf.Read(document);
        var objects = new PdfObjects(file);
        var numbers = objects.Array(objects.Dictionary(objects.Catalog, "PageLabels"), "Nums")!.Data;
        var found = numbers.Chunk(2).Select(pair =>
        {
            var range = (DictionaryToken)pair[1];
            var number = objects.Name(range, "S") is { } style ? style + objects.Number(range, "St") : "";
            return $"{((NumericToken)pair[0]).Int}:{$"{objects.Text(range, "P")} {number}".Trim()}";
        });
        Assert.Equal(ranges, string.Join("; ", found));
    }

    [Fact]
    public void Links_lead_where_they_say()
    {
        var document = Sample.Document();
        using var file = Pdf.Read(document);
        var links = file.GetPage(2).GetAnnotations().ToList();
        Assert.Equal(["Template 1", "The shop’s page"], links.Select(link => link.Content));
        Assert.Equal(document.Pages[1].Links[0].X * 72 / 25.4, links[0].Rectangle.Left, 0.01);
        var objects = new PdfObjects(file);
        Assert.Equal("https://www.example.org/k%C3%A4fer", objects.Text(objects.Dictionary(links[1].AnnotationDictionary, "A"), "URI"));
        Assert.Equal("t1", objects.Text(links[0].AnnotationDictionary, "Dest"));
        var names = objects.Array(objects.Dictionary(objects.Dictionary(objects.Catalog, "Names"), "Dests"), "Names")!;
        Assert.Equal(["making", "materials", "t1"], names.Data.Where((_, i) => i % 2 == 0).Select(PdfObjects.Text));
    }

    [Fact]
    public void Printing_keeps_the_size_and_picks_the_paper()
    {
        using var file = Pdf.Read(Sample.Document());
        var objects = new PdfObjects(file);
        var preferences = objects.Dictionary(objects.Catalog, "ViewerPreferences");
        Assert.Equal("None", objects.Name(preferences, "PrintScaling"));
        Assert.True(objects.Get<BooleanToken>(preferences, "PickTrayByPDFSize")!.Data);
        foreach (var (_, page) in objects.Pages)
            Assert.Equal(objects.Array(page, "MediaBox")!.ToString(), objects.Array(page, "TrimBox")!.ToString());
    }

    [Fact]
    public void The_output_profile_is_sRGB_to_another_colour_library()
    {
        using var file = Pdf.Read(Sample.Document());
        var objects = new PdfObjects(file);
        var intent = (DictionaryToken)objects.Resolve(objects.Array(objects.Catalog, "OutputIntents")!.Data[0]);
        var profile = objects.Data(objects.Get<StreamToken>(intent, "DestOutputProfile")!);
        using var space = SKColorSpace.CreateIcc(profile);
        Assert.NotNull(space);
        Assert.True(space.GammaIsCloseToSrgb);

        // Colorants of sRGB under D50 as the ICC publishes them (sRGB profile of the registry; from memory).
        Assert.True(space.ToColorSpaceXyz(out var xyz));
        float[] published = [0.4360f, 0.3851f, 0.1431f, 0.2225f, 0.7169f, 0.0606f, 0.0139f, 0.0971f, 0.7141f];
        foreach (var (expected, found) in published.Zip(xyz.Values))
            Assert.Equal(expected, found, 0.0005f);
    }

    [Theory]
    [InlineData("qpdf", "--check")]
    [InlineData("pdffonts")]
    [InlineData("pdfinfo", "-struct-text")]
    [InlineData("gs", "-q", "-o", "/dev/null", "-sDEVICE=nullpage")]
    [InlineData("mutool", "draw", "-q", "-o", "/dev/null")]
    public void Tools_of_other_makers_have_nothing_to_say(string tool, params string[] arguments) =>
        Assert.Equal("", Tools.Complaints(Pdf.Write(Sample.Document()), tool, arguments));

    [Fact]
    public void Only_the_glyphs_used_are_embedded()
    {
        var root = new StructureElement(Role.Document);
        var file = Pdf.Write(Sample.OnePage(root, new TaggedItem(root.Add(Role.P), [Sample.Text(20, 20, "A short text")])));

        // The font file alone has 246 kB.
        Assert.InRange(file.Length, 4_000, 14_000);
    }
}
