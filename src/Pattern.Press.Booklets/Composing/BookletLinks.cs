using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Phrases;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Where links in the words of a booklet may lead.</summary>
internal static class BookletLinks
{
    /// <summary>How the words of a booklet are read, with the places in it and the files that its links may name.</summary>
    public static MarkdownOptions Options(BookletSource source, PhraseBook phrases)
    {
        // A step whose file cannot be read is told of once, not wherever a link leads there too.
        var steps = source.Steps.Select(step => (step.File, step.Number)).Union(source.UnreadSteps).ToList();
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (file, number) in steps)
            files[file] = StepsPart.Destination(number);
        return new MarkdownOptions
        {
            TipTitle = phrases["callout.tip"],
            CautionTitle = phrases["callout.caution"],
            Destinations =
            [
                "cover", "introduction", "before", "print", "check-square", "materials", "measurements", "checked",
                "scoring", "sheets", "steps", "key", "proofs", "licence", "class", .. steps.Select(step => StepsPart.Destination(step.Number)),
            ],
            Files = files,
        };
    }
}
