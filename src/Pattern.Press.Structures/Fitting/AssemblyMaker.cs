using Pattern.Press.Nets;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Works out how the pieces of a fit come together.</summary>
internal static class AssemblyMaker
{
    private const int MostCopies = 1000;

    /// <summary>The assembly of the pieces that the fit has.</summary>
    /// <exception cref="FormulaException">A place or a number of copies cannot be worked out.</exception>
    public static Assembly Make(AssemblyDefinition? definition, IReadOnlyList<Part> parts, Evaluation values)
    {
        var usual = Assembly.OfFirst(parts);
        if (definition is null)
            return usual;
        var kinds = parts.Where(part => part.Kind == PartKind.Piece)
            .ToDictionary(part => part.Piece.Id, part => part.Piece.Panels.Select(panel => panel.Kind).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
        var seams = definition.Seams.Where(seam => Has(seam.Piece, seam.Panel) && Has(seam.OtherPiece, seam.OtherPanel)).ToList();
        if (definition.Parts.Count == 0)
            return usual with { Seams = seams };

        var there = definition.Parts.Select(part => part.Part)
            .Where(part => part.Part == Assembly.Item || kinds.ContainsKey(part.Part)).ToDictionary(part => part.Part, StringComparer.Ordinal);
        var to = definition.Parts.ToDictionary(part => part.Part.Part, part => part.Part.To, StringComparer.Ordinal);
        var made = new List<AssembledPart>();

        // Where an item goes depends on its size; without one there is nothing to place.
        foreach (var one in definition.Parts.Where(part => there.ContainsKey(part.Part.Part)))
            made.Add((one.Part.Part == Assembly.Item && values.Find("item.given")?.Flag != true ? one.Part : Placed(one, values)) with { To = Nearest(one.Part.To) });
        if (made.Count > 0 && made[0].Goes != GoesWhere.OnGround)
            made[0] = made[0] with { Goes = GoesWhere.OnGround, To = null };
        return new Assembly(made, seams);

        bool Has(string piece, string panel) => kinds.TryGetValue(piece, out var found) && found.Contains(panel);

        // What goes to a piece that this fit does not have goes where that one would.
        string? Nearest(string? id)
        {
            while (id is not null && !there.ContainsKey(id))
                id = to[id];
            return id;
        }
    }

    private static AssembledPart Placed(AssembledDefinition one, Evaluation values)
    {
        var places = new List<PlaceShift> { one.At.At(values) };
        foreach (var repeat in one.Repeats)
        {
            var times = repeat.Times.Evaluate(values).Amount;
            if (!decimal.IsInteger(times) || times < 0 || times * places.Count > MostCopies)
            {
                throw new FormulaException(
                    repeat.Times.Place, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"“{repeat.Times.Text}” comes out at {times:0.###}, but the number of copies is a whole number, {MostCopies} at most."), false);
            }

            var step = repeat.Step.At(values);
            places = [.. Enumerable.Range(0, (int)times).SelectMany(i => places.Select(place => Shifted(place, step, i - (((double)times - 1) / 2))))];
        }

        return one.Part with
        {
            Places = places,
            Turned = one.Turned is null ? 0 : (double)one.Turned.Evaluate(values).Amount,
            IsTipped = one.OnItsSide?.Evaluate(values).Flag == true,
        };
    }

    private static PlaceShift Shifted(PlaceShift place, PlaceShift step, double times) =>
        new(place.Right + (step.Right * times), place.Back + (step.Back * times), place.Up + (step.Up * times));
}
