using System.Globalization;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>Small words of drafts: numbers, plurals, lists.</summary>
internal static class DraftWords
{
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];
    private static readonly string[] Determiners = ["a", "an", "the", "my", "your", "our", "some", .. Numbers[1..]];
    private static readonly string[] SinglesInS = ["ss", "us", "is", "lens", "canvas", "atlas", "gas"];

    /// <summary>The panels of a kind: <c>the lid</c>, <c>both end tabs</c>, <c>the four walls</c>.</summary>
    public static string The(Piece piece, string kind) => The(kind, Count(piece, kind));

    /// <summary>So many things: <c>the lid</c>, <c>both end tabs</c>, <c>the four walls</c>.</summary>
    public static string The(string thing, int count) => count switch
    {
        1 => $"the {thing}",
        2 => $"both {Plural(thing)}",
        _ => $"the {Number(count)} {Plural(thing)}",
    };

    /// <summary>How many panels of a kind there are.</summary>
    public static int Count(Piece piece, string kind) => piece.Panels.Count(panel => panel.Kind == kind);

    /// <summary>Several of a thing.</summary>
    public static string Plural(string thing) =>
        thing.EndsWith('s') ? thing : thing.EndsWith("half", StringComparison.Ordinal) ? thing[..^1] + "ves" : thing + "s";

    /// <summary>A whole number in words as far as twelve.</summary>
    public static string Number(int count) => count < Numbers.Length ? Numbers[count] : count.ToString(CultureInfo.InvariantCulture);

    /// <summary>Things in a row: <c>a, b and c</c>.</summary>
    public static string Listed(IEnumerable<string> words)
    {
        var all = words.Distinct().ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    /// <summary>A thing with its article: <c>a tin</c>, <c>an egg</c>, <c>playing cards</c>, <c>my brooch</c>.</summary>
    public static string A(string thing) => Before(thing) + thing;

    /// <summary>The article of a thing and a space; nothing before several things and before what has a word of that kind.</summary>
    public static string Before(string thing)
    {
        var words = thing.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0 || char.IsDigit(thing[0]) || Determiners.Contains(words[0], StringComparer.OrdinalIgnoreCase) || AreSeveral(words))
            return "";
        return "aeiouAEIOU".Contains(thing[0], StringComparison.Ordinal) ? "an " : "a ";
    }

    // The word that says what it is stands last, or before “of”: a bar of sweets, sweets of all kinds.
    private static bool AreSeveral(string[] words)
    {
        var of = Array.IndexOf(words, "of");
        var last = words[of > 0 ? of - 1 : ^1];
        return last.EndsWith('s') && !SinglesInS.Any(ending => last.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A name inside a sentence.</summary>
    public static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
