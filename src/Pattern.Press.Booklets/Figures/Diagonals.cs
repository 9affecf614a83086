using System.Globalization;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures;

/// <summary>A slanted score with the letters of its two ends.</summary>
/// <param name="Fold">The score.</param>
/// <param name="From">The end nearer to the middle of the sheet.</param>
/// <param name="FromLetter">Its letter.</param>
/// <param name="To">The other end.</param>
/// <param name="ToLetter">Its letter.</param>
public sealed record LetteredDiagonal(Fold Fold, Point From, string FromLetter, Point To, string ToLetter);

/// <summary>Gives letters to the ends of a piece's slanted scores, so that words and figures can name them alike.</summary>
public static class Diagonals
{
    // Letters that are taken for figures are left out.
    private const string Alphabet = "ABCDEFGHJKLMNPRSTUVWXYZ";

    /// <summary>Whether a fold runs neither across nor down.</summary>
    public static bool IsDiagonal(Fold fold)
    {
        ArgumentNullException.ThrowIfNull(fold);
        return Math.Abs(fold.From.X - fold.To.X) > 1e-6 && Math.Abs(fold.From.Y - fold.To.Y) > 1e-6;
    }

    /// <summary>The slanted scores, clockwise from the top left; ends that coincide share a letter.</summary>
    public static IReadOnlyList<LetteredDiagonal> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var middle = new Point(piece.Sheet.Width.Millimetres / 2, piece.Sheet.Height.Millimetres / 2);
        var letters = new List<(Point At, string Letter)>();
        return
        [
            .. piece.Folds.Where(IsDiagonal)
                .Select(fold => fold.From.DistanceTo(middle) <= fold.To.DistanceTo(middle) ? fold : fold with { From = fold.To, To = fold.From })
                .OrderBy(fold => Turn(fold.To, middle))
                .ThenBy(fold => Math.Round(fold.From.DistanceTo(middle), 6))
                .Select(fold => new LetteredDiagonal(fold, fold.From, Letter(fold.From), fold.To, Letter(fold.To))),
        ];

        string Letter(Point at)
        {
            foreach (var known in letters)
            {
                if (known.At.DistanceTo(at) < 1e-6)
                    return known.Letter;
            }

            var letter = Name(letters.Count);
            letters.Add((at, letter));
            return letter;
        }
    }

    private static string Name(int number) => number < Alphabet.Length
        ? Alphabet[number].ToString()
        : Alphabet[number % Alphabet.Length] + (number / Alphabet.Length).ToString(CultureInfo.InvariantCulture);

    // Clockwise from the left side, so that the top-left corner comes first.
    private static double Turn(Point p, Point middle)
    {
        var angle = Math.Round(Math.Atan2(p.Y - middle.Y, p.X - middle.X), 6);
        return angle < -Math.PI + 1e-5 || angle >= Math.PI - 1e-5 ? -Math.PI : angle;
    }
}
