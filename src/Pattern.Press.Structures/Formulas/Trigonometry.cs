namespace Pattern.Press.Structures.Formulas;

/// <summary>
/// A function whose result is no fraction of what goes in: roots, sides of right triangles, angles. It is worked out in
/// binary floating point and kept to 15 digits; a length becomes exact again, to the nanometre or to a ruler's mark, where it
/// is used for a band, a side or a mark. Angles are numbers of degrees.
/// </summary>
internal sealed record MeasureNode(int Offset, MeasureFunction Function, IReadOnlyList<Node> Operands) : Node(Offset)
{
    private const double Degrees = 180 / Math.PI;

    public override Kind? Check(Checking checking)
    {
        var kinds = Operands.Select(operand => operand.Check(checking)).ToList();
        if (kinds.Any(kind => kind is null))
            return null;
        for (var i = 0; i < kinds.Count; i++)
        {
            if (kinds[i] == Function.Takes)
                continue;
            checking.Problem(Operands[i].Offset, $"“{Function.Name}” takes {Function.Takes.WithArticle()}, but this is {kinds[i]!.Value.WithArticle()}.", Function.Use);
            return null;
        }

        return Function.Takes;
    }

    public override Quantity Evaluate(Working working)
    {
        Span<double> values = stackalloc double[2];
        for (var i = 0; i < Operands.Count; i++)
            values[i] = (double)Operands[i].Evaluate(working).Amount;
        var result = Function.Work(values[0], values[1]);
        if (!double.IsFinite(result))
            throw working.Fail(Offset, $"“{Function.Name}” gives nothing here. {Function.Use}", false);
        try
        {
            return new Quantity(Function.Takes, (decimal)result);
        }
        catch (OverflowException)
        {
            throw working.Fail(Offset, "This gives a number that is far too large.", false);
        }
    }

    /// <summary>All functions of this kind, by name.</summary>
    public static IReadOnlyDictionary<string, MeasureFunction> All { get; } = new[]
    {
        new MeasureFunction("sqrt", 1, Kind.Number, "Write sqrt(number); the number is 0 or more.", (x, _) => Math.Sqrt(x)),
        new MeasureFunction("long_side", 2, Kind.Length, "Write long_side(a, b): the long side of a right triangle with short sides a and b.", (a, b) => Math.Sqrt((a * a) + (b * b))),
        new MeasureFunction("short_side", 2, Kind.Length, "Write short_side(c, a): the other short side of a right triangle with long side c; c is at least a.", (c, a) => Math.Sqrt((c * c) - (a * a))),
        new MeasureFunction("sin", 1, Kind.Number, "Write sin(angle) with the angle in degrees.", (x, _) => Math.Sin(x / Degrees)),
        new MeasureFunction("cos", 1, Kind.Number, "Write cos(angle) with the angle in degrees.", (x, _) => Math.Cos(x / Degrees)),
        new MeasureFunction("tan", 1, Kind.Number, "Write tan(angle) with the angle in degrees, other than 90.", (x, _) => Math.Abs(Math.Cos(x / Degrees)) < 1e-12 ? double.NaN : Math.Tan(x / Degrees)),
        new MeasureFunction("asin", 1, Kind.Number, "Write asin(number): the angle in degrees whose sine it is, from -1 to 1.", (x, _) => Math.Asin(x) * Degrees),
        new MeasureFunction("acos", 1, Kind.Number, "Write acos(number): the angle in degrees whose cosine it is, from -1 to 1.", (x, _) => Math.Acos(x) * Degrees),
        new MeasureFunction("atan", 1, Kind.Number, "Write atan(number): the angle in degrees whose tangent it is.", (x, _) => Math.Atan(x) * Degrees),
    }.ToDictionary(function => function.Name, StringComparer.Ordinal);
}

/// <summary>A function of one or two values of a kind, which gives a value of the same kind.</summary>
/// <param name="Name">Its name in formulas.</param>
/// <param name="Values">How many values it takes.</param>
/// <param name="Takes">Their kind.</param>
/// <param name="Use">How to write it, a sentence.</param>
/// <param name="Work">What it does; not a number where it gives nothing.</param>
internal sealed record MeasureFunction(string Name, int Values, Kind Takes, string Use, Func<double, double, double> Work);
