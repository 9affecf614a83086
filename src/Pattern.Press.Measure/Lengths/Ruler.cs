namespace Pattern.Press.Measure;

/// <summary>
/// The smallest step a maker measures to, such as 1 mm or 1/16 in. Everything a maker has to measure lies on its marks.
/// </summary>
public sealed record Ruler
{
    /// <summary>A ruler of whole millimetres.</summary>
    public static Ruler WholeMillimetres { get; } = new(UnitSystem.Metric, Length.Millimetre);

    /// <summary>A ruler of sixteenths of an inch.</summary>
    public static Ruler SixteenthInches { get; } = new(UnitSystem.Imperial, Length.Inch / 16);

    /// <summary>A ruler with a step of its own.</summary>
    /// <param name="system">The units it is read in.</param>
    /// <param name="step">The distance between two marks: 0.1 mm to 50 mm, and on an imperial ruler a power of two
    /// parts of an inch, 1 to 1/64.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not one a ruler can have.</exception>
    public Ruler(UnitSystem system, Length step)
    {
        if (step < Length.FromMillimetres(0.1m) || step > Length.FromMillimetres(50))
            throw new ArgumentOutOfRangeException(nameof(step), step, "A ruler's step is between 0.1 mm and 50 mm.");
        if (system == UnitSystem.Metric && step.Nanometres % 100_000 != 0)
            throw new ArgumentOutOfRangeException(nameof(step), step, "A metric ruler's step is a whole number of tenths of a millimetre.");
        if (system == UnitSystem.Imperial && !IsBinaryPartOfAnInch(step))
            throw new ArgumentOutOfRangeException(nameof(step), step, "An inch ruler's step is 1, 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64 in.");
        System = system;
        Step = step;
    }

    /// <summary>The units it is read in.</summary>
    public UnitSystem System { get; }

    /// <summary>The distance between two marks.</summary>
    public Length Step { get; }

    /// <summary>Whether a length ends exactly at a mark.</summary>
    public bool Marks(Length length) => length.Nanometres % Step.Nanometres == 0;

    /// <summary>The length brought to a mark, the given way.</summary>
    public Length Round(Length length, Rounding rounding)
    {
        var step = Step.Nanometres;
        var below = Math.DivRem(length.Nanometres, step, out var over);
        if (over < 0)
        {
            below--;
            over += step;
        }

        var up = rounding switch
        {
            Rounding.Up => over > 0,
            Rounding.Down => false,
            _ => over * 2 > step || (over * 2 == step && length.Nanometres > 0),
        };
        return Length.FromNanometres(checked((below + (up ? 1 : 0)) * step));
    }

    /// <summary>
    /// What a maker reads off this ruler where a length ends between two marks: to tenths of a millimetre, or to the middle
    /// between two marks in inches, 1/64 to 1/32. What ends at a mark stays as it is, and so does what would become nothing.
    /// </summary>
    /// <param name="length">The length.</param>
    /// <param name="rounding">Which way; for what is left over <see cref="Rounding.Down"/>.</param>
    public Length Judged(Length length, Rounding rounding = Rounding.Nearest)
    {
        if (Marks(length))
            return length;
        var least = System == UnitSystem.Metric ? Length.FromMillimetres(0.1m) : Length.Max(Length.Inch / 64, Length.Min(Length.Inch / 32, Step / 2));
        var judged = new Ruler(System, least).Round(length, rounding);
        return judged == Length.Zero ? length : judged;
    }

    private static bool IsBinaryPartOfAnInch(Length step)
    {
        for (var parts = 1; parts <= 64; parts *= 2)
        {
            if (step == Length.Inch / parts)
                return true;
        }

        return false;
    }
}
