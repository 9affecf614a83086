using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Templates;

namespace Pattern.Press.Acceptance.Pages;

/// <summary>What holds for a file as a whole: it is the same each time, and small.</summary>
public sealed class WholeFiles
{
    // For mail and phones; what the press promises itself.
    private const int MostBytes = 400_000;

    [Theory]
    [MemberData(nameof(Workshop.Booklets), MemberType = typeof(Workshop))]
    public void Building_again_gives_the_same_bytes(string name) =>
        AreTheSame(Workshop.Of(name).Files, Workshop.Build(Workshop.FolderOf(name)));

    [Fact]
    public void Booklets_built_at_once_are_those_built_alone()
    {
        using var variant = new Variant(seed: 7);
        string[] folders = [.. Workshop.Names.Select(Workshop.FolderOf), variant.Folder];
        var alone = folders.Select(Workshop.Build).ToArray();
        Assert.Equal(folders.Length, alone.Select(files => files[0].FileName).Distinct().Count());
        var jobs = Enumerable.Range(0, 4 * folders.Length).ToArray();
        var together = new IReadOnlyList<Pattern.Press.Booklets.BuiltBooklet>[jobs.Length];
        Parallel.ForEach(jobs, new ParallelOptions { MaxDegreeOfParallelism = 8 }, job => together[job] = Workshop.Build(folders[job % folders.Length]));
        foreach (var job in jobs)
            AreTheSame(alone[job % folders.Length], together[job]);
    }

    [Theory]
    [MemberData(nameof(Workshop.Booklets), MemberType = typeof(Workshop))]
    public void Files_are_small(string name) =>
        Assert.All(Workshop.Of(name).Files, file => Assert.InRange(file.Bytes.Length, 1, MostBytes));

    private static void AreTheSame(IReadOnlyList<Pattern.Press.Booklets.BuiltBooklet> expected, IReadOnlyList<Pattern.Press.Booklets.BuiltBooklet> actual)
    {
        Assert.Equal(expected.Select(file => file.FileName), actual.Select(file => file.FileName));
        Assert.All(expected.Zip(actual), pair => Assert.True(pair.First.Bytes.AsSpan().SequenceEqual(pair.Second.Bytes), $"{pair.First.FileName} came out different."));
    }
}
