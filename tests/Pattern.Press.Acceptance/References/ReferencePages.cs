using Pattern.Press.Acceptance.Architecture;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Previews;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Png;
using SkiaSharp;

namespace Pattern.Press.Acceptance.References;

/// <summary>
/// A few pages against pictures of them that somebody looked at and found good. What changes a page on purpose is accepted
/// by running these tests with ACCEPT_PAGES=yes and looking at the pictures before they are committed.
/// </summary>
public sealed class ReferencePages
{
    private const int Width = 320;

    // Letters of another version of the drawing library are smoothed otherwise; a moved line differs by several times this.
    private const double MostMeanDifference = 0.8;
    private const double MostWrongPixels = 0.004;

    private static readonly string Folder = Path.Combine(DependencyArrows.RepositoryRoot(), "tests", "Pattern.Press.Acceptance", "References");

    [Theory]
    [InlineData("handout", "a4", "cover")]
    [InlineData("handout", "a4", "5")]
    [InlineData("handout", "a4", "T2")]
    [InlineData("market", "letter", "cover")]
    [InlineData("market", "letter", "1")]
    [InlineData("market", "letter", "9")]
    public void A_page_looks_as_it_did_when_it_was_accepted(string theme, string paper, string name)
    {
        var problems = new Problems();
        var booklet = new BookletPress(Resources.OfProgram).LayOut(
            Workshop.FolderOf("tea-tin-box"), new BuildOptions { Papers = [PaperSize.Find(paper)!], Theme = theme }, problems);
        Assert.Empty(problems.All);
        var pages = booklet![0].Document.Pages;
        var page = PageNames.Find(PageNames.Of(pages), name);
        Assert.NotNull(page);
        var bytes = PngExporter.Render(pages[page.Value], Width);
        var file = Path.Combine(Folder, $"{theme}-{paper}-{name}.png");
        if (Environment.GetEnvironmentVariable("ACCEPT_PAGES") == "yes")
        {
            File.WriteAllBytes(file, bytes);
            return;
        }

        using var accepted = SKBitmap.Decode(file);
        Assert.True(accepted is not null, $"There is no {file}. Run this test with ACCEPT_PAGES=yes, and look at the picture.");
        using var found = SKBitmap.Decode(bytes);
        Assert.Equal((accepted.Width, accepted.Height), (found.Width, found.Height));
        var (mean, wrong) = Differences(accepted, found);
        if (mean <= MostMeanDifference && wrong <= MostWrongPixels)
            return;
        var seen = Path.Combine(Path.GetTempPath(), Path.GetFileName(file));
        File.WriteAllBytes(seen, bytes);
        Assert.Fail(FormattableString.Invariant(
            $"Page {name} of {theme} on {paper} differs from {file} by {mean:0.00} on average, and {wrong:0.0%} of it wholly. It is in {seen}. If that is how it should look, run the test with ACCEPT_PAGES=yes."));
    }

    [Fact]
    public void A_line_moved_by_a_millimetre_would_be_noticed()
    {
        using var accepted = SKBitmap.Decode(Path.Combine(Folder, "handout-a4-5.png"));
        using var moved = new SKBitmap(accepted.Info);
        for (var y = 0; y < accepted.Height; y++)
        {
            // A strip of a few lines, a millimetre and a quarter lower.
            for (var x = 0; x < accepted.Width; x++)
                moved.SetPixel(x, y, accepted.GetPixel(x, y is >= 102 and < 142 ? y - 2 : y));
        }

        var (mean, wrong) = Differences(accepted, moved);
        Assert.True(mean > MostMeanDifference || wrong > MostWrongPixels);
    }

    private static (double Mean, double Wrong) Differences(SKBitmap a, SKBitmap b)
    {
        var (sum, wrong, pixels) = (0.0, 0, a.Pixels.Zip(b.Pixels).ToList());
        foreach (var (one, other) in pixels)
        {
            var difference = Math.Max(Math.Abs(one.Red - other.Red), Math.Max(Math.Abs(one.Green - other.Green), Math.Abs(one.Blue - other.Blue)));
            sum += difference;
            wrong += difference > 96 ? 1 : 0;
        }

        return (sum / pixels.Count, (double)wrong / pixels.Count);
    }
}
