namespace Pattern.Press.Booklets.Figures;

/// <summary>The words that figures and templates need, in the language of the booklet.</summary>
public interface IFigureWords
{
    /// <summary>A word or sentence by its key, with values put in at <c>{name}</c>.</summary>
    string Say(string key, params ReadOnlySpan<(string Name, string Value)> values);

    /// <summary>The mark between whole numbers and decimals.</summary>
    string DecimalMark => ".";
}

/// <summary>Ways to say numbers.</summary>
public static class FigureWords
{
    /// <summary>A number or a measurement, written with a full stop, as the language writes it.</summary>
    public static string Number(this IFigureWords words, string text)
    {
        ArgumentNullException.ThrowIfNull(words);
        ArgumentNullException.ThrowIfNull(text);
        return text.Replace(".", words.DecimalMark, StringComparison.Ordinal);
    }

    /// <summary>
    /// A count with its noun: the key ends in <c>.one</c> for 1 and in <c>.other</c> for anything else; the text names
    /// <c>{count}</c>.
    /// </summary>
    public static string Count(this IFigureWords words, string key, int count)
    {
        ArgumentNullException.ThrowIfNull(words);
        return words.Say(
            key + (count == 1 ? ".one" : ".other"),
            ("count", count.ToString(System.Globalization.CultureInfo.InvariantCulture)));
    }
}
