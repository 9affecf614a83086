using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>
/// A piece described the way makers think of a box: bands of widths across and down a sheet, and a role for each cell
/// where two bands cross. Neighbouring cells with the same letter are one panel.
/// </summary>
/// <remarks>
/// Panels hang together as a tree from the root outwards: each panel is folded to the one neighbour it hangs from and cut
/// from its other neighbours. Two panels that meet along a diagonal of a cell are always folded to each other.
/// </remarks>
public sealed record ScoredSheet
{
    /// <summary>The piece's id.</summary>
    public required string Id { get; init; }

    /// <summary>The piece's name.</summary>
    public required string Name { get; init; }

    /// <summary>Widths of the bands from left to right; each above 0.</summary>
    public required IReadOnlyList<Length> Across { get; init; }

    /// <summary>Widths of the bands from top to bottom; each above 0.</summary>
    public required IReadOnlyList<Length> Down { get; init; }

    /// <summary>
    /// One row per band down, one character per band across (no spaces): a letter of <see cref="Cells"/>, or <c>.</c> for
    /// waste.
    /// </summary>
    public required IReadOnlyList<string> Map { get; init; }

    /// <summary>What each letter means.</summary>
    public required IReadOnlyDictionary<char, Cell> Cells { get; init; }

    /// <summary>The letter of the panel that stays still while the rest folds; it makes exactly one panel.</summary>
    public required char Root { get; init; }

    /// <summary>Builds the piece and checks it.</summary>
    /// <exception cref="NetException">The description does not make a piece; every reason is listed.</exception>
    public Piece Build()
    {
        Refuse(SheetReading.Problems(this));
        var reasons = new List<string>();
        var regions = SheetRegions.Of(this, reasons);
        Refuse(reasons);
        var hanging = SheetHanging.Of(regions, reasons);
        Refuse(reasons);
        foreach (var region in regions.Regions)
        {
            var hinge = hanging.FirstOrDefault(hinge => hinge.Child == region)?.Line;
            (region.Outline, region.Holes) = region.Cell.Shape.Applied(region.Outline, hinge, region.Place[..^1], reasons);
        }

        Refuse(reasons);

        var names = PanelNames.Of(regions.Regions);
        return new PieceAssembly
        {
            Id = Id,
            Name = Name,
            Sheet = new Size(Total(Across), Total(Down)),
            Root = names[regions.Root],
            Panels = [.. regions.Regions.Select(region => new Panel(
                names[region], region.Cell.Kind, region.Cell.Role, region.Outline, region.Cell.Note) { Holes = region.Holes })],
            Folds = [.. hanging.Select(hinge => new Fold(
                names[hinge.Parent], names[hinge.Child], hinge.Line.From, hinge.Line.To, hinge.Fold.Direction, hinge.Fold.Angle))],
            GlueAreas = [.. regions.Regions.Where(region => region.Cell.Glue is not null)
                .Select(region => new GlueArea(names[region], region.Outline, region.Cell.Glue!.Value))],
        }.Build();
    }

    private static Length Total(IEnumerable<Length> bands) => bands.Aggregate(Length.Zero, (sum, band) => sum + band);

    private void Refuse(IReadOnlyList<string> reasons)
    {
        if (reasons.Count > 0)
            throw new NetException(Id, reasons);
    }
}
