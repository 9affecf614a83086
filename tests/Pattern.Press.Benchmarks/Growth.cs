using BenchmarkDotNet.Attributes;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Benchmarks;

/// <summary>Whether time grows with the number of pages and no faster: a page of the longest takes as long as of the shortest.</summary>
public class Growth
{
    private Book _book = null!;

    /// <summary>About 24, 250 and 1,000 pages.</summary>
    [Params(1, 10, 42)]
    public int Lengths { get; set; }

    /// <summary>Makes the book.</summary>
    [GlobalSetup]
    public void Prepare() => _book = LongBook.Make(Lengths);

    /// <summary>From blocks to bytes.</summary>
    [Benchmark]
    public long Blocks_to_bytes() => Typesetting.Write(Typesetting.LayOut(_book));
}
