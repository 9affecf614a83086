using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Acceptance.Templates;
using UglyToad.PdfPig;

namespace Pattern.Press.Acceptance.Printing;

/// <summary>Templates alone, greys, several kits and other papers, as files.</summary>
public sealed class PrintingChoices
{
    [Fact]
    public void Templates_alone_are_the_same_pages_as_in_the_whole_booklet()
    {
        using var copy = new BookletCopy();
        Assert.Equal(0, copy.Build("--paper", "a5").Code);
        Assert.Equal(0, copy.Build("--paper", "a5", "--only", "templates").Code);
        var (all, alone) = (Read(copy, "spoilt-box-a5.pdf"), Read(copy, "spoilt-box-templates-a5.pdf"));
        var templates = all.TemplatePages.ToList();
        Assert.Equal(templates.Select(page => page.Label), alone.Pages.Select(page => page.Label));
        Assert.Equal(templates.Select(page => page.Text), alone.Pages.Select(page => page.Text));
        Assert.Equal(templates.Select(page => page.Strokes.Count), alone.Pages.Select(page => page.Strokes.Count));
        Assert.Contains(alone.Pages, page => new TemplatePage(page).Work.Count == 0);
    }

    [Fact]
    public void Templates_alone_are_printed_also_of_a_booklet_that_leaves_them_out()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "papers: [a4, letter]", "papers: a4\nleave_out: templates");
        Assert.Equal(0, copy.Build().Code);
        Assert.Empty(Read(copy, "spoilt-box-a4.pdf").TemplatePages);
        Assert.Equal(0, copy.Build("--only", "templates").Code);
        Assert.NotEmpty(Read(copy, "spoilt-box-templates-a4.pdf").TemplatePages);
    }

    [Fact]
    public void Greys_leave_no_colour_in_the_file()
    {
        using var copy = new BookletCopy();
        Assert.Equal(0, copy.Build("--paper", "a4", "--theme", "market", "--grey").Code);
        Assert.Equal(0, copy.Build("--paper", "a4", "--theme", "market").Code);
        Assert.NotEmpty(Colours(copy, "spoilt-box-a4.pdf"));
        Assert.Empty(Colours(copy, "spoilt-box-a4-grey.pdf"));

        // Nothing else is different.
        var (coloured, grey) = (Read(copy, "spoilt-box-a4.pdf"), Read(copy, "spoilt-box-a4-grey.pdf"));
        Assert.Equal(coloured.Pages.Select(page => page.Text), grey.Pages.Select(page => page.Text));
        Assert.Equal(coloured.Pages.Select(page => page.Strokes.Count), grey.Pages.Select(page => page.Strokes.Count));
    }

    [Fact]
    public void Several_kits_take_fewer_pages_than_printing_one_as_often_and_say_how_many_to_cut()
    {
        using var copy = new BookletCopy();
        Assert.Equal(0, copy.Build("--paper", "a3", "--only", "templates").Code);
        var one = Read(copy, "spoilt-box-templates-a3.pdf");
        Assert.Equal(0, copy.Build("--paper", "a3", "--only", "templates", "--copies", "4").Code);
        var four = Read(copy, "spoilt-box-templates-a3.pdf");
        Assert.True(four.Pages.Count < 4 * one.Pages.Count);

        // The base fills a page of A3, so it is there once; lid, platform and mats are there four times.
        Assert.Contains(four.Pages, page => page.Text.Contains("Base", StringComparison.Ordinal) && page.Text.Contains("Cut 4 from", StringComparison.Ordinal) && page.Text.Contains("for 4 kits", StringComparison.Ordinal));
        var sides = four.Pages.Where(page => page.Text.Contains("There are enough for 4 kits", StringComparison.Ordinal)).ToList();
        foreach (var name in new[] { "Lid", "Platform", "Gusset mat, left" })
            Assert.Equal(4, sides.Sum(page => page.Text.Split($"{name} · cut ").Length - 1));

        // To the millimetre, there is four times as much to cut round, but for the base.
        Assert.Equal((4 * CutLength(one)) - (3 * CutLength(one, "Base")), CutLength(four), 1.0);
    }

    [Theory]
    [InlineData("330x483mm", 330, 483)]
    [InlineData("13x19in", 330.2, 482.6)]
    public void A_paper_of_any_size_is_the_size_of_its_pages(string paper, double width, double height)
    {
        using var copy = new BookletCopy();
        Assert.Equal(0, copy.Build("--paper", paper, "--printer-margin", "5mm", "--lap", "0mm").Code);
        var book = Read(copy, $"spoilt-box-{paper}.pdf");
        Assert.All(book.Pages, page => Assert.Equal((width, height), (Math.Round(Math.Min(page.Width, page.Height), 2), Math.Round(Math.Max(page.Width, page.Height), 2))));
    }

    private static PrintedBook Read(BookletCopy copy, string file) => new(File.ReadAllBytes(Path.Combine(copy.Out, file)));

    private static double CutLength(PrintedBook book, string? name = null) => book.TemplatePages
        .Select(page => new TemplatePage(page))
        .Where(page => name is null || page.Name == name)
        .Sum(page => page.Work.Where(line => line.Kind == LineKind.Cut).Sum(line => line.Length));

    // Operators of ISO 32000-1, 8.6.8, that set a colour with more than one component, and pictures that are not grey.
    private static List<string> Colours(BookletCopy copy, string file)
    {
        using var document = PdfDocument.Open(File.ReadAllBytes(Path.Combine(copy.Out, file)));
        var found = new List<string>();
        foreach (var page in document.GetPages())
        {
            found.AddRange(page.Operations.Where(operation => operation.Operator is "rg" or "RG" or "k" or "K" or "sc" or "SC" or "scn" or "SCN" or "cs" or "CS" or "sh").Select(operation => operation.ToString()!));
            found.AddRange(page.GetImages().Where(image => image.ColorSpaceDetails?.NumberOfColorComponents != 1).Select(_ => "a picture"));
        }

        return found;
    }
}
