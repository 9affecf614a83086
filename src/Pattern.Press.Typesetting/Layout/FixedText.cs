using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Words on pages whose every item has its place: whoever placed them may have erred.</summary>
internal static class FixedText
{
    // In millimetres; sums of many numbers.
    private const double Hair = 0.01;

    /// <summary>The first words that are partly or wholly outside a page; null if all are on it.</summary>
    public static string? Beyond(IReadOnlyList<PageItem> items, FixedPage page) => Beyond(items, Transform.Move(0, 0), page);

    private static string? Beyond(IReadOnlyList<PageItem> items, Transform place, FixedPage page)
    {
        foreach (var item in items)
        {
            var found = item switch
            {
                GroupItem group => Beyond(group.Items, group.Transform.Then(place), page),
                TextItem text when !(IsOn(text.X, text.Y) && IsOn(text.X + text.Run.Width, text.Y)) => text.Run.Text.Trim(),
                _ => null,
            };
            if (found is { Length: > 0 })
                return found;
        }

        return null;

        bool IsOn(double x, double y)
        {
            var (px, py) = ((place.A * x) + (place.C * y) + place.E, (place.B * x) + (place.D * y) + place.F);
            return px >= -Hair && py >= -Hair && px <= page.Width + Hair && py <= page.Height + Hair;
        }
    }
}
