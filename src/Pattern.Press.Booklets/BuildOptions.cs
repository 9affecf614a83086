using Pattern.Press.Booklets.Content;
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

    /// <summary>What the printer cannot reach; null for what the booklet says. See <see cref="PrintSettings.WrongMargin"/>.</summary>
    public Length? PrinterMargin { get; init; }

    /// <summary>How far pages of a template lap; null for what the booklet says. See <see cref="PrintSettings.WrongLap"/>.</summary>
    public Length? Lap { get; init; }

    /// <summary>Whether only the templates are printed, also those of a booklet that leaves them out.</summary>
    public bool OnlyTemplates { get; init; }

    /// <summary>For how many kits templates are printed and materials are counted; null for what the booklet says.</summary>
    public int? Copies { get; init; }

    /// <summary>Whether everything is printed in greys.</summary>
    public bool Grey { get; init; }

    /// <summary>Whether a template may take any number of pages.</summary>
    public bool Force { get; init; }
}

/// <summary>A finished booklet.</summary>
/// <param name="FileName">The name of its file: <c>tea-tin-box-a4.pdf</c>.</param>
/// <param name="Bytes">The file.</param>
/// <param name="Pages">How many pages it has.</param>
/// <param name="TemplatePages">How many of them are templates.</param>
public sealed record BuiltBooklet(string FileName, byte[] Bytes, int Pages, int TemplatePages);
