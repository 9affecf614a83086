using System.Buffers;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>How lines fill their measure.</summary>
/// <param name="Width">The measure in millimetres.</param>
/// <param name="Justified">Whether all lines but the last fill it.</param>
/// <param name="RagAllowance">For ragged text: how far a line may fall short before it looks odd, in millimetres.</param>
/// <param name="ShortLine">A last line of one word that is shorter than this looks lost, in millimetres.</param>
internal readonly record struct LineMeasure(double Width, bool Justified, double RagAllowance, double ShortLine);

/// <summary>
/// Breaks a whole paragraph into lines at once: of all ways to break it, the one with the fewest demerits, after
/// D. E. Knuth and M. F. Plass, "Breaking paragraphs into lines", Software: Practice and Experience 11 (1981). As there,
/// the best way to end a line at each place is kept by the fitness of the line, since tight lines beside loose ones look
/// uneven. Ragged text has no stretch in its spaces; there a line is the worse the further it falls short.
/// </summary>
internal static class LineBreaker
{
    private const double Tolerable = 1e-6;
    private const double LinePenalty = 10;
    private const double HyphenPairDemerits = 10_000;
    private const double FitnessDemerits = 10_000;
    private const double LoneWordDemerits = 400_000;
    private const double OverfullDemerits = 1e12;
    private const double MostBadness = 10_000;
    private const int Fitnesses = 4;

    /// <summary>The index of the last segment of each line.</summary>
    public static int[] Break(ReadOnlySpan<Segment> segments, LineMeasure measure)
    {
        var count = segments.Length;
        if (count == 0)
            return [];
        var states = count * Fitnesses;
        var (costs, steps) = (ArrayPool<double>.Shared.Rent(states), ArrayPool<int>.Shared.Rent(states));
        var best = costs.AsSpan(0, states);
        var from = steps.AsSpan(0, states);
        best.Fill(double.PositiveInfinity);
        for (var end = 0; end < count; end++)
        {
            double width = 0, stretch = 0, shrink = 0;
            for (var start = end; start >= 0; start--)
            {
                if (start < end)
                {
                    if (segments[start].MustBreak)
                        break;
                    width += segments[start].Space;
                    (stretch, shrink) = Loosen(segments[start], measure, stretch, shrink);
                }

                width += segments[start].Width;
                // A line that is too long with everything shrunk only grows as it starts earlier.
                if (start < end && width - shrink > measure.Width + Tolerable)
                    break;
                var line = new Line(start, end, width + segments[end].Hyphen, stretch, shrink, end == count - 1 || segments[end].MustBreak);
                if (start < end && line.Width - shrink > measure.Width + Tolerable)
                    continue;
                Consider(segments, line, measure, best, from);
            }
        }

        var ends = Trace(best, from, count);
        ArrayPool<double>.Shared.Return(costs);
        ArrayPool<int>.Shared.Return(steps);
        return ends;
    }

    /// <summary>The demerits of one line after another line, or after none.</summary>
    /// <param name="segments">The paragraph.</param>
    /// <param name="start">The line's first segment.</param>
    /// <param name="end">Its last.</param>
    /// <param name="measure">The measure.</param>
    /// <param name="fitness">How tight the line is: 0 tight, 1 as it should be, 2 loose, 3 very loose.</param>
    public static double Demerits(ReadOnlySpan<Segment> segments, int start, int end, LineMeasure measure, out int fitness)
    {
        double width = segments[end].Width + segments[end].Hyphen, stretch = 0, shrink = 0;
        for (var i = start; i < end; i++)
        {
            width += segments[i].Width + segments[i].Space;
            (stretch, shrink) = Loosen(segments[i], measure, stretch, shrink);
        }

        return Demerits(segments, new Line(start, end, width, stretch, shrink, end == segments.Length - 1 || segments[end].MustBreak), measure, out fitness);
    }

    /// <summary>What is added for two lines that follow each other.</summary>
    public static double PairDemerits(ReadOnlySpan<Segment> segments, int earlierEnd, int earlierFitness, int laterEnd, int laterFitness)
    {
        double demerits = 0;
        if (Math.Abs(earlierFitness - laterFitness) > 1)
            demerits += FitnessDemerits;
        if (segments[earlierEnd].Hyphen > 0 && segments[laterEnd].Hyphen > 0)
            demerits += HyphenPairDemerits;
        return demerits;
    }

