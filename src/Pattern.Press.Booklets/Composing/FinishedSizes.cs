using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Composing;

/// <summary>How large the finished thing is outside, on the ruler of its fit.</summary>
internal static class FinishedSizes
{
    private static readonly string[] Names = ["size.outside_length", "size.outside_width", "size.outside_height"];

    /// <summary>The finished sizes that the structure names, or null when it names none.</summary>
    public static (Length Width, Length Depth, Length Height)? Of(Model model)
    {
        var lengths = Names.Select(name => model.Values.GetValueOrDefault(name)).OfType<LengthValue>().Select(value => value.Length).ToList();
        return lengths.Count == Names.Length ? (lengths[0], lengths[1], lengths[2]) : null;
    }
}
