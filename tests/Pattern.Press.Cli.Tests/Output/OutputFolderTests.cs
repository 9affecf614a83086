using System.Text;
using Pattern.Press.Cli.Output;

namespace Pattern.Press.Cli.Tests.Output;

/// <summary>Files take their places all at once, or not at all.</summary>
public sealed class OutputFolderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Files_are_written_into_a_folder_that_is_made()
    {
        var into = Path.Combine(_folder, "new", "deep");
        var written = OutputFolder.Write(into, [("a.pdf", Bytes("one")), ("b.pdf", Bytes("two"))]);
        Assert.Equal([Path.Combine(into, "a.pdf"), Path.Combine(into, "b.pdf")], written);
        Assert.Equal("two", File.ReadAllText(written[1]));
        Assert.Equal(2, Directory.GetFileSystemEntries(into).Length);
    }

    [Fact]
    public void Older_files_are_replaced()
    {
        File.WriteAllText(Path.Combine(_folder, "a.pdf"), "old and longer");
        OutputFolder.Write(_folder, [("a.pdf", Bytes("new"))]);
        Assert.Equal("new", File.ReadAllText(Path.Combine(_folder, "a.pdf")));
    }

    [Fact]
    public void When_one_file_cannot_be_written_none_takes_its_place()
    {
        File.WriteAllText(Path.Combine(_folder, "a.pdf"), "old");
        // A folder stands where the second file would be written first.
        Directory.CreateDirectory(Path.Combine(_folder, "b.pdf.part"));
        var problem = Record.Exception(() => OutputFolder.Write(_folder, [("a.pdf", Bytes("new")), ("b.pdf", Bytes("new"))]));
        Assert.True(problem is IOException or UnauthorizedAccessException, problem?.ToString());
        Assert.Equal("old", File.ReadAllText(Path.Combine(_folder, "a.pdf")));
        Assert.False(File.Exists(Path.Combine(_folder, "a.pdf.part")));
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