    /// <summary>
    /// The share of its stretch (positive) or shrink (negative) that a line takes to fill the measure; 0 for a line that
    /// is not filled.
    /// </summary>
    public static double Ratio(double width, double stretch, double shrink, bool last, LineMeasure measure)
    {
        var missing = measure.Width - width;
        if (!measure.Justified || (last && missing >= 0))
            return 0;
        if (missing >= 0)
            return stretch > 0 ? missing / stretch : 0;
        return shrink > 0 ? missing / shrink : 0;
    }

    /// <summary>Adds the give of the space after a segment. Spaces of ragged text have none.</summary>
    private static (double Stretch, double Shrink) Loosen(in Segment segment, LineMeasure measure, double stretch, double shrink) =>
        measure.Justified ? (stretch + segment.Stretch, shrink + segment.Shrink) : (0, 0);

    private static void Consider(ReadOnlySpan<Segment> segments, Line line, LineMeasure measure, Span<double> best, Span<int> from)
    {
        var own = Demerits(segments, line, measure, out var fitness);
        var at = (line.End * Fitnesses) + fitness;
        if (line.Start == 0)
        {
            if (own < best[at])
                (best[at], from[at]) = (own, -1);
            return;
        }

        var previous = line.Start - 1;
        for (var f = 0; f < Fitnesses; f++)
        {
            var before = best[(previous * Fitnesses) + f];
            if (double.IsPositiveInfinity(before))
                continue;
            var total = before + own + PairDemerits(segments, previous, f, line.End, fitness);
            if (total < best[at])
                (best[at], from[at]) = (total, (previous * Fitnesses) + f);
        }
    }

    private static double Demerits(ReadOnlySpan<Segment> segments, Line line, LineMeasure measure, out int fitness)
    {
        fitness = 1;
        var missing = measure.Width - line.Width;
        if (missing < -line.Shrink - Tolerable)
        {
            // Only a part that cannot be broken is ever too long; all ways to break the paragraph share this cost.
            return OverfullDemerits * (1 - missing);
        }

        var badness = Badness(line, missing, measure, ref fitness);
        var penalty = line.Last ? 0 : segments[line.End].Penalty;
        var demerits = (LinePenalty + badness + penalty) * (LinePenalty + badness + penalty);
        if (line.Last && line.Start > 0 && !segments[line.Start - 1].MustBreak && line.Start == line.End && line.Width < measure.ShortLine)
            demerits += LoneWordDemerits;
        return demerits;
    }

    private static double Badness(Line line, double missing, LineMeasure measure, ref int fitness)
    {
        if (line.Last && missing >= -Tolerable)
            return 0;
        if (!measure.Justified)
        {
            var share = Math.Max(0, missing) / measure.RagAllowance;
            return Math.Min(MostBadness, 100 * share * share * share);
        }

        var ratio = Ratio(line.Width, line.Stretch, line.Shrink, line.Last, measure);
        if (missing > 0 && line.Stretch <= 0)
            ratio = 100;
        fitness = ratio < -0.5 ? 0 : ratio <= 0.5 ? 1 : ratio <= 1 ? 2 : 3;
        var size = Math.Abs(ratio);
        return Math.Min(MostBadness, 100 * size * size * size);
    }

    private static int[] Trace(ReadOnlySpan<double> best, ReadOnlySpan<int> from, int count)
    {
        var at = (count - 1) * Fitnesses;
        for (var f = 1; f < Fitnesses; f++)
        {
            if (best[((count - 1) * Fitnesses) + f] < best[at])
                at = ((count - 1) * Fitnesses) + f;
        }

        var lines = 0;
        for (var state = at; state >= 0; state = from[state])
            lines++;
        var ends = new int[lines];
        for (; at >= 0; at = from[at])
            ends[--lines] = at / Fitnesses;
        return ends;
    }

    private readonly record struct Line(int Start, int End, double Width, double Stretch, double Shrink, bool Last);
}
