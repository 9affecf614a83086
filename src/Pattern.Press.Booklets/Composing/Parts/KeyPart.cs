using Pattern.Press.Booklets.Figures;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The key to the lines.</summary>
internal static class KeyPart
{
    /// <summary>Composes the key.</summary>
    public static FlowPart Compose(BookletContext context, IFigureWords words) => new(
        [
            Words.Heading(1, context.Phrases["key.title"], "key"),
            Words.Phrase(context.Phrases, "key.lead"),
            new FigureBlock(new LineKey(words), context.Phrases["key.alternative"], []),
        ])
    { Title = context.Phrases["key.title"] };
}
