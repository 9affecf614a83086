namespace Pattern.Press.Booklets.Content;

/// <summary>Where a path in a booklet's words leads.</summary>
public enum PathKind
{
    /// <summary>To a file inside the folder.</summary>
    Inside,

    /// <summary>To a place outside the folder, directly or through a link of the file system.</summary>
    Outside,

    /// <summary>It starts at the root of a disk.</summary>
    Absolute,

    /// <summary>To nothing that exists.</summary>
    Missing,

    /// <summary>To a folder.</summary>
    Folder,
}

/// <summary>Follows paths so that nothing outside a folder is ever read.</summary>
public static class FolderPaths
{
    // As many links as Linux follows before it gives up.
    private const int MostLinks = 40;

    /// <summary>Finds out where a relative path leads, links of the file system followed.</summary>
    /// <param name="folder">The folder that must not be left.</param>
    /// <param name="relative">The path, with <c>/</c> between its parts.</param>
    /// <returns>What it leads to, and the full path when it is a file inside the folder; else an empty one.</returns>
    public static (PathKind Kind, string FullPath) Follow(string folder, string relative)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(relative);
        if (relative.Length == 0 || relative.Contains('\0', StringComparison.Ordinal))
            return (PathKind.Missing, "");
        if (relative[0] is '/' or '\\' || Path.IsPathRooted(relative) || (relative.Length > 1 && char.IsAsciiLetter(relative[0]) && relative[1] == ':'))
            return (PathKind.Absolute, "");
        try
        {
            var root = Real(folder, 0);
            var written = Path.GetFullPath(Path.Combine(root, relative));
            if (!IsWithin(root, written) || !IsWithin(root, Real(written, 0)))
                return (PathKind.Outside, "");
            var real = Real(written, 0);
            if (File.Exists(real))
                return (PathKind.Inside, real);
            return (Directory.Exists(real) ? PathKind.Folder : PathKind.Missing, "");
        }
        catch (IOException)
        {
            // Links that lead round in a circle lead nowhere.
            return (PathKind.Missing, "");
        }
    }

    private static bool IsWithin(string root, string path) =>
        path.Equals(root, StringComparison.Ordinal) ||
        path.StartsWith(Path.EndsInDirectorySeparator(root) ? root : root + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    // The path with the links in every one of its parts followed, not only in the last one.
    private static string Real(string path, int links)
    {
        if (links > MostLinks)
            throw new IOException("Too many links.");
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
        var current = Path.GetPathRoot(full) ?? "";
        foreach (var part in full[current.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = Path.Combine(current, part);
            var target = new FileInfo(next).LinkTarget;
            current = target is null ? next : Real(Path.Combine(current, target), links + 1);
        }

        return current;
    }
}
