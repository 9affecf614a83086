using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Cataloguing;

/// <summary>A structure fitted to an example on both rulers, from usual stocks.</summary>
internal sealed record ShownStructure(Structure Structure, Item Item, Model Metric, Model Imperial)
{
    /// <summary>Fits and proves a structure; null after noting why it cannot be shown.</summary>
    public static ShownStructure? Of(Structure structure, Problems problems)
    {
        if (structure.Examples is [var example])
            return With(structure, example, problems);
        foreach (var item in structure.Examples)
        {
            if (With(structure, item, new Problems()) is { } shown)
                return shown;
        }

        problems.Error(new Place(structure.Id + ".yaml"), "None of the usual items fits this structure, so there is nothing to draw.", "Name one that does: example: {name: bar of soap, width: 80 mm, depth: 55 mm, height: 25 mm}.");
        return null;
    }

    private static ShownStructure? With(Structure structure, Item item, Problems problems)
    {
        var stocks = CataloguePress.UsualStocks(structure);
        var fits = new List<Model>();
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            var place = new Place(structure.Id + ".yaml");
            var found = new Problems();
            var model = structure.Fit(
                new FitRequest { Ruler = ruler, Item = item, ItemPlace = place, Given = new Dictionary<string, GivenValue>(), Stocks = stocks },
                found);
            foreach (var problem in found.All)
                problems.Add(problem);
            if (model is null || found.HasErrors)
                return null;
            if (ModelProofs.Of(model, item, stocks.Values).FirstOrDefault(proof => proof.Verdict == Verdict.Fails) is { } failed)
            {
                problems.Error(place, $"Fitted to its example it does not fold as it should: {failed.Piece} ({failed.Kind}).", "Choose another example, or correct the structure.");
                return null;
            }

            fits.Add(model);
        }

        return new ShownStructure(structure, item, fits[0], fits[1]);
    }
}
