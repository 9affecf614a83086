using System.Text.Json;
using System.Text.RegularExpressions;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;

namespace Pattern.Press.Booklets.Tests.Content;

/// <summary>The schema that editors complete from says the same as the reader.</summary>
public sealed class SchemaTests
{
    private static readonly JsonElement Definitions =
        JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "content", "booklet.schema.json"))).RootElement.GetProperty("$defs");

    [Theory]
    [InlineData("booklet")]
    [InlineData("step")]
    [InlineData("figure")]
    [InlineData("item")]
    [InlineData("stock")]
    public void It_knows_the_keys_that_the_reader_knows(string definition)
    {
        var keys = Definitions.GetProperty(definition).GetProperty("properties").EnumerateObject().Select(p => p.Name).ToList();
        using var folder = new TemporaryFolder();
        // Each of the schema's keys, with a value of the wrong kind, has to be known; and one more has to be refused.
        foreach (var key in keys.Append("no_such_key_at_all"))
        {
            switch (definition)
            {
                case "booklet":
                    folder.Write("booklet.md", $"---\n{key}: {{}}\n---\n");
                    break;
                case "item" or "stock":
                    folder.Write("booklet.md", $"---\n{(definition == "item" ? "item" : "stocks")}: {{{(definition == "item" ? "" : "card: {")}{key}: {{}}}}{(definition == "item" ? "" : "}")}\n---\n");
                    break;
                default:
                    folder.Write("steps/01-cut.md", definition == "step" ? $"---\n{key}: {{}}\n---\n" : $"---\nfigure: {{{key}: {{}}}}\n---\n");
                    break;
            }

            var unknown = folder.Read().Problems.All.Any(p => p.Message == $"“{key}” is not known here.");
            Assert.Equal(key == "no_such_key_at_all", unknown);
        }

        IReadOnlyList<string>? all = definition switch
        {
            "booklet" => BookletReader.Keys,
            "figure" => FigureReader.Keys,
            _ => null,
        };
        if (all is not null)
            Assert.Equal(all.Order(StringComparer.Ordinal), keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void It_knows_the_words_that_the_reader_knows()
    {
        Assert.Equal(FigureReader.Shows, Words("show"));
        Assert.Equal(BookletReader.PartNames, Words("part"));
        Assert.Equal(PaperSize.All.Select(paper => paper.Id), Words("paper"));
    }

    [Theory]
    [InlineData("330 x 483 mm")]
    [InlineData("13 × 19 in")]
    [InlineData("8 1/2x13\"")]
    [InlineData("a2")]
    [InlineData("330 x 483")]
    public void It_takes_the_papers_that_the_reader_takes(string paper)
    {
        var pattern = Definitions.GetProperty("paper").GetProperty("anyOf")[1].GetProperty("pattern").GetString()!;
        Assert.Equal(PaperSize.TryParse(paper, out _, out _), Regex.IsMatch(paper, pattern));
    }

    private static IEnumerable<string> Words(string definition) =>
        (Definitions.GetProperty(definition).TryGetProperty("anyOf", out var kinds) ? kinds[0] : Definitions.GetProperty(definition)).GetProperty("enum").EnumerateArray().Select(word => word.GetString()!);
}
