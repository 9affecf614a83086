namespace Pattern.Press.Structures.Formulas;

/// <summary>
/// Looks whether values and operators take turns, before the expression library sees them: it would only say that something
/// is wrong, and not always where.
/// </summary>
internal static class Sequence
{
    /// <summary>Whether they do; the first place where they do not is reported.</summary>
    public static bool IsSound(IReadOnlyList<Token> tokens, Action<int, string, string> problem)
    {
        var valueNext = true;
        Token? before = null;
        var takesValues = new Stack<bool>();
        foreach (var token in tokens)
        {
            if (Fault(token, before, valueNext) is { } fault)
            {
                problem(token.Offset, fault, "");
                return false;
            }

            if (token is { Kind: TokenKind.Sign, Text: "," } && !takesValues.FirstOrDefault())
            {
                problem(token.Offset, "A comma stands only between the values of if, min and max.", "");
                return false;
            }

            if (token is { Kind: TokenKind.Sign, Text: "(" })
                takesValues.Push(before?.Kind == TokenKind.Function);
            else if (token is { Kind: TokenKind.Sign, Text: ")" })
                takesValues.Pop();

            valueNext = token.Kind switch
            {
                TokenKind.Function => true,
                TokenKind.Sign => token.Text != ")",
                _ => false,
            };
            before = token;
        }

        if (!valueNext)
            return true;
        problem(before!.Offset, $"A value is missing behind “{before.Text}”.", "");
        return false;
    }

    private static string? Fault(Token token, Token? before, bool valueNext)
    {
        var startsValue = token.Kind != TokenKind.Sign || token.Text is "(" or "not";
        if (startsValue)
            return valueNext ? null : $"An operator is missing before “{token.Text}”.";
        if (!valueNext || token.Text == "-")
            return null;
        return before is null
            ? $"A formula cannot start with “{token.Text}”."
            : $"A value is missing between “{before.Text}” and “{token.Text}”.";
    }
}
