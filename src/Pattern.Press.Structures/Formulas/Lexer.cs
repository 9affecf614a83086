using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Formulas;

/// <summary>
/// Cuts a formula into tokens. Lengths are written with their units, as a maker writes them (<c>2 mm</c>,
/// <c>1 1/4 in</c>), which no expression grammar at hand reads; so they become one token each here.
/// </summary>
internal static partial class Lexer
{
    /// <summary>The longest formula, in tokens; far more than any box needs.</summary>
    public const int MostTokens = 300;

    /// <summary>The deepest nesting of parentheses.</summary>
    public const int MostNested = 30;

    private const decimal Pi = 3.1415926535897932384626433833m;

    private static readonly Dictionary<string, string> Signs = new(StringComparer.Ordinal)
    {
        ["=="] = "=",
        ["!="] = "!=",
        ["<>"] = "!=",
        ["<="] = "<=",
        [">="] = ">=",
        ["="] = "=",
        ["<"] = "<",
        [">"] = ">",
        ["+"] = "+",
        ["-"] = "-",
        ["*"] = "*",
        ["/"] = "/",
        ["("] = "(",
        [")"] = ")",
        [","] = ",",
        ["≤"] = "<=",
        ["≥"] = ">=",
        ["≠"] = "!=",
        ["−"] = "-",
        ["×"] = "*",
        ["÷"] = "/",
    };

    /// <summary>Cuts a formula into tokens.</summary>
    /// <param name="text">The formula.</param>
    /// <param name="problem">Called with the offset, the message and the advice when it cannot be read.</param>
    /// <returns>The tokens, or null after a problem.</returns>
    public static IReadOnlyList<Token>? Read(string text, Action<int, string, string> problem)
    {
        var tokens = new List<Token>();
        var open = new Stack<int>();
        for (var at = 0; at < text.Length;)
        {
            if (char.IsWhiteSpace(text[at]))
            {
                at++;
                continue;
            }

            if (tokens.Count == MostTokens)
            {
                problem(at, $"A formula has at most {MostTokens} parts.", "Give the parts of it names under “values”.");
                return null;
            }

            if (One(text, at, problem) is not var (token, length))
                return null;
            if (token.Text == "(" && token.Kind == TokenKind.Sign)
            {
                open.Push(at);
                if (open.Count > MostNested)
                {
                    problem(at, $"Parentheses go at most {MostNested} deep.", "Give the inner parts names under “values”.");
                    return null;
                }

                if (tokens is [.., { Kind: TokenKind.Name } name])
                    tokens[^1] = name with { Kind = TokenKind.Function };
            }
            else if (token.Text == ")" && token.Kind == TokenKind.Sign && !open.TryPop(out _))
            {
                problem(at, "This parenthesis closes nothing.", "");
                return null;
            }

            tokens.Add(token);
            at += length;
        }

        if (open.TryPop(out var left))
        {
            problem(left, "This parenthesis is never closed.", "In a [list], a formula with commas of its own needs quotation marks around it.");
            return null;
        }

        if (tokens.Count > 0)
            return tokens;
        problem(0, "A formula is needed here.", "");
        return null;
    }

    private static (Token Token, int Length)? One(string text, int at, Action<int, string, string> problem)
    {
        if (LengthPattern().Match(text, at) is { Success: true } length)
        {
            if (LengthParser.TryParse(length.Value, out var value, out var wrong))
                return (new Token(TokenKind.Literal, length.Value, at, Quantity.Of(value)), length.Length);
            problem(at, wrong, "");
            return null;
        }

        if (NumberPattern().Match(text, at) is { Success: true } number)
        {
            if (decimal.TryParse(number.Groups["number"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
                return (new Token(TokenKind.Literal, number.Value, at, Quantity.Of(value)), number.Length);
            problem(at, $"“{number.Value}” is too long a number.", "");
            return null;
        }

        if (NamePattern().Match(text, at) is { Success: true } name)
        {
            var token = name.Value switch
            {
                "and" or "or" or "not" => new Token(TokenKind.Sign, name.Value, at),
                "yes" or "true" => new Token(TokenKind.Literal, name.Value, at, Quantity.Of(true)),
                "no" or "false" => new Token(TokenKind.Literal, name.Value, at, Quantity.Of(false)),
                "pi" => new Token(TokenKind.Literal, name.Value, at, Quantity.Of(Pi)),
                _ => new Token(TokenKind.Name, name.Value, at),
            };
            return (token, name.Length);
        }

        if (WordPattern().Match(text, at) is { Success: true } word)
            return (new Token(TokenKind.Word, word.Value, at, Quantity.Of(word.Groups["word"].Value)), word.Length);

        foreach (var width in (ReadOnlySpan<int>)[2, 1])
        {
            if (at + width <= text.Length && Signs.TryGetValue(text.Substring(at, width), out var sign))
                return (new Token(TokenKind.Sign, sign, at), width);
        }

        problem(at, $"“{text[at]}” has no meaning in a formula.", "Formulas use + - * / ( ), comparisons, and, or, not, and if(condition, this, that).");
        return null;
    }

    [GeneratedRegex("""\G(?:(?:\d+(?:\.\d+)?|\.\d+)(?: \d+/\d+)?|\d+/\d+)\s*(?:(?:mm|cm|m|inches|inch|in)\b|["”])""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex LengthPattern();

    // Angles may be written with “deg” behind the number; they are numbers of degrees all the same.
    [GeneratedRegex("""\G(?<number>\d+(\.\d+)?|\.\d+)(\s*deg\b)?""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NumberPattern();

    [GeneratedRegex("""\G[A-Za-z_][A-Za-z_0-9]*(\.[A-Za-z_][A-Za-z_0-9]*)*""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NamePattern();

    [GeneratedRegex("""\G(["“](?<word>[^"”]*)["”]|'(?<word>[^']*)')""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex WordPattern();
}
