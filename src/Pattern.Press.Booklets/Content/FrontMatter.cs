using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Parts a Markdown file into its front matter, the YAML between two lines of three dashes, and its words.</summary>
internal static class FrontMatter
{
    /// <summary>Reads the front matter of a text and finds where its words start.</summary>
    /// <returns>
    /// The keys, null when they cannot be read (and a problem was noted), and the words as far as it is known where they
    /// start, so that what is wrong in them is told in the same go.
    /// </returns>
    public static (YamlMap? Keys, MarkdownText Body) Split(string text, string file, string example, Problems problems)
    {
        var lines = text.Split('\n');
        var first = 0;
        while (first < lines.Length && string.IsNullOrWhiteSpace(lines[first]))
            first++;
        if (first == lines.Length || lines[first].TrimEnd() != "---")
        {
            problems.Error(new Place(file, 1), "The front matter is missing.", $"Start the file with a line “---”, then lines such as “{example}”, then a line “---” again.");
            return (null, new MarkdownText(text, new Place(file, 1, 1)));
        }

        var last = Array.FindIndex(lines, first + 1, line => line.TrimEnd() is "---" or "...");
        if (last < 0)
        {
            problems.Error(new Place(file, first + 1), "The front matter that starts here is never closed.", "Put a line “---” between it and the words.");
            return (null, new MarkdownText("", new Place(file, lines.Length, 1)));
        }

        var yaml = string.Join('\n', lines[(first + 1)..last]);
        var body = string.Join('\n', lines[(last + 1)..]);
        return (YamlSource.Read(yaml, file, problems, first + 2), new MarkdownText(body, new Place(file, last + 2, 1)));
    }
}
