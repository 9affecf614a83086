using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>The faces that a document uses, in the order of their first use.</summary>
internal sealed class PdfFonts(PdfFile file)
{
    private readonly Dictionary<FontFace, EmbeddedFont> _fonts = new(ReferenceEqualityComparer.Instance);
    private readonly List<EmbeddedFont> _order = [];

    /// <summary>The object that names all the fonts for the pages.</summary>
    public int Resources { get; } = file.Reserve();

    public EmbeddedFont Use(FontFace face)
    {
        if (!_fonts.TryGetValue(face, out var font))
        {
            font = new EmbeddedFont(face, _order.Count, file.Reserve());
            _fonts.Add(face, font);
            _order.Add(font);
        }

        return font;
    }

    public void Write()
    {
        foreach (var font in _order)
            font.Write(file);
        var to = file.Object(Resources).Raw("<<"u8);
        foreach (var font in _order)
            to.Raw("/F"u8).Int(font.Number).Byte((byte)' ').Ref(font.Id);
        to.Raw(">>"u8);
    }
}
