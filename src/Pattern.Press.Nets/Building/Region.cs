namespace Pattern.Press.Nets.Building;

/// <summary>A panel of a scored sheet while it is being worked out: where it is, and what it hangs from once that is known.</summary>
internal sealed class Region(char letter, Cell cell, int row, int column)
{
    public char Letter { get; } = letter;

    public Cell Cell { get; } = cell;

    /// <summary>The outline; shortened when it is trimmed.</summary>
    public required Outline Outline { get; set; }

    /// <summary>Holes in it.</summary>
    public IReadOnlyList<Outline> Holes { get; set; } = [];

    /// <summary>How many folds lie between it and the root; null while nothing holds it.</summary>
    public int? Level { get; set; }

    /// <summary>What it hangs from; null for the root.</summary>
    public Region? Parent { get; set; }

    /// <summary>How a maker finds it in the description, by its first cell.</summary>
    public string Place => $"The {Cell.Kind} “{Letter}” in row {row + 1}, band {column + 1} across,";
}

/// <summary>A cell split along a diagonal, and the panels that its two halves are part of.</summary>
internal sealed record SplitCell(Region First, Region Second, Edge Line, CellFold Fold);

/// <summary>A line on which one panel hangs from another, or on which two gussets meet.</summary>
internal sealed record Hinge(Region Parent, Region Child, Edge Line, CellFold Fold);
