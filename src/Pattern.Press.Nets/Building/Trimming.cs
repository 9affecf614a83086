using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>Cuts back the ends of a panel beside the fold it hangs on.</summary>
internal static class Trimming
{
    /// <summary>
    /// The panel with its ends moved in by the relief and leaning inwards by the taper, or null when nothing would be left
    /// of its far side.
    /// </summary>
    /// <param name="panel">A panel with straight sides.</param>
    /// <param name="hinge">The fold it hangs on, in the direction of the panel's own outline.</param>
    /// <param name="taper">In degrees, 0 to below 90.</param>
    /// <param name="relief">In millimetres, 0 or more.</param>
    /// <param name="ruler">The ruler whose marks the tapered ends are brought to where there is room; null for none.</param>
    public static Outline? Trimmed(Outline panel, Edge hinge, double taper, double relief, Ruler? ruler = null)
    {
        var along = (hinge.To - hinge.From) * (1 / hinge.Chord);
        Point inwards = new(-along.Y, along.X);
        var depth = panel.Corners.Max(corner => inwards.Dot(corner - hinge.From));
        var lean = taper * Math.PI / 180;
        if (ruler is not null && depth > LineWork.Tolerance)
        {
            var reach = ruler.Round(Length.FromMillimetres(depth * Math.Tan(lean)), Rounding.Up).Millimetres;
            if (hinge.Chord - (2 * relief) - (2 * reach) > hinge.Chord / 4)
                lean = Math.Atan2(reach, depth);
        }

        var (sine, cosine) = Math.SinCos(lean);
        if (hinge.Chord - (2 * relief) - (2 * depth * sine / cosine) < LineWork.Tolerance)
            return null;

        var start = Kept(panel, hinge.From + (along * relief), (along * cosine) - (inwards * sine));
        return Kept(start, hinge.To - (along * relief), (along * -cosine) - (inwards * sine));
    }

    // The part of an outline on one side of a line (Sutherland and Hodgman).
    private static Outline Kept(Outline outline, Point on, Point side)
    {
        var corners = new List<Point>();
        foreach (var edge in outline.Edges)
        {
            var (from, to) = (side.Dot(edge.From - on), side.Dot(edge.To - on));
            if (from > -LineWork.Tolerance)
                corners.Add(edge.From);
            if ((from > LineWork.Tolerance && to < -LineWork.Tolerance) || (from < -LineWork.Tolerance && to > LineWork.Tolerance))
                corners.Add(edge.At(from / (from - to)));
        }

        return LineWork.Tidied(Outline.Through([.. corners]).Edges);
    }
}
