using System.Collections.Concurrent;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>
/// Every structure of the catalogue, in sizes by lot, on every paper, with any margin and lap: what is printed goes together
/// again and is the model.
/// </summary>
public sealed class TemplatesOfStructures
{
    // Together with the papers several hundred files; every structure gets its share, and no less than one of each paper.
    private const int Cases = 240;

    public static TheoryData<string> Structures => [.. Ids];

    private static string Folder { get; } = Path.Combine(Workshop.ContentFolder, "structures");

    private static IReadOnlyList<string> Ids { get; } =
        [.. Directory.GetFiles(Folder, "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Structures))]
    public void Templates_of_a_structure_are_the_model_whatever_paper_margin_and_lap(string id)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadFile(Path.Combine(Folder, id + ".yaml"), problems)!;
        Assert.False(problems.HasErrors, string.Join(Environment.NewLine, problems.All));
        var cases = Math.Max(2 * PaperSize.All.Count, Cases / Ids.Count);
        var refused = 0;
        var failed = new ConcurrentQueue<string>();
        Parallel.For(0, cases, seed =>
        {
            if (!Holds(structure, seed, failed))
                Interlocked.Increment(ref refused);
        });
        Assert.True(failed.IsEmpty, $"{failed.Count} of {cases}:{Environment.NewLine}{string.Join(Environment.NewLine, failed.Order(StringComparer.Ordinal).Take(12))}");

        // Wide margins leave no usable tile of a small page; that has to stay the exception.
        Assert.InRange(refused, 0, cases / 8);
    }

    private static bool Holds(Structure structure, int seed, ConcurrentQueue<string> failed)
    {
        var lot = new Random((seed * 7919) + structure.Id.Sum(letter => letter));
        var stocks = FitByLot.Stocks(structure, lot);
        var model = FitByLot.Make(structure, stocks, lot);
        var known = PaperSize.All[seed % PaperSize.All.Count];

        // Every seventh paper is of no size that has a name.
        var paper = seed % 7 == 6 ? new Size(Length.FromMillimetres(lot.Next(180, 331)), Length.FromMillimetres(lot.Next(335, 480))) : known.Size;
        var (margin, lap) = (lot.Next(4, 21), lot.Next(4) == 0 ? 0 : lot.Next(1, 21));
        try
        {
            var printed = PrintedKit.Print(model.Kit, stocks, paper, margin, lap, PrintedKit.Themes[seed % PrintedKit.Themes.Count]);
            TemplateProof.Check(new Expected(model.Kit, null, PrintedKit.Phrases, margin, lap), printed);
            return true;
        }
        catch (TilePlanException) when (margin > 10 || lap > 10)
        {
            return false;
        }
        catch (Exception wrong)
        {
            failed.Enqueue($"{structure.Id}, seed {seed}, {paper.Width.Millimetres} × {paper.Height.Millimetres} mm, margin {margin} mm, lap {lap} mm: {wrong.Message}");
            return true;
        }
    }
}
