using System.Collections.Concurrent;
using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Booklets.Themes;

/// <summary>
/// Opens each font file once in the life of the process. Faces are safe to share, and opening one costs more than setting
/// a page with it. A file that has changed is opened anew.
/// </summary>
internal static class FaceCache
{
    private static readonly ConcurrentDictionary<(string Path, long Length, long Written), Lazy<FontFace>> Faces = new();

    /// <summary>The face in a file.</summary>
    /// <exception cref="FormatException">The file is not a font that can be used.</exception>
    /// <exception cref="IOException">The file cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static FontFace Open(string path)
    {
        var file = new FileInfo(path);
        var key = (file.FullName, file.Length, file.LastWriteTimeUtc.Ticks);
        var face = Faces.GetOrAdd(key, static k => new Lazy<FontFace>(() => new FontFace(File.ReadAllBytes(k.Path), Path.GetFileName(k.Path))));
        try
        {
            return face.Value;
        }
        catch
        {
            // A file that could not be read now may be readable later.
            Faces.TryRemove(key, out _);
            throw;
        }
    }
}
