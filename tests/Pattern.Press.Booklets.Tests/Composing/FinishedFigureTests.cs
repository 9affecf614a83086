using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>What drawings in space say to those who cannot see them: the sizes of both fits, the same as elsewhere in the booklet.</summary>
public class FinishedFigureTests
{
    private static readonly Lazy<BookletContext> TeaTinBox = new(() => Preparation.Prepare(
        Path.Combine(Repository.Root, "content", "tea-tin-box"), new BuildOptions(), Resources.OfProgram, new Problems())!);

    private static BookletContext Context => TeaTinBox.Value;

    private static FinishedFigure Figure => new(Context, new ValueText(Context.Primary.Kit.Ruler, Context.Secondary.Kit.Ruler, Context.Phrases));

    [Fact]
    public void The_finished_thing_is_as_large_in_words_as_on_the_cover()
    {
        var (here, there) = Figure.Outside;
        foreach (var show in Enum.GetValues<FinishedShow>())
        {
            var said = Figure.Describe(Figure.Finished(show));
            foreach (var (metric, imperial, word) in here.Zip(there, ["wide", "deep", "high"]))
                Assert.Contains($"{LengthFormat.Format(metric, Ruler.WholeMillimetres)} / {LengthFormat.Format(imperial, Ruler.SixteenthInches)} {word}", said, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("lid")]
    [InlineData("platform")]
    public void A_piece_that_is_glued_or_takes_mats_says_their_sizes_in_both_fits(string id)
    {
        var piece = Part(Context.Primary.Kit, id).Piece;
        Assert.Contains(Both(id), Figure.Describe(Figure.Gluing(piece, [])!), StringComparison.Ordinal);
        var mats = Context.Primary.Kit.Parts.Where(part => part.Kind == PartKind.Mat && part.Goes == id).ToList();
        Assert.NotEmpty(mats);
        var said = Figure.Describe(Figure.WithOutsideMats(piece)!, new EnglishWords());
        Assert.All(mats, mat => Assert.Contains($"{mat.Piece.Name}, {Both(mat.Piece.Id)}", said, StringComparison.Ordinal));
    }

    [Fact]
    public void A_folded_piece_says_how_large_it_is_in_both_fits()
    {
        var said = Figure.Describe(Figure.Folded(Part(Context.Primary.Kit, "lid").Piece, 1));
        Assert.Matches(@"^The lid, folded, \d+ mm / [\d /]+ in wide, \d+ mm / [\d /]+ in deep and \d+ mm / [\d /]+ in high\.$", said);
    }

    private static Part Part(Kit kit, string id) => kit.Parts.Single(part => part.Piece.Id == id);

    private static string Both(string id) =>
        $"{LengthFormat.Format(Part(Context.Primary.Kit, id).Piece.Sheet, Ruler.WholeMillimetres)} / {LengthFormat.Format(Part(Context.Secondary.Kit, id).Piece.Sheet, Ruler.SixteenthInches)}";
}
