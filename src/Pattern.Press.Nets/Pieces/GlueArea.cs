namespace Pattern.Press.Nets;

/// <summary>Which side of the sheet: the one facing the maker as the piece is drawn, or the other.</summary>
public enum SheetSide
{
    /// <summary>The side that faces the maker as the piece is drawn (the inside of a box).</summary>
    Facing,

    /// <summary>The side that lies on the table as the piece is drawn (the outside of a box).</summary>
    Away,
}

/// <summary>Where adhesive goes.</summary>
/// <param name="Panel">The panel that takes it, by name.</param>
/// <param name="Outline">The region that takes it.</param>
/// <param name="Side">The side of the sheet that takes it.</param>
public sealed record GlueArea(string Panel, Outline Outline, SheetSide Side);
