using Pattern.Press.Acceptance.Booklets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>Templates put back together from the printed pages are the pieces of the model.</summary>
public sealed class ReassembledTemplates
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Templates_of_the_content_are_the_model(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        TemplateProof.Check(booklet, printed);
    }

    [Theory]
    [MemberData(nameof(Variant.Seeds), MemberType = typeof(Variant))]
    public void Templates_of_other_boxes_on_other_papers_are_the_model(int seed)
    {
        using var variant = new Variant(seed);
        var booklet = Finished.Make(variant.Folder);
        foreach (var printed in booklet.Printed.Values)
            TemplateProof.Check(booklet, printed);
    }
}
