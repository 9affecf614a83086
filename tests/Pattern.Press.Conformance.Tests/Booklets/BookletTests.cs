using System.Globalization;
using Pattern.Press.Conformance.Text;
using Pattern.Press.Typesetting.Tests.Export;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

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

        // Poppler joins the two parts of a word that ends a line with its hyphen; other tests read hyphens one by one.
        Assert.Equal(Letters(set.Replace("-", "", StringComparison.Ordinal)), Letters(Tools.PdfToText(file).Replace("-", "", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void Words_of_different_lines_are_read_apart(string name, string paper, string theme)
    {
        using var read = PdfDocument.Open(Shelf.Of(name, paper, theme).File);
        var letters = SetText.Letters(read.GetPages());
        var joints = 0;
        foreach (var paragraph in ReadStructure.Paragraphs(new PdfObjects(read)).Select(marks => marks.SelectMany(mark => letters[mark]).ToList()))
        {
            foreach (var (before, after) in paragraph.Zip(paragraph.Skip(1)))
            {
                var (from, to) = (before.StartBaseLine, after.StartBaseLine);
                var apart = before.TextOrientation == TextOrientation.Horizontal ? Math.Abs(from.Y - to.Y) : Math.Abs(from.X - to.X);
                if (before.TextOrientation != after.TextOrientation || apart < 0.7 * before.PointSize)
                    continue;
                joints++;

                // Words break behind hyphens, dashes and slashes without a space.
                Assert.True(char.IsWhiteSpace(before.Value[^1]) || "-–—/".Contains(before.Value[^1], StringComparison.Ordinal) || char.IsWhiteSpace(after.Value[0]),
                    $"“{string.Concat(paragraph.Select(letter => letter.Value))}” runs together at “{before.Value}{after.Value}”.");
            }
        }

        Assert.True(joints > 50);
    }

    [Theory]
    [MemberData(nameof(Shelf.All), MemberType = typeof(Shelf))]
    public void Pages_are_labelled_as_printed(string name, string paper, string theme)
    {
        var (pages, file) = Shelf.Of(name, paper, theme);
        using var read = PdfDocument.Open(file);
        var objects = new PdfObjects(read);
        var ranges = objects.Array(objects.Dictionary(objects.Catalog, "PageLabels"), "Nums")!.Data.Chunk(2)
            .Select(pair => (First: ((NumericToken)pair[0]).Int, Range: (DictionaryToken)objects.Resolve(pair[1]))).ToList();
        var labels = pages.Document.Pages.Select((_, i) =>
        {
            var (first, range) = ranges.Last(range => range.First <= i);
            var number = objects.Name(range, "S") == "D" ? (i - first + (objects.Number(range, "St") ?? 1)).ToString(CultureInfo.InvariantCulture) : "";
            return objects.Text(range, "P") + number;
        }).ToList();
        Assert.Equal(pages.Document.Pages.Select(page => page.Label), labels);
        Assert.Equal("", labels[0]);
        Assert.Equal(Enumerable.Range(1, pages.TemplatePages).Select(number => $"T{number}"), labels.Where(label => label.StartsWith('T')));
        Assert.Equal(labels.Count(label => label.Length > 0 && char.IsAsciiDigit(label[0])), labels.Where(label => int.TryParse(label, CultureInfo.InvariantCulture, out _)).Max(label => int.Parse(label, CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Booklets_made_at_once_in_one_process_are_those_made_alone()
    {
        // One of each paper and theme, three times each, is enough to have them meet.
        var rows = Shelf.All.Select(row => row.Data).Take(4).ToList();
        var alone = rows.Select(row => Shelf.Of(row.Item1, row.Item2, row.Item3).File).ToArray();
        Assert.Equal(alone.Length, alone.Select(Convert.ToHexString).Distinct().Count());
        Parallel.For(0, 3 * rows.Count, new ParallelOptions { MaxDegreeOfParallelism = 6 }, job =>
        {
            var row = rows[job % rows.Count];
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
