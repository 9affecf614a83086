using Pattern.Press.Structures.Reading;
using YamlDotNet.RepresentationModel;

namespace Pattern.Press.Structures.Tests.Files;

/// <summary>Every key that the catalogue's files use, misspelt one at a time: the reader and the schema both refuse it.</summary>
public class MisspeltKeyTests
{
    // Below these, keys are names of the file's own.
    private static readonly string[] Own = ["parameters", "values", "pieces", "mats", "stocks", "checks", "cells", "panels", "assembly", "seams", "marks"];

    public static TheoryData<string, string, int, int> Keys
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var file in Directory.EnumerateFiles(Boxes.Folder, "*.yaml").Order(StringComparer.Ordinal))
            {
                var stream = new YamlStream();
                stream.Load(new StringReader(File.ReadAllText(file)));
                foreach (var (path, key) in KeysOf(stream.Documents[0].RootNode, ""))
                {
                    if (seen.Add(path))
                        data.Add(path, Path.GetFileName(file), (int)key.Start.Line, (int)key.Start.Column);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_misspelt_key_is_told_at_its_place_with_the_right_one_and_the_schema_refuses_it_too(string path, string file, int line, int column)
    {
        var key = path.Split('/')[^1];
        var lines = File.ReadAllText(Path.Combine(Boxes.Folder, file)).Split('\n');
        Assert.Equal(key, lines[line - 1].Substring(column - 1, key.Length));
        var wrong = key.Insert(key.Length > 2 ? 2 : key.Length, "q");
        lines[line - 1] = lines[line - 1].Remove(column - 1, key.Length).Insert(column - 1, wrong);
        var text = string.Join('\n', lines);

        var problems = new Problems();
        Assert.Null(Catalogue.ReadText(text, "box", "box.yaml", problems));
        Assert.Contains(problems.All, problem => (problem.Line, problem.Column) == (line, column)
            && problem.Message.Contains($"“{wrong}”", StringComparison.Ordinal)
            && problem.Advice == $"Did you mean “{key}”?");
        Assert.NotEqual("", StructureSchema.Faults(text));
    }

    [Fact]
    public void Keys_of_all_sections_and_builders_are_among_them()
    {
        var paths = Keys.Select(row => row.Data.Item1).ToList();
        Assert.True(paths.Count > 100, $"{paths.Count}");
        foreach (var path in new[] { "takes", "parameters/*/least", "pieces/*/map", "pieces/*/cells/*/taper", "pieces/*/panels/*/bends", "pieces/*/solid", "pieces/*/rise", "mats/*/goes", "assembly/*/leaves", "seams/*/*/onto", "steps/fold", "steps/place/*/say", "checks/*/found" })
            Assert.Contains(path, paths);
    }

    private static IEnumerable<(string Path, YamlNode Key)> KeysOf(YamlNode node, string path)
    {
        switch (node)
        {
            case YamlSequenceNode list:
                return list.Children.SelectMany(child => KeysOf(child, path));
            case YamlMappingNode map:
                // A seam is named by its piece and its panel, and words about hands by the piece.
                var parts = path.Split('/', StringSplitOptions.RemoveEmptyEntries);
                var own = (parts.Length > 0 && Own.Contains(parts[^1])) || (parts.Length == 2 && (parts[0] == "seams" || (parts[0] == "steps" && map.Children.Values.All(value => value is not YamlScalarNode))));
                return map.Children.SelectMany(pair =>
                {
                    var name = ((YamlScalarNode)pair.Key).Value!;
                    var below = path.Length == 0 ? name : $"{path}/{(own ? "*" : name)}";
                    return (own ? [] : new[] { (below, pair.Key) }).Concat(KeysOf(pair.Value, below));
                });
            default:
                return [];
        }
    }
}
