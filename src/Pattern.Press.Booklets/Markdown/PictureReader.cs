using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Reads the pictures that the words name, from the booklet's folder and from nowhere else.</summary>
internal static class PictureReader
{
    private const string SaveAdvice = "Save it as PNG or JPEG.";

    /// <summary>Reads a picture.</summary>
    /// <param name="folder">The booklet's folder.</param>
    /// <param name="url">The path as written in the words.</param>
    /// <param name="place">Where it is written.</param>
    /// <param name="problems">Where problems go.</param>
    public static ImageData? Read(string folder, string url, Place place, Problems problems)
    {
        if (url.Contains("://", StringComparison.Ordinal) || url.StartsWith("//", StringComparison.Ordinal) || url.StartsWith("data:", StringComparison.OrdinalIgnoreCase))
        {
            problems.Error(place, $"The picture {Short(url)} is not in the booklet’s folder, and nothing is fetched.", "Put the picture into the folder and name it here.");
            return null;
        }

        var path = Uri.UnescapeDataString(url);
        var (kind, full) = FolderPaths.Follow(folder, path);
        switch (kind)
        {
            case PathKind.Inside:
                return Open(full, path, place, problems);
            case PathKind.Absolute:
                problems.Error(place, $"The picture {path} is named from the root of the disk.", "Put it into the booklet’s folder and name it from there, such as pictures/lid.png.");
                return null;
            case PathKind.Outside:
                problems.Error(place, $"The picture {path} lies outside the booklet’s folder.", "Put it into the folder; nothing outside it is read.");
                return null;
            case PathKind.Folder:
                problems.Error(place, path.Length == 0 ? "The picture has no name." : $"{path} is a folder, not a picture.", "Name the picture’s file.");
                return null;
            default:
                problems.Error(place, path.Length == 0 ? "The picture has no name." : $"There is no picture {path} in the booklet’s folder.", Advice(folder, path));
                return null;
        }
    }

    private static ImageData? Open(string full, string path, Place place, Problems problems)
    {
        try
        {
            var length = new FileInfo(full).Length;
            if (length > Picture.MostBytes)
            {
                problems.Error(place, $"The picture {path} has {length >> 20} MiB; at most {Picture.MostBytes >> 20} MiB can be read.", "Save a smaller one; 1,800 pixels across fill a page’s width.");
                return null;
            }

            if (Picture.Read(File.ReadAllBytes(full), out var problem) is { } image)
                return image;
            problems.Error(place, $"{path} {problem}.", SaveAdvice);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            problems.Error(place, $"The picture {path} cannot be read.", "Check that you may read it.");
        }

        return null;
    }

    private static string Advice(string folder, string path)
    {
        if (path.Contains('\\', StringComparison.Ordinal))
            return "Write “/” between the parts of the path.";
        var directory = Path.GetDirectoryName(path) ?? "";
        var (kind, _) = FolderPaths.Follow(folder, directory.Length == 0 ? "." : directory);
        if (kind != PathKind.Folder)
            return "Paths start from the booklet’s folder, in steps too.";
        var names = Directory.EnumerateFiles(Path.Combine(folder, directory))
            .Select(file => Path.GetFileName(file)!)
            .Where(name => Path.GetExtension(name).ToUpperInvariant() is ".PNG" or ".JPG" or ".JPEG")
            .ToList();
        var nearest = Spelling.Nearest(Path.GetFileName(path), names);
        return nearest is null
            ? "Paths start from the booklet’s folder, in steps too."
            : $"Did you mean “{(directory.Length == 0 ? nearest : directory.Replace('\\', '/') + "/" + nearest)}”?";
    }

    private static string Short(string url) => url.Length <= 60 ? url : url[..57] + "…";
}
