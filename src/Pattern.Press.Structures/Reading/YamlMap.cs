using YamlDotNet.RepresentationModel;

namespace Pattern.Press.Structures.Reading;

/// <summary>
/// A mapping in a YAML file. Keys are taken one by one; <see cref="RefuseTheRest"/> then reports those nobody asked for,
/// each with the nearest one that would have been right.
/// </summary>
public sealed class YamlMap
{
    private readonly YamlMappingNode _node;
    private readonly string _file;
    private readonly int _linesBefore;
    private readonly Problems _problems;
    private readonly SortedSet<string> _asked = new(StringComparer.Ordinal);

    internal YamlMap(YamlMappingNode node, string file, int linesBefore, Place place, Problems problems)
    {
        _node = node;
        _file = file;
        _linesBefore = linesBefore;
        _problems = problems;
        Place = place;
    }

    /// <summary>Where the mapping starts.</summary>
    public Place Place { get; }

    /// <summary>Every key with its value, in the file's order. Counts as asking for all of them.</summary>
    public IReadOnlyList<(string Key, Place KeyPlace, YamlItem Value)> Entries
    {
        get
        {
            var entries = new List<(string, Place, YamlItem)>();
            foreach (var (key, value) in _node.Children)
            {
                var name = (key as YamlScalarNode)?.Value ?? "";
                _asked.Add(name);
                entries.Add((name, PlaceOf(key), Item(name, value)));
            }

            return entries;
        }
    }

    /// <summary>The value of a key, or null when the key is absent or has no value.</summary>
    public YamlItem? Find(string key)
    {
        _asked.Add(key);
        foreach (var (name, value) in _node.Children)
        {
            if (name is YamlScalarNode scalar && scalar.Value == key)
                return value is YamlScalarNode { Value: null or "" } and { Style: YamlDotNet.Core.ScalarStyle.Plain } ? null : Item(key, value);
        }

        return null;
    }

    /// <summary>The value of a key; a problem is noted when it is absent.</summary>
    public YamlItem? Need(string key, string advice)
    {
        var found = Find(key);
        if (found is null)
            _problems.Error(Place, $"“{key}” is missing.", advice);
        return found;
    }

    /// <summary>Reports every key that was never asked for.</summary>
    public void RefuseTheRest()
    {
        foreach (var key in _node.Children.Keys)
        {
            var name = (key as YamlScalarNode)?.Value ?? key.ToString();
            if (!_asked.Contains(name))
                _problems.Error(PlaceOf(key), $"“{name}” is not known here.", Spelling.Advice(name, _asked));
        }
    }

    /// <summary>
    /// Reports keys that look like a slip of one that was asked for, or of a further one. For where reading ends early, so
    /// that the rest cannot be judged.
    /// </summary>
    public void RefuseSlips(params IEnumerable<string> others)
    {
        IReadOnlyCollection<string> known = [.. _asked, .. others];
        foreach (var key in _node.Children.Keys)
        {
            var name = (key as YamlScalarNode)?.Value ?? key.ToString();
            if (!known.Contains(name) && Spelling.Nearest(name, known) is { } right)
                _problems.Error(PlaceOf(key), $"“{name}” is not known here.", $"Did you mean “{right}”?");
        }
    }

    private YamlItem Item(string key, YamlNode node) => new(node, _file, _linesBefore, key, PlaceOf(node), _problems);

    private Place PlaceOf(YamlNode node) => new(_file, (int)node.Start.Line + _linesBefore, (int)node.Start.Column);
}
