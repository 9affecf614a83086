using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>How high groups came out in trials, and the room above and below them, in millimetres.</summary>
/// <param name="everyPass">Those that are the same in every pass over the book, if not all are; shared by the passes.</param>
internal sealed class GroupHeights(GroupHeights? everyPass = null)
{
    private readonly Dictionary<(KeepTogetherBlock Group, FigureScale Scale, double Width), (double Height, double Gap, double After)> _known = [];

    /// <summary>What is known of a group, or what a trial finds.</summary>
    /// <param name="group">The group.</param>
    /// <param name="column">The column it would stand in.</param>
    /// <param name="measure">The trial.</param>
    public (double Height, double Gap, double After) Get(KeepTogetherBlock group, Column column, Func<(double Height, double Gap, double After)> measure)
    {
        var key = (group, column.FigureScale, column.Width);
        if (_known.TryGetValue(key, out var known) || (everyPass is not null && everyPass._known.TryGetValue(key, out known)))
            return known;
        var asked = column.Session.LabelsAskedFor;
        var found = measure();

        // Numbers of pages change from pass to pass, and with them lines and heights.
        var isTheSame = everyPass is not null && column.Session.LabelsAskedFor == asked;
        (isTheSame ? everyPass!._known : _known)[key] = found;
        return found;
    }
}
