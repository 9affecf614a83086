using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>Reads a pillow box: its width, its length, how far its arcs reach in, and its glue tab.</summary>
internal sealed class PillowBuilder : IPieceBuilder
{
    private static readonly string[] Keys = ["width", "length", "rise", "tab"];

    public string Name => "pillow";

    public IPieceForm? Read(YamlMap piece, FileReading reading)
    {
        var sizes = Keys.Select(key => piece.Need(key, "Write a formula that gives a length.") is { } item ? reading.Formula(item, Kind.Length) : null).ToList();
        return sizes.Any(size => size is null) ? null : new Form([.. sizes.OfType<Formula>()]);
    }

    private sealed class Form(IReadOnlyList<Formula> sizes) : IPieceForm
    {
        public IReadOnlyCollection<string> PanelKinds => [Pillow.Front, Pillow.Back, Pillow.Flap, Pillow.Tab];

        public IEnumerable<Formula> Formulas => sizes;

        public IEnumerable<(Formula Size, Formula? When)> Sizes => sizes.Select(size => (size, (Formula?)null));

        public Piece Build(string id, string name, Evaluation values)
        {
            var lengths = sizes.Select(size => size.Evaluate(values).Length).ToList();
            return Pillow.Build(id, name, lengths[0], lengths[1], lengths[2], lengths[3]);
        }
    }
}
