namespace Pattern.Press.Cli.Output;

/// <summary>Writes finished files so that a reader never meets half of one.</summary>
internal static class OutputFolder
{
    /// <summary>
    /// Writes every file beside its final place first, then renames them all. When one cannot be written, none of them
    /// takes its place.
    /// </summary>
    /// <exception cref="IOException">The folder cannot be made, or there is no room.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static IReadOnlyList<string> Write(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files)
    {
        var waiting = new List<(string Temporary, string Final)>();
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (name, bytes) in files)
            {
                var final = Path.Combine(folder, name);
                var temporary = final + ".part";
                waiting.Add((temporary, final));
                File.WriteAllBytes(temporary, bytes);
            }

            foreach (var (temporary, final) in waiting)
                File.Move(temporary, final, overwrite: true);
            return [.. waiting.Select(file => file.Final)];
        }
        catch
        {
            foreach (var (temporary, _) in waiting)
                Remove(temporary);
            throw;
        }
    }

    private static void Remove(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first problem is the one to report; what is left behind ends in .part and is overwritten next time.
        }
    }
}
