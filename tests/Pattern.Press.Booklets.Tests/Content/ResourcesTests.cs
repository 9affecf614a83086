using Pattern.Press.Booklets.Content;

namespace Pattern.Press.Booklets.Tests.Content;

public sealed class ResourcesTests
{
    [Theory]
    [InlineData("content/phrases/en.yaml")]
    [InlineData("content/phrases/en-us.yaml")]
    [InlineData("themes/handout/theme.yaml")]
    [InlineData("themes/fonts/bitter/OFL.txt")]
    public void The_program_s_data_is_copied_next_to_it(string file)
    {
        var copied = Path.Combine(Resources.OfProgram.Root, file);
        Assert.Equal(File.ReadAllBytes(Path.Combine(Repository.Root, file)), File.ReadAllBytes(copied));
    }

    [Fact]
    public void Every_font_travels_with_its_licence()
    {
        foreach (var family in Directory.EnumerateDirectories(Path.Combine(Resources.OfProgram.ThemesFolder, "fonts")))
            Assert.Contains("SIL OPEN FONT LICENSE", File.ReadAllText(Path.Combine(family, "OFL.txt")), StringComparison.OrdinalIgnoreCase);
    }
}
