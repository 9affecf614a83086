using System.Runtime.CompilerServices;

namespace Pattern.Press.Booklets.Tests;

/// <summary>Where the sources lie.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find([CallerFilePath] string here = "")
    {
        // Builds that map their sources' paths hide where they are; then the tests run inside the repository.
        for (var folder = new DirectoryInfo(File.Exists(here) ? Path.GetDirectoryName(here)! : AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Pattern.Press.sln")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The repository's root was not found.");
    }
}
