using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

internal static class MaterialsPart
{
    public static FlowPart? Compose(BookletContext context, ValueText values, Problems? problems = null) => null;
}
