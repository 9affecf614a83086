using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>
/// Tries a maker's own structure when its file is read, so that what no size can put right is told at its place in the
/// file: panels cut off from the rest, folds with unequal sides, words that a builder does not know, an example that does
/// not fit.
/// </summary>
internal static class Trial
{
    private static readonly Length UsualCaliper = Length.FromMillimetres(0.3m);

    /// <summary>Tries it at the corners of its ranges, then builds it with nothing set and with each of its words.</summary>
    public static void Try(Structure structure, Problems problems)
    {
        var before = problems.All.Count;
        CornerCheck.Try(structure, problems);

        // A length below nothing is one more reason why a piece cannot be built, and is told already.
        if (problems.All.Count > before)
            return;
        foreach (var settings in Choices(structure))
        {
            if (structure.Examples.Select(item => Corner.At(structure, item, Ruler.WholeMillimetres, settings)).OfType<Corner>().FirstOrDefault() is { } corner)
                Build(structure, corner.Values, problems);
        }

        if (problems.All.Count == before && structure.Definition.Example is { } example)
            Fit(structure, example, problems);
    }

    private static IEnumerable<IReadOnlyList<Setting>> Choices(Structure structure) =>
    [
        [],
        .. structure.Parameters.SelectMany(parameter => parameter.Kind switch
        {
            ParameterKind.YesNo => new[] { true, false }.Select(flag => (IReadOnlyList<Setting>)[new Setting(parameter, flag, Quantity.Of(flag))]),
            ParameterKind.Choice => parameter.Choices.Select(word => (IReadOnlyList<Setting>)[new Setting(parameter, false, Quantity.Of(word))]),
            _ => [],
        }),
    ];

    private static void Build(Structure structure, Evaluation values, Problems problems)
    {
        foreach (var piece in structure.Definition.Pieces)
        {
            try
            {
                if (piece.When is null || piece.When.Evaluate(values).Flag)
                    piece.Form.Build(piece.Id, piece.Name, values);
            }
            catch (NetException broken)
            {
                foreach (var reason in broken.Reasons)
                    problems.Error(piece.Form.PlaceOf(reason, values) ?? piece.Place, $"“{piece.Name}” cannot be made so.", reason);
            }
            catch (FormulaException broken)
            {
                problems.Error(broken.Place, broken.Message);
            }
            catch (OverflowException)
            {
                problems.Error(piece.Place, $"“{piece.Name}” comes out far too large.");
            }
        }
    }

    private static void Fit(Structure structure, Item example, Problems problems)
    {
        var sheet = new Size(LengthRange.Most, LengthRange.Most);
        var stocks = structure.Stocks.ToDictionary(use => use.Id, use => new Stock(use.Id, use.Id, UsualCaliper, null, sheet), StringComparer.Ordinal);
        structure.Fit(
            new FitRequest
            {
                Ruler = Ruler.WholeMillimetres,
                Item = example,
                ItemPlace = structure.Definition.ExamplePlace,
                Given = new Dictionary<string, GivenValue>(),
                Stocks = stocks,
            },
            problems);
    }
}
