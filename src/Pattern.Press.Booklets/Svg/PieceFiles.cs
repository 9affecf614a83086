using System.Globalization;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Svg;

/// <summary>A file for one piece.</summary>
/// <param name="FileName">Its name: <c>tea-tin-box-base.svg</c>.</param>
/// <param name="Bytes">The file.</param>
public sealed record PieceFile(string FileName, byte[] Bytes);

/// <summary>One SVG file for each piece and mat of the primary fit, the one that templates are drawn from.</summary>
internal static class PieceFiles
{
    public static IReadOnlyList<PieceFile> Make(BookletContext context)
    {
        var source = context.Source;
        var kit = context.Primary.Kit;
        return
        [
            .. kit.Parts.Select(part => new PieceFile(
                $"{source.Name}-{part.Piece.Id.Replace('_', '-')}.svg",
                PieceSvg.Write(part.Piece, context.Styles.Lines, $"{source.Title}: {part.Piece.Name}", Description(part)))),
        ];

        string Description(Part part)
        {
            var stock = source.Stocks.TryGetValue(part.Stock, out var known) ? known.Name : part.Stock;
            var cut = context.Phrases.Format("template.cut", ("count", part.Quantity.ToString(CultureInfo.InvariantCulture)), ("stock", stock));
            var written = new PhraseFigureWords(context.Phrases).Number(LengthFormat.Format(part.Piece.Sheet, kit.Ruler));
            var size = context.Phrases.Format("template.size", ("size", written));
            var side = part.Kind == PartKind.Piece ? context.Phrases["template.side"] : context.Phrases["template.side_mat"];
            return $"{cut} {size} {side}";
        }
    }
}
