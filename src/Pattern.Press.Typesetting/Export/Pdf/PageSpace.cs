using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// From millimetres with y down to points with y up. On a page y is counted from the paper's lower edge, in a group from
/// the group's own origin.
/// </summary>
/// <param name="Height">What y is taken from, in millimetres: the page's height, or 0 in a group.</param>
internal readonly record struct PageSpace(double Height)
{
    private const double PointsPerMillimetre = 72 / 25.4;

    public static double Points(double millimetres) => millimetres * PointsPerMillimetre;

    public long X(double x) => PdfBuffer.ToFixed(Points(x));

    public long Y(double y) => PdfBuffer.ToFixed(Points(Height - y));

    /// <summary>The matrix of a group that stands in this space.</summary>
    public void WriteMatrix(PdfBuffer to, Transform t) => to
        .Factor(t.A).Byte((byte)' ').Factor(-t.B).Byte((byte)' ')
        .Factor(-t.C).Byte((byte)' ').Factor(t.D).Byte((byte)' ')
        .Fixed(X(t.E)).Byte((byte)' ').Fixed(Y(t.F)).Raw(" cm\n"u8);
}
