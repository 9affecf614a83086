using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Reads what a structure's file says about its parameters.</summary>
internal static class ParameterReader
{
    private static readonly string[] Kinds = ["length", "number", "yes/no", "choice"];

    /// <summary>Reads one parameter and makes its name known; null after noting problems.</summary>
    public static ParameterDefinition? Read(string name, Place place, YamlItem value, FileReading reading)
    {
        if (!reading.NameIsSound(name, place) || value.AsMap() is not { } map)
            return null;
        var means = map.Need("means", "Say in a sentence what it is: means: How high the walls are.")?.AsText();
        var kind = map.Need("kind", $"Write one of {string.Join(", ", Kinds)}.")?.AsChoice(Kinds);
        var parameter = new Parameter
        {
            Name = name,
            Place = place,
            Means = means ?? "",
            Kind = kind switch
            {
                "number" => ParameterKind.Number,
                "yes/no" => ParameterKind.YesNo,
                "choice" => ParameterKind.Choice,
                _ => ParameterKind.Length,
            },
        };
        if (kind is null)
        {
            // Known all the same, so that formulas that use it are not told of too.
            reading.Names.Add(name, null);
            map.RefuseSlips();
            return null;
        }

        parameter = Choices(parameter, map, reading);
        if (reading.Names.Add(name, KindOf(parameter.Kind), parameter.Kind == ParameterKind.Choice ? parameter.Choices : null) < 0)
        {
            reading.Problems.Error(place, $"The name “{name}” is used twice.");
            return null;
        }

        parameter = Usual(parameter, map.Find("default"), reading) with { Usual = map.Find("usual")?.AsText() ?? "" };
        parameter = Condition(parameter, map.Find("when"), reading);
        if (parameter.Kind is ParameterKind.Length or ParameterKind.Number)
            parameter = Limits(parameter, map, reading);
        map.RefuseTheRest();
        return new ParameterDefinition(parameter);
    }

    /// <summary>
    /// Notes plain numbers and lengths that contradict each other: a least above the most, a default outside both. What
    /// depends on other values is seen when the structure is tried.
    /// </summary>
    public static void CheckPlainLimits(Parameter parameter, FileReading reading)
    {
        var (usual, least, most) = (Plain(parameter.DefaultFormula, reading), Plain(parameter.LeastFormula, reading), Plain(parameter.MostFormula, reading));
        if (least > most)
            reading.Problems.Error(parameter.LeastFormula!.Place, $"“{parameter.Name}” must be at least {parameter.Least}, but can be at most {parameter.Most}.", "Exchange the two, or change one of them.");
        else if (usual < least)
            reading.Problems.Error(parameter.DefaultFormula!.Place, $"“{parameter.Name}” is {parameter.Default} when nobody sets it, but must be at least {parameter.Least}.", "Change the default, or least.");
        else if (usual > most)
            reading.Problems.Error(parameter.DefaultFormula!.Place, $"“{parameter.Name}” is {parameter.Default} when nobody sets it, but can be at most {parameter.Most}.", "Change the default, or most.");
    }

    private static decimal? Plain(Formula? formula, FileReading reading)
    {
        try
        {
            return formula is null || formula.Names.Count > 0 ? null : formula.Evaluate(new Evaluation(reading.Names, Ruler.WholeMillimetres)).Amount;
        }
        catch (FormulaException broken)
        {
            reading.Problems.Error(broken.Place, broken.Message);
            return null;
        }
    }

    /// <summary>The kind of value that a parameter gives to formulas.</summary>
    public static Kind KindOf(ParameterKind kind) => kind switch
    {
        ParameterKind.Length => Kind.Length,
        ParameterKind.Number => Kind.Number,
        ParameterKind.YesNo => Kind.YesNo,
        _ => Kind.Word,
    };

    private static Parameter Choices(Parameter parameter, YamlMap map, FileReading reading)
    {
        if (parameter.Kind != ParameterKind.Choice)
            return parameter;
        var choices = map.Need("choices", "List the words to choose from: choices: [single, double].")?.AsList();
        var words = choices?.Select(choice => choice.AsText()).OfType<string>().ToList() ?? [];
        if (choices is not null && words.Count < 2)
            reading.Problems.Error(choices[0].Place, "A choice needs at least two words to choose from.");
        return parameter with { Choices = words };
    }

    // A choice's usual word stands bare, as in a booklet; everything else is a formula.
    private static Parameter Usual(Parameter parameter, YamlItem? item, FileReading reading)
    {
        if (item is null)
            return parameter;
        if (parameter.Kind != ParameterKind.Choice)
            return parameter with { Default = item.Scalar, DefaultFormula = reading.Formula(item, KindOf(parameter.Kind)) };
        return item.AsChoice([.. parameter.Choices]) is { } word
            ? parameter with { Default = word, DefaultFormula = reading.Formula($"\"{word}\"", item.Place, Kind.Word) }
            : parameter;
    }

    private static Parameter Condition(Parameter parameter, YamlItem? item, FileReading reading) =>
        item is null ? parameter : parameter with { When = item.Scalar, WhenFormula = reading.Formula(item, Kind.YesNo) };

    private static Parameter Limits(Parameter parameter, YamlMap map, FileReading reading)
    {
        var kind = KindOf(parameter.Kind);
        var (least, most) = (map.Find("least"), map.Find("most"));
        parameter = parameter with
        {
            Least = least?.Scalar,
            LeastFormula = least is null ? null : reading.Formula(least, kind),
            Most = most?.Scalar,
            MostFormula = most is null ? null : reading.Formula(most, kind),
            Limits = map.Find("limits")?.AsText() ?? "",
        };
        if (parameter.Kind != ParameterKind.Length)
            return parameter;
        return parameter with
        {
            Round = map.Find("round")?.AsChoice(["up", "down", "nearest"]) switch
            {
                "up" => Rounding.Up,
                "down" => Rounding.Down,
                _ => Rounding.Nearest,
            },
        };
    }
}
