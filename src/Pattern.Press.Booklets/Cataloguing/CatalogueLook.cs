using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Cataloguing;

/// <summary>A theme made for reference: the same faces and colours, closer set, so that half a page holds a structure.</summary>
internal static class CatalogueLook
{
    // A booklet is read at arm's length on a table, a catalogue in the hand; below 7.5 pt reading gets hard work (common
    // practice, no source).
    private const double Smallest = 7.5;

    /// <summary>The closer look.</summary>
    public static StyleSheet Of(StyleSheet styles) => styles with
    {
        Scale = styles.Scale with
        {
            Body = 9,
            Leading = 11.5,
            Lead = 11.5,
            Small = 8,
            Table = Smallest,
            Heading1 = styles.Scale.Heading1,
            Heading2 = 13,
            Heading3 = 10,
        },
        Spacing = styles.Spacing with { Top = 15, Bottom = 13, Left = 17, Right = 17, Paragraph = 0.8, Block = 1.7, Gutter = 4 },
    };
}
