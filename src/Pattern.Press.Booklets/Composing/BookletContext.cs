using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Everything the parts of a booklet are composed from.</summary>
internal sealed record BookletContext
{
    /// <summary>The content.</summary>
    public required BookletSource Source { get; init; }

    /// <summary>The structure.</summary>
    public required Structure Structure { get; init; }

    /// <summary>The fit on the metric ruler.</summary>
    public required Model Metric { get; init; }

    /// <summary>The fit on the inch ruler.</summary>
    public required Model Imperial { get; init; }

    /// <summary>The program's own words.</summary>
    public required PhraseBook Phrases { get; init; }

    /// <summary>The look.</summary>
    public required StyleSheet Styles { get; init; }

    /// <summary>What was asked for at the keyboard; what takes the place of something in the content has done so already.</summary>
    public BuildOptions Options { get; init; } = new();

    /// <summary>What was proven by folding the pieces of the primary and of the other fit and putting them together.</summary>
    public (IReadOnlyList<FoldingProof> Primary, IReadOnlyList<FoldingProof> Secondary) Folding { get; init; } = ([], []);

    /// <summary>What the maker set about the structure.</summary>
    public IReadOnlyDictionary<string, GivenValue> Given { get; init; } = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);

    /// <summary>Figures that the maker has been using.</summary>
    public IReadOnlyList<OwnFigure> OwnFigures { get; init; } = [];

    /// <summary>What the two fits take of each stock for one kit.</summary>
    public KitMaterials PerKit { get; init; } = null!;

    /// <summary>The same for all kits.</summary>
    public KitMaterials Materials { get; init; } = null!;

    /// <summary>Whether there are several kits, for a class or a market stall.</summary>
    public bool IsForSeveral => Source.Kits > 1;

    /// <summary>The structure fitted anew with other sizes or for another item; null when it cannot be made or does not work.</summary>
    public Model? Refit(Ruler ruler, Item? item, IReadOnlyDictionary<string, GivenValue> given)
    {
        var problems = new Problems();
        var model = Structure.Fit(
            new FitRequest { Ruler = ruler, Item = item, ItemPlace = Source.ItemPlace, Given = given, Stocks = Source.Stocks },
            problems);
        return problems.HasErrors ? null : model;
    }

    /// <summary>The fit that templates and figures are drawn from.</summary>
    public Model Primary => Source.Primary == UnitSystem.Metric ? Metric : Imperial;

    /// <summary>The other fit.</summary>
    public Model Secondary => Source.Primary == UnitSystem.Metric ? Imperial : Metric;
}
