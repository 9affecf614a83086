using Pattern.Press.Conformance.Text;

namespace Pattern.Press.Conformance.Booklets;

public sealed class BookletTests
{
    // For mail and phones; what the press promises itself for 20 pages.
    private const int MostBytesOfAPage = 20_000;

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void A_booklet_conforms_on_every_paper_in_every_theme(string name, string paper, string theme) =>
        Assert.Empty(PdfConformance.Check(Shelf.Of(name, paper, theme).File));

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void A_booklet_is_small(string name, string paper, string theme)
    {
        var (pages, file) = Shelf.Of(name, paper, theme);
        Assert.InRange(file.Length, 1, MostBytesOfAPage * pages.Document.Pages.Count);
    }

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void A_booklet_says_what_was_set(string name, string paper, string theme)
    {
        var (pages, file) = Shelf.Of(name, paper, theme);
        SetText.MatchesFile(pages.Document, file);
    }
}
