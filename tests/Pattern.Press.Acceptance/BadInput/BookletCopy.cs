using Pattern.Press.Acceptance.Architecture;
using Pattern.Press.Cli;

namespace Pattern.Press.Acceptance.BadInput;

/// <summary>A copy of the example booklet that a test may spoil, and the command run on it.</summary>
internal sealed class BookletCopy : IDisposable
{
    private readonly string _scratch = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public BookletCopy()
    {
        Folder = Path.Combine(_scratch, "spoilt-box");
        Copy(Path.Combine(DependencyArrows.RepositoryRoot(), "content", "tea-tin-box"), Folder);
    }

    public string Folder { get; }

    public string Out => Path.Combine(_scratch, "out");

    /// <summary>Replaces a text that must be there, once or more.</summary>
    public BookletCopy Change(string file, string from, string to)
    {
        var path = Path.Combine(Folder, file);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
        return this;
    }

    /// <summary>Runs the command and gives its exit code and what it said.</summary>
    public static (int Code, string Output, string Errors) Run(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = CommandLine.Run(arguments, output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    /// <summary>Builds the copy.</summary>
    public (int Code, string Output, string Errors) Build(params string[] more) => Run(["build", Folder, "--out", Out, .. more]);

    /// <summary>The line of a file that holds a text, from 1.</summary>
    public int LineOf(string file, string text) =>
        1 + Array.FindIndex(File.ReadAllLines(Path.Combine(Folder, file)), line => line.Contains(text, StringComparison.Ordinal));

    public void Dispose()
    {
        if (!OperatingSystem.IsWindows() && Directory.Exists(Out))
            File.SetUnixFileMode(Out, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Directory.Delete(_scratch, recursive: true);
    }

    private static void Copy(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from))
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        foreach (var folder in Directory.GetDirectories(from))
            Copy(folder, Path.Combine(to, Path.GetFileName(folder)));
    }
}
