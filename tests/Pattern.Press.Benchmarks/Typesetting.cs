using BenchmarkDotNet.Attributes;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Benchmarks;

/// <summary>
/// Setting type, apart from anything about boxes. The aim for the 24 pages is less than 30 ms, warm and on one core.
/// </summary>
[MemoryDiagnoser]
public class Typesetting
{
    private const string Words = "Score the base along both lines, 2 1/4 in from the edge; then fold it towards you, firmly, until the corners meet.";

    private readonly Book _book = LongBook.Make();
    private readonly Book _paragraphs = LongBook.Make() with
    {
        Parts = [new FlowPart([.. Enumerable.Range(0, 72).Select(seed => LongBook.Paragraph(seed, 60))])],
    };

    private readonly FontFace _face = LongBook.Styles.Text.Regular;
    private GlyphSet _glyphs = null!;
    private PressDocument _pages = null!;
    private int _shaped;

    /// <summary>What later stages begin with.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        _pages = LayOut(_book);
        var bits = new ulong[(ushort.MaxValue + 1) / 64];
        foreach (var glyph in Shaper.Shape(Words, _face, 11).Glyphs)
            bits[glyph.Id / 64] |= 1UL << (glyph.Id % 64);
        _glyphs = new GlyphSet(bits);
    }

    /// <summary>A hundred lines of text shaped, none of them seen before: what was shaped once is remembered.</summary>
    [Benchmark]
    public double Shaping()
    {
        var width = 0.0;
        for (var i = 0; i < 100; i++)
            width += Shaper.Shape(Words + _shaped++.ToString(System.Globalization.CultureInfo.InvariantCulture), _face, 11).Width;
        return width;
    }

    /// <summary>The same 4,300 words in 72 paragraphs and nothing else: nearly all of it is shaping and breaking lines.</summary>
    [Benchmark]
    public int Breaking_paragraphs() => LayOut(_paragraphs).Pages.Count;

    /// <summary>24 pages from blocks to bytes.</summary>
    [Benchmark(Baseline = true)]
    public long Blocks_to_bytes() => Write(LayOut(_book));

    /// <summary>24 pages from positioned items to bytes.</summary>
    [Benchmark]
    public long Pages_to_bytes() => Write(_pages);

    /// <summary>One font cut down to the glyphs of a sentence.</summary>
    [Benchmark]
    public object Subsetting() => Subsetter.Subset(_face.NativeFace, _face.PostScriptName, _glyphs);

    internal static PressDocument LayOut(Book book)
    {
        var problems = new List<LayoutProblem>();
        var document = BookLayout.LayOut(book, LongBook.Styles, problems);
        return problems.Count == 0 ? document : throw new InvalidOperationException(problems[0].Message);
    }

    internal static long Write(PressDocument document)
    {
        using var bytes = new MemoryStream();
        PdfExporter.Write(document, bytes);
        return bytes.Length;
    }
}
