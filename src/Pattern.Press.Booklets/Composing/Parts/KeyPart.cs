using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The key to the lines.</summary>
internal static class KeyPart
{
    /// <summary>Composes the key.</summary>
    public static FlowPart Compose(BookletContext context, IDrawing key, string keyText) => new(
        [
            Words.Heading(1, context.Phrases["key.title"], "key"),
            Words.Paragraph(context.Phrases["key.lead"]),
            new FigureBlock(key, keyText, []),
        ])
    { Title = context.Phrases["key.title"] };
}
