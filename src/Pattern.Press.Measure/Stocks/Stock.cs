namespace Pattern.Press.Measure;

/// <summary>The card or paper that pieces are cut from.</summary>
/// <param name="Id">The word for it in the booklet's front matter: <c>card</c>.</param>
/// <param name="Name">What to ask for in a shop: <c>Smooth card, sage green</c>.</param>
/// <param name="Caliper">The thickness of one sheet.</param>
/// <param name="Grammage">The mass per area, if it is known.</param>
/// <param name="Sheet">The size it is bought in.</param>
/// <param name="CaliperIsEstimate">Whether the caliper was worked out from the grammage rather than given.</param>
/// <param name="OneWay">Whether a printed pattern has an up, so that pieces may not be turned.</param>
public sealed record Stock(
    string Id,
    string Name,
    Length Caliper,
    Grammage? Grammage,
    Size Sheet,
    bool CaliperIsEstimate = false,
    bool OneWay = false)
{
    /// <summary>What is cut off all round a sheet first, because its edges are not true; 0 or more.</summary>
    public Length Trim { get; init; }

    /// <summary>Which way its fibres run, if pieces are to follow them; null when it does not matter.</summary>
    public Grain? Grain { get; init; }

    /// <summary>The weight in pounds that the grammage was worked out from; null when it was given in grams.</summary>
    public BasisWeight? BasisWeight { get; init; }

    /// <summary>How many sheets are sold together and for how much; null when that is not known.</summary>
    public Pack? Pack { get; init; }

    /// <summary>
    /// A sheet as it lies for cutting: the grain, where it matters, runs down, as it does down every piece as drawn.
    /// </summary>
    public Size SheetAsCut => Grain == Measure.Grain.Across ? Sheet.Turned : Sheet;

    /// <summary>Whether pieces may be turned by a quarter on the sheet.</summary>
    public bool MayTurn => !OneWay && Grain is null;

    // Common practice, no source: uncoated card and paper run at about 1.3 µm of thickness for each g/m².
    private const decimal MicrometresPerGram = 1.3m;

    /// <summary>
    /// A caliper worked out from the grammage, at 1.3 µm for each g/m² (common practice, no source), to the nearest
    /// hundredth of a millimetre. Bulky and glossy papers differ by a third either way.
    /// </summary>
    public static Length EstimateCaliper(Grammage grammage) =>
        Length.FromMillimetres(decimal.Round((decimal)grammage.GramsPerSquareMetre * MicrometresPerGram / 1000, 2, MidpointRounding.AwayFromZero));
}
