using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Compares figures that a maker has been using with the model. Where one differs, a setting of the structure is sought
/// that would give it: then the checks of that box say whether it can be right. Where there is none, the panels it would
/// leave are said, and the piece is folded as the maker has it.
/// </summary>
internal static class OwnFigures
{
    /// <summary>Notes what cannot be right as an error and what merely differs as a warning.</summary>
    /// <returns>A line for each figure that is the model's own.</returns>
    public static IReadOnlyList<string> Compare(BookletContext context, Problems problems)
    {
        var lines = new List<string>();
        foreach (var figure in context.OwnFigures)
        {
            var model = figure.Column == UnitSystem.Metric ? context.Metric : context.Imperial;
            var ruler = model.Kit.Ruler;
            var value = model.Values[figure.Name];
            if (IsSame(figure.Value, value))
            {
                lines.Add($"holds: {figure.Name} is {Text(figure.Value, ruler)}, as you have it.");
                continue;
            }

            var difference = $"{figure.Name}: you have {Text(figure.Value, ruler)}, the model {Text(value, ruler)}{Difference(figure.Value, value, ruler)}.";
            Judge(context, model, figure, value, difference, problems);
        }

        return lines;
    }

    private static void Judge(BookletContext context, Model model, OwnFigure figure, Value value, string difference, Problems problems)
    {
        var ruler = model.Kit.Ruler;
        (Parameter Parameter, Length Set, IReadOnlyList<string> Faults)? broken = null;
        foreach (var (parameter, set) in Settings(context, model, figure, value))
        {
            var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
            foreach (var (name, one) in context.Given)
                given[name] = one;
            given[parameter.Name] = new GivenValue(new LengthValue(set), figure.Place);
            var faults = Faults(context, ruler, given, figure, out var gives);
            if (!gives)
                continue;
            if (faults.Count == 0)
            {
                problems.Warning(
                    figure.Place,
                    $"{difference} Yours belongs to a box with {parameter.Name} {LengthFormat.Format(set, ruler)}, which would work.",
                    $"To keep it, write “{parameter.Name}: {LengthFormat.Format(set, ruler)}” under “sizes”; then every other figure follows. Do not mix figures of both.");
                return;
            }

            broken ??= (parameter, set, faults);
        }

        if (broken is { } found)
        {
            problems.Error(
                figure.Place,
                $"{difference} Yours belongs to a box with {found.Parameter.Name} {LengthFormat.Format(found.Set, ruler)}. There, {string.Join("; ", found.Faults)}.",
                $"Write {Text(value, ruler)}.");
            return;
        }

        var leaves = Leaves(context, model, figure).ToList();
        problems.Error(
            figure.Place,
            $"{difference} No box of this kind has it{(leaves.Count > 0 ? ": " + string.Join("; ", leaves) : "")}.",
            $"Write {Text(value, ruler)}.");
    }

    // Settings of one parameter that could give the maker's figure: changed by what the figure differs, or by a part of it
    // where the parameter counts two or four times.
    private static IEnumerable<(Parameter Parameter, Length Set)> Settings(BookletContext context, Model model, OwnFigure figure, Value value)
    {
        var ruler = model.Kit.Ruler;
        var lengths = context.Structure.Parameters.Where(parameter => parameter.Kind == ParameterKind.Length).ToList();
        if (figure.Value is LengthValue { Length: var own } && lengths.Find(parameter => $"size.{parameter.Name}" == figure.Name) is { } itself)
        {
            yield return (itself, own);
            yield break;
        }

        var steps = Differences(figure.Value, value)
            .SelectMany(difference => new[] { 1, 2, 4 }.Where(part => difference.Nanometres % part == 0).Select(part => difference / part))
            .Where(step => step != Length.Zero && ruler.Marks(step))
            .Distinct()
            .ToList();
        foreach (var parameter in lengths)
        {
            if (!model.Values.TryGetValue($"size.{parameter.Name}", out var now) || now is not LengthValue { Length: var length })
                continue;
            foreach (var step in steps.Where(step => length + step > Length.Zero))
                yield return (parameter, length + step);
        }
    }

    // What is wrong with the box that the settings give, in words; whether it has the maker's figure at all.
    private static IReadOnlyList<string> Faults(BookletContext context, Ruler ruler, SortedDictionary<string, GivenValue> given, OwnFigure figure, out bool gives)
    {
        var found = new Problems();
        var model = context.Structure.Fit(
            new FitRequest { Ruler = ruler, Item = context.Source.Item, ItemPlace = context.Source.ItemPlace, Given = given, Stocks = context.Source.Stocks },
            found);
        if (model is null)
        {
            // A size that no piece can be made with has no figures; but a size that was given itself is what it is.
            gives = figure.Name.StartsWith("size.", StringComparison.Ordinal) && given.TryGetValue(figure.Name["size.".Length..], out var itself) && IsSame(itself.Value, figure.Value);
            return [.. found.All.Where(problem => problem.Severity == Severity.Error).Select(problem => Lower(problem.Message))];
        }

        gives = model.Values.TryGetValue(figure.Name, out var value) && IsSame(value, figure.Value);
        return
        [
            .. model.Checks.Where(check => !check.Holds).Select(check =>
                $"“{check.Name}” fails: there is {LengthFormat.Format(check.Found, ruler)} where {LengthFormat.Format(check.Least, ruler)} is needed"),
            .. gives ? Unproven(context, model) : [],
        ];
    }

