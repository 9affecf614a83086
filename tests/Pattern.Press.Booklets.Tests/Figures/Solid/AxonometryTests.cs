using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

public sealed class AxonometryTests
{
    // ISO 5456-3 (from memory): isometric, both level axes at 30°, all three foreshortened alike; dimetric, the axes at 7°
    // and 42°, depth foreshortened to half of width and height.
    [Fact]
    public void The_isometric_axes_stand_at_30_degrees_and_are_foreshortened_alike()
    {
        var (x, y, z) = Axes(Axonometry.Isometric);
        Assert.Equal(30, x.Angle, 9);
        Assert.Equal(30, y.Angle, 9);
        Assert.Equal(90, z.Angle, 9);
        Assert.Equal(x.Length, y.Length, 12);
        Assert.Equal(x.Length, z.Length, 12);
    }

    [Fact]
    public void The_dimetric_axes_stand_at_7_and_42_degrees_and_depth_is_half()
    {
        var (x, y, z) = Axes(Axonometry.Dimetric);
        Assert.InRange(x.Angle, 6.5, 7.5);
        Assert.InRange(y.Angle, 41, 42.5);
        Assert.Equal(x.Length, z.Length, 12);
        Assert.Equal(x.Length / 2, y.Length, 12);
    }

    [Fact]
    public void What_is_nearer_to_the_viewer_counts_as_nearer()
    {
        var view = new Axonometry(30, 40);
        Assert.True(view.See(new Vector3d(0, -1, 0)).Near > view.See(new Vector3d(0, 1, 0)).Near);
        Assert.True(view.See(Vector3d.UnitZ).Near > view.See(default).Near);
        Assert.True(view.See(Vector3d.UnitZ).Y < view.See(default).Y);
    }

    private static ((double Length, double Angle) X, (double Length, double Angle) Y, (double Length, double Angle) Z) Axes(Axonometry view)
    {
        return (Axis(Vector3d.UnitX), Axis(Vector3d.UnitY), Axis(Vector3d.UnitZ));

        (double, double) Axis(Vector3d axis)
        {
            var seen = view.See(axis);
            var angle = Math.Atan2(Math.Abs(seen.Y), Math.Abs(seen.X)) * 180 / Math.PI;
            return (Math.Sqrt((seen.X * seen.X) + (seen.Y * seen.Y)), angle);
        }
    }
}
