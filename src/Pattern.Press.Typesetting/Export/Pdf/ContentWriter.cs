using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// Writes the content of pages. Everything stands inside marked content: content of a structure element, or an artifact
/// (ISO 32000-1, 14.6 and 14.8.2.2).
/// </summary>
internal sealed class ContentWriter(PdfBuffer to, PdfFonts fonts, PdfImages images, StructureTree structure)
{
    private readonly TextWriter _text = new(to, fonts);
    private readonly List<PdfImage> _pageImages = [];
    private readonly Stack<DrawingState> _states = new();
    private DrawingState _state = DrawingState.Initial;

    // The element whose content is being written, and the marked content that is open.
    private StructureElement? _element;
    private StructureElement? _openElement;
    private ArtifactKind? _openArtifact;

    /// <summary>The pictures on the page, in the order of their first use.</summary>
    public IReadOnlyList<PdfImage> PageImages => _pageImages;

    /// <summary>Writes the content of a page into the buffer.</summary>
    public void Write(Page page)
    {
        to.Clear();
        _pageImages.Clear();
        _states.Clear();
        _state = DrawingState.Initial;
        _text.StartPage();
        WriteMarked(page.Items, new PageSpace(page.Height));
        CloseMark();
    }

    private static bool HoldsMarks(IReadOnlyList<PageItem> items)
    {
        foreach (var item in items)
        {
            if (item is TaggedItem or ArtifactItem || (item is GroupItem group && HoldsMarks(group.Items)))
                return true;
        }

        return false;
    }

