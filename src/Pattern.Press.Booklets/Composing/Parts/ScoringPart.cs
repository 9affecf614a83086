using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>How each piece is scored and cut out, action by action, beside a drawing that carries the letters.</summary>
internal static class ScoringPart
{
    /// <summary>Composes the part; null when there is nothing to score.</summary>
    public static FlowPart? Compose(BookletContext context, ValueText values, IFigureWords words)
    {
        var phrases = context.Phrases;
        var pieces = context.Primary.Kit.Parts.Where(part => part.Kind == PartKind.Piece && (part.Piece.Folds.Count > 0 || part.Piece.Waste.Count > 0)).Select(part => part.Piece).ToList();
        if (pieces.Count == 0)
            return null;
        // The first piece goes with the words that explain it: a title above an empty page leads nowhere.
        List<Block> opening =
        [
            Words.Heading(1, phrases["scoring.title"], "scoring"),
            Words.Phrase(phrases, "scoring.lead", ParagraphKind.Lead),
            Words.Phrase(phrases, "scoring.how"),
        ];
        return new FlowPart(
            [.. pieces.SelectMany((piece, i) => Piece(context, values, words, piece, i == 0 ? opening : []))],
            FlowsOn: true)
        { Title = phrases["scoring.title"] };
    }

    private static IEnumerable<Block> Piece(BookletContext context, ValueText values, IFigureWords words, Piece piece, IReadOnlyList<Block> above)
    {
        var phrases = context.Phrases;
        var other = context.Secondary.Kit.Parts.First(part => part.Piece.Id == piece.Id).Piece;
        var (here, there) = (context.Primary.Kit.Ruler, context.Secondary.Kit.Ruler);
        var schedule = ScoreSchedule.For(piece);
        var alike = ScheduleShape.IsAlike(schedule, ScoreSchedule.For(other));
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
        var figure = new FigureBlock(drawing, AlternativeText.Of(drawing), []);
        if (!schedule.IsByPoints)
            return [new KeepTogetherBlock([.. above, Words.Subheading(2, piece.Name), new BesideBlock(text, figure) { FigureFirst = true }])];

        // The letters in the words are found in the drawing and in the table: all of it is seen at once where a page holds
        // it, and the words and the drawing in any case.
        var how = new KeepTogetherBlock([.. above, Words.Subheading(2, piece.Name), Words.Phrase(phrases, "scoring.by_points.how"), figure, text[0]]);
        var points = PointTable(phrases, values, schedule, alike ? ScoreSchedule.For(other) : null, here);
        var blocks = new List<Block> { new KeepTogetherBlock([how, points]) { HasLargeFigures = true } };
        if (!alike)
        {
            blocks.AddRange(text.Skip(1));
            blocks.Add(PointTable(phrases, values, ScoreSchedule.For(other), null, there));
        }

        return blocks;
    }

    /// <summary>Every lettered corner with its place on the sheet.</summary>
    internal static TableBlock PointTable(PhraseBook phrases, ValueText values, ScoreSchedule here, ScoreSchedule? there, Ruler ruler)
    {
        TableCell Place(Length length, Length? other) => new(values.Both(new LengthValue(length), other is { } same ? new LengthValue(same) : null, ruler, inTable: true));
        string[] heads = ["scoring.by_points.point", "scoring.by_points.left", "scoring.by_points.top"];
        TableCell[] Cells(int i) => i < here.Points.Count
            ? [Words.Head(here.Points[i].Letter), Place(here.Points[i].FromLeft, there?.Points[i].FromLeft), Place(here.Points[i].FromTop, there?.Points[i].FromTop)]
            : [Words.Cell(""), Words.Cell(""), Words.Cell("")];

        // Two halves side by side.
        var half = (here.Points.Count + 1) / 2;
        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right, ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([.. heads.Concat(heads).Select(head => Words.Head(phrases[head]))])],
            [.. Enumerable.Range(0, half).Select(i => new TableRow([.. Cells(i), .. Cells(half + i)]))]);
    }

    private static ListBlock Numbered(IReadOnlyList<IReadOnlyList<Inline>> actions) =>
        new(ListKind.Numbered, 1, [.. actions.Select(action => (IReadOnlyList<Block>)[new ParagraphBlock(action)])]);
}
