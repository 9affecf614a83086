using System.Xml.Linq;

namespace Pattern.Press.Acceptance.Architecture;

/// <summary>Data only moves to the right through the pipeline; so does every reference between projects.</summary>
public sealed class DependencyArrows
{
    // What each project may use, itself left out. The table in DEVELOPERS.md says the same in words.
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Measure"] = [],
        ["Nets"] = ["Measure"],
        ["Structures"] = ["Measure", "Nets"],
        ["Plans"] = ["Measure", "Nets"],
        ["Typesetting"] = ["Measure"],
        ["Booklets"] = ["Measure", "Nets", "Structures", "Plans", "Typesetting"],
        ["Cli"] = ["Measure", "Nets", "Structures", "Plans", "Typesetting", "Booklets"],
    };

    public static TheoryData<string> Projects => [.. Allowed.Keys];

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_only_to_those_on_its_left(string project)
    {
        var file = Path.Combine(RepositoryRoot(), "src", $"Pattern.Press.{project}", $"Pattern.Press.{project}.csproj");
        var references = XDocument.Load(file).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value)["Pattern.Press.".Length..]);
        Assert.Empty(references.Except(Allowed[project]));
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_compiled_project_uses_only_those_on_its_left(string project)
    {
        var assembly = System.Reflection.Assembly.Load(project == "Cli" ? "pattern-press" : $"Pattern.Press.{project}");
        var used = assembly.GetReferencedAssemblies()
            .Select(name => name.Name!)
            .Where(name => name.StartsWith("Pattern.Press.", StringComparison.Ordinal))
            .Select(name => name["Pattern.Press.".Length..]);
        Assert.Empty(used.Except(Allowed[project]));
    }

    [Fact]
    public void Every_project_has_its_arrows_named_here()
    {
        var projects = Directory.GetDirectories(Path.Combine(RepositoryRoot(), "src"))
            .Select(folder => Path.GetFileName(folder)["Pattern.Press.".Length..]);
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), projects.Order(StringComparer.Ordinal));
    }

    internal static string RepositoryRoot()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Pattern.Press.sln")))
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("The tests run outside the repository.");
        return folder;
    }
}
