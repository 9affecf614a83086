namespace Pattern.Press.Measure;

/// <summary>The two sides of a rectangle: <paramref name="Width"/> across (x) and <paramref name="Height"/> down (y).</summary>
public readonly record struct Size(Length Width, Length Height)
{
    /// <summary>The same rectangle turned by a quarter.</summary>
    public Size Turned => new(Height, Width);

    /// <summary>The longer side.</summary>
    public Length Longer => Length.Max(Width, Height);

    /// <summary>The shorter side.</summary>
    public Length Shorter => Length.Min(Width, Height);

    /// <summary>The area in square millimetres.</summary>
    public double SquareMillimetres => Width.Millimetres * Height.Millimetres;

    /// <summary>Whether a rectangle of this size can be cut from a sheet, turned if need be.</summary>
    public bool FitsOn(Size sheet) => Longer <= sheet.Longer && Shorter <= sheet.Shorter;

    /// <summary>Both sides, for debugging: <c>210 mm × 297 mm</c>.</summary>
    // What a record writes by itself would go into Turned, and from there never end.
    public override string ToString() => $"{Width} × {Height}";
}
