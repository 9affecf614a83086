using Pattern.Press.Measure;

namespace Pattern.Press.Booklets;

/// <summary>What the person at the keyboard wants different from what the booklet says.</summary>
public sealed record BuildOptions
{
    /// <summary>Papers to print on; empty for the booklet's own.</summary>
    public IReadOnlyList<PaperSize> Papers { get; init; } = [];

    /// <summary>Whether only the first of the booklet's own papers is wanted, as for a look at it.</summary>
    public bool FirstPaperOnly { get; init; }

    /// <summary>A theme's name; null for the booklet's own.</summary>
    public string? Theme { get; init; }
}

/// <summary>A finished booklet.</summary>
/// <param name="FileName">The name of its file: <c>tea-tin-box-a4.pdf</c>.</param>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">How many pages it has.</param>
/// <param name="TemplatePages">How many of them are templates.</param>
public sealed record BuiltBooklet(string FileName, byte[] Bytes, int Pages, int TemplatePages);
