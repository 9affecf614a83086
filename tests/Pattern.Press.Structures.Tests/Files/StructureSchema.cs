using System.Text.Json;
using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace Pattern.Press.Structures.Tests.Files;

/// <summary>The schema that editors check structure files with, and a checker for as much of JSON Schema as it uses.</summary>
internal static class StructureSchema
{
    private static readonly JsonElement Schema = JsonDocument.Parse(File.ReadAllText(Path.Combine(Boxes.Folder, "structure.schema.json"))).RootElement;

    /// <summary>What the schema has against a file, one fault a line.</summary>
    public static string Faults(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return string.Join("\n", Check(Schema, stream.Documents[0].RootNode, "the whole"));
    }

    // The keywords of JSON Schema (draft 2020-12) that the schema uses, no more.
    private static IEnumerable<string> Check(JsonElement schema, YamlNode node, string path)
    {
        foreach (var keyword in schema.EnumerateObject())
        {
            var faults = keyword.Name switch
            {
                "$schema" or "$defs" or "title" or "description" => [],
                "$ref" => Check(keyword.Value.GetString()!.Split('/').Skip(1).Aggregate(Schema, (at, name) => at.GetProperty(name)), node, path),
                "anyOf" => keyword.Value.EnumerateArray().Any(one => !Check(one, node, path).Any()) ? [] : [$"{path}: fits none of the kinds"],
                "enum" => keyword.Value.EnumerateArray().Any(one => one.GetString() == Scalar(node)) ? [] : [$"{path}: none of the choices"],
                "pattern" => Regex.IsMatch(Scalar(node) ?? "", keyword.Value.GetString()!) ? [] : [$"{path}: does not match"],
                "maxLength" => Scalar(node)?.Length <= keyword.Value.GetInt32() ? [] : [$"{path}: too long"],
                "minItems" => node is YamlSequenceNode list && list.Children.Count < keyword.Value.GetInt32() ? [$"{path}: too few"] : [],
                "minProperties" => node is YamlMappingNode map && map.Children.Count < keyword.Value.GetInt32() ? [$"{path}: too few"] : [],
                "type" => Types(keyword.Value).Any(type => Is(node, type)) ? [] : [$"{path}: of the wrong type"],
                "required" => node is YamlMappingNode map ? keyword.Value.EnumerateArray().Where(key => Find(map, key.GetString()!) is null).Select(key => $"{path}: “{key}” is missing") : [],
                "items" => node is YamlSequenceNode list ? list.Children.SelectMany((item, i) => Check(keyword.Value, item, $"{path}/{i}")) : [],
                "properties" => node is YamlMappingNode map ? keyword.Value.EnumerateObject().SelectMany(property => Find(map, property.Name) is { } value ? Check(property.Value, value, $"{path}/{property.Name}") : []) : [],
                "propertyNames" => node is YamlMappingNode map ? map.Children.Keys.SelectMany(key => Check(keyword.Value, key, $"{path}: the name “{Scalar(key)}”")) : [],
                "additionalProperties" => node is YamlMappingNode map ? Others(schema, map).SelectMany(other => keyword.Value.ValueKind == JsonValueKind.False ? [$"{path}/{other.Key}: unknown"] : Check(keyword.Value, other.Value, $"{path}/{other.Key}")) : [],
                _ => throw new InvalidOperationException($"The schema uses “{keyword.Name}”, which this test does not know."),
            };
            foreach (var fault in faults)
                yield return fault;
        }
    }

    private static IEnumerable<string> Types(JsonElement type) =>
        type.ValueKind == JsonValueKind.Array ? type.EnumerateArray().Select(one => one.GetString()!) : [type.GetString()!];

    private static bool Is(YamlNode node, string type) => type switch
    {
        "object" => node is YamlMappingNode,
        "array" => node is YamlSequenceNode,
        _ => node is YamlScalarNode,
    };

    private static IEnumerable<(string Key, YamlNode Value)> Others(JsonElement schema, YamlMappingNode map) =>
        map.Children.Select(pair => (Key: Scalar(pair.Key)!, pair.Value))
            .Where(pair => !schema.TryGetProperty("properties", out var known) || !known.TryGetProperty(pair.Key, out _));

    private static YamlNode? Find(YamlMappingNode map, string key) => map.Children.FirstOrDefault(pair => Scalar(pair.Key) == key).Value;

    private static string? Scalar(YamlNode node) => (node as YamlScalarNode)?.Value;
}
