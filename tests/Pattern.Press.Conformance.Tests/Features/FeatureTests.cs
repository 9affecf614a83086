using Pattern.Press.Conformance.Text;
using Pattern.Press.Typesetting.Tests.Export;
using UglyToad.PdfPig;

namespace Pattern.Press.Conformance.Features;

public sealed class FeatureTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var feature in Feature.All)
            {
                foreach (var theme in Themes.Names)
                    data.Add(feature.Name, theme);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_small_document_conforms(string name, string theme) =>
        Assert.Empty(PdfConformance.Check(FileOf(name, theme)));

    [Theory]
    [MemberData(nameof(All))]
    public void A_small_document_has_the_structure_of_what_it_shows(string name, string theme)
    {
        var feature = Feature.All.Single(feature => feature.Name == name);
        using var document = PdfDocument.Open(FileOf(name, theme));
        Assert.Equal($"Document(Sect(H1 {feature.Structure}) Sect(P Figure))", ReadStructure.Shape(new PdfObjects(document)));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void A_small_document_says_what_was_set(string name, string theme)
    {
        var feature = Feature.All.Single(feature => feature.Name == name);
        SetText.MatchesFile(feature.Pages(Themes.Of(theme)), FileOf(name, theme));
    }

    [Theory]
    [MemberData(nameof(Themes.All), MemberType = typeof(Themes))]
    public void A_picture_shown_twice_is_stored_once(string theme)
    {
        using var document = PdfDocument.Open(FileOf("pictures", theme));
        var objects = new PdfObjects(document);
        var names = objects.Dictionary(objects.Dictionary(objects.Pages[0].Page, "Resources"), "XObject")!.Data;
        Assert.Equal(2, names.Count);
    }

    [Fact]
    public void Tools_of_other_makers_have_nothing_to_say_about_small_documents()
    {
        // The pages of all of them in one file would hide which one is meant; two tools that read everything are enough.
        foreach (var feature in Feature.All)
        {
            var file = feature.File(Themes.Of("market"));
            Assert.Equal("", Tools.Complaints(file, "qpdf", "--check"));
            Assert.Equal("", Tools.Complaints(file, "pdfinfo", "-struct-text"));
        }
    }

    private static byte[] FileOf(string name, string theme) => Feature.All.Single(feature => feature.Name == name).File(Themes.Of(theme));
}
