namespace Pattern.Press.Structures.Formulas;

/// <summary>A part of a formula, ready to be worked out any number of times.</summary>
/// <param name="Offset">Where it starts in the formula's text.</param>
internal abstract record Node(int Offset)
{
    /// <summary>
    /// Finds out what the part gives, whatever the values are, and reports what cannot be: unknown names, a length plus a
    /// number. Null when that is unknown because of a problem that was reported.
    /// </summary>
    public abstract Kind? Check(Checking checking);

    /// <summary>Works the part out. <see cref="Check"/> was called before and found nothing.</summary>
    public abstract Quantity Evaluate(Working working);
}

/// <summary>What checking a formula needs.</summary>
/// <param name="Names">The names there are.</param>
/// <param name="Problem">Called with the offset, the message and the advice for each problem.</param>
internal sealed record Checking(Names Names, Action<int, string, string> Problem);

/// <summary>What working out a formula needs.</summary>
/// <param name="Values">The values of the names.</param>
/// <param name="Fail">Makes the exception for a part that gives nothing: offset, message, whether an item is missing.</param>
internal readonly record struct Working(Evaluation Values, Func<int, string, bool, FormulaException> Fail);
