using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A picture, never so large that its pixels show.</summary>
internal sealed class ImageElement : CaptionedElement<ImageBlock>
{
    private const double FewestPixelsPerInch = 110;

    protected override void LayOut(ImageBlock block, Column column, StripList strips)
    {
        var image = block.Image;
        var sharp = image.PixelWidth * 25.4 / FewestPixelsPerInch;
        var width = Math.Min(WidthOf(block.Width, column), sharp);
        var height = width * image.PixelHeight / image.PixelWidth;
        if (height > MostHeight(column))
            (width, height) = (width * MostHeight(column) / height, MostHeight(column));
        var drawn = new DrawnFigure(width, height, [new ImageItem(image, 0, 0, width, height)]);
        Place(drawn, block.AlternativeText, block.Caption, column, strips);
    }
}
