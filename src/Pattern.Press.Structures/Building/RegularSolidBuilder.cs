using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>Reads one of the five regular solids: its name, its edge, and how its tabs are.</summary>
internal sealed class RegularSolidBuilder : IPieceBuilder
{
    public string Name => "regular solid";

    public IPieceForm? Read(YamlMap piece, FileReading reading)
    {
        var solid = piece.Need("solid", "Name the solid, or a parameter that chooses it.") is { } word ? reading.Formula(word, Kind.Word) : null;
        var edge = piece.Need("edge", "Write how long its edges are.") is { } length ? reading.Formula(length, Kind.Length) : null;
        var tab = piece.Need("tab", "Write how deep its tabs are.") is { } depth ? reading.Formula(depth, Kind.Length) : null;
        var taper = piece.Need("taper", "Write how far the ends of its tabs lean, in degrees.") is { } lean ? reading.Formula(lean, Kind.Number) : null;
        return solid is null || edge is null || tab is null || taper is null ? null : new Form(solid, edge, tab, taper);
    }

    private sealed class Form(Formula solid, Formula edge, Formula tab, Formula taper) : IPieceForm
    {
        public IReadOnlyCollection<string> PanelKinds => [RegularSolid.FaceKind, RegularSolid.TabKind];

        public IEnumerable<Formula> Formulas => [edge, tab];

        public IEnumerable<(Formula Size, Formula? When)> Sizes => [(edge, null), (tab, null)];

        public Piece Build(string id, string name, Evaluation values)
        {
            var word = solid.Evaluate(values).Word ?? "";
            if (!RegularSolid.Names.Contains(word))
                throw new FormulaException(solid.Place, $"“{word}” is not a regular solid. {Spelling.Advice(word, [.. RegularSolid.Names])}");
            return RegularSolid.Build(
                id, name, word, edge.Evaluate(values).Length, tab.Evaluate(values).Length, (double)taper.Evaluate(values).Amount, values.Ruler);
        }
    }
}
