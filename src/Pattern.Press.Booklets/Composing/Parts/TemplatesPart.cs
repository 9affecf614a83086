using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

internal static class TemplatesPart
{
    public static FixedPart? Compose(BookletContext context, ValueText values, IFigureWords words, PaperSize paper, Problems problems) => null;
}
