using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What to know before beginning: how to print so that it measures true, and what can hurt.</summary>
internal static class BeforePart
{
    private static readonly string[] Hazards = ["knives", "glue", "heat", "small_parts", "contents"];

    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, IDrawing checkSquare, string checkSquareText)
    {
        var phrases = context.Phrases;
        var cautions = Hazards
            .Select(hazard => new TextInlinePair(phrases[$"before.cautions.{hazard}.name"], phrases[$"before.cautions.{hazard}.text"]).AsItem())
            .Concat(context.Source.Cautions.Select(caution => (IReadOnlyList<Block>)[Words.Paragraph(caution)]));
        return new FlowPart(
            [
                Words.Heading(1, phrases["before.title"], "before"),
                new KeepTogetherBlock(
                [
                    Words.Heading(2, phrases["before.print.title"], "print"),
                    new BesideBlock(
                        [Words.Paragraph(phrases["before.print.scale"]), Words.Paragraph(phrases["before.print.check"]), Words.Paragraph(phrases["before.print.wrong"])],
                        new FigureBlock(checkSquare, checkSquareText, Words.Plain(phrases["before.print.caption"]))),
                ]),
                new KeepTogetherBlock(
                [
                    Words.Heading(2, phrases["before.cautions.title"], "cautions"),
                    new CalloutBlock(CalloutKind.Caution, phrases["before.cautions.lead"], [new ListBlock(ListKind.Bulleted, 1, [.. cautions])]),
                ]),
            ])
        { Title = phrases["before.title"] };
    }

    private sealed record TextInlinePair(string Name, string Text)
    {
        public IReadOnlyList<Block> AsItem() =>
            [new ParagraphBlock([new TextInline(Name, Emphasis.Bold), new TextInline(" " + Text)])];
    }
}
