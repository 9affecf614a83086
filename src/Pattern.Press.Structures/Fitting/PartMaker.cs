using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>A part of a fit, with the lists of marks that texts may name.</summary>
internal sealed record MadePart(Part Part, IReadOnlyList<(string Name, IReadOnlyList<Length> Lengths)> Marks);

/// <summary>Builds the pieces and mats of a fit from values that are worked out.</summary>
internal sealed class PartMaker(Structure structure, FitRequest request, Evaluation values, Blame blame, Problems problems)
{
    private const int MostOfOne = 1000;
    private bool _failed;

    /// <summary>The parts, pieces first; null after a problem.</summary>
    public IReadOnlyList<MadePart>? Make()
    {
        var parts = new List<MadePart>();
        foreach (var piece in structure.Definition.Pieces)
        {
            if (Attempt(piece.Name, piece.Form.Formulas, () => Piece(piece)) is { } made)
                parts.Add(made);
        }

        var there = parts.Select(part => part.Part.Piece).ToDictionary(piece => piece.Id, StringComparer.Ordinal);
        foreach (var mat in structure.Definition.Mats)
        {
            if (there.TryGetValue(mat.Goes, out var host) && Attempt(mat.Name, mat.Form.Sizes, () => Mat(mat, host)) is { } made)
                parts.Add(made);
        }

        return _failed ? null : parts;
    }

    private MadePart? Piece(PieceDefinition piece)
    {
        if (!Applies(piece.When) || Quantity(piece.Quantity) is not { } quantity)
            return null;
        var built = piece.Form.Build(piece.Id, piece.Name, values);
        var marks = piece.Marks
            .Select(mark => (mark.Name, (IReadOnlyList<Length>)[.. mark.Lengths.Select(length => length.Evaluate(values).Length)]));
        return new MadePart(new Part(built, PartKind.Piece, StockId(piece.Stock), quantity), [.. marks]);
    }

    private MadePart? Mat(MatDefinition mat, Piece host)
    {
        if (!Applies(mat.When) || Quantity(mat.Quantity) is not { } quantity)
            return null;
        var built = mat.Form.Build(mat, host, values);
        return new MadePart(
            new Part(built.Piece, PartKind.Mat, StockId(mat.Stock), built.Faces ?? quantity, mat.For, mat.Hand, mat.Goes, mat.On, mat.Side) { Inset = built.Inset }, []);
    }

    private bool Applies(Formula? when) => when is null || when.Evaluate(values).Flag;

    private string StockId(string use) => request.Stocks[use].Id;

    private int? Quantity(Formula? formula)
    {
        if (formula is null)
            return 1;
        var amount = formula.Evaluate(values).Amount;
        if (amount >= 1 && amount <= MostOfOne && decimal.IsInteger(amount))
            return (int)amount;
        Fail(formula.Place, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"“{formula.Text}” comes out at {amount:0.###}, but a quantity is a whole number from 1 to {MostOfOne}."));
        return null;
    }

    private MadePart? Attempt(string name, IEnumerable<Formula> formulas, Func<MadePart?> make)
    {
        try
        {
            return make();
        }
        catch (NetException broken)
        {
            Fail(blame.Of(formulas), $"“{name}” cannot be made at these sizes.", string.Join(" ", broken.Reasons));
        }
        catch (FormulaException broken)
        {
            Fail(broken.Place, broken.Message);
        }
        catch (OverflowException)
        {
            Fail(blame.Of(formulas), $"“{name}” comes out far too large.");
        }

        return null;
    }

    private void Fail(Place place, string message, string advice = "")
    {
        _failed = true;
        problems.Error(place, message, advice);
    }
}
