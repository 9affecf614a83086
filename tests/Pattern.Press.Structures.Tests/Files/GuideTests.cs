using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Files;

public class GuideTests
{
    [Fact]
    public void The_example_of_the_guide_is_a_working_structure()
    {
        Assert.Empty(Failing(Blocks[0]));
    }

    [Fact]
    public void With_a_lid_the_proofs_say_what_was_forgotten_until_all_is_well()
    {
        // As the guide's sixth step changes its example.
        var lid = Changed(Blocks[0], "    down: [height, width, height]\n", "down:", "map:", Blocks[1]);
        lid = Replaced(lid, "      F: {panel: floor}", Blocks[1][Blocks[1].IndexOf("      L:", StringComparison.Ordinal)..] + "      F: {panel: floor}");
        lid = Replaced(lid, "values:\n", "values:\n  lip: if(ruler.metric, 15 mm, 5/8 in)\n");
        lid = Replaced(lid, "default: if(ruler.metric, 20 mm, 3/4 in)", "default: item.height + 2 * ease");
        Assert.Equal([FoldingProofKind.ItemPassesOpening, FoldingProofKind.ItemPassesOpening], Failing(lid));

        lid = Replaced(lid, "checks:\n", Blocks[2] + "\nchecks:\n");
        Assert.All(Failing(lid), kind => Assert.Equal(FoldingProofKind.RoomAroundItem, kind));
        Assert.NotEmpty(Failing(lid));

        lid = Replaced(lid, "min(item.width, item.depth) + 2 * ease + card.caliper", "min(item.width, item.depth) + 2 * ease + 2 * card.caliper");
        Assert.Empty(Failing(lid));
    }

    private static string[] Blocks =>
        [.. Regex.Matches(File.ReadAllText(Path.Combine(Folder, "README.md")), "```yaml\n(.*?)```", RegexOptions.Singleline).Select(match => match.Groups[1].Value)];

    private static string Changed(string example, string old, string from, string to, string block)
    {
        var start = block.IndexOf(from, StringComparison.Ordinal);
        var rows = Regex.Match(block, "    map:\n(      - .*\n)+").Value;
        var changed = Replaced(example, old, "    " + block[start..block.IndexOf(to, StringComparison.Ordinal)].TrimEnd() + "\n");
        return Regex.Replace(changed, "    map:\n(      - .*\n)+", rows);
    }

    private static string Replaced(string text, string old, string by)
    {
        Assert.Contains(old, text, StringComparison.Ordinal);
        return text.Replace(old, by, StringComparison.Ordinal);
    }

    private static List<FoldingProofKind> Failing(string example)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(example, "soap-tray", "soap-tray.yaml", problems)!;
        Assert.Equal("", Words(problems));
        var failing = new List<FoldingProofKind>();
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            var item = Rectangular("80 mm", "55 mm", "25 mm");
            var model = structure.Fit(new FitRequest { Ruler = ruler, Item = item, Given = new Dictionary<string, GivenValue>(), Stocks = Stocks }, problems)!;
            Assert.Equal("", Words(problems));
            failing.AddRange(ModelProofs.Of(model, item, Stocks.Values).Where(proof => proof.Verdict == Verdict.Fails).Select(proof => proof.Kind));
        }

        return failing;
    }
}
