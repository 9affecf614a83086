using System.Globalization;
using Pattern.Press.Measure;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Pattern.Press.Structures.Reading;

/// <summary>A value in a YAML file. Each <c>As…</c> method notes a problem and returns null when the value is something else.</summary>
public sealed class YamlItem
{
    private readonly YamlNode _node;
    private readonly string _file;
    private readonly int _linesBefore;
    private readonly Problems _problems;

    internal YamlItem(YamlNode node, string file, int linesBefore, Place place, Problems problems)
    {
        _node = node;
        _file = file;
        _linesBefore = linesBefore;
        _problems = problems;
        Place = place;
    }

    /// <summary>Where the value starts.</summary>
    public Place Place { get; }

    /// <summary>
    /// Where the text itself starts, behind an opening quotation mark; the column is 0 when the text runs over several
    /// lines, so that columns within it cannot be told.
    /// </summary>
    public Place TextPlace => _node switch
    {
        YamlScalarNode { Style: ScalarStyle.Literal or ScalarStyle.Folded } => Place with { Line = Place.Line + 1, Column = 0 },
        YamlScalarNode when _node.Start.Line != _node.End.Line => Place with { Column = 0 },
        YamlScalarNode { Style: ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted } => Place with { Column = Place.Column + 1 },
        _ => Place,
    };

    /// <summary>The text, when the value is one; else null.</summary>
    public string? Scalar => (_node as YamlScalarNode)?.Value;

    /// <summary>Whether the value is a mapping.</summary>
    public bool IsMap => _node is YamlMappingNode;

    /// <summary>Whether the value is a list.</summary>
    public bool IsList => _node is YamlSequenceNode;

    /// <summary>The value as words.</summary>
    public string? AsText()
    {
        if (_node is YamlScalarNode { Value: { } text } && !string.IsNullOrWhiteSpace(text))
            return text;
        _problems.Error(Place, "A few words are needed here.");
        return null;
    }

    /// <summary>The value as a mapping.</summary>
    public YamlMap? AsMap()
    {
        if (_node is YamlMappingNode map)
            return new YamlMap(map, _file, _linesBefore, Place, _problems);
        _problems.Error(Place, "“name: value” lines are needed here.", "Put them on the lines below, indented by two spaces.");
        return null;
    }

    /// <summary>The value as a list; a single value counts as a list of one.</summary>
    public IReadOnlyList<YamlItem> AsList()
    {
        if (_node is not YamlSequenceNode list)
            return [this];
        var items = new List<YamlItem>();
        foreach (var node in list.Children)
            items.Add(new YamlItem(node, _file, _linesBefore, new Place(_file, (int)node.Start.Line + _linesBefore, (int)node.Start.Column), _problems));
        return items;
    }

    /// <summary>The value as a length with its unit.</summary>
    public Length? AsLength()
    {
        if (Scalar is not { } text)
        {
            _problems.Error(Place, "A length is needed here, such as 58 mm or 2 1/4 in.");
            return null;
        }

        if (LengthParser.TryParse(text, out var length, out var problem))
            return length;
        _problems.Error(Place, problem);
        return null;
    }

    /// <summary>The value as a whole number between two bounds.</summary>
    public int? AsWhole(int least, int most)
    {
        if (int.TryParse(Scalar, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        _problems.Error(Place, $"“{Scalar}” should be a whole number from {least} to {most}.");
        return null;
    }

    /// <summary>The value as a number between two bounds.</summary>
    public decimal? AsNumber(decimal least, decimal most)
    {
        if (decimal.TryParse(Scalar, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        _problems.Error(Place, string.Create(CultureInfo.InvariantCulture, $"“{Scalar}” should be a number from {least} to {most}."));
        return null;
    }

    /// <summary>The value as yes or no.</summary>
    public bool? AsYesNo()
    {
        switch (Scalar?.ToUpperInvariant())
        {
            case "YES" or "TRUE" or "ON":
                return true;
            case "NO" or "FALSE" or "OFF":
                return false;
            default:
                _problems.Error(Place, $"“{Scalar}” should be yes or no.");
                return null;
        }
    }

    /// <summary>The value as one of a few words.</summary>
    public string? AsChoice(IReadOnlyCollection<string> choices)
    {
        if (Scalar is { } text && choices.Contains(text))
            return text;
        _problems.Error(Place, $"“{Scalar}” is not one of the choices here.", Spelling.Advice(Scalar ?? "", choices));
        return null;
    }
}
