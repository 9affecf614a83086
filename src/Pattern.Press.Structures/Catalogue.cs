using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures;

/// <summary>
/// The structures that can be made: a folder with one file for each. A file is read when it is first asked for, so that a
/// booklet pays for its own structure only.
/// </summary>
public sealed class Catalogue
{
    private const string Extension = ".yaml";

    private readonly string _folder;

    private Catalogue(string folder, IReadOnlyList<string> ids)
    {
        _folder = folder;
        Ids = ids;
    }

    /// <summary>The structures' ids, in alphabetical order.</summary>
    public IReadOnlyList<string> Ids { get; }

    /// <summary>Opens a folder of structure files.</summary>
    /// <param name="folder">The folder; every <c>.yaml</c> file in it is a structure.</param>
    /// <param name="problems">Where a missing or unreadable folder is noted.</param>
    /// <returns>The catalogue; empty after a problem.</returns>
    public static Catalogue Open(string folder, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        try
        {
            var ids = Directory.EnumerateFiles(folder, "*" + Extension)
                .Select(Path.GetFileNameWithoutExtension).OfType<string>().Order(StringComparer.Ordinal);
            return new Catalogue(folder, [.. ids]);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            problems.Error(new Place(folder), "The folder of structures cannot be read.", broken.Message);
            return new Catalogue(folder, []);
        }
    }

    /// <summary>Reads a structure by its id.</summary>
    /// <param name="id">The id, as the maker wrote it.</param>
    /// <param name="place">Where it is written, for when there is none of that name.</param>
    /// <param name="problems">Where problems go, those within the structure's file too.</param>
    /// <returns>The structure, or null after a problem.</returns>
    public Structure? Find(string id, Place place, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        if (Ids.Contains(id, StringComparer.Ordinal))
            return Read(Path.Combine(_folder, id + Extension), problems);
        problems.Error(place, $"There is no structure “{id}”.", Spelling.Advice(id, Ids));
        return null;
    }

    /// <summary>Reads every structure; those with problems are left out after noting the problems.</summary>
    public IReadOnlyList<Structure> All(Problems problems) =>
        [.. Ids.Select(id => Read(Path.Combine(_folder, id + Extension), problems)).OfType<Structure>()];

    /// <summary>Reads a maker's own structure file, and tries it.</summary>
    /// <param name="path">The file; its name without <c>.yaml</c> becomes the structure's id.</param>
    /// <param name="problems">Where problems go.</param>
    /// <returns>The structure, or null after a problem.</returns>
    public static Structure? ReadFile(string path, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(problems);
        return Tried(Read(path, problems), problems);
    }

    private static Structure? Read(string path, Problems problems)
    {
        var file = Path.GetFileName(path);
        try
        {
            // The size is looked at first, so that a huge file is refused without being read.
            if (new FileInfo(path).Length > StructureReader.MostCharacters * 4L)
            {
                problems.Error(new Place(file), "The file is far too long to describe a structure.");
                return null;
            }

            return StructureReader.Read(File.ReadAllText(path), Path.GetFileNameWithoutExtension(path), file, problems);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            problems.Error(new Place(file), "The structure’s file cannot be read.", broken.Message);
            return null;
        }
    }

    /// <summary>Reads a maker's own structure from the text of its file, and tries it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="id">The structure's id.</param>
    /// <param name="file">The file's name, for problems.</param>
    /// <param name="problems">Where problems go.</param>
    /// <returns>The structure, or null after a problem.</returns>
    public static Structure? ReadText(string text, string id, string file, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(problems);
        return Tried(StructureReader.Read(text, id, file, problems), problems);
    }

    private static Structure? Tried(Structure? structure, Problems problems)
    {
        var found = new Problems();
        structure?.Try(found);
        foreach (var problem in found.All)
            problems.Add(problem);
        return found.HasErrors ? null : structure;
    }
}
