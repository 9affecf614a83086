using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Formulas;

/// <summary>
/// What a formula gives. A length is held as a decimal count of nanometres, so that thirds and products stay exact to 28
/// digits until a result is brought to whole nanometres or to a ruler.
/// </summary>
/// <param name="Kind">What it is.</param>
/// <param name="Amount">The number; nanometres for a length; 1 or 0 for yes or no.</param>
/// <param name="Word">The word, for a word.</param>
internal readonly record struct Quantity(Kind Kind, decimal Amount, string? Word = null)
{
    public static Quantity Of(Length length) => new(Kind.Length, length.Nanometres);

    public static Quantity Of(decimal number) => new(Kind.Number, number);

    public static Quantity Of(bool flag) => new(Kind.YesNo, flag ? 1 : 0);

    public static Quantity Of(string word) => new(Kind.Word, 0, word);

    /// <summary>Whether it is yes.</summary>
    public bool Flag => Amount != 0;

    /// <summary>The length to the nearest nanometre.</summary>
    /// <exception cref="OverflowException">It is out of range.</exception>
    public Length Length => Length.FromNanometres(decimal.ToInt64(decimal.Round(Amount, MidpointRounding.AwayFromZero)));
}
