using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using SkiaSharp;

namespace Pattern.Press.Acceptance.Previews;

/// <summary>
/// Pictures made by <c>preview</c> against the PDF of the same page, so that what a maker sees is what will be printed.
/// Where each line of text begins and ends is taken from the PDF by a reader that is not ours; where Poppler is installed,
/// the page that it draws is laid over ours as well.
/// </summary>
public sealed class PicturesAgainstPdf : IDisposable
{
    private const int Width = 1000;
    private readonly string _scratch = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public void Dispose() => Directory.Delete(_scratch, recursive: true);

    private SKBitmap Preview(string page, int width)
    {
        var (code, output, errors) = BookletCopy.Run("preview", Workshop.FolderOf("tea-tin-box"), "--page", page, "--paper", "a4", "--width", width.ToString(CultureInfo.InvariantCulture), "--out", _scratch);
        Assert.Equal((0, ""), (code, errors));
        return SKBitmap.Decode(output.Trim());
    }

    // The picture is four times as fine as the one the tolerance is for, so that the grey pixel at the edge of a letter, which
    // may be the first or the last of it, counts for a quarter of one.
    // Pages of words; between the lines of a drawing there is no telling whose the ink is.
    [Theory]
    [InlineData("2")]
    [InlineData("4")]
    public void Lines_of_text_begin_and_end_within_half_a_pixel_of_where_the_pdf_has_them(string label)
    {
        Workshop.Of("tea-tin-box", "a4", out var book);
        var page = book.Pages.Single(one => one.Label == label);
        const int Fine = 4;
        using var picture = Preview(label, Width * Fine);
        var scale = Width * Fine / page.Width;
        Assert.Equal(Math.Ceiling((page.Height * scale) - 0.01), picture.Height);
        var compared = 0;
        foreach (var line in Alone(page))
        {
            var top = (int)((line.Ink.Top - 0.1) * scale);
            var bottom = (int)((line.Ink.Bottom + 0.1) * scale);
            var (left, right) = Extent(picture, (int)((line.Ink.Left - 1) * scale), (int)((line.Ink.Right + 1) * scale), top, bottom);
            Assert.InRange(left - (line.Ink.Left * scale), -0.5 * Fine, 0.5 * Fine);
            Assert.InRange(right - (line.Ink.Right * scale), -0.5 * Fine, 0.5 * Fine);
            compared++;
        }

        Assert.InRange(compared, 3, int.MaxValue);
    }

    [Theory]
    [InlineData("2")]
    [InlineData("9")]
    [InlineData("T2")]
    public void Poppler_draws_the_same_page(string label)
    {
        var finished = Workshop.Of("tea-tin-box", "a4", out var book);
        var page = book.Pages.Single(one => one.Label == label);
        var file = finished.Files.Single(one => one.FileName.EndsWith("-a4.pdf", StringComparison.Ordinal));
        using var poppler = Poppler(file.Bytes, page.Number);
        using var own = Preview(label, Width);
        Assert.Equal((poppler.Width, poppler.Height), (own.Width, own.Height));

        // Edges are smoothed in two ways, so pixels differ a little; a line of text that is missing, or stands half a
        // millimetre off, makes several times as many of them differ wholly.
        var different = poppler.Pixels.Zip(own.Pixels).Count(pair => Math.Abs(pair.First.Green - pair.Second.Green) > 150);
        Assert.InRange(different, 0, Width / 2);
    }

    // Lines with nothing else near their ends: neither other text nor a drawn line.
    private static IEnumerable<PrintedRun> Alone(PrintedPage page)
    {
        var lines = page.Pieces().Where(line => line.Text.Trim().Length > 3 && !line.Text.Contains('/', StringComparison.Ordinal)).ToList();
        return lines.Where(line =>
            lines.TrueForAll(other => ReferenceEquals(other, line) || Apart(line, other.Ink)) &&
            page.Fills.All(fill => Apart(line, Box(fill.Points))) &&
            page.Strokes.SelectMany(stroke => stroke.Lines).All(stroke => Apart(line, Box([stroke.From, stroke.To]))));

        static bool Apart(PrintedRun line, (double Left, double Top, double Right, double Bottom) other) =>
            other.Left > line.Ink.Right + 1.5 || other.Right < line.Ink.Left - 1.5 || other.Top > line.Ink.Bottom + 0.4 || other.Bottom < line.Ink.Top - 0.4;

        static (double, double, double, double) Box(IReadOnlyList<Nets.Point> points) =>
            (points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
    }

    // Where ink begins and ends, to the part of a pixel that its first and last are covered.
    private static (double Left, double Right) Extent(SKBitmap picture, int from, int to, int top, int bottom)
    {
        double Ink(int x) => Enumerable.Range(top, bottom - top).Max(y => (255 - picture.GetPixel(x, y).Green) / 255.0);
        var columns = Enumerable.Range(from, to - from).Where(x => Ink(x) > 0.1).ToList();
        Assert.NotEmpty(columns);
        return (columns[0] + 1 - Math.Min(1, Ink(columns[0])), columns[^1] + Math.Min(1, Ink(columns[^1])));
    }

    private SKBitmap Poppler(byte[] file, int page)
    {
        var path = Path.Combine(_scratch, "file.pdf");
        File.WriteAllBytes(path, file);
        var (number, width, picture) = (page.ToString(CultureInfo.InvariantCulture), Width.ToString(CultureInfo.InvariantCulture), Path.Combine(_scratch, "poppler"));
        try
        {
            using var process = Process.Start("pdftoppm", ["-png", "-singlefile", "-f", number, "-l", number, "-scale-to-x", width, "-scale-to-y", "-1", path, picture]);
            process.WaitForExit();
            Assert.Equal(0, process.ExitCode);
        }
        catch (Win32Exception)
        {
            Assert.Skip("pdftoppm is not installed.");
        }

        return SKBitmap.Decode(picture + ".png");
    }
}
