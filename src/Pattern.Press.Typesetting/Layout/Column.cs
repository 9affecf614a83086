using System.Globalization;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Where blocks are laid out: a width of the page, and a place in the structure.</summary>
internal sealed record Column
{
    // Below about fifty letters to a line, words stand too far apart when they are made to fill it.
    private const double NarrowestJustifiedEms = 24;

    // Ragged lines of more than about 95 letters are hard to find the way back from; the room stays free.
    private const double WidestRaggedEms = 37;

    public required LayoutSession Session { get; init; }

    /// <summary>From the left of the text area, in millimetres.</summary>
    public double X { get; init; }

    /// <summary>In millimetres.</summary>
    public required double Width { get; init; }

    /// <summary>The element that the blocks' elements go into.</summary>
    public required StructureElement Parent { get; init; }

    /// <summary>Where the block around, or the block itself, came from.</summary>
    public BlockSource? Source { get; init; }

    /// <summary>The ground behind the column.</summary>
    public Frame? Frame { get; init; }

    /// <summary>How many lists are around.</summary>
    public int ListDepth { get; init; }

    /// <summary>How many of them have bullets, which differ by depth.</summary>
    public int BulletDepth { get; init; }

    /// <summary>Emphasis of all the words in the column.</summary>
    public Emphasis Base { get; init; }

    /// <summary>Whether items of lists are kept in one piece, as in columns side by side.</summary>
    public bool KeepsItems { get; init; }

    /// <summary>Whether paragraphs may be justified here: narrow columns are always ragged.</summary>
    public bool MayJustify { get; init; } = true;

    /// <summary>How large figures are made.</summary>
    public FigureScale FigureScale { get; init; }

    /// <summary>How high a figure may be here, in millimetres; null for as high as figures may be anywhere.</summary>
    public double? MostFigureHeight { get; init; }

    /// <summary>The column without so much on its left and right.</summary>
    public Column Inset(double left, double right) => this with { X = X + left, Width = Width - left - right };

    /// <summary>Lays out blocks one below the other.</summary>
    public void LayOut(IEnumerable<Block> blocks, StripList strips)
    {
        foreach (var block in blocks)
            BlockElements.LayOut(block, this, strips);
    }

    /// <summary>Sets a paragraph that belongs to an element, and returns how many lines it has.</summary>
    public int SetText(IReadOnlyList<Inline> inlines, TextLook look, StructureElement element, StripList strips, bool isHeading = false)
    {
        look = look with { Base = look.Base ^ Base };
        var paragraph = Session.Paragraph(inlines, look, Source);
        if (paragraph.IsEmpty)
            return 0;
        paragraph.AttachTo(element);
        Check(paragraph, Width);
        var justified = Session.Styles.Justified && MayJustify && !isHeading && Width >= NarrowestJustifiedEms * look.Size * TextStyle.Point;
        var measure = Session.Styles.Justified ? Width : Math.Min(Width, WidestRaggedEms * look.Size * TextStyle.Point);
        var lines = paragraph.Break(measure, justified);
        for (var i = 0; i < lines.Count; i++)
        {
            // Two lines at least stay together at either end of a paragraph; a heading is never parted.
            var firm = isHeading || (i < lines.Count - 1 && (i == 0 || i == lines.Count - 2));
            strips.Add(new TextStrip(lines, i, look, Session.Painter)
            {
                X = X,
                Frame = Frame,
                Source = Source,
                IsHeading = isHeading,
                Keep = firm ? Keep.Firm : Keep.Free,
            });
        }

        return lines.Count;
    }

    /// <summary>Notes words that are wider than the room for them, and characters that the typeface lacks.</summary>
    public void Check(Paragraph paragraph, double width)
    {
        if (paragraph.IsEmpty)
            return;
        var shaped = paragraph.Shaped;
        if (shaped.HasMissingGlyphs)
        {
            foreach (var (word, style) in shaped.Words)
                CheckGlyphs(word.Text, word.Glyphs, style.Face);
        }

        if (shaped.MinWidth <= width + 0.01)
            return;
        Session.Report(
            Source,
            string.Create(
                CultureInfo.InvariantCulture,
                $"“{shaped.WidestWords}” is {shaped.MinWidth:0.#} mm wide and cannot be broken, but there are only {Math.Max(0, width):0.#} mm for it. Shorten it, or put soft hyphens in it where it may be broken."),
            shaped.WidestWords,
            Math.Max(0, width));
    }

    /// <summary>Notes characters that a face has no glyph for: they would print as empty boxes.</summary>
    public void CheckGlyphs(string text, IReadOnlyList<ShapedGlyph> glyphs, FontFace face)
    {
        for (var i = 0; i < glyphs.Count; i++)
        {
            if (glyphs[i].Id == 0)
                Session.Report(Source, $"The typeface {face.PostScriptName} has no “{text.Substring(glyphs[i].Start, glyphs[i].Length)}” (in “{text.Trim()}”). Write it another way.", text.Trim());
        }
    }
}
