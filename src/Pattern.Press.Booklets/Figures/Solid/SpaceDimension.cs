using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>What the outside of a thing measures, as it is written in a drawing.</summary>
/// <param name="Width">Across.</param>
/// <param name="Depth">Deep.</param>
/// <param name="Height">High.</param>
public sealed record SizeLabels(string Width, string Depth, string Height);

/// <summary>A dimension of a thing in space.</summary>
/// <param name="From">One end of what is measured.</param>
/// <param name="To">The other end.</param>
/// <param name="Outwards">The way its extension lines run.</param>
/// <param name="Label">What is written on it.</param>
public sealed record SpaceDimension(Vector3d From, Vector3d To, Vector3d Outwards, string Label)
{
    /// <summary>The width, depth and height of a thing that stands on the origin, seen from the front right.</summary>
    public static IReadOnlyList<SpaceDimension> Around(double width, double depth, double height, SizeLabels labels)
    {
        ArgumentNullException.ThrowIfNull(labels);
        var (x, y) = (width / 2, depth / 2);
        return
        [
            new(new(-x, -y, 0), new(x, -y, 0), -Vector3d.UnitY, labels.Width),
            new(new(x, -y, 0), new(x, y, 0), Vector3d.UnitX, labels.Depth),
            new(new(-x, -y, 0), new(-x, -y, height), -Vector3d.UnitX, labels.Height),
        ];
    }
}
