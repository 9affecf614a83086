using BenchmarkDotNet.Attributes;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Sheets;

namespace Pattern.Press.Benchmarks;

/// <summary>Planning how the mats of a class are cut from sheets. The aim for a booklet is less than 50 ms.</summary>
[MemoryDiagnoser]
public class SheetPlans
{
    private static readonly (int Width, int Height, int Quantity)[] Mats =
        [(59, 74, 4), (74, 6, 8), (62, 62, 1), (62, 16, 4), (58, 58, 1), (58, 6, 4), (40, 30, 2), (81, 12, 1)];

    private static readonly Size Sheet = new(Length.FromMillimetres(304.8), Length.FromMillimetres(304.8));
    private WantedRectangle[] _wanted = [];

    /// <summary>For how many kits.</summary>
    [Params(1, 14, 100)]
    public int Kits { get; set; }

    /// <summary>What is wanted.</summary>
    [GlobalSetup]
    public void Want() => _wanted =
    [
        .. Mats.Select(mat => new WantedRectangle(
            $"{mat.Width} × {mat.Height}", new Size(Length.FromMillimetres(mat.Width), Length.FromMillimetres(mat.Height)), mat.Quantity * Kits)),
    ];

    /// <summary>The plan.</summary>
    [Benchmark]
    public int Plan() => SheetPlan.Make(_wanted, Sheet, new SheetOptions()).Sheets.Count;
}
