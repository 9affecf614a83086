using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What to know before beginning: how to print so that it measures true, and what can hurt.</summary>
internal static class BeforePart
{
    private static readonly string[] Care =
    [
        "before.care.knives", "before.care.glue", "before.care.hot", "before.care.small", "before.care.contents",
        "before.care.children",
    ];

    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values, MakersWords words, PaperSize paper)
    {
        var phrases = context.Phrases;
        var square = values.One(new LengthValue(CheckMeasures.Square), CheckMeasures.Millimetres);
        var bar = values.One(new LengthValue(CheckMeasures.Bar), CheckMeasures.Inches);
        var (squareSide, barLength) = (values.Length(CheckMeasures.Square, CheckMeasures.Millimetres), values.Length(CheckMeasures.Bar, CheckMeasures.Inches));
        var checkSquare = new CheckSquare(squareSide, barLength);
        var alternative = phrases.Format(
            "before.square.alternative",
            ("square", squareSide),
            ("bar", barLength));
        var care = Care.Select(key => phrases.Inlines(key))
            .Concat(context.Source.Cautions.Select(words.Inlines));
        return new FlowPart(
            [
                Words.Heading(1, phrases["before.title"], "before"),
                Words.Phrase(phrases, "before.lead", ParagraphKind.Lead),
                Words.Subheading(2, phrases["before.print.title"], "print"),
                new BesideBlock(
                    [
                        Words.Bullets([
                            phrases.Inlines("before.print.setting"),
                            phrases.Inlines("before.print.paper", ("paper", Words.Plain(paper.Name))),
                        ]),
                        new ParagraphBlock(
                        [
                            new TextInline(phrases["before.square.title"], Emphasis.Bold),
                            new TextInline(" "),
                            .. phrases.Inlines("before.square.text", ("square", square), ("bar", bar)),
                        ]) { Destination = "check-square" },
                        Words.Phrase(phrases, "before.square.wrong"),
                    ],
                    new FigureBlock(checkSquare, alternative, [], FigureWidth.Small)),
                Words.Bullets([phrases.Inlines("before.print.thin"), phrases.Inlines("before.print.draft"), .. Key(context)]),
                new CalloutBlock(CalloutKind.Caution, phrases["before.care.title"], [Words.Bullets(care)]),
            ])
        { Title = phrases["before.title"] };
    }

    private static IEnumerable<IReadOnlyList<Inline>> Key(BookletContext context) =>
        context.Source.Without.Contains(BookletPart.Key)
            ? []
            : [context.Phrases.Inlines("before.print.key", ("page", [new PageNumberInline("key")]))];
}
