using Pattern.Press.Conformance.Text;
using Pattern.Press.Typesetting.Tests.Export;

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

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void Poppler_takes_out_every_letter_of_a_booklet_once(string name, string paper, string theme)
    {
        var (pages, file) = Shelf.Of(name, paper, theme);
        var set = string.Concat(pages.Document.Pages.SelectMany(page => SetText.Runs(page.Items)).Select(item => item.Run.Text));
        Assert.Equal(Letters(set), Letters(Tools.PdfToText(file)));
    }

    [Fact]
    public void Booklets_made_at_once_in_one_process_are_those_made_alone()
    {
        var alone = Shelf.All.Select(row => Shelf.Build(row.Data.Item1, row.Data.Item2, row.Data.Item3).File).ToArray();
        Assert.Equal(alone.Length, alone.Select(Convert.ToHexString).Distinct().Count());
        var rows = Shelf.All.ToList();
        Parallel.For(0, 2 * rows.Count, new ParallelOptions { MaxDegreeOfParallelism = 4 }, job =>
        {
            var row = rows[job % rows.Count].Data;
            Assert.True(alone[job % rows.Count].AsSpan().SequenceEqual(Shelf.Build(row.Item1, row.Item2, row.Item3).File), $"{row} came out different.");
        });
    }

    /// <summary>How often each letter stands in a text.</summary>
    private static string Letters(string text) => string.Join(' ', text
        .Where(c => !char.IsWhiteSpace(c) && !char.IsControl(c))
        .GroupBy(c => c)
        .OrderBy(letter => letter.Key)
        .Select(letter => $"{letter.Key}{letter.Count()}"));
}
