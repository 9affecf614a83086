using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>A place along a side of the sheet, with how far it is from the edge in each column.</summary>
/// <param name="At">Millimetres from the edge in the piece that is drawn.</param>
/// <param name="First">The distance in the units of the piece that is drawn.</param>
/// <param name="Second">The distance in the other fit, in its units; null if there is none.</param>
internal sealed record Station(double At, string First, string? Second)
{
    public string InOneLine => Second is null ? First : $"{First} / {Second}";

    public IReadOnlyList<string> Lines => Second is null ? [First] : [First, Second];
}

/// <summary>Finds the places along the sheet's sides that a maker measures.</summary>
internal sealed class Stations(Piece piece, Ruler ruler, Piece? other, Ruler? otherRuler, bool across, IFigureWords words)
{
    // The most that is cut off beside a panel so that it folds in freely, in millimetres.
    private const double Hair = 1.5;
    private readonly SortedDictionary<(long First, long Second), Station> _found = [];

    private double Along(Point p) => across ? p.X : p.Y;

    private double Beside(Point p) => across ? p.Y : p.X;

    /// <summary>The places found, from the edge on.</summary>
    public IReadOnlyList<Station> Found => [.. _found.Values];

    /// <summary>The far side of the sheet.</summary>
    public Station Side
    {
        get
        {
            static Length Of(Piece piece, bool across) => across ? piece.Sheet.Width : piece.Sheet.Height;
            return Make(Of(piece, across), other is null ? null : Of(other, across));
        }
    }

    public Stations AddFolds()
    {
        for (var i = 0; i < piece.Folds.Count; i++)
        {
            var fold = piece.Folds[i];
            var same = other is not null && other.Folds.Count == piece.Folds.Count ? other.Folds[i] : null;
            Add(fold.From, fold.To, same?.From, offRuler: true);
        }

        return this;
    }

    public Stations AddCuts()
    {
        for (var i = 0; i < piece.Cuts.Count; i++)
        {
            var cut = piece.Cuts[i];
            if (cut.IsArc)
                continue;
            Point? same = other is not null && other.Cuts.Count == piece.Cuts.Count ? other.Cuts[i].From : null;
            Add(cut.From, cut.To, same, offRuler: false);
        }

        return this;
    }

    public Stations AddSide()
    {
        var side = Side;
        _found.TryAdd((Length.FromMillimetres(side.At).Nanometres, long.MaxValue), side);
        return this;
    }

    // What lies off the ruler, such as the hair that is cut off beside a panel that folds in, is drawn but not measured.
    private void Add(Point from, Point to, Point? same, bool offRuler)
    {
        if (Math.Abs(Along(from) - Along(to)) > 1e-6 || Math.Abs(Beside(from) - Beside(to)) < 1e-6)
            return;
        var length = Length.FromMillimetres(Along(from));
        var side = across ? piece.Sheet.Width : piece.Sheet.Height;
        if (length <= Length.Zero || length >= side)
            return;
        if (!offRuler && !ruler.Marks(length))
        {
            // The cut beside such a hair is measured to the fold it is cut along.
            AddFoldNear(length);
            return;
        }

        Length? second = same is { } point ? Length.FromMillimetres(Along(point)) : null;
        _found.TryAdd((length.Nanometres, second?.Nanometres ?? 0), Make(length, second));
    }

    private void AddFoldNear(Length length)
    {
        foreach (var (at, station) in new Stations(piece, ruler, other, otherRuler, across, words).AddFolds()._found)
        {
            if (Math.Abs(station.At - length.Millimetres) < Hair && ruler.Marks(Length.FromMillimetres(station.At)))
                _found.TryAdd(at, station);
        }
    }

    private Station Make(Length length, Length? second) => new(
        length.Millimetres,
        words.Number(LengthFormat.Format(ruler.Judged(length), ruler)),
        second is { } there && otherRuler is not null ? words.Number(LengthFormat.Format(otherRuler.Judged(there), otherRuler)) : null);
}
