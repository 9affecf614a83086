using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;

namespace Pattern.Press.Plans.Measuring;

/// <summary>What a row of the measurement table measures.</summary>
public enum MeasurementKind
{
    /// <summary>The sheet of a piece: width, height.</summary>
    SheetSize,

    /// <summary>Where scores cross the top edge: marks from the left, rising.</summary>
    ScoresFromLeft,

    /// <summary>Where scores cross the left edge: marks from the top, rising.</summary>
    ScoresFromTop,

    /// <summary>Panels of one kind: along the fold they hang on, away from it; for the root width, height.</summary>
    PanelSize,

    /// <summary>A mat, as cut: width, height.</summary>
    CutSize,
}

/// <summary>One row, in both columns. Each column is a fit of its own and adds up by itself; neither is a conversion.</summary>
/// <param name="Part">The part as fitted on the metric ruler; the row belongs under its name.</param>
/// <param name="Kind">What is measured.</param>
/// <param name="PanelKind">For <see cref="MeasurementKind.PanelSize"/> which kind of panel, else null.</param>
/// <param name="Count">How many there are of it: the part's quantity, or for panels their number in one piece.</param>
/// <param name="Metric">The lengths on the metric ruler.</param>
/// <param name="Imperial">The lengths on the inch ruler.</param>
public sealed record MeasurementRow(
    Part Part,
    MeasurementKind Kind,
    string? PanelKind,
    int Count,
    IReadOnlyList<Length> Metric,
    IReadOnlyList<Length> Imperial);

/// <summary>The sizes of everything in a kit on both rulers, the same rows for both.</summary>
public static class MeasurementTable
{
    /// <summary>The rows, part by part in making order.</summary>
    /// <param name="metric">The kit fitted on the metric ruler.</param>
    /// <param name="imperial">The same kit fitted on the inch ruler.</param>
    /// <exception cref="ArgumentException">The two are not the same kit: the message says where they differ.</exception>
    public static IReadOnlyList<MeasurementRow> Make(Kit metric, Kit imperial)
    {
        ArgumentNullException.ThrowIfNull(metric);
        ArgumentNullException.ThrowIfNull(imperial);
        if (metric.Ruler.System != UnitSystem.Metric || imperial.Ruler.System != UnitSystem.Imperial)
            throw new ArgumentException("The first kit is fitted on a metric ruler and the second on an inch ruler.", nameof(imperial));
        if (metric.Parts.Count != imperial.Parts.Count)
            throw new ArgumentException($"The metric kit has {metric.Parts.Count} parts and the imperial kit {imperial.Parts.Count}.", nameof(imperial));
        return [.. metric.Parts.Zip(imperial.Parts).SelectMany(parts => Rows(parts.First, parts.Second))];
    }

    private static IEnumerable<MeasurementRow> Rows(Part metric, Part imperial)
    {
        if ((metric.Piece.Id, metric.Kind, metric.Stock, metric.Quantity, metric.Hand) != (imperial.Piece.Id, imperial.Kind, imperial.Stock, imperial.Quantity, imperial.Hand))
            throw new ArgumentException($"The part “{metric.Piece.Id}” is not the same in both kits; the other has “{imperial.Piece.Id}”, quantity {imperial.Quantity}.", nameof(imperial));
        var (a, b) = (metric.Piece, imperial.Piece);
        MeasurementRow Row(MeasurementKind kind, IReadOnlyList<Length> left, IReadOnlyList<Length> right) =>
            new(metric, kind, null, metric.Quantity, left, right);

        if (metric.Kind == PartKind.Mat)
        {
            yield return Row(MeasurementKind.CutSize, [a.Sheet.Width, a.Sheet.Height], [b.Sheet.Width, b.Sheet.Height]);
            yield break;
        }

        yield return Row(MeasurementKind.SheetSize, [a.Sheet.Width, a.Sheet.Height], [b.Sheet.Width, b.Sheet.Height]);

        // A piece that is taken point by point has no scores that run straight away from a fence.
        var marks = ScoreSchedule.For(a).IsByPoints || ScoreSchedule.For(b).IsByPoints
            ? Array.Empty<(MeasurementKind, FenceSide)>()
            : [(MeasurementKind.ScoresFromLeft, FenceSide.Top), (MeasurementKind.ScoresFromTop, FenceSide.Right)];
        foreach (var (kind, side) in marks)
        {
            var (left, right) = (Marks(a, side), Marks(b, side));
            if (left.Count > 0 || right.Count > 0)
                yield return Row(kind, left, right);
        }

        foreach (var row in Panels(metric, imperial))
            yield return row;
    }

    private static IReadOnlyList<Length> Marks(Piece piece, FenceSide side) =>
        ScoreSchedule.Marks(piece, side);

    // Panels of a kind share a row only when they are alike in both columns, so that the rows are the same for both.
    private static IEnumerable<MeasurementRow> Panels(Part metric, Part imperial)
    {
        var (a, b) = (metric.Piece, imperial.Piece);
        if (!a.Panels.Select(panel => panel.Name).Order(StringComparer.Ordinal).SequenceEqual(b.Panels.Select(panel => panel.Name).Order(StringComparer.Ordinal), StringComparer.Ordinal))
            throw new ArgumentException($"The piece “{a.Id}” does not have the same panels in both kits.", nameof(imperial));
        return a.Panels
            .Where(panel => panel.Role == PanelRole.Panel)
            .OrderBy(panel => panel.Name == a.Root ? 0 : 1)
            .Select(panel => (panel.Kind, Metric: PanelSize.Of(a, panel), Imperial: PanelSize.Of(b, b.Panel(panel.Name))))
            .GroupBy(panel => (panel.Kind, Alike(panel.Metric), Alike(panel.Imperial)))
            .Select(group => new MeasurementRow(
                metric,
                MeasurementKind.PanelSize,
                group.Key.Kind,
                group.Count(),
                [group.First().Metric.Width, group.First().Metric.Height],
                [group.First().Imperial.Width, group.First().Imperial.Height]));

        // What hangs aslant is worked out a hair differently each time.
        static (long, long) Alike(Size size) => (Hairs(size.Width), Hairs(size.Height));

        static long Hairs(Length length) => (long)Math.Round(length.Millimetres * 1000);
    }
}
