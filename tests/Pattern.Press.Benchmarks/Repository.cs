namespace Pattern.Press.Benchmarks;

/// <summary>Finds the repository from wherever the benchmarks run.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    private static string Find(string? folder) =>
        folder is null ? throw new InvalidOperationException("The benchmarks run outside the repository.")
        : File.Exists(Path.Combine(folder, "Pattern.Press.sln")) ? folder
        : Find(Path.GetDirectoryName(folder));
}
