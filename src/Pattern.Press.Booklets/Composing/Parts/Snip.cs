using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What a small trim looks like.</summary>
internal enum SnipKind
{
    /// <summary>A corner cut off slantwise.</summary>
    Corner,

    /// <summary>A narrow strip.</summary>
    Strip,

    /// <summary>Anything else.</summary>
    Outline,
}

/// <summary>A small trim as it is said in words: equal for trims that are alike, wherever they are.</summary>
/// <param name="Kind">What it looks like.</param>
/// <param name="Panels">The kinds of panels it is cut from, parted by slashes: tabs alone where there are any.</param>
/// <param name="Short">Its shorter side along the edges of the card, on a mark of the ruler.</param>
/// <param name="Long">Its longer side, on a mark of the ruler.</param>
internal sealed record Snip(SnipKind Kind, string Panels, Length Short, Length Long)
{
    /// <summary>The kinds of panels.</summary>
    public IReadOnlyList<string> Kinds => Panels.Split('/');

    /// <summary>How a trim is said.</summary>
    public static Snip Of(Piece piece, Trim trim, Ruler ruler)
    {
        var panels = trim.Panels.Select(piece.Panel).ToList();
        var tabs = panels.Where(panel => panel.Role == PanelRole.Tab).ToList();
        var kinds = string.Join('/', (tabs.Count > 0 ? tabs : panels).Select(panel => panel.Kind).Distinct(StringComparer.Ordinal));
        var bounds = trim.Outline.Bounds;
        var kind = trim.IsStrip ? SnipKind.Strip : IsCorner(trim.Outline) ? SnipKind.Corner : SnipKind.Outline;
        if (kind == SnipKind.Outline)
            return new Snip(kind, kinds, Length.Zero, Length.Zero);

        // A little more off does no harm; a little less can catch.
        Length Side(double side) => ruler.Round(Length.FromMillimetres(side), Rounding.Up);
        return new Snip(kind, kinds, Side(Math.Min(bounds.Width, bounds.Height)), Side(Math.Max(bounds.Width, bounds.Height)));
    }

    // A triangle with one side across and one down.
    private static bool IsCorner(Outline outline)
    {
        if (outline.Edges.Count != 3 || outline.Edges.Any(edge => edge.IsArc))
            return false;
        bool Level(Edge edge) => Math.Abs(edge.From.Y - edge.To.Y) < 1e-5;
        bool Upright(Edge edge) => Math.Abs(edge.From.X - edge.To.X) < 1e-5;
        return outline.Edges.Any(Level) && outline.Edges.Any(Upright);
    }
}
