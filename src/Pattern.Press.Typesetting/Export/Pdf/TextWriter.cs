using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>Writes runs of text (ISO 32000-1, 9.4), keeping a text object open from one run to the next.</summary>
internal sealed class TextWriter(PdfBuffer to, PdfFonts fonts)
{
    private readonly Stack<(EmbeddedFont? Font, long Size)> _saved = new();
    private EmbeddedFont? _font;
    private long _size;
    private bool _open;
    private (long X, long Y) _line;

    // The state of the array that is being written: whether it is open, and a string in it.
    private bool _inArray;
    private bool _inString;

    public void StartPage()
    {
        _saved.Clear();
        _font = null;
        _size = 0;
        _open = false;
    }

    /// <summary>The surrounding graphics state was saved.</summary>
    public void Save() => _saved.Push((_font, _size));

    /// <summary>The surrounding graphics state was restored.</summary>
    public void Restore() => (_font, _size) = _saved.Pop();

    /// <summary>Closes the text object, if one is open.</summary>
    public void End()
    {
        if (!_open)
            return;
        to.Raw("ET\n"u8);
        _open = false;
    }

    public void Write(TextItem item, PageSpace space)
    {
        var run = item.Run;
        if (run.Glyphs.Count == 0)
            return;
        if (!_open)
        {
            to.Raw("BT\n"u8);
            _open = true;
            _line = default;
        }

        SetFont(run);

        // Steps from line to line are differences of what was written, so that no error adds up.
        var (x, y) = (space.X(item.X), space.Y(item.Y));
        to.Fixed(x - _line.X).Byte((byte)' ').Fixed(y - _line.Y).Raw(" Td\n"u8);
        _line = (x, y);
        WriteGlyphs(run);
    }

    private void SetFont(ShapedRun run)
    {
        var size = PdfBuffer.ToFixed(run.Size);
        if (_font?.Face == run.Face && _size == size)
            return;
        if (_font?.Face != run.Face)
            _font = fonts.Use(run.Face);
        _size = size;
        to.Raw("/F"u8).Int(_font.Number).Byte((byte)' ').Fixed(size).Raw(" Tf\n"u8);
    }

    private void WriteGlyphs(ShapedRun run)
    {
        var glyphs = run.Glyphs;
        var font = _font!;
        var unit = 1000.0 * PdfBuffer.FixedPerUnit / run.Face.UnitsPerEm;

        // Places along the line in fixed thousandths of the size: where the reader's pen is, and, in font units, where
        // layout's pen is.
        long reader = 0;
        long pen = 0;
        long raised = 0;
        for (var i = 0; i < glyphs.Count; i++)
        {
            var glyph = glyphs[i];
            if (glyph.OffsetY != raised)
            {
                EndArray();
                raised = glyph.OffsetY;
                to.Number(raised * run.Size / run.Face.UnitsPerEm).Raw(" Ts\n"u8);
            }

            var target = (long)Math.Round((pen + glyph.OffsetX) * unit);
            if (target != reader)
            {
                StartArray();
                EndString();
                to.Fixed(reader - target);
                reader = target;
            }

            StartString();
            to.Hex16(font.Code(glyph.Id, run.Text.AsSpan(glyph.Start, glyph.Length)));
            reader += font.Width(glyph.Id);
            pen += glyph.Advance + run.Tracking;
        }

        EndArray();
        if (raised != 0)
            to.Raw("0 Ts\n"u8);
    }

    private void StartArray()
    {
        if (_inArray)
            return;
        to.Byte((byte)'[');
        _inArray = true;
    }

    private void EndArray()
    {
        if (!_inArray)
            return;
        EndString();
        to.Raw("]TJ\n"u8);
        _inArray = false;
    }

    private void StartString()
    {
        StartArray();
        if (_inString)
            return;
        to.Byte((byte)'<');
        _inString = true;
    }

    private void EndString()
    {
        if (!_inString)
            return;
        to.Byte((byte)'>');
        _inString = false;
    }
}
