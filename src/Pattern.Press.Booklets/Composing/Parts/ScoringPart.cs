using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>How each piece is scored and cut out, action by action, beside a drawing that carries the letters.</summary>
internal static class ScoringPart
{
    /// <summary>Composes the part; null when there is nothing to score.</summary>
    public static FlowPart? Compose(BookletContext context, ValueText values, IFigureWords words)
    {
        var phrases = context.Phrases;
        var pieces = context.Primary.Kit.Parts.Where(part => part.Kind == PartKind.Piece && part.Piece.Folds.Count > 0).Select(part => part.Piece).ToList();
        if (pieces.Count == 0)
            return null;
        return new FlowPart(
            [
                Words.Heading(1, phrases["scoring.title"], "scoring"),
                Words.Phrase(phrases, "scoring.lead", ParagraphKind.Lead),
                Words.Phrase(phrases, "scoring.how"),
                .. pieces.Select(piece => Piece(context, values, words, piece)),
            ])
        { Title = phrases["scoring.title"] };
    }

    private static KeepTogetherBlock Piece(BookletContext context, ValueText values, IFigureWords words, Piece piece)
    {
        var phrases = context.Phrases;
        var other = context.Secondary.Kit.Parts.First(part => part.Piece.Id == piece.Id).Piece;
        var (here, there) = (context.Primary.Kit.Ruler, context.Secondary.Kit.Ruler);
        var alike = ScheduleShape.IsAlike(ScoreSchedule.For(piece), ScoreSchedule.For(other));
        var text = new List<Block> { Numbered(new ScoringWords(phrases, values, here).Of(piece, alike ? other : null)) };
        if (!alike)
        {
            // The other column needs words of its own where the pieces are not scored in the same order.
            text.Add(Words.Phrase(phrases, "scoring.second"));
            text.Add(Numbered(new ScoringWords(phrases, values, there).Of(other, null)));
        }

        var drawing = new FlatDrawing
        {
            Piece = piece,
            Ruler = here,
            Other = other,
            OtherRuler = there,
            Show = FigureShow.Flat,
            HasDimensions = false,
            Parts = context.Primary.Kit.Parts,
            Words = words,
        };
        return new KeepTogetherBlock(
        [
            Words.Subheading(2, piece.Name),
            new BesideBlock(text, new FigureBlock(drawing, AlternativeText.Of(drawing), [])) { FigureFirst = true },
        ]);
    }

    private static ListBlock Numbered(IReadOnlyList<IReadOnlyList<Inline>> actions) =>
        new(ListKind.Numbered, 1, [.. actions.Select(action => (IReadOnlyList<Block>)[new ParagraphBlock(action)])]);
}
