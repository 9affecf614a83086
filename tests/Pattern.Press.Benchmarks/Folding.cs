using BenchmarkDotNet.Attributes;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Benchmarks;

/// <summary>Folding, proving and drawing a box of three pieces with its item.</summary>
[MemoryDiagnoser]
public class Folding
{
    private static readonly Item Tin = new("tin", ItemShape.Round, Length.FromMillimetres(58), Length.FromMillimetres(58), Length.FromMillimetres(64));

    private readonly Stock[] _stocks = [Stock("card", 0.3), Stock("mats", 0.12)];
    private Model _model = null!;
    private Piece _base = null!;

    /// <summary>Fits the box once.</summary>
    [GlobalSetup]
    public void Fit()
    {
        var problems = new Problems();
        var structure = Catalogue.Open(Resources.OfProgram.StructuresFolder, problems).Find("explosion-box", default, problems)!;
        var given = new Dictionary<string, GivenValue> { ["platform"] = new(new FlagValue(true), default) };
        _model = structure.Fit(new FitRequest { Ruler = Ruler.WholeMillimetres, Item = Tin, Given = given, Stocks = _stocks.ToDictionary(stock => stock.Id) }, problems)!;
        _base = _model.Kit.Pieces.First().Piece;
    }

    /// <summary>The pose of the base, finished.</summary>
    [Benchmark]
    public double Pose() => Folder.Finished(_base).WidestGap;

    /// <summary>The base half open: its gussets are solved for.</summary>
    [Benchmark]
    public double Solve() => Folder.Pose(_base, 0.5).WidestGap;

    /// <summary>All proofs of the three pieces together. The aim is less than 10 ms.</summary>
    [Benchmark(Baseline = true)]
    public IReadOnlyList<FoldingProof> Prove() => ModelProofs.Of(_model, Tin, _stocks);

    /// <summary>The hidden surfaces and lines of the finished thing, open and closed.</summary>
    [Benchmark]
    public FinishedDrawing Figure() => new(_model.Kit, Tin);

    private static Stock Stock(string id, double caliper) =>
        new(id, id, Length.FromMillimetres(caliper), null, new Size(Length.FromMillimetres(305), Length.FromMillimetres(305)));
}
