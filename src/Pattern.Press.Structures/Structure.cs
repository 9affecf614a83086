using Pattern.Press.Measure;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures;

/// <summary>
/// A kind of box, read from its file: what can be set about it, and how its pieces follow from that. It does not change
/// once it is read, so any number of fits may run at once.
/// </summary>
public sealed class Structure
{
    private readonly IReadOnlyList<StockDefinition> _stocks;
    private readonly Place _place;

    internal Structure(
        string id,
        string title,
        string suits,
        Place place,
        IReadOnlyList<Parameter> parameters,
        IReadOnlyList<StockDefinition> stocks,
        StructureDefinition definition)
    {
        Id = id;
        Title = title;
        Suits = suits;
        _place = place;
        Parameters = parameters;
        _stocks = stocks;
        Definition = definition;
    }

    /// <summary>Its word in booklets, the name of its file: <c>explosion-box</c>.</summary>
    public string Id { get; }

    /// <summary>What it is called.</summary>
    public string Title { get; }

    /// <summary>The names of all pieces and mats that some fit may have.</summary>
    public IReadOnlyList<string> PieceNames => [.. Definition.Pieces.Select(piece => piece.Id), .. Definition.Mats.Select(mat => mat.Id)];

    /// <summary>The names of all values that some fit may have; a single fit has those that matter to it.</summary>
    public IReadOnlyList<string> ValueNames => ModelValues.Names(Definition);

    /// <summary>What it suits, a sentence.</summary>
    public string Suits { get; }

    /// <summary>What can be set about it, in the file's order.</summary>
    public IReadOnlyList<Parameter> Parameters { get; }

    /// <summary>The stocks it is made from.</summary>
    public IReadOnlyList<StockUse> Stocks => [.. _stocks.Select(stock => stock.Use)];

    /// <summary>The shapes of item it takes.</summary>
    public IReadOnlyList<ItemShape> Takes => Definition.Takes;

    /// <summary>Items to show it or try it with: the example that its file names, else usual ones of the shapes it takes.</summary>
    public IReadOnlyList<Item> Examples => Definition.Example is { } example ? [example] : UsualItems.For(Takes);

    internal StructureDefinition Definition { get; }

    internal IReadOnlyList<StockDefinition> StockDefinitions => _stocks;

    internal Place Place => _place;

    /// <summary>Reads a size or choice that a maker gave.</summary>
    /// <param name="name">The parameter's name, as the maker wrote it.</param>
    /// <param name="place">Where the name is written.</param>
    /// <param name="value">What it is set to.</param>
    /// <param name="problems">Where problems go: an unknown name, a value of the wrong kind, a length no paper has.</param>
    /// <returns>The value, or null after a problem.</returns>
    public GivenValue? ReadGiven(string name, Place place, YamlItem value, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(value);
        ArgumentNullException.ThrowIfNull(problems);
        return GivenReader.Read(this, name, place, value, problems);
    }

    /// <summary>
    /// Tries it: with its usual values and each of its words its pieces can be built, its example fits, and no length that
    /// is cut or scored comes out below nothing at the corners of what may be set. A maker's own file is tried whenever it
    /// is read; the catalogue's are when they are tested, which saves every booklet the time.
    /// </summary>
    /// <param name="problems">Where everything that is wrong goes, at its place in the file.</param>
    public void Try(Problems problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        Trial.Try(this, problems);
    }

    /// <summary>Fits the structure to an item, or to sizes given outright, on one ruler.</summary>
    /// <param name="request">What to fit it to.</param>
    /// <param name="problems">
    /// Where problems go: sizes that make no piece, sizes that do not hold the item, missing sizes or stocks. Each is at the
    /// place of the value that would have to change.
    /// </param>
    /// <returns>
    /// The model, or null when no piece can be made. A model whose checks do not all hold is returned too, for a look at
    /// its numbers; each failing check is an error among the problems, and such a model is not to be printed.
    /// </returns>
    public Model? Fit(FitRequest request, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(problems);
        return new Fitter(this, request, problems).Fit();
    }
}
