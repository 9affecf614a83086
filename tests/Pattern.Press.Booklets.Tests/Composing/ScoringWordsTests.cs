using CsCheck;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using static Pattern.Press.Booklets.Tests.Figures.Samples;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>The score schedule as it is printed, followed by somebody who has nothing but the words.</summary>
public class ScoringWordsTests
{
    private const double Near = 1e-3;
    private static readonly PhraseBook Phrases = PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", new Problems())!;

    private static readonly Gen<Piece> AnyPiece = Gen.Select(Gen.Int[30, 120], Gen.Int[30, 120], Gen.Int[20, 80], Gen.Int[4, 12], Gen.Bool)
        .Select((length, width, height, gusset, lid) => lid
            ? DoubleLid(Mm(length + 20), Mm(width + 20), Mm(10 + (height / 8)), 10, Mm(1))
            : GussetBox(Mm(length), Mm(width), Mm(height), Mm(gusset)));

    private static List<string> Actions(Piece piece, Piece? other) =>
        [.. new ScoringWords(Phrases, new ValueText(Ruler.WholeMillimetres, Ruler.SixteenthInches, Phrases), Ruler.WholeMillimetres).Of(piece, other).Select(Text)];

    private static string Text(IReadOnlyList<Inline> inlines) => string.Concat(inlines.Select(inline => inline switch
    {
        TextInline text => text.Text,
        MeasureInline measure => measure.Text,
        _ => "?",
    })).Replace('\u00A0', ' ');

    [Fact]
    public void The_known_base_is_said_in_both_columns()
    {
        Assert.Equal(
            [
                "Lay the top side, 224 mm (9 in), against the fence. Score from edge to edge at 80 and 144 mm (3 1/2 and 5 1/2 in).",
                "Turn the sheet a quarter to the left, so that the right side of the drawing, 212 mm (8 1/2 in), lies against the fence. Score from edge to edge at 80 and 132 mm (3 1/2 and 5 in).",
                "Mark B and D: 68 mm (3 in) from the top edge, and 68 and 156 mm (3 and 6 in) from the left edge.",
                "Mark A and C: 80 mm (3 1/2 in) from the top edge, and 80 and 144 mm (3 1/2 and 5 1/2 in) from the left edge.",
                "Mark G and E: 132 mm (5 in) from the top edge, and 80 and 144 mm (3 1/2 and 5 1/2 in) from the left edge.",
                "Mark H and F: 144 mm (5 1/2 in) from the top edge, and 68 and 156 mm (3 and 6 in) from the left edge.",
                "Lay a ruler from A to B, C to D, E to F and G to H, and score.",
                "Cut a rectangle off each corner of the sheet: 68 mm (3 in) along the top or bottom edge, 68 mm (3 in) along the side.",
            ],
            Actions(GussetBox(Mm(64), Mm(52), Mm(80), Mm(12)), GussetBox(In("2"), In("1 1/2"), In("3 1/2"), In("1/2"))));
    }

    [Fact]
    public void Somebody_with_the_sheet_and_the_words_alone_scores_every_fold_and_no_card_beside() =>
        AnyPiece.Sample(piece =>
        {
            var bench = new SpokenBench(piece.Sheet);
            foreach (var action in Actions(piece, null))
                bench.Do(action);

            // Every fold is scored from end to end.
            foreach (var fold in piece.Folds)
                Assert.All(Along(new Edge(fold.From, fold.To)), point => Assert.Contains(bench.Scores, score => score.DistanceTo(point) < Near));

            // Where a score is no fold, the card is cut away or cut through.
            foreach (var point in bench.Scores.SelectMany(Along))
            {
                var onFold = piece.Folds.Any(fold => new Edge(fold.From, fold.To).DistanceTo(point) < Near);
                var onCut = piece.Cuts.Any(cut => cut.DistanceTo(point) < Near);
                Assert.True(onFold || onCut || piece.Waste.Any(waste => waste.Outline.Contains(point)), $"{point} is scored and should not be.");
            }
        }, iter: 40);

    [Fact]
    public void Two_columns_that_are_scored_in_another_order_are_not_said_together()
    {
        // Longer one way on the metric ruler and the other way on the inch ruler.
        var (metric, imperial) = (GussetBox(Mm(64), Mm(63), Mm(80), Mm(12)), GussetBox(In("2 1/2"), In("2 9/16"), In("3 1/8"), In("1/2")));
        Assert.False(ScheduleShape.IsAlike(ScoreSchedule.For(metric), ScoreSchedule.For(imperial)));
        Assert.True(ScheduleShape.IsAlike(ScoreSchedule.For(metric), ScoreSchedule.For(GussetBox(In("2 5/8"), In("2 9/16"), In("3 1/8"), In("1/2")))));
    }

    [Fact]
    public void No_space_that_a_line_may_end_at_parts_a_value_from_what_it_is_on_the_other_ruler()
    {
        var actions = new ScoringWords(Phrases, new ValueText(Ruler.WholeMillimetres, Ruler.SixteenthInches, Phrases), Ruler.WholeMillimetres)
            .Of(GussetBox(Mm(64), Mm(52), Mm(80), Mm(12)), GussetBox(In("2"), In("1 1/2"), In("3 1/2"), In("1/2")));
        var pairs = 0;
        foreach (var action in actions)
        {
            var said = string.Concat(action.Select(inline => inline is TextInline text ? text.Text : ((MeasureInline)inline).Text));
            Assert.DoesNotContain("mm (", said, StringComparison.Ordinal);
            pairs += said.Split("mm\u00A0(").Length - 1;
        }

        // Two in each turn of the sheet, two in each of the four lines of points, two in the last.
        Assert.Equal(14, pairs);
    }

    private static IEnumerable<Point> Along(Edge edge) => Enumerable.Range(0, 41).Select(i => edge.At((i + 0.5) / 41));
}
