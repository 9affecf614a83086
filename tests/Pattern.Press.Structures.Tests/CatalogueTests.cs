using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests;

public class CatalogueTests
{
    [Fact]
    public void The_whole_catalogue_reads_without_a_problem()
    {
        var problems = new Problems();
        var all = Catalogue.Open(Folder, problems).All(problems);
        Assert.Equal("", Words(problems));
        Assert.Contains(all, structure => structure.Id == "explosion-box");
        Assert.All(all, structure =>
        {
            Assert.NotEmpty(structure.Suits);
            Assert.All(structure.Parameters, parameter => Assert.EndsWith(".", parameter.Means, StringComparison.Ordinal));
            Assert.All(structure.Stocks, stock => Assert.EndsWith(".", stock.Means, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void A_structure_is_found_by_its_id_and_a_slip_gets_the_nearest()
    {
        var problems = new Problems();
        var catalogue = Catalogue.Open(Folder, problems);
        Assert.Equal("Explosion box", catalogue.Find("explosion-box", new Place("booklet.md", 3, 12), problems)!.Title);
        Assert.Null(catalogue.Find("explosion-bix", new Place("booklet.md", 3, 12), problems));
        Assert.Equal("booklet.md:3:12: error: There is no structure “explosion-bix”. Did you mean “explosion-box”?", Words(problems));
    }

    [Fact]
    public void A_folder_or_file_that_is_not_there_is_a_problem()
    {
        var problems = new Problems();
        Assert.Empty(Catalogue.Open(Path.Combine(Folder, "nowhere"), problems).Ids);
        Assert.Null(Catalogue.ReadFile(Path.Combine(Folder, "nothing.yaml"), problems));
        Assert.Equal(2, problems.All.Count);
    }

    [Fact]
    public void The_parameters_tell_what_they_mean_and_what_they_are()
    {
        var wall = Explosion.Parameters.Single(parameter => parameter.Name == "lid_walls");
        Assert.Equal((ParameterKind.Choice, "double"), (wall.Kind, wall.Default));
        Assert.Equal(["single", "double"], wall.Choices);
        var lip = Explosion.Parameters.Single(parameter => parameter.Name == "platform_lip");
        Assert.Equal((ParameterKind.Length, "platform", "3 mm"), (lip.Kind, lip.When, lip.Least));
        Assert.Equal([ItemShape.Round, ItemShape.Rectangular], Explosion.Takes);
    }

    [Fact]
    public void The_same_request_gives_the_same_model()
    {
        var (one, other) = (Fit(Measure.Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: yes"), Fit(Measure.Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: yes"));
        Assert.Equal(one.Values.Keys, other.Values.Keys);
        Assert.Equal(one.Kit.Parts.Select(part => (part.Piece.Id, part.Piece.Sheet)), other.Kit.Parts.Select(part => (part.Piece.Id, part.Piece.Sheet)));
        Assert.Equal(one.Checks, other.Checks);
    }

    [Fact]
    public void Names_stand_for_the_items_and_the_parts_sizes()
    {
        var values = Fit(Measure.Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: yes").Values;
        Assert.Equal(new LengthValue(L("58 mm")), values["item.diameter"]);
        Assert.Equal(new WordValue("a tin"), values["item.name"]);
        Assert.Equal(new NumberValue(4), values["gusset_mat_left.quantity"]);
        Assert.Equal(new FlagValue(true), values["size.platform"]);
        Assert.Contains("size.platform_lip", values.Keys);
        Assert.DoesNotContain("size.platform_lip", Fit(Measure.Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: no").Values.Keys);
        Assert.DoesNotContain("item.name", Fit(Measure.Ruler.WholeMillimetres, null, "floor_length: 60 mm\nfloor_width: 60 mm\nwall_height: 60 mm").Values.Keys);
    }
}
