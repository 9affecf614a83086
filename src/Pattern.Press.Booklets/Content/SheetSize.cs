using Pattern.Press.Measure;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads the size of a sheet as it stands on a packet: <c>A4</c>, <c>12 x 12 in</c>, <c>305 × 305 mm</c>.</summary>
internal static class SheetSize
{
    private static readonly Length Least = Length.FromMillimetres(10);
    private static readonly Length Most = Length.FromMillimetres(2000);

    /// <summary>Reads a size.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="size">The size as written, the first number across; A4 and its like are upright.</param>
    /// <param name="problem">What is wrong and what to write instead; empty when it could be read.</param>
    public static bool TryParse(string text, out Size size, out string problem)
    {
        size = default;
        problem = "";
        if (PaperSize.Find(text) is { } paper)
        {
            size = paper.Size;
            return true;
        }

        if (!SizeParser.TryParse(text, out var read, out problem))
        {
            if (problem.Length == 0)
                problem = $"“{text}” is not the size of a sheet; write {string.Join(", ", PaperSize.All.Select(p => p.Name))}, or two sides such as 305 x 305 mm or 12 x 12 in.";
            return false;
        }

        if (read.Shorter < Least || read.Longer > Most)
        {
            problem = $"A sheet of {text} is not one that can be bought; each side is from 10 mm to 2 m.";
            return false;
        }

        size = read;
        return true;
    }
}
