using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>The drawings of the finished thing, closed and open, with their words.</summary>
internal static class FinishedFigure
{
    private const double HalfOpen = 0.55;

    public static IDrawing Cover(BookletContext context) => Drawing(context);

    public static IDrawing Drawing(BookletContext context)
    {
        var thing = new FinishedThing(context.Primary.Kit, context.Source.Item);
        return new SolidDrawing([(thing.Closed(), Axonometry.Dimetric), (thing.Open(HalfOpen, null), Axonometry.Dimetric)]);
    }

    public static string AlternativeText(BookletContext context, ValueText values) => "tmp";

    public static IDrawing Folded(Piece piece) => new SolidDrawing(FinishedThing.Alone(piece, 1, false), Axonometry.Dimetric);

    public static string FoldedText(BookletContext context, Piece piece) => "tmp";
}
