using Pattern.Press.Measure;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The two columns of a table of measurements.</summary>
internal static class Columns
{
    /// <summary>The head of a column; the one that the templates are drawn from says so.</summary>
    public static TableCell Head(BookletContext context, UnitSystem system)
    {
        var name = context.Phrases[system == UnitSystem.Metric ? "system.metric" : "system.imperial"];
        return Words.Head(system == context.Source.Primary ? context.Phrases.Format("measurements.primary", ("system", name)) : name);
    }
}
