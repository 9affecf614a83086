using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Files;

public class DamagedFileTests
{
    private static readonly string Whole = File.ReadAllText(Path.Combine(Folder, "explosion-box.yaml"));

    private static readonly string[] Scraps = ["", " ", "\n", ":", "[", "]", "{", "}", "(", ")", "\"", "'", "-", "0", "1 mm", "1/0 in", "999999999999999999999 mm", "&a ", "*a", "!x ", "|", "#", "wall_height", "\t", "\u0000", "é", "- 1"];

    [Fact]
    public void A_damaged_file_gives_problems_or_a_structure_and_never_an_exception()
    {
        var damage = Gen.Select(Gen.Int[0, Whole.Length - 1], Gen.Int[0, 12], Gen.Int[0, Scraps.Length - 1]).Array[1, 3];
        damage.Sample(
            cuts =>
            {
                var text = Whole;
                foreach (var (start, length, scrap) in cuts)
                {
                    var from = Math.Min(start, text.Length);
                    text = text.Remove(from, Math.Min(length, text.Length - from)).Insert(from, Scraps[scrap]);
                }

                var problems = new Problems();
                var structure = Catalogue.ReadText(text, "box", "box.yaml", problems);
                Assert.Equal(structure is null, problems.HasErrors);
                if (structure is null)
                    return;
                var request = Request(Ruler.SixteenthInches, Round("58 mm", "72 mm"), "{}", problems);
                var model = structure.Fit(request, problems);
                Assert.True(model is not null || problems.HasErrors);
            },
            iter: 150);
    }
}
