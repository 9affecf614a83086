namespace Pattern.Press.Structures.Building;

/// <summary>The builders that structure files can call. A further one is a class of its own and a line here.</summary>
internal static class PieceBuilders
{
    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<IPieceBuilder> All { get; } = [new ScoredSheetBuilder(), new PanelTreeBuilder(), new RegularSolidBuilder(), new PillowBuilder()];
}