    private static IEnumerable<string> Unproven(BookletContext context, Model model)
    {
        var texts = new ProofTexts(context);
        return ModelProofs.Of(model, context.Source.Item, context.Source.Stocks.Values)
            .Where(proof => proof.Verdict == Verdict.Fails && texts.What(proof) is not null)
            .Select(proof => $"“{texts.What(proof)}” fails: {texts.Number(proof, proof.Found, model.Kit.Ruler)} where {texts.Number(proof, proof.Limit, model.Kit.Ruler)} is the {(proof.LimitIsLeast ? "least" : "most")}");
    }

    private static IEnumerable<string> DoesNotFold(BookletContext context, Part part, Piece piece) =>
        PieceProofs.Of(piece, context.Source.Stocks.TryGetValue(part.Stock, out var stock) ? stock.Caliper.Millimetres : 0)
            .Where(proof => !proof.Holds)
            .Take(1)
            .Select(proof => $"folded, the {string.Join(" and the ", proof.Panels)} {(proof.Kind is FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay ? "do not meet" : "pass through each other")}");

    // What the maker's marks would leave between them.
    private static IEnumerable<string> Leaves(BookletContext context, Model model, OwnFigure figure)
    {
        foreach (var off in Lengths(figure.Value).Where(length => !model.Kit.Ruler.Marks(length)))
            yield return $"{LengthFormat.Format(off, model.Kit.Ruler)} is on no mark of the ruler ({LengthFormat.Format(model.Kit.Ruler.Step, model.Kit.Ruler)})";
        var dot = figure.Name.LastIndexOf('.');
        var (id, what) = dot < 0 ? ("", "") : (figure.Name[..dot], figure.Name[(dot + 1)..]);
        var part = model.Kit.Parts.FirstOrDefault(part => part.Piece.Id == id);
        if (part is not null && what == "sheet" && figure.Value is SizeValue { Size: var sheet })
        {
            foreach (var fault in AtTheEnd(model, part.Piece, sheet))
                yield return fault;
            yield break;
        }

        if (part is null || what is not ("scores_across" or "scores_down") || figure.Value is not LengthListValue { Lengths: var own })
            yield break;
        var ruler = model.Kit.Ruler;
        var across = what == "scores_across";
        var marks = ((LengthListValue)model.Values[figure.Name]).Lengths;
        var side = across ? part.Piece.Sheet.Width : part.Piece.Sheet.Height;
        if (own.Count != marks.Count)
        {
            yield return $"there are {marks.Count} scores that way, not {own.Count}";
            yield break;
        }

        Length[] here = [Length.Zero, .. marks, side];
        Length[] there = [Length.Zero, .. own, side];
        for (var i = 1; i < here.Length; i++)
        {
            var (should, would) = (here[i] - here[i - 1], there[i] - there[i - 1]);
            if (would <= Length.Zero)
            {
                yield return "the marks do not rise within the sheet";
                yield break;
            }

            if (should != would)
                yield return $"{Between(part.Piece, here[i - 1], here[i], across)} would be {LengthFormat.Format(would, ruler)} instead of {LengthFormat.Format(should, ruler)}";
        }

        foreach (var fault in DoesNotFold(context, part, Stretched.Along(part.Piece, across, here, there)))
            yield return fault;
    }

    // A sheet of another size, scored where the model says, ends in a panel of another size.
    private static IEnumerable<string> AtTheEnd(Model model, Piece piece, Size own)
    {
        var ruler = model.Kit.Ruler;
        foreach (var across in new[] { true, false })
        {
            var (should, would) = across ? (piece.Sheet.Width, own.Width) : (piece.Sheet.Height, own.Height);
            if (should == would || model.Values.GetValueOrDefault($"{piece.Id}.{(across ? "scores_across" : "scores_down")}") is not LengthListValue { Lengths: [.., var last] })
                continue;
            yield return would <= last
                ? $"the score at {LengthFormat.Format(last, ruler)} would lie off the sheet"
                : $"{Between(piece, last, should, across)} would be {LengthFormat.Format(would - last, ruler)} instead of {LengthFormat.Format(should - last, ruler)}";
        }
    }