    private void WriteMarked(IReadOnlyList<PageItem> items, PageSpace space)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case TaggedItem tagged:
                    if (tagged.Items.Count == 0)
                        break;
                    _element = tagged.Element;
                    WriteItems(tagged.Items, space);
                    _element = null;
                    break;
                case ArtifactItem artifact:
                    if (artifact.Items.Count == 0)
                        break;
                    OpenArtifact(artifact.Kind);
                    WriteItems(artifact.Items, space);
                    break;
                case GroupItem group when HoldsMarks(group.Items):
                    CloseMark();
                    StartGroup(group, space);
                    CloseMark();
                    WriteMarked(group.Items, default);
                    CloseMark();
                    EndGroup();
                    break;
                default:
                    OpenArtifact(ArtifactKind.Layout);
                    WriteItem(item, space);
                    break;
            }
        }
    }

    /// <summary>Opens the mark of the element whose content is being written, unless it is open.</summary>
    private void OpenMark()
    {
        if (_element is null || _openElement == _element)
            return;
        CloseMark();
        to.Name(_element.Role.ToString()).Raw("<</MCID "u8).Int(structure.Mark(_element)).Raw(">>BDC\n"u8);
        _openElement = _element;
    }

    /// <summary>Opens a mark that says what the next text says, as a part of the element or inside the artifact.</summary>
    private void OpenSpan(ReadOnlySpan<char> text)
    {
        _text.End();
        if (_element is null)
        {
            to.Raw("/Span<</ActualText"u8).Text(text).Raw(">>BDC\n"u8);
            return;
        }

        // Not inside the element's own mark: some readers take the end of a mark within for the end of the mark around it.
        CloseMark();
        to.Raw("/Span<</MCID "u8).Int(structure.Mark(_element)).Raw("/ActualText"u8).Text(text).Raw(">>BDC\n"u8);
    }

    private void OpenArtifact(ArtifactKind kind)
    {
        if (_openArtifact == kind)
            return;
        CloseMark();
        to.Raw(kind switch
        {
            ArtifactKind.Header => "/Artifact<</Type/Pagination/Subtype/Header/Attached[/Top]>>BDC\n"u8,
            ArtifactKind.Footer => "/Artifact<</Type/Pagination/Subtype/Footer/Attached[/Bottom]>>BDC\n"u8,
            ArtifactKind.Page => "/Artifact<</Type/Page>>BDC\n"u8,
            _ => "/Artifact<</Type/Layout>>BDC\n"u8,
        });
        _openArtifact = kind;
    }

    private void CloseMark()
    {
        if (_openElement is null && _openArtifact is null)
            return;
        _text.End();
        to.Raw("EMC\n"u8);
        _openElement = null;
        _openArtifact = null;
    }

    private void WriteItems(IReadOnlyList<PageItem> items, PageSpace space)
    {
        for (var i = 0; i < items.Count; i++)
            WriteItem(items[i], space);
    }

    private void WriteItem(PageItem item, PageSpace space)
    {
        switch (item)
        {
            case TextItem text:
                WriteText(text, space);
                break;
            case PathItem path:
                WritePath(path, space);
                break;
            case ImageItem image:
                WriteImage(image, space);
                break;
            case GroupItem group:
                StartGroup(group, space);
                WriteItems(group.Items, default);
                _text.End();
                EndGroup();
                break;
            default:
                throw new ArgumentException("Tagged content and artifacts must not stand inside each other.");
        }
    }

    private void WriteText(TextItem item, PageSpace space)
    {
        if (item.Run.Glyphs.Count == 0)
            return;
        SetFill(item.Colour);
        if (!SpelledText.IsNeeded(item.Run))
        {
            OpenMark();
            _text.Write(item, space);
            return;
        }

        foreach (var (part, text) in SpelledText.Parts(item))
        {
            if (text is null)
            {
                OpenMark();
                _text.Write(part, space);
            }
            else
            {
                OpenSpan(text);
                _text.Write(part, space);
                _text.End();
                to.Raw("EMC\n"u8);
            }
        }
    }

    private void StartGroup(GroupItem group, PageSpace space)
    {
        OpenMark();
        _text.End();
        to.Raw("q\n"u8);
        _states.Push(_state);
        _text.Save();
        space.WriteMatrix(to, group.Transform);
        if (group.Clip is { } clip)
        {
            if (_openElement is null && _openArtifact is null)
                OpenArtifact(ArtifactKind.Layout);
            WriteShape(clip, default);
            to.Raw("W* n\n"u8);
        }
    }

    private void EndGroup()
    {
        to.Raw("Q\n"u8);
        _state = _states.Pop();
        _text.Restore();
    }

    private void WritePath(PathItem item, PageSpace space)
    {
        if ((item.Fill is null && item.Stroke is null) || item.Path.Verbs.Count == 0)
            return;
        OpenMark();
        _text.End();
        if (item.Fill is { } fill)
            SetFill(fill);
        if (item.Stroke is { } stroke)
            SetStroke(stroke);
        WriteShape(item.Path, space);
        to.Raw(item switch
        {
            { Stroke: null } => "f*\n"u8,
            { Fill: null } => "S\n"u8,
            _ => "B*\n"u8,
        });
    }

    private void WriteShape(VectorPath path, PageSpace space)
    {
        var (verbs, points) = (path.Verbs, path.Points);
        var at = 0;
        for (var i = 0; i < verbs.Count; i++)
        {
            switch (verbs[i])
            {
                case PathVerb.Move:
                    WritePoint(points[at++], space);
                    to.Raw("m\n"u8);
                    break;
                case PathVerb.Line:
                    WritePoint(points[at++], space);
                    to.Raw("l\n"u8);
                    break;
                case PathVerb.Curve:
                    WritePoint(points[at++], space);
                    WritePoint(points[at++], space);
                    WritePoint(points[at++], space);
                    to.Raw("c\n"u8);
                    break;
                default:
                    to.Raw("h\n"u8);
                    break;
            }
        }
    }

    private void WritePoint(PagePoint point, PageSpace space) =>
        to.Fixed(space.X(point.X)).Byte((byte)' ').Fixed(space.Y(point.Y)).Byte((byte)' ');

    private void WriteImage(ImageItem item, PageSpace space)
    {
        OpenMark();
        _text.End();
        var image = images.Use(item.Image);
        if (!_pageImages.Contains(image))
            _pageImages.Add(image);

        // The picture's own space is a unit square with y up; this puts the square upright into the rectangle.
        var square = Upright(image.Pixels.Origin).Then(new Transform(item.Width, 0, 0, item.Height, item.X, item.Y));
        to.Raw("q "u8)
            .Factor(PageSpace.Points(square.A)).Byte((byte)' ').Factor(-PageSpace.Points(square.B)).Byte((byte)' ')
            .Factor(PageSpace.Points(-square.C)).Byte((byte)' ').Factor(PageSpace.Points(square.D)).Byte((byte)' ')
            .Fixed(space.X(square.C + square.E)).Byte((byte)' ').Fixed(space.Y(square.D + square.F))
            .Raw(" cm /I"u8).Int(image.Number).Raw(" Do Q\n"u8);
    }

    /// <summary>From the stored unit square, y down, to the upright one (Exif 2.3, tag 274; names say row 0, then column 0).</summary>
    private static Transform Upright(SKEncodedOrigin origin) => origin switch
    {
        SKEncodedOrigin.TopRight => new Transform(-1, 0, 0, 1, 1, 0),
        SKEncodedOrigin.BottomRight => new Transform(-1, 0, 0, -1, 1, 1),
        SKEncodedOrigin.BottomLeft => new Transform(1, 0, 0, -1, 0, 1),
        SKEncodedOrigin.LeftTop => new Transform(0, 1, 1, 0, 0, 0),
        SKEncodedOrigin.RightTop => new Transform(0, 1, -1, 0, 1, 0),
        SKEncodedOrigin.RightBottom => new Transform(0, -1, -1, 0, 1, 1),
        SKEncodedOrigin.LeftBottom => new Transform(0, -1, 1, 0, 0, 1),
        _ => Transform.Identity,
    };

    private void SetFill(Colour colour)
    {
        if (_state.Fill == colour)
            return;
        _state.Fill = colour;
        WriteColour(colour, " g\n"u8, " rg\n"u8);
    }

    private void SetStroke(Stroke stroke)
    {
        if (_state.Stroke != stroke.Colour)
        {
            _state.Stroke = stroke.Colour;
            WriteColour(stroke.Colour, " G\n"u8, " RG\n"u8);
        }

        var width = PdfBuffer.ToFixed(PageSpace.Points(stroke.Width));
        if (_state.Width != width)
        {
            _state.Width = width;
            to.Fixed(width).Raw(" w\n"u8);
        }

        if (_state.Cap != stroke.Cap)
        {
            _state.Cap = stroke.Cap;
            to.Raw(stroke.Cap == LineCap.Round ? "1 J 1 j\n"u8 : "0 J 0 j\n"u8);
        }

        if (!SameDash(_state.Dash, stroke.Dash))
        {
            _state.Dash = stroke.Dash;
            to.Byte((byte)'[');
            for (var i = 0; i < stroke.Dash.Count; i++)
            {
                if (i > 0)
                    to.Byte((byte)' ');
                to.Number(PageSpace.Points(stroke.Dash[i]));
            }

            to.Raw("]0 d\n"u8);
        }
    }

    private static bool SameDash(IReadOnlyList<double> a, IReadOnlyList<double> b)
    {
        if (ReferenceEquals(a, b))
            return true;
        if (a.Count != b.Count)
            return false;
        for (var i = 0; i < a.Count; i++)
        {
            if (a[i] != b[i])
                return false;
        }

        return true;
    }

    /// <summary>Greys as such, so that a printer sets black text in black ink alone.</summary>
    private void WriteColour(Colour colour, ReadOnlySpan<byte> grey, ReadOnlySpan<byte> rgb)
    {
        if (colour.Red == colour.Green && colour.Green == colour.Blue)
        {
            to.Number(colour.Red / 255.0).Raw(grey);
        }
        else
        {
            to.Number(colour.Red / 255.0).Byte((byte)' ').Number(colour.Green / 255.0).Byte((byte)' ')
                .Number(colour.Blue / 255.0).Raw(rgb);
        }
    }

    /// <summary>What the reader remembers from one operator to the next; the text writer remembers the font itself.</summary>
    private struct DrawingState
    {
        public Colour Fill;
        public Colour Stroke;
        public long Width;
        public LineCap Cap;
        public IReadOnlyList<double> Dash;

        /// <summary>Black, one point wide, continuous (ISO 32000-1, 8.4.1).</summary>
        public static DrawingState Initial => new() { Width = PdfBuffer.FixedPerUnit, Dash = [] };
    }
}
