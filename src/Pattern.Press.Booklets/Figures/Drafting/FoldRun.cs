using System.Runtime.CompilerServices;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Folds of one direction that follow each other on one line, drawn as one so that their dashes do not start anew.</summary>
internal sealed record FoldRun(Point From, Point To, FoldDirection Direction, bool IsDiagonal)
{
    // How many dashes and a half a curved fold is drawn in.
    private const double CurvedDashes = 20;

    // A figure is drawn several times until it suits its page.
    private static readonly ConditionalWeakTable<Piece, IReadOnlyList<FoldRun>> Known = [];

    public static IReadOnlyList<FoldRun> Of(Piece piece) => Known.GetValue(piece, Join);

    private static List<FoldRun> Join(Piece piece)
    {
        var runs = new List<FoldRun>();
        foreach (var fold in piece.Folds)
        {
            if (fold.Line.IsArc)
            {
                foreach (var chord in Shape.Dashed(fold.Line, fold.Line.Length / CurvedDashes))
                    runs.Add(new FoldRun(chord.From, chord.To, fold.Direction, false));
                continue;
            }

            var run = new FoldRun(fold.From, fold.To, fold.Direction, Diagonals.IsDiagonal(fold));
            for (var i = 0; i < runs.Count; i++)
            {
                if (runs[i].With(run) is not { } longer)
                    continue;
                run = longer;
                runs.RemoveAt(i);
                i = -1;
            }

            runs.Add(run);
        }

        return runs;
    }

    private FoldRun? With(FoldRun next)
    {
        if (Direction != next.Direction)
            return null;
        return Joined(this, next) ?? Joined(this, next.Reversed) ?? Joined(Reversed, next) ?? Joined(Reversed, next.Reversed);
    }

    private static FoldRun? Joined(FoldRun a, FoldRun b)
    {
        if (a.To.DistanceTo(b.From) > 1e-6)
            return null;
        var (u, v) = (a.To - a.From, b.To - b.From);
        var straight = Math.Abs((u.X * v.Y) - (u.Y * v.X)) < 1e-9 * (1 + (a.From.DistanceTo(a.To) * b.From.DistanceTo(b.To)));
        return straight && (u.X * v.X) + (u.Y * v.Y) > 0 ? a with { To = b.To } : null;
    }

    private FoldRun Reversed => this with { From = To, To = From };
}
