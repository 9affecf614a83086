namespace Pattern.Press.Booklets.Content;

/// <summary>
/// Where the program's own data lies: the catalogue of structures, the phrases and the themes. They are copied next to
/// the program when it is built and when it is published.
/// </summary>
/// <param name="Root">The folder that holds <c>content</c> and <c>themes</c>.</param>
public sealed record Resources(string Root)
{
    /// <summary>The data next to the running program.</summary>
    public static Resources OfProgram { get; } = new(AppContext.BaseDirectory);

    /// <summary>The catalogue of structures, one YAML file each.</summary>
    public string StructuresFolder => Path.Combine(Root, "content", "structures");

    /// <summary>The phrases, one YAML file for each language and one for each variety of spelling.</summary>
    public string PhrasesFolder => Path.Combine(Root, "content", "phrases");

    /// <summary>The themes, one folder each, and the folder <c>fonts</c> that they share.</summary>
    public string ThemesFolder => Path.Combine(Root, "themes");
}
