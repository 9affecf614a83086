using Pattern.Press.Nets;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A way to describe a piece in a structure file, called by its name under <c>build</c>.</summary>
internal interface IPieceBuilder
{
    /// <summary>Its name in files: <c>scored sheet</c>.</summary>
    string Name { get; }

    /// <summary>Reads the keys it needs from the piece's entry; null after noting problems.</summary>
    IPieceForm? Read(YamlMap piece, FileReading reading);
}

/// <summary>A piece's shape, with formulas in place of sizes.</summary>
internal interface IPieceForm
{
    /// <summary>What its panels are called, by kind.</summary>
    IReadOnlyCollection<string> PanelKinds { get; }

    /// <summary>The formulas its sizes come from.</summary>
    IEnumerable<Formula> Formulas { get; }

    /// <summary>The lengths that can be nothing but never less, each with the condition under which it is used.</summary>
    IEnumerable<(Formula Size, Formula? When)> Sizes { get; }

    /// <summary>Where the file describes the panel that a reason of a failed fit names; null for the piece as a whole.</summary>
    Place? PlaceOf(string reason, Evaluation values) => null;

    /// <summary>Builds the piece for one fit.</summary>
    /// <exception cref="Nets.Building.NetException">The sizes do not make a piece.</exception>
    /// <exception cref="FormulaException">A formula gives nothing.</exception>
    Piece Build(string id, string name, Evaluation values);
}
