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

    internal YamlItem(YamlNode node, string file, int linesBefore, string key, Place place, Problems problems)
    {
        Key = key;
        _node = node;
        _file = file;
        _linesBefore = linesBefore;
        _problems = problems;
        Place = place;
    }

    /// <summary>The key that the value, or the list it is in, belongs to; empty at the top of a file.</summary>
    public string Key { get; }

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

    /// <summary>Notes that the value cannot be right, with the key it belongs to.</summary>
    /// <param name="problem">What is wrong; a small first letter unless it starts with what was written.</param>
    /// <param name="advice">What to write instead, as a sentence of its own.</param>
    public void Refuse(string problem, string advice = "") =>
        _problems.Error(Place, Key.Length == 0 ? char.ToUpperInvariant(problem[0]) + problem[1..] : $"{Key}: {problem}", advice);

    /// <summary>The value as words.</summary>
    public string? AsText()
    {
        if (_node is YamlScalarNode { Value: { } text } && !string.IsNullOrWhiteSpace(text))
            return text;
        Refuse("a few words are needed here.", IsList ? "Leave the brackets or hyphens of a list away." : "");
        return null;
    }

    /// <summary>The value as a mapping.</summary>
    public YamlMap? AsMap()
    {
        if (_node is YamlMappingNode map)
            return new YamlMap(map, _file, _linesBefore, Place, _problems);
        Refuse("“name: value” lines are needed here.", "Put them on the lines below, indented by two spaces.");
        return null;
    }

    /// <summary>The value as a list; a single value counts as a list of one.</summary>
    public IReadOnlyList<YamlItem> AsList()
    {
        if (_node is not YamlSequenceNode list)
            return [this];
        var items = new List<YamlItem>();
        foreach (var node in list.Children)
            items.Add(new YamlItem(node, _file, _linesBefore, Key, new Place(_file, (int)node.Start.Line + _linesBefore, (int)node.Start.Column), _problems));
        return items;
    }

    /// <summary>The value as a length with its unit.</summary>
    public Length? AsLength()
    {
        if (Scalar is not { } text)
        {
            Refuse("a length is needed here, such as 58 mm or 2 1/4 in.");
            return null;
        }

        if (LengthParser.TryParse(text, out var length, out var problem))
            return length;
        Refuse(problem);
        return null;
    }

    /// <summary>The value as a whole number between two bounds.</summary>
    /// <param name="least">The least it may be.</param>
    /// <param name="most">The most it may be.</param>
    /// <param name="advice">What to write instead; empty for an example of a number.</param>
    public int? AsWhole(int least, int most, string advice = "")
    {
        if (int.TryParse(Scalar, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        Refuse($"“{Scalar}” should be a whole number from {least} to {most}.", advice.Length > 0 ? advice : Example(Math.Max(least, 1)));
        return null;
    }

    /// <summary>The value as a number between two bounds.</summary>
    public decimal? AsNumber(decimal least, decimal most)
    {
        if (decimal.TryParse(Scalar, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
            return number;
        Refuse(string.Create(CultureInfo.InvariantCulture, $"“{Scalar}” should be a number from {least} to {most}."), Example(Math.Clamp(2.5m, least, most)));
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
                Refuse($"{Written} should be yes or no.", Key.Length == 0 ? "" : $"Write “{Key}: yes” or “{Key}: no”.");
                return null;
        }
    }

    /// <summary>The value as one of a few words.</summary>
    public string? AsChoice(IReadOnlyCollection<string> choices)
    {
        if (Scalar is { } text && choices.Contains(text))
            return text;
        Refuse($"{Written} is not one of the choices here.", Spelling.Advice(Scalar ?? "", choices));
        return null;
    }

    /// <summary>What is written, for the start of a message: the words in quotation marks, or what stands in their place.</summary>
    public string Written => Scalar is { } words ? $"“{words}”" : IsMap ? "A group of lines" : "A list";

    // Figures alone, so that nobody writes the currency or "about" again.
    private string Example(decimal number) =>
        string.Create(CultureInfo.InvariantCulture, $"Write figures only, such as “{(Key.Length == 0 ? "" : Key + ": ")}{number}”.");
}
