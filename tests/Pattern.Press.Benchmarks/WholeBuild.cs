using BenchmarkDotNet.Attributes;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Export.Png;

namespace Pattern.Press.Benchmarks;

/// <summary>The main job from the folder to the bytes, and its stages.</summary>
[MemoryDiagnoser]
[GcConcurrent(false)]
[WarmupCount(Warmup)]
public class WholeBuild
{
    // After so many builds the compiler has made everything as good as it can.
    private const int Warmup = 100;

    private readonly string _folder = Path.Combine(Repository.Root, "content", "tea-tin-box");
    private readonly BookletPress _press = new(Resources.OfProgram);
    private LaidOutBooklet _booklet = null!;

    /// <summary>Lays the booklet out once, for the stages after layout.</summary>
    [GlobalSetup]
    public void LayOutOnce() => _booklet = LayOut(PaperSize.A4)[0];

    /// <summary>Both PDFs, as the command makes them. The aim is less than 80 ms.</summary>
    [Benchmark(Baseline = true)]
    public int Both_papers() => _press.Build(_folder, new BuildOptions(), new Problems())!.Sum(built => built.Bytes.Length);

    /// <summary>One PDF.</summary>
    [Benchmark]
    public int One_paper() => _press.Build(_folder, new BuildOptions { Papers = [PaperSize.A4] }, new Problems())!.Sum(built => built.Bytes.Length);

    /// <summary>Reading the folder alone.</summary>
    [Benchmark]
    public object? Reading() => BookletReader.Read(_folder, new Problems());

    /// <summary>Everything up to finished pages.</summary>
    [Benchmark]
    public int Up_to_pages() => LayOut(PaperSize.A4)[0].Document.Pages.Count;

    /// <summary>From finished pages to a PDF.</summary>
    [Benchmark]
    public long Writing_the_pdf()
    {
        using var bytes = new MemoryStream();
        PdfExporter.Write(_booklet.Document, bytes);
        return bytes.Length;
    }

    /// <summary>One page as a picture, 800 pixels wide.</summary>
    [Benchmark]
    public int Picture_of_a_page() => PngExporter.Render(_booklet.Document.Pages[2], 800).Length;

    private IReadOnlyList<LaidOutBooklet> LayOut(PaperSize paper) =>
        _press.LayOut(_folder, new BuildOptions { Papers = [paper] }, new Problems())!;
}
