using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tests;

/// <summary>Pieces drawn as a map of cells, each <c>#</c> a panel of its own and each <c>.</c> waste.</summary>
internal static class Grids
{
    public static Piece Piece(IReadOnlyList<int> across, IReadOnlyList<int> down, params string[] map)
    {
        var panels = new List<Panel>();
        var folds = new List<Fold>();
        var waste = new List<Waste>();
        var cuts = new List<Edge>();
        var (x, y) = (Marks(across), Marks(down));
        bool IsCard(int row, int column) =>
            row >= 0 && column >= 0 && row < down.Count && column < across.Count && map[row][column] == '#';
        string Name(int row, int column) => $"panel {row}.{column}";
        for (var row = 0; row < down.Count; row++)
        {
            for (var column = 0; column < across.Count; column++)
            {
                var (left, right, top, bottom) = (x[column], x[column + 1], y[row], y[row + 1]);
                var outline = Outline.Through(new(left, top), new(right, top), new(right, bottom), new(left, bottom));
                if (!IsCard(row, column))
                {
                    waste.Add(new Waste(outline, []));
                    continue;
                }

                panels.Add(new Panel(Name(row, column), "panel", PanelRole.Panel, outline));
                if (IsCard(row, column + 1))
                    folds.Add(new Fold(Name(row, column), Name(row, column + 1), new(right, top), new(right, bottom), FoldDirection.Valley, 90));
                if (IsCard(row + 1, column))
                    folds.Add(new Fold(Name(row, column), Name(row + 1, column), new(left, bottom), new(right, bottom), FoldDirection.Valley, 90));
                foreach (var (edge, dr, dc) in outline.Edges.Zip([(-1, 0), (0, 1), (1, 0), (0, -1)], (e, d) => (e, d.Item1, d.Item2)))
                {
                    if (!IsCard(row + dr, column + dc))
                        cuts.Add(edge);
                }
            }
        }

        return new Piece
        {
            Id = "grid",
            Name = "Grid",
            Sheet = new Size(Length.FromMillimetres(across.Sum()), Length.FromMillimetres(down.Sum())),
            Root = panels[0].Name,
            Panels = panels,
            Folds = folds,
            Waste = waste,
            GlueAreas = [],
            Cuts = cuts,
            Outline = panels[0].Outline,
        };
    }

    public static Part Part(Piece piece, int quantity = 1, string stock = "card") => new(piece, PartKind.Piece, stock, quantity);

    /// <summary>A plain rectangle, as mats are.</summary>
    public static Part Mat(string id, int width, int height, int quantity = 1, string stock = "patterned", Hand hand = Hand.Either) =>
        new(Piece([width], [height], "#") with { Id = id, Name = id }, PartKind.Mat, stock, quantity, "a face", hand, "base");

    private static int[] Marks(IReadOnlyList<int> bands)
    {
        var marks = new int[bands.Count + 1];
        for (var i = 0; i < bands.Count; i++)
            marks[i + 1] = marks[i] + bands[i];
        return marks;
    }
}
