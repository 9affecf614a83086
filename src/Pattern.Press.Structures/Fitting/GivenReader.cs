using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Reads what a maker set a parameter to.</summary>
internal static class GivenReader
{
    // Wide enough for any count; the structure's own limits come with the fit.
    private const decimal MostNumber = 1_000_000;

    public static GivenValue? Read(Structure structure, string name, Place place, YamlItem value, Problems problems)
    {
        var parameter = structure.Parameters.FirstOrDefault(known => known.Name == name);
        if (parameter is null)
        {
            problems.Error(place, $"“{name}” is not something to set about this structure ({structure.Title}).", Spelling.Advice(name, [.. structure.Parameters.Select(known => known.Name)]));
            return null;
        }

        Value? read = parameter.Kind switch
        {
            ParameterKind.Length => ReadLength(parameter, value, problems),
            ParameterKind.Number => value.AsNumber(-MostNumber, MostNumber) is { } number ? new NumberValue(number) : null,
            ParameterKind.YesNo => value.AsYesNo() is { } flag ? new FlagValue(flag) : null,
            _ => value.AsChoice([.. parameter.Choices]) is { } word ? new WordValue(word) : null,
        };
        return read is null ? null : new GivenValue(read, value.Place);
    }

    private static LengthValue? ReadLength(Parameter parameter, YamlItem value, Problems problems)
    {
        if (value.AsLength() is not { } length)
            return null;
        if (LengthRange.Fault(length, LeastOf(parameter)) is not { } fault)
            return new LengthValue(length);
        problems.Error(value.Place, $"“{parameter.Name}” cannot be {value.Scalar}.", fault);
        return null;
    }

    // A structure may allow less than the usual millimetre where it says so outright, as for the room around a lid.
    private static Length LeastOf(Parameter parameter)
    {
        if (parameter.LeastFormula is not { Names.Count: 0 } least)
            return LengthRange.Least;
        return Length.Min(LengthRange.Least, least.Evaluate(new Evaluation(new Names(), Ruler.WholeMillimetres)).Length);
    }
}
