using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Png;

/// <summary>Draws items of a page on a canvas whose unit is the millimetre.</summary>
internal sealed class PagePainter(SKCanvas canvas) : IDisposable
{
    private readonly SKPaint _paint = new() { IsAntialias = true };
    private readonly Dictionary<(FontFace Face, ushort Glyph), SKPath?> _outlines = [];
    private readonly Dictionary<ImageData, SKImage> _images = new(ReferenceEqualityComparer.Instance);

    public void Draw(IReadOnlyList<PageItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case PathItem path:
                    DrawPath(path);
                    break;
                case TextItem text:
                    DrawText(text);
                    break;
                case ImageItem image:
                    DrawImage(image);
                    break;
                case GroupItem group:
                    DrawGroup(group);
                    break;
                case TaggedItem tagged:
                    Draw(tagged.Items);
                    break;
                case ArtifactItem artifact:
                    Draw(artifact.Items);
                    break;
                default:
                    throw new ArgumentException($"There is no way to draw a {item.GetType().Name}.");
            }
        }
    }

    public void Dispose()
    {
        _paint.Dispose();
        foreach (var image in _images.Values)
            image.Dispose();
        foreach (var outline in _outlines.Values)
            outline?.Dispose();
    }

    private static SKColor Ink(Colour colour) => new(colour.Red, colour.Green, colour.Blue);

    private static SKPath Shape(VectorPath path)
    {
        using var shape = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        var at = 0;
        foreach (var verb in path.Verbs)
        {
            switch (verb)
            {
                case PathVerb.Move:
                    shape.MoveTo(Point(path.Points[at++]));
                    break;
                case PathVerb.Line:
                    shape.LineTo(Point(path.Points[at++]));
                    break;
                case PathVerb.Curve:
                    shape.CubicTo(Point(path.Points[at]), Point(path.Points[at + 1]), Point(path.Points[at + 2]));
                    at += 3;
                    break;
                default:
                    shape.Close();
                    break;
            }
        }

        return shape.Detach();
    }

    private static SKPoint Point(PagePoint point) => new((float)point.X, (float)point.Y);

    private void DrawPath(PathItem item)
    {
        using var shape = Shape(item.Path);
        if (item.Fill is { } fill)
        {
            _paint.Style = SKPaintStyle.Fill;
            _paint.Color = Ink(fill);
            canvas.DrawPath(shape, _paint);
        }

        if (item.Stroke is { } stroke)
        {
            _paint.Style = SKPaintStyle.Stroke;
            _paint.Color = Ink(stroke.Colour);
            _paint.StrokeWidth = (float)stroke.Width;
            _paint.StrokeMiter = 10;
            (_paint.StrokeCap, _paint.StrokeJoin) = stroke.Cap == LineCap.Round
                ? (SKStrokeCap.Round, SKStrokeJoin.Round)
                : (SKStrokeCap.Butt, SKStrokeJoin.Miter);
            using var dash = Dash(stroke.Dash);
            _paint.PathEffect = dash;
            canvas.DrawPath(shape, _paint);
            _paint.PathEffect = null;
        }
    }

    /// <summary>The dashes; an odd number of lengths goes round twice, as it does in PDF.</summary>
    private static SKPathEffect? Dash(IReadOnlyList<double> lengths)
    {
        if (lengths.Count == 0)
            return null;
        var count = lengths.Count % 2 == 0 ? lengths.Count : lengths.Count * 2;
        var intervals = new float[count];
        for (var i = 0; i < count; i++)
            intervals[i] = (float)lengths[i % lengths.Count];
        return SKPathEffect.CreateDash(intervals, 0);
    }

    private void DrawText(TextItem item)
    {
        var run = item.Run;
        if (run.Glyphs.Count == 0)
            return;
        // As outlines, which stand exactly where they should along the line and when turned.
        var baseline = Baseline(item.Y);
        var scale = (float)run.Scale;
        long pen = 0;
        using var builder = new SKPathBuilder { FillType = SKPathFillType.Winding };
        foreach (var glyph in run.Glyphs)
        {
            if (Outline(run.Face, glyph.Id) is { } outline)
            {
                var x = (float)(item.X + ((pen + glyph.OffsetX) * run.Scale));
                var y = (float)(baseline - (glyph.OffsetY * run.Scale));
                builder.AddPath(outline, new SKMatrix(scale, 0, x, 0, scale, y, 0, 0, 1));
            }

            pen += glyph.Advance + run.Tracking;
        }

        using var shape = builder.Detach();
        _paint.Style = SKPaintStyle.Fill;
        _paint.Color = Ink(item.Colour);
        canvas.DrawPath(shape, _paint);
    }

    /// <summary>
    /// Where the baseline of text stands: when it is level, on the top edge of the row of pixels it falls into, as PDF
    /// readers draw it, so that letters stand sharp.
    /// </summary>
    private double Baseline(double y)
    {
        var m = canvas.TotalMatrix;
        if (m.SkewX != 0 || m.SkewY != 0 || m.ScaleY <= 0)
            return y;

        // A baseline on an edge stays there whatever the rounding of single-precision numbers.
        const double Slack = 1e-3;
        return (Math.Floor((y * m.ScaleY) + m.TransY + Slack) - m.TransY) / m.ScaleY;
    }

    /// <summary>The outline of a glyph in font units; null for an empty one.</summary>
    private SKPath? Outline(FontFace face, ushort glyph)
    {
        if (!_outlines.TryGetValue((face, glyph), out var outline))
        {
            using var font = new SKFont(face.Typeface, face.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
            outline = font.GetGlyphPath(glyph);
            _outlines.Add((face, glyph), outline);
        }

        return outline is { IsEmpty: false } ? outline : null;
    }

    private void DrawImage(ImageItem item)
    {
        if (!_images.TryGetValue(item.Image, out var image))
        {
            using var data = SKData.CreateCopy(item.Image.Bytes.Span);
            image = SKImage.FromEncodedData(data) ?? throw new ArgumentException("A picture cannot be read.");
            _images.Add(item.Image, image);
        }

        var area = SKRect.Create((float)item.X, (float)item.Y, (float)item.Width, (float)item.Height);
        canvas.DrawImage(image, area, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear), _paint);
    }

    private void DrawGroup(GroupItem group)
    {
        canvas.Save();
        var t = group.Transform;
        canvas.Concat(new SKMatrix((float)t.A, (float)t.C, (float)t.E, (float)t.B, (float)t.D, (float)t.F, 0, 0, 1));
        if (group.Clip is { } clip)
        {
            using var shape = Shape(clip);
            canvas.ClipPath(shape, SKClipOperation.Intersect, true);
        }

        Draw(group.Items);
        canvas.Restore();
    }
}
