using Pattern.Press.Measure;

namespace Pattern.Press.Nets;

/// <summary>
/// One part cut from one sheet: panels joined by folds, and the waste around them. Made by a builder, which checks that
/// panels and waste tile the sheet, that nothing overlaps, that each fold is the whole stretch its two panels share (a
/// trimmed panel's is shorter than the edge it hangs on), that the outline is simple and that the names are unique.
/// </summary>
public sealed record Piece
{
    /// <summary>The word for it in content and file names: <c>base</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it: <c>Base</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The rectangle it is cut from.</summary>
    public required Size Sheet { get; init; }

    /// <summary>The panel that stays still while the rest folds, by name.</summary>
    public required string Root { get; init; }

    /// <summary>All its panels, in reading order (top to bottom, left to right of their centres).</summary>
    public required IReadOnlyList<Panel> Panels { get; init; }

    /// <summary>All its folds; together they join every panel to the root.</summary>
    public required IReadOnlyList<Fold> Folds { get; init; }

    /// <summary>What is cut away from the sheet.</summary>
    public required IReadOnlyList<Waste> Waste { get; init; }

    /// <summary>Where adhesive goes.</summary>
    public required IReadOnlyList<GlueArea> GlueAreas { get; init; }

    /// <summary>
    /// Every line to cut, once each and as long as it runs straight: the outline of the piece and slits between panels.
    /// Where the outline runs along the sheet's own edge it is included.
    /// </summary>
    public required IReadOnlyList<Edge> Cuts { get; init; }

    /// <summary>The outer boundary of the piece.</summary>
    public required Outline Outline { get; init; }

    /// <summary>Makes the piece in strips so many times as narrow, where angles of folds depend on them; null where only panels bend.</summary>
    internal Func<int, Piece>? Remade { get; init; }

    /// <summary>
    /// The same piece, everything that bends in strips so many times as narrow: a cylinder, a cone or a pillow as finely as
    /// it is asked for. What is cut and scored stays as it is.
    /// </summary>
    /// <param name="times">How many times as narrow, or a little more; 1 leaves it as it is.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is below 1.</exception>
    public Piece Finer(int times)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(times, 1);
        if (times == 1)
            return this;
        if (Remade is not null)
            return Remade(times);
        return Panels.All(panel => panel.Bend is null)
            ? this
            : this with { Panels = [.. Panels.Select(panel => panel.Bend is null ? panel : panel with { Bend = panel.Bend.Finer(times) })] };
    }

    /// <summary>The panel of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public Panel Panel(string name) =>
        Panels.FirstOrDefault(panel => panel.Name == name)
        ?? throw new ArgumentException($"The piece “{Id}” has no panel “{name}”.", nameof(name));
}