    private static string Between(Piece piece, Length from, Length to, bool across)
    {
        var root = piece.Panel(piece.Root).Outline.Bounds.Centre;
        var middle = (from.Millimetres + to.Millimetres) / 2;
        var at = across ? new Point(middle, root.Y) : new Point(root.X, middle);
        return piece.Panels.FirstOrDefault(panel => panel.Outline.Contains(at)) is { } panel ? $"the {panel.Name}" : "the part between";
    }

    private static IEnumerable<Length> Lengths(Value value) => value switch
    {
        LengthValue one => [one.Length],
        SizeValue size => [size.Size.Width, size.Size.Height],
        LengthListValue list => list.Lengths,
        _ => [],
    };

    private static bool IsSame(Value one, Value other) => (one, other) switch
    {
        (LengthListValue a, LengthListValue b) => a.Lengths.SequenceEqual(b.Lengths),
        _ => one == other,
    };

    private static IEnumerable<Length> Differences(Value own, Value model)
    {
        switch (own, model)
        {
            case (LengthValue a, LengthValue b):
                return [a.Length - b.Length];
            case (SizeValue a, SizeValue b):
                return [a.Size.Width - b.Size.Width, a.Size.Height - b.Size.Height];
            case (LengthListValue a, LengthListValue b) when a.Lengths.Count == b.Lengths.Count:
                return a.Lengths.Zip(b.Lengths, (x, y) => x - y);
            default:
                return [];
        }
    }

    private static string Difference(Value own, Value model, Ruler ruler)
    {
        string Said(Length difference) => $"{LengthFormat.Format(difference.Abs(), ruler)} too {(difference.IsNegative ? "little" : "much")}";
        var differences = Differences(own, model).ToList();
        return differences.Count switch
        {
            0 => "",
            1 => $": {Said(differences[0])}",
            2 when own is SizeValue && differences[0] == differences[1] => $": {Said(differences[0])} both ways",
            2 when own is SizeValue => $": {Side(differences[0], "width")}, {Side(differences[1], "height")}",
            _ => Marks(differences, ruler),
        };

        string Side(Length difference, string name) => difference == Length.Zero ? $"the {name} is right" : $"the {name} is {Said(difference)}";
    }

    // As somebody says it who lays a ruler along the card: which marks are out, and by how much.
    private static string Marks(List<Length> differences, Ruler ruler)
    {
        string Said(Length difference) => $"{LengthFormat.Format(difference.Abs(), ruler)} too {(difference.IsNegative ? "near" : "far from")} the edge";
        var wrong = differences.Select((difference, i) => (Difference: difference, Number: i + 1)).Where(mark => mark.Difference != Length.Zero).ToList();
        if (wrong.Count == 0)
            return "";
        var groups = wrong.GroupBy(mark => mark.Difference, mark => Ordinal(mark.Number, differences.Count)).ToList();
        if (groups is [var all] && wrong.Count == differences.Count)
            return $": every mark is {Said(all.Key)}";
        var rest = (differences.Count - wrong.Count) switch
        {
            0 => "",
            1 => "; the other is right",
            _ => "; the others are right",
        };
        return $": {string.Join(", ", groups.Select(group => $"{Listed([.. group])} {Said(group.Key)}"))}{rest}";
    }

    private static string Listed(IReadOnlyList<string> marks) => marks.Count == 1
        ? $"the {marks[0]} mark is"
        : $"the {string.Join(", ", marks.SkipLast(1))} and {marks[^1]} marks are";

    private static string Ordinal(int number, int count) => number switch
    {
        1 => "first",
        _ when number == count => "last",
        2 => "second",
        3 => "third",
        _ => (number % 10, number % 100 is > 10 and < 14) switch
        {
            (1, false) => $"{number}st",
            (2, false) => $"{number}nd",
            (3, false) => $"{number}rd",
            _ => $"{number}th",
        },
    };

    private static string Text(Value value, Ruler ruler) => value switch
    {
        LengthValue { Length: var length } => LengthFormat.Format(length, ruler),
        SizeValue { Size: var size } => LengthFormat.Format(size, ruler),
        LengthListValue { Lengths: [] } => "none",
        LengthListValue { Lengths: [var only] } => LengthFormat.Format(only, ruler),
        LengthListValue { Lengths: var lengths } => $"{string.Join(", ", lengths.SkipLast(1).Select(length => LengthFormat.Number(length, ruler)))} and {LengthFormat.Format(lengths[^1], ruler)}",
        NumberValue { Number: var number } => number.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture),
        _ => throw new ArgumentException($"A {value.GetType().Name} is no figure.", nameof(value)),
    };

    private static string Lower(string sentence) => sentence.TrimEnd('.') is { Length: > 0 } text ? char.ToLowerInvariant(text[0]) + text[1..] : sentence;
}
