using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Building;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Everything a structure's file says.</summary>
internal sealed record StructureDefinition
{
    /// <summary>The shapes of item it takes.</summary>
    public required IReadOnlyList<ItemShape> Takes { get; init; }

    /// <summary>An item that shows it well; null when the file names none.</summary>
    public Item? Example { get; init; }

    /// <summary>Where it is named.</summary>
    public Place ExamplePlace { get; init; }

    /// <summary>Parameters and values, each after those it depends on.</summary>
    public required IReadOnlyList<INamedDefinition> Order
    {
        get;
        init
        {
            field = value;
            ByName = value.ToDictionary(definition => definition.Name, StringComparer.Ordinal);
        }
    }

    /// <summary>The same by name.</summary>
    public IReadOnlyDictionary<string, INamedDefinition> ByName { get; private init; } = new Dictionary<string, INamedDefinition>();

    public required IReadOnlyList<PieceDefinition> Pieces { get; init; }

    public required IReadOnlyList<MatDefinition> Mats { get; init; }

    public required IReadOnlyList<CheckDefinition> Checks { get; init; }

    /// <summary>How the pieces come together; null where the file does not say.</summary>
    public AssemblyDefinition? Assembly { get; init; }

    /// <summary>What it says itself about how hands make it.</summary>
    public StepWordsDefinition Words { get; init; } = new();

    public required Names Names { get; init; }
}

/// <summary>A parameter or a value: something with a name that formulas use.</summary>
internal interface INamedDefinition
{
    string Name { get; }

    /// <summary>The formulas it is worked out from.</summary>
    IEnumerable<Formula> Formulas { get; }
}

/// <summary>A parameter among the named definitions.</summary>
internal sealed record ParameterDefinition(Parameter Parameter) : INamedDefinition
{
    public string Name => Parameter.Name;

    // Its limits are looked at when everything is worked out, so they may depend on what depends on it.
    public IEnumerable<Formula> Formulas
    {
        get
        {
            if (Parameter.WhenFormula is { } when)
                yield return when;
            if (Parameter.DefaultFormula is { } value)
                yield return value;
        }
    }
}

/// <summary>A derived value.</summary>
internal sealed record ValueDefinition(string Name, Place Place, Formula Formula) : INamedDefinition
{
    public IEnumerable<Formula> Formulas => [Formula];
}

/// <summary>A use of stock.</summary>
internal sealed record StockDefinition(StockUse Use, Formula? When);

/// <summary>A piece.</summary>
/// <param name="Marks">Lists of lengths that texts may name.</param>
internal sealed record PieceDefinition(
    string Id,
    string Name,
    string Stock,
    Place Place,
    Formula? When,
    Formula? Quantity,
    IPieceForm Form,
    IReadOnlyList<(string Name, IReadOnlyList<Formula> Lengths)> Marks);

/// <summary>A mat.</summary>
internal sealed record MatDefinition(
    string Id,
    string Name,
    string Stock,
    Place Place,
    Formula? When,
    Formula? Quantity,
    IMatForm Form,
    Hand Hand,
    string For,
    string Goes,
    IReadOnlyList<string> On,
    SheetSide Side);

/// <summary>Something that must hold.</summary>
internal sealed record CheckDefinition(string Name, Place Place, Formula? When, Formula Found, Formula Least, TextTemplate? Advice);
