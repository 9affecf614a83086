using System.Globalization;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Booklets.Templates;

/// <summary>What tiles and their seams are called.</summary>
internal static class TileNames
{
    // Letters early in the alphabet name rows; those that look like figures are left out.
    private const string MarkAlphabet = "KLMNPRSTUVWXYZ";

    /// <summary>A row's letter and a column's number: <c>B2</c>.</summary>
    public static string Of(Tile tile) => Row(tile) + Column(tile);

    /// <summary>The first and the last tile of a plan: <c>A1–B2</c>.</summary>
    public static string Range(TilePlan plan) => $"{Of(plan.Tiles[0])}–{Of(plan.Tiles[^1])}";

    /// <summary>The letters of the marks, each once in a template.</summary>
    public static string Mark(int number)
    {
        var letter = MarkAlphabet[number % MarkAlphabet.Length].ToString();
        var round = number / MarkAlphabet.Length;
        return round == 0 ? letter : letter + (round + 1).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>A tile's row: <c>B</c>.</summary>
    public static string Row(Tile tile)
    {
        var letters = "";
        for (var n = tile.Row; n >= 0; n = (n / 26) - 1)
            letters = (char)('A' + (n % 26)) + letters;
        return letters;
    }

    /// <summary>A tile's column: <c>2</c>.</summary>
    public static string Column(Tile tile) => (tile.Column + 1).ToString(CultureInfo.InvariantCulture);
}
