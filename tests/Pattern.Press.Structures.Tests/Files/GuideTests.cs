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
        var guide = File.ReadAllText(Path.Combine(Folder, "README.md"));
        var example = Regex.Match(guide, "```yaml\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        Assert.NotEmpty(example);
        var problems = new Problems();
        var structure = Catalogue.ReadText(example, "soap-tray", "soap-tray.yaml", problems)!;
        Assert.Equal("", Words(problems));
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            var item = Rectangular("80 mm", "55 mm", "25 mm");
            var model = structure.Fit(new FitRequest { Ruler = ruler, Item = item, Given = new Dictionary<string, GivenValue>(), Stocks = Stocks }, problems)!;
            Assert.Equal("", Words(problems));
            Assert.DoesNotContain(ModelProofs.Of(model, item, Stocks.Values), proof => proof.Verdict == Verdict.Fails);
        }
    }
}
