using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What readers may do with the booklet, and thanks.</summary>
internal static class LicencePart
{
    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, MakersWords words)
    {
        var phrases = context.Phrases;
        var blocks = new List<Block> { Words.Heading(1, phrases["licence.title"], "licence") };
        if (context.Source.Licence.Length > 0)
        {
            blocks.Add(Words.Subheading(2, phrases["licence.terms"]));
            blocks.Add(new ParagraphBlock(words.Inlines(context.Source.Licence)));
        }

        if (context.Source.Credits.Count > 0)
        {
            blocks.Add(Words.Subheading(2, phrases["licence.credits"]));
            blocks.Add(Words.InColumns(context.Styles.Columns.Credits, [.. context.Source.Credits.Select(credit => new ParagraphBlock(words.Inlines(credit)))]));
        }

        if (context.Source.Date is { } date)
            blocks.Add(Words.Paragraph(phrases.Format("licence.made", ("date", phrases.Date(date))), ParagraphKind.Small));
        blocks.Add(Words.Paragraph(phrases.Format("licence.fonts", ("fonts", phrases.Join(Typefaces(context)))), ParagraphKind.Small));
        return new FlowPart(blocks, FlowsOn: true) { Title = phrases["licence.title"] };
    }

    private static string[] Typefaces(BookletContext context) =>
        [.. new[] { context.Styles.Display, context.Styles.Text }.Select(family => family.Regular.FamilyName).Distinct(StringComparer.Ordinal)];
}
