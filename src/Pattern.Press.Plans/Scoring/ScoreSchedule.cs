using System.Runtime.CompilerServices;
using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// What a maker does with a piece's sheet at a scoring board: one side against the fence, all scores that run away from
/// it, a turn, the rest; then the slanted scores from point to point; then the cutting away.
/// </summary>
/// <remarks>
/// A score may run on over what is cut away, or along a line that is cut, because it leaves no trace there: a score is
/// full when everything on its way across the sheet is fold, waste or cut. What is left of the scores after cutting away
/// is exactly the piece's folds.
/// </remarks>
public sealed record ScoreSchedule
{
    // Tables, words and drawings of one piece all ask for it.
    private static readonly ConditionalWeakTable<Piece, ScoreSchedule> Known = [];

    /// <summary>The sheet.</summary>
    public required Size Sheet { get; init; }

    /// <summary>Fewest turns of the sheet: at most two, the longer side against the fence first.</summary>
    public required IReadOnlyList<ScoreTurn> Turns { get; init; }

    /// <summary>The points that slanted scores join, in the order of their letters.</summary>
    public required IReadOnlyList<ScorePoint> Points { get; init; }

    /// <summary>Slanted scores.</summary>
    public required IReadOnlyList<SlantedScore> Slanted { get; init; }

    /// <summary>
    /// Whether the piece runs aslant or along curves, so that it is scored and cut from point to point only: there are no
    /// turns then, and the points are all its corners.
    /// </summary>
    public bool IsByPoints { get; init; }

    /// <summary>What is cut away and how it is marked.</summary>
    public required CuttingAway CuttingAway { get; init; }

    /// <summary>The schedule for a piece.</summary>
    public static ScoreSchedule For(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Known.GetValue(piece, ScheduleMaker.Make);
    }

    /// <summary>Every mark at which a piece has folds that run away from a side, rising, each once.</summary>
    public static IReadOnlyList<Length> Marks(Piece piece, FenceSide side)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return ScheduleMaker.Turn(piece, side).Marks;
    }
}

/// <summary>The side of the sheet, as drawn, that lies against the fence.</summary>
public enum FenceSide
{
    /// <summary>The top as drawn. Marks are counted from the left edge; scores run down the drawing.</summary>
    Top,

    /// <summary>
    /// The right side as drawn, the sheet being turned a quarter anticlockwise. Marks are counted from the top edge of the
    /// drawing, which again lies at the left; scores run across the drawing.
    /// </summary>
    Right,
}

/// <summary>Everything scored with one side against the fence.</summary>
/// <param name="Side">Which side.</param>
/// <param name="Length">How long that side is.</param>
/// <param name="Depth">How far the sheet reaches away from the fence.</param>
/// <param name="Full">Marks at which the score runs from edge to edge, rising.</param>
/// <param name="Partial">Scores that do not, in rising order of their first mark.</param>
public sealed record ScoreTurn(
    FenceSide Side,
    Length Length,
    Length Depth,
    IReadOnlyList<Length> Full,
    IReadOnlyList<PartialScore> Partial)
{
    /// <summary>Whether it is the longer side of the sheet; null when both are equal.</summary>
    public bool? IsLonger => Length == Depth ? null : Length > Depth;

    /// <summary>Every mark, rising, each once.</summary>
    public IReadOnlyList<Length> Marks => [.. Full.Concat(Partial.SelectMany(score => score.Marks)).Distinct().Order()];
}

/// <summary>How a partial score runs.</summary>
public enum PartialReach
{
    /// <summary>From the edge at the fence in to a distance from it.</summary>
    FromFence,

    /// <summary>From the edge away from the fence in to a distance from that edge.</summary>
    FromFarEdge,

    /// <summary>From both edges in, equally far.</summary>
    FromBothEdges,

    /// <summary>From one distance to another, both from the edge at the fence.</summary>
    Between,
}

/// <summary>A score that stops short of an edge, at one or more marks alike.</summary>
/// <param name="Marks">Where along the fence, rising.</param>
/// <param name="Reach">How it runs.</param>
/// <param name="From">For <see cref="PartialReach.Between"/> where it starts, from the edge at the fence; else zero.</param>
/// <param name="To">Where it ends: from the edge it starts at, or for Between from the edge at the fence.</param>
public sealed record PartialScore(IReadOnlyList<Length> Marks, PartialReach Reach, Length From, Length To);

/// <summary>A point that slanted scores start or end at.</summary>
/// <param name="Letter">A, B … without the letters that are taken for figures, then A1, B1 …</param>
/// <param name="FromLeft">From the left edge of the sheet.</param>
/// <param name="FromTop">From its top edge.</param>
public sealed record ScorePoint(string Letter, Length FromLeft, Length FromTop);

/// <summary>A slanted score between two lettered points.</summary>
/// <param name="From">The letter of the end nearer to the middle of the sheet.</param>
/// <param name="To">The letter of the other end.</param>
/// <param name="Through">For an even curve the letter of the point half way along it; null for a straight score.</param>
public sealed record SlantedScore(string From, string To, string? Through = null);
