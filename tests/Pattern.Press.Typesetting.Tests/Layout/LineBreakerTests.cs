using CsCheck;
using Pattern.Press.Typesetting.Layout.Text;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class LineBreakerTests
{
    private static readonly Gen<Segment[]> Paragraphs =
        Gen.Select(Gen.Double[1, 14], Gen.Int[0, 9], Gen.Bool)
            .Select((width, kind, forced) => kind switch
            {
                0 => new Segment(width, Hyphen: 0.7, Penalty: 50),
                1 => new Segment(width, Penalty: 10),
                2 when forced => new Segment(width, MustBreak: true),
                _ => new Segment(width, 1),
            })
            .Array[1, 11];

    [Fact]
    public void No_other_way_to_break_a_short_paragraph_has_fewer_demerits()
    {
        Gen.Select(Paragraphs, Gen.Double[10, 40], Gen.Bool).Sample((segments, width, justified) =>
        {
            var measure = new LineMeasure(width, justified, 6, 4);
            var chosen = Total(segments, LineBreaker.Break(segments, measure), measure);
            var best = double.PositiveInfinity;
            for (var mask = 0; mask < 1 << (segments.Length - 1); mask++)
            {
                var ends = Enumerable.Range(0, segments.Length).Where(i => i == segments.Length - 1 || (mask & (1 << i)) != 0).ToArray();
                if (IsAllowed(segments, ends, measure))
                    best = Math.Min(best, Total(segments, ends, measure));
            }

            Assert.Equal(best, chosen, Math.Max(1e-6, best * 1e-12));
        }, iter: 400);
    }

    [Fact]
    public void A_paragraph_is_evened_out_where_filling_each_line_in_turn_would_leave_a_hole()
    {
        // Words of 3, 2, 2 and 5 on a measure of 6: filling each line in turn gives 3+2 / 2 / 5, with a hole in the middle.
        // The well-known example against greedy wrapping (from memory).
        Segment[] words = [new(3, 1), new(2, 1), new(2, 1), new(5)];
        Assert.Equal([0, 2, 3], LineBreaker.Break(words, new LineMeasure(6, false, 2, 1)));
    }

    [Fact]
    public void A_single_short_word_does_not_make_the_last_line_when_the_line_above_can_spare_one()
    {
        Segment[] words = [new(10, 1), new(10, 1), new(10, 1), new(10, 1), new(3)];
        var alone = LineBreaker.Break(words, new LineMeasure(43, false, 12, 0));
        var company = LineBreaker.Break(words, new LineMeasure(43, false, 12, 8));
        Assert.Equal([3, 4], alone);
        Assert.Equal([2, 4], company);
    }

    [Fact]
    public void A_line_that_must_end_ends()
    {
        Segment[] words = [new(3, 1), new(2, MustBreak: true), new(2, 1), new(2)];
        Assert.Equal([1, 3], LineBreaker.Break(words, new LineMeasure(40, true, 6, 4)));
    }

    [Fact]
    public void A_word_wider_than_the_measure_has_a_line_of_its_own()
    {
        Segment[] words = [new(3, 1), new(50, 1), new(3)];
        Assert.Equal([0, 1, 2], LineBreaker.Break(words, new LineMeasure(20, false, 6, 4)));
    }

    [Fact]
    public void Spaces_of_ragged_text_are_never_squeezed()
    {
        Segment[] words = [new(10, 1), new(9.2)];
        Assert.Equal([0, 1], LineBreaker.Break(words, new LineMeasure(20, false, 6, 4)));
        Assert.Equal([1], LineBreaker.Break(words, new LineMeasure(20, true, 6, 4)));
    }

    private static double Total(Segment[] segments, int[] ends, LineMeasure measure)
    {
        double total = 0;
        var (start, previousEnd, previousFitness) = (0, -1, 0);
        foreach (var end in ends)
        {
            total += LineBreaker.Demerits(segments, start, end, measure, out var fitness);
            if (previousEnd >= 0)
                total += LineBreaker.PairDemerits(segments, previousEnd, previousFitness, end, fitness);
            (start, previousEnd, previousFitness) = (end + 1, end, fitness);
        }

        return total;
    }

    private static bool IsAllowed(Segment[] segments, int[] ends, LineMeasure measure)
    {
        var start = 0;
        foreach (var end in ends)
        {
            double least = segments[end].Width + segments[end].Hyphen;
            for (var i = start; i < end; i++)
            {
                if (segments[i].MustBreak)
                    return false;
                least += segments[i].Width + segments[i].Space - (measure.Justified ? segments[i].Shrink : 0);
            }

            if (end > start && least > measure.Width + 1e-6)
                return false;
            start = end + 1;
        }

        return true;
    }
}
