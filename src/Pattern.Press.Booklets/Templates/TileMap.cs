using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>A small drawing of the whole template with its tiles.</summary>
internal static class TileMap
{
    /// <summary>Draws the map with its right top corner at a point; one tile is filled.</summary>
    /// <returns>How wide and high it is.</returns>
    public static (double Width, double Height) Draw(Board board, TilePlan plan, Tile? filled, double right, double top, double maxWidth, double maxHeight, StyleSheet styles)
    {
        var bounds = Bounds(plan);
        var scale = Math.Min(maxWidth / bounds.Width, maxHeight / bounds.Height);
        var left = right - (bounds.Width * scale);
        Box Put(Tile tile)
        {
            // Where two tiles lap, the later one lies on top, so each ends where the next begins.
            var (x, y) = (tile.X + tile.Width, tile.Y + tile.Height);
            if (plan.Tiles.Any(other => other.Column == tile.Column + 1))
                x = plan.Tiles.First(other => other.Column == tile.Column + 1).X;
            if (plan.Tiles.Any(other => other.Row == tile.Row + 1))
                y = plan.Tiles.First(other => other.Row == tile.Row + 1).Y;
            return new Box(left + ((tile.X - bounds.Left) * scale), top + ((tile.Y - bounds.Top) * scale), left + ((x - bounds.Left) * scale), top + ((y - bounds.Top) * scale));
        }

        var lines = styles.Lines;
        if (filled is not null)
            board.Ground(new PathItem(Shape.Of(Put(filled)).Path(), styles.Palette.Accent.ContrastWith(Colour.White) > 2 ? Lighter(styles.Palette.Accent) : styles.Palette.Accent, null));
        foreach (var tile in plan.Tiles)
            board.Mark(Shape.Of(Put(tile)).Path(), new Stroke(lines.Faded, lines.ThinWidth));
        var placing = TemplatePainter.PlacingOf(plan.Part.Piece, plan.Turned, left - (bounds.Left * scale), top - (bounds.Top * scale)) with { Scale = scale };
        board.Mark(Shape.Of(plan.Part.Piece.Outline, placing).Path(), new Stroke(lines.Cut, lines.ThinWidth * 1.3));
        return (bounds.Width * scale, bounds.Height * scale);
    }

    public static Box Bounds(TilePlan plan) => new(
        plan.Tiles.Min(tile => tile.X),
        plan.Tiles.Min(tile => tile.Y),
        plan.Tiles.Max(tile => tile.X + tile.Width),
        plan.Tiles.Max(tile => tile.Y + tile.Height));

    // Half way to white, so that lines over it can be seen.
    public static Colour Lighter(Colour colour)
    {
        static byte Mix(byte channel) => (byte)((channel + (255 * 1.4)) / 2.4);
        return new Colour(Mix(colour.Red), Mix(colour.Green), Mix(colour.Blue));
    }
}
