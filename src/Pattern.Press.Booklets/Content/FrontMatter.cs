using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Parts a Markdown file into its front matter, the YAML between two lines of three dashes, and its words.</summary>
internal static class FrontMatter
{
    /// <summary>Reads the front matter of a text and finds where its words start.</summary>
    /// <returns>Both, or null when the front matter cannot be read (and a problem was noted).</returns>
    public static (YamlMap Keys, MarkdownText Body)? Split(string text, string file, string example, Problems problems)
    {
        var lines = text.Split('\n');
        var first = 0;
        while (first < lines.Length && string.IsNullOrWhiteSpace(lines[first]))
            first++;
        if (first == lines.Length || lines[first].TrimEnd() != "---")
        {
            problems.Error(new Place(file, 1), "The front matter is missing.", $"Start the file with a line “---”, then lines such as “{example}”, then a line “---” again.");
            return null;
        }

        var last = Array.FindIndex(lines, first + 1, line => line.TrimEnd() is "---" or "...");
        if (last < 0)
        {
            problems.Error(new Place(file, first + 1), "The front matter that starts here is never closed.", "Put a line “---” between it and the words.");
            return null;
        }

        var yaml = string.Join('\n', lines[(first + 1)..last]);
        var keys = YamlSource.Read(yaml, file, problems, first + 2);
        if (keys is null)
            return null;
        var body = string.Join('\n', lines[(last + 1)..]);
        return (keys, new MarkdownText(body, new Place(file, last + 2, 1)));
    }
}
