using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>
/// What reading one structure file gathers: its names and its formulas. Formulas may use names that come further down, so
/// they are checked once everything is read.
/// </summary>
internal sealed class FileReading(string file, Problems problems)
{
    private readonly List<(Formula Formula, Kind Kind)> _formulas = [];

    /// <summary>The file's name, for problems.</summary>
    public string File { get; } = file;

    /// <summary>Where problems go.</summary>
    public Problems Problems { get; } = problems;

    /// <summary>The names that formulas may use.</summary>
    public Names Names { get; } = new();

    /// <summary>Reads a formula that has to give a certain kind of value.</summary>
    public Formula? Formula(YamlItem item, Kind kind)
    {
        if (item.Scalar is not { } text)
        {
            Problems.Error(item.Place, $"A formula is needed here that gives {kind.WithArticle()}.");
            return null;
        }

        return Formula(text, item.TextPlace, kind);
    }

    /// <summary>Reads a formula from a part of a text.</summary>
    public Formula? Formula(string text, Place place, Kind kind)
    {
        var formula = Formulas.Formula.Read(text, place, Problems);
        if (formula is not null)
            _formulas.Add((formula, kind));
        return formula;
    }

    /// <summary>Reads a list of formulas; null when one of them is broken.</summary>
    public IReadOnlyList<Formula>? FormulaList(YamlItem item, Kind kind)
    {
        var list = item.AsList();
        var all = list.Select(one => Formula(one, kind)).OfType<Formula>().ToList();
        return all.Count == list.Count ? all : null;
    }

    /// <summary>Checks every formula read so far against the names.</summary>
    public void CheckFormulas()
    {
        foreach (var (formula, kind) in _formulas)
        {
            if (formula.Check(Names, Problems) is { } found && found != kind)
                Problems.Error(formula.Place, $"“{formula.Text}” gives {found.WithArticle()}, but {kind.WithArticle()} is needed here.", kind == Kind.Length ? "Lengths are written with their units: 2 mm or 1/16 in." : "");
        }
    }

    /// <summary>Reads a mapping under a key; a mapping that is absent counts as empty.</summary>
    public IReadOnlyList<(string Key, Place KeyPlace, YamlItem Value)> Section(YamlMap map, string key, int most)
    {
        if (map.Find(key)?.AsMap() is not { } section)
            return [];
        var entries = section.Entries;
        if (entries.Count <= most)
            return entries;
        Problems.Error(section.Place, $"There are {entries.Count} entries under “{key}”; there can be at most {most}.");
        return [.. entries.Take(most)];
    }

    /// <summary>Whether a name can be used in formulas and booklets: small letters, digits and underscores.</summary>
    public bool NameIsSound(string name, Place place)
    {
        if (name.Length is > 0 and <= 40 && char.IsAsciiLetterLower(name[0]) && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_') && name is not ("and" or "or" or "not" or "yes" or "no" or "true" or "false" or "pi"))
            return true;
        Problems.Error(place, $"“{name}” cannot be a name.", "Names are small letters, digits and underscores, starting with a letter: wall_height.");
        return false;
    }
}
