namespace Pattern.Press.Structures.Tests.Files;

public class SchemaTests
{
    public static TheoryData<string> Files => [.. Directory.EnumerateFiles(Boxes.Folder, "*.yaml").Select(Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_structure_of_the_catalogue_follows_the_schema(string file)
    {
        Assert.Equal("", StructureSchema.Faults(File.ReadAllText(Path.Combine(Boxes.Folder, file))));
    }

    [Theory]
    [InlineData("suits:", "suit:", "the whole: “suits” is missing")]
    [InlineData("    kind: choice", "    kind: choose", "parameters/lid_walls: none of the choices")]
    [InlineData("    build: scored sheet", "    build: scored sheet\n    colour: red", "pieces/base: fits none of the kinds")]
    [InlineData("  base:\n", "  Base:\n", "pieces: the name “Base”")]
    public void The_schema_refuses_what_the_reader_refuses(string right, string wrong, string fault)
    {
        var text = File.ReadAllText(Path.Combine(Boxes.Folder, "explosion-box.yaml"));
        var at = text.IndexOf(right, StringComparison.Ordinal);
        Assert.Contains(fault.Split(':')[0].Split('/')[^1], StructureSchema.Faults(text.Remove(at, right.Length).Insert(at, wrong)), StringComparison.Ordinal);
        var problems = new Reading.Problems();
        Assert.Null(Catalogue.ReadText(text.Remove(at, right.Length).Insert(at, wrong), "box", "box.yaml", problems));
    }
}
