using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Refuses the name of a piece that a booklet does not have.</summary>
internal static class UnknownPiece
{
    /// <summary>Whether a piece is one of the booklet's; if not, that is noted with the nearest name.</summary>
    public static bool IsKnown(string piece, Place place, IReadOnlyCollection<string> known, Problems problems)
    {
        if (known.Contains(piece))
            return true;
        Refuse(piece, place, known, problems);
        return false;
    }

    /// <summary>Notes that a piece is not one of the booklet's, with the nearest name.</summary>
    public static void Refuse(string piece, Place place, IReadOnlyCollection<string> known, Problems problems) =>
        problems.Error(place, $"There is no piece “{piece}” in this booklet.", Spelling.Advice(piece, known));
}
