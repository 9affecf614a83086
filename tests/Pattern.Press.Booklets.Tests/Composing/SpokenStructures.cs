using Pattern.Press.Acceptance.Templates;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>
/// Every structure of the catalogue in sizes by lot: somebody who has the sheet and the printed words alone scores exactly its
/// folds and cuts exactly its outline and its holes.
/// </summary>
public sealed class SpokenStructures
{
    private const int Cases = 12;
    private static readonly PhraseBook Phrases = PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", new Problems())!;

    public static TheoryData<string> Structures =>
        [.. Directory.GetFiles(Resources.OfProgram.StructuresFolder, "*.yaml").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Structures))]
    public void The_words_and_the_sheet_alone_make_the_piece(string id)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadFile(Path.Combine(Resources.OfProgram.StructuresFolder, id + ".yaml"), problems)!;
        var failed = new List<string>();
        for (var seed = 0; seed < Cases; seed++)
        {
            var lot = new Random((seed * 104729) + id.Length);
            var model = FitByLot.Make(structure, FitByLot.Stocks(structure, lot), lot);
            foreach (var piece in model.Kit.Parts.Where(part => part.Kind == PartKind.Piece).Select(part => part.Piece))
            {
                try
                {
                    Follow(piece, model.Kit.Ruler, lot);
                }
                catch (Exception wrong) when (wrong is not OutOfMemoryException)
                {
                    failed.Add($"{piece.Name}, seed {seed}, {model.Kit.Ruler.System}: {wrong.Message}");
                }
            }
        }

        Assert.True(failed.Count == 0, $"{failed.Count} wrong:{Environment.NewLine}{string.Join(Environment.NewLine, failed.Take(6))}");
    }

    private static void Follow(Piece piece, Ruler ruler, Random lot)
    {
        var values = new ValueText(ruler, ruler == Ruler.WholeMillimetres ? Ruler.SixteenthInches : Ruler.WholeMillimetres, Phrases);
        var schedule = ScoreSchedule.For(piece);
        var points = schedule.IsByPoints ? SpokenBench.PointsOf(Rows(ScoringPart.PointTable(Phrases, values, schedule, null, ruler))) : null;
        var bench = new SpokenBench(piece.Sheet, points);
        var actions = new ScoringWords(Phrases, values, ruler).Of(piece, null).Select(action => Text(action)).ToList();
        foreach (var action in actions)
            bench.Do(action);

        // What lies off the marks is said to tenths of a millimetre, or to the middle between two sixteenths.
        var near = ruler.System == UnitSystem.Metric ? 0.11 : 0.6;
        bool IsCard(Point at) => piece.Panels.Any(panel => panel.Outline.Contains(at) && !panel.Holes.Any(hole => hole.Contains(at)));
        var (w, h) = (piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        var lines = piece.Cuts.Concat(Outline.Rectangle(0, 0, w, h).Edges).ToList();
        for (var i = 0; i < 1500; i++)
        {
            var at = new Point(lot.NextDouble() * w, lot.NextDouble() * h);
            if (lines.TrueForAll(line => line.DistanceTo(at) > near))
                Assert.True(IsCard(at) == bench.IsCard(at), $"There is {(IsCard(at) ? "no " : "")}card at {at}.");
        }

        // Every cut of the piece is made, and every slit that is made is one.
        var said = bench.Lines.ToList();
        foreach (var at in piece.Cuts.SelectMany(Along))
            Assert.True(said.Exists(line => line.DistanceTo(at) < near), $"Nothing is cut at {at}.");
        foreach (var at in bench.Slits.SelectMany(Along))
            Assert.True(piece.Cuts.Any(cut => cut.DistanceTo(at) < near), $"A slit at {at} is none of the piece.");

        // Every fold is scored from end to end, and where a score is no fold, there is no card or a cut.
        foreach (var at in piece.Folds.SelectMany(fold => Along(fold.Line)))
            Assert.True(bench.Scores.Exists(score => score.DistanceTo(at) < near), $"The fold at {at} is not scored.");
        foreach (var at in bench.Scores.SelectMany(Along).Where(IsCard))
        {
            Assert.True(
                piece.Folds.Any(fold => fold.Line.DistanceTo(at) < near) || piece.Cuts.Any(cut => cut.DistanceTo(at) < near),
                $"The card is scored at {at}, where it is not folded.");
        }
    }

    private static IEnumerable<(string, string, string)> Rows(TableBlock table) =>
        table.Rows.SelectMany(row => row.Cells.Select(cell => Text(cell.Content)).Chunk(3)).Where(cells => cells[0].Length > 0).Select(cells => (cells[0], cells[1], cells[2]));

    private static IEnumerable<Point> Along(Edge edge) => Enumerable.Range(0, 11).Select(i => edge.At((i + 0.5) / 11));

    private static string Text(IReadOnlyList<Inline> inlines) => string.Concat(inlines.Select(inline => inline switch
    {
        TextInline text => text.Text,
        MeasureInline measure => measure.Text,
        _ => "?",
    })).Replace('\u00A0', ' ');
}
