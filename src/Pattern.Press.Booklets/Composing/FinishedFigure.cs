using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>TEMPORARY.</summary>
internal static class FinishedFigure
{
    public static IDrawing Cover(BookletContext context) => Drawing(context);
    public static IDrawing Drawing(BookletContext context) => new FlatDrawing { Piece = context.Primary.Kit.Parts[0].Piece, Ruler = context.Primary.Kit.Ruler, Show = FigureShow.Flat, Words = new PhraseFigureWords(context.Phrases) };
    public static string AlternativeText(BookletContext context, ValueText values) => "tmp";
    public static IDrawing Folded(Piece piece) => throw new NotSupportedException();
    public static string FoldedText(BookletContext context, Piece piece) => "tmp";
}
