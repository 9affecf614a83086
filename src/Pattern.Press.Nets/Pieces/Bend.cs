namespace Pattern.Press.Nets;

/// <summary>
/// How a panel is rolled or bowed: everything made of paper bends along straight lines that do not cross. It is given by as
/// many of those lines as show the shape, in order across the panel; between two of them it is taken as flat.
/// </summary>
/// <remarks>
/// The strip that the middle of the fold to the panel's parent lies on stays where the fold puts it, in the first panel the
/// strip in the middle; the others turn from it.
/// </remarks>
/// <param name="Rulings">The lines, from one side of the panel to the other, each from edge to edge.</param>
public sealed record Bend(IReadOnlyList<Ruling> Rulings)
{
    /// <summary>How far it turns in all, in degrees; 360 for a tube.</summary>
    public double Turn => Rulings.Sum(ruling => ruling.Angle);

    /// <summary>
    /// The rulings of the same shape in strips so many times as narrow; null where the shape is known by its rulings alone.
    /// </summary>
    public Func<int, IReadOnlyList<Ruling>>? RulingsIn { get; init; }

    /// <summary>The same shape in strips so many times as narrow, as far as it is known.</summary>
    /// <param name="times">How many times as narrow; 1 or more.</param>
    internal Bend Finer(int times) => RulingsIn is null ? this : new Bend(RulingsIn(times));
}

/// <summary>A line along which a panel bends.</summary>
/// <param name="From">Where it enters the panel.</param>
/// <param name="To">Where it leaves it.</param>
/// <param name="Angle">How far it turns there, in degrees: positive towards the maker, as a valley, else away.</param>
public readonly record struct Ruling(Point From, Point To, double Angle);
