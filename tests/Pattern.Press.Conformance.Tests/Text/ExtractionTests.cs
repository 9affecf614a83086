using System.Text.RegularExpressions;
using Pattern.Press.Conformance.Features;
using Pattern.Press.Typesetting.Tests.Export;
using UglyToad.PdfPig;

namespace Pattern.Press.Conformance.Text;

/// <summary>What readers of other makers take out of files is what was written.</summary>
public sealed partial class ExtractionTests
{
    // Where Poppler’s plain text goes column by column, or page by page, or where drawings hold lettering.
    private static readonly HashSet<string> _notInLines = new(
        ["figures", "rows of figures", "text beside a figure", "parts of a page", "tables with spans", "tables over pages", "rules and breaks", "contents"],
        StringComparer.Ordinal);

    // The contents are words of the layout, not of a writer.
    public static TheoryData<string, string> Written => Without(name => name == "contents");

    public static TheoryData<string, string> InLines => Without(_notInLines.Contains);

    [Theory]
    [MemberData(nameof(Written))]
    public void Each_paragraph_is_read_in_its_place(string name, string theme)
    {
        var feature = Feature.All.Single(feature => feature.Name == name);
        using var read = PdfDocument.Open(feature.File(Themes.Of(theme)));
        var objects = new PdfObjects(read);
        var marks = SetText.Marks(read.GetPages());
        var found = ReadStructure.Paragraphs(objects).Select(paragraph => Clean(string.Concat(paragraph.Select(mark => marks[mark]))));
        Assert.Equal(Words(feature).Append("Template"), found.Where(text => text.Length > 0));
    }

    [Theory]
    [MemberData(nameof(InLines))]
    public void Poppler_takes_out_the_words_as_written(string name, string theme)
    {
        var feature = Feature.All.Single(feature => feature.Name == name);
        var page = Tools.PdfToText(feature.File(Themes.Of(theme))).Split('\f')[0];

        // The running head, and the page number at the end.
        Assert.Equal(Clean($"A small document {string.Join(' ', Words(feature))} 1"), Clean(page));
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void Poppler_reads_the_structure_as_written(string name, string theme)
    {
        var feature = Feature.All.Single(feature => feature.Name == name);
        var tree = Tools.StructureText(feature.File(Themes.Of(theme)));

        // Text stands in quotation marks, that of each element on a line of its own; figures may show their lettering.
        var found = Clean(string.Concat(QuotedLine().Matches(tree).Select(match => match.Groups[1].Value)));
        Assert.Equal(WithoutSpaces(string.Concat(Words(feature).Append("Template"))), WithoutSpaces(found).Replace("LEAF", "", StringComparison.Ordinal));
    }

    private static TheoryData<string, string> Without(Func<string, bool> left)
    {
        var data = new TheoryData<string, string>();
        foreach (var feature in Feature.All.Where(feature => !left(feature.Name)))
        {
            foreach (var theme in Themes.Names)
                data.Add(feature.Name, theme);
        }

        return data;
    }

    private static IEnumerable<string> Words(Feature feature) =>
        WrittenText.Paragraphs(feature.Blocks).Prepend("A small document").Select(Clean).Where(text => text.Length > 0);

    private static string Clean(string text) => Spaces().Replace(text, " ").Trim();

    private static string WithoutSpaces(string text) => Spaces().Replace(text, "");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^\s*""(.*)""$", RegexOptions.Multiline)]
    private static partial Regex QuotedLine();
}
