using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Measure;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>Templates put back together from the printed pages are the pieces of the model.</summary>
public sealed class ReassembledTemplates
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Templates_of_the_content_are_the_model(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        TemplateProof.Check(Expected.Of(booklet), printed);
    }

    // Papers that the booklets do not name, small and large.
    [Theory]
    [MemberData(nameof(Workshop.Booklets), MemberType = typeof(Workshop))]
    public void Templates_of_the_content_are_the_model_on_every_other_paper(string name)
    {
        var booklet = Workshop.Of(name);
        PaperSize[] others = [.. PaperSize.All.Except(booklet.Source.Papers)];
        Assert.NotEmpty(others);
        foreach (var file in Workshop.Build(Workshop.FolderOf(name), others))
            TemplateProof.Check(Expected.Of(booklet), new PrintedBook(file.Bytes));
    }

    [Theory]
    [MemberData(nameof(Variant.Seeds), MemberType = typeof(Variant))]
    public void Templates_of_other_boxes_on_other_papers_are_the_model(int seed)
    {
        using var variant = new Variant(seed);
        var booklet = Finished.Make(variant.Folder);
        foreach (var printed in booklet.Printed.Values)
            TemplateProof.Check(Expected.Of(booklet), printed);
    }
}
