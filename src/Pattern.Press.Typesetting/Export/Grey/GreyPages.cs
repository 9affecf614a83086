using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Grey;

/// <summary>
/// Turns every colour of a document into the grey of the same luminance, pictures too, so that a printer needs no coloured
/// ink and everything keeps its contrast.
/// </summary>
public static class GreyPages
{
    /// <summary>The document in greys.</summary>
    public static PressDocument Of(PressDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var images = new Dictionary<ImageData, ImageData>(ReferenceEqualityComparer.Instance);
        return document with { Pages = [.. document.Pages.Select(page => page with { Items = Of(page.Items, images) })] };
    }

    private static PageItem[] Of(IReadOnlyList<PageItem> items, Dictionary<ImageData, ImageData> images) =>
        [.. items.Select(item => Of(item, images))];

    private static PageItem Of(PageItem item, Dictionary<ImageData, ImageData> images) => item switch
    {
        PathItem path => path with { Fill = path.Fill?.Grey, Stroke = path.Stroke is { } stroke ? stroke with { Colour = stroke.Colour.Grey } : null },
        TextItem text => text with { Colour = text.Colour.Grey },
        ImageItem image => image with { Image = Of(image.Image, images) },
        GroupItem group => group with { Items = Of(group.Items, images) },
        TaggedItem tagged => tagged with { Items = Of(tagged.Items, images) },
        ArtifactItem artifact => artifact with { Items = Of(artifact.Items, images) },
        _ => throw new ArgumentException($"No grey is known for {item.GetType().Name}.", nameof(item)),
    };

    // A picture that is used several times stays one picture.
    private static ImageData Of(ImageData image, Dictionary<ImageData, ImageData> images)
    {
        if (!images.TryGetValue(image, out var grey))
            images[image] = grey = GreyPicture.Of(image);
        return grey;
    }
}
