using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>What cannot be written as an accessible file is refused, in words that say what is wrong.</summary>
public class PdfRefusalTests
{
    private readonly StructureElement _root = new(Role.Document);

    [Fact]
    public void Documents_without_pages_or_title()
    {
        var document = Sample.OnePage(_root);
        Refused("at least one page", document with { Pages = [] });
        Refused("a title and a language", document with { Title = " " });
        Refused("a title and a language", document with { Language = "" });
        Refused("role Document", document with { Structure = new StructureElement(Role.Sect) });
    }

    [Fact]
    public void Content_of_an_element_outside_the_structure() =>
        Refused("not in the document's structure", Sample.OnePage(_root, new TaggedItem(new StructureElement(Role.P), [Sample.Text(10, 10, "Lost")])));

    [Fact]
    public void An_element_that_stands_in_the_structure_twice()
    {
        var paragraph = _root.Add(Role.P);
        _root.Add(paragraph);
        Refused("stands in the tree twice", Sample.OnePage(_root));
    }

    [Fact]
    public void Figures_without_alternative_text()
    {
        _root.Add(Role.Figure);
        Refused("no alternative text", Sample.OnePage(_root));
    }

    [Fact]
    public void Tagged_content_and_artifacts_inside_each_other()
    {
        var inner = new TaggedItem(_root.Add(Role.P), [Sample.Text(10, 10, "In")]);
        Refused("inside each other", Sample.OnePage(_root, new ArtifactItem(ArtifactKind.Layout, [inner])));
        Refused("inside each other", Sample.OnePage(_root, new TaggedItem(_root.Add(Role.P), [inner])));
    }

    [Fact]
    public void Links_and_bookmarks_that_lead_nowhere()
    {
        var link = new LinkArea(0, 0, 10, 10, "nowhere", false, "Nowhere", _root.Add(Role.P).Add(Role.Link));
        var document = Sample.OnePage(_root);
        Refused("“nowhere”", document with { Pages = [document.Pages[0] with { Links = [link] }] });
        Refused("“lost”", document with { Bookmarks = [new Bookmark("Lost", "lost", [])] });
    }

    [Fact]
    public void Two_places_of_one_name()
    {
        var document = Sample.OnePage(_root);
        Refused("“here”", document with { Pages = [document.Pages[0] with { Destinations = [("here", 1), ("here", 2)] }] });
    }

    [Fact]
    public void Characters_without_a_glyph() =>
        Refused("no glyph for “漢”", Sample.OnePage(_root, Sample.Text(10, 10, "A 漢")));

    [Fact]
    public void Pictures_that_are_none() =>
        Refused("A picture cannot be read", Sample.OnePage(_root, new ImageItem(new ImageData(ImageFormat.Png, new byte[] { 1, 2, 3 }, 1, 1), 0, 0, 10, 10)));

    [Fact]
    public void Coordinates_that_are_no_numbers() =>
        Refused("not a number", Sample.OnePage(_root, new PathItem(PathBuilder.Line(0, 0, double.NaN, 1), null, new Stroke(Colour.Black, 1))));

    private static void Refused(string words, PressDocument document) =>
        Assert.Contains(words, Assert.Throws<ArgumentException>(() => Pdf.Write(document)).Message, StringComparison.Ordinal);
}
