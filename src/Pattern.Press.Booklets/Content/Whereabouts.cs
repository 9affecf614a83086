using System.Text;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>
/// Finds the line on which a maker wrote words that turned out wrong where the program set them: in a table, in a list of
/// materials. Words are looked for as they are printed, so quotation marks, spaces and line ends do not count.
/// </summary>
internal sealed class Whereabouts
{
    // Only read once something is wrong.
    private readonly Lazy<IReadOnlyList<(string File, string Text, List<int> Lines)>> _files;

    private Whereabouts(BookletSource source) => _files = new(() => Read(source));

    /// <summary>In what the maker of a booklet wrote: its front matter first, its steps, a structure file of its own.</summary>
    public static Whereabouts In(BookletSource source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return new Whereabouts(source);
    }

    /// <summary>Where words are written, in one file if it is named; null where they are not.</summary>
    /// <param name="words">The words as they are printed.</param>
    /// <param name="file">The only file to look in, or null for all of them.</param>
    public Place? Find(string words, string? file = null)
    {
        ArgumentNullException.ThrowIfNull(words);
        return Wordings(words).Select(wording => Exact(wording, file)).FirstOrDefault(place => place is not null);
    }

    // A word may be printed with what the program put before or behind it, such as a comma or a sum of money; the longest
    // run of letters in it is the maker's.
    private static IEnumerable<string> Wordings(string words)
    {
        var plain = Plain(words).Text.Trim();
        yield return plain;
        yield return plain.Trim('.', ',', ';', ':', '(', ')', '\'', '"', '!', '?', ' ');
        var letters = new string([.. plain.Select(c => char.IsLetter(c) ? c : ' ')]);
        yield return letters.Split(' ').OrderByDescending(word => word.Length).First();
    }

    private Place? Exact(string wording, string? file)
    {
        const int ShortestTold = 3;
        if (wording.Length < ShortestTold)
            return null;
        foreach (var (name, text, lines) in _files.Value.Where(one => file is null || one.File == file))
        {
            var at = text.IndexOf(wording, StringComparison.Ordinal);
            if (at < 0)
                at = text.IndexOf(wording, StringComparison.OrdinalIgnoreCase);
            if (at >= 0)
                return new Place(name, lines[at]);
        }

        return null;
    }

    private static List<(string File, string Text, List<int> Lines)> Read(BookletSource source)
    {
        var files = new List<(string File, string Text, List<int> Lines)>();
        Add(BookletReader.FileName);
        foreach (var step in source.Steps)
            Add(step.File);
        if (source.Structure.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase))
            Add(source.Structure);
        return files;

        void Add(string file)
        {
            var (kind, path) = FolderPaths.Follow(source.Folder, file.StartsWith("./", StringComparison.Ordinal) ? file[2..] : file);
            if (kind != PathKind.Inside || TextFile.Read(path, file, new Problems()) is not { } written)
                return;
            var (text, lines) = Plain(written);
            files.Add((file, text, lines));
        }
    }

    // Marks that are typed one way and printed another become one; any run of white space is one space.
    private static (string Text, List<int> Lines) Plain(string written)
    {
        var text = new StringBuilder(written.Length);
        var lines = new List<int>(written.Length);
        var line = 1;
        foreach (var c in written)
        {
            var plain = c switch
            {
                '\u2018' or '\u2019' => '\'',
                '\u201C' or '\u201D' => '"',
                '\u2010' or '\u2011' or '\u2013' or '\u2014' or '\u2212' => '-',
                _ when char.IsWhiteSpace(c) => ' ',
                _ => c,
            };
            if (c != '\u00AD' && (plain != ' ' || (text.Length > 0 && text[^1] != ' ')))
            {
                text.Append(plain);
                lines.Add(line);
            }

            if (c == '\n')
                line++;
        }

        return (text.ToString(), lines);
    }
}
