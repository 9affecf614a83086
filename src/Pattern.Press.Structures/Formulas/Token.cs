namespace Pattern.Press.Structures.Formulas;

/// <summary>What a token of a formula is.</summary>
internal enum TokenKind
{
    /// <summary>A number or a length.</summary>
    Literal,

    /// <summary>A word in quotation marks.</summary>
    Word,

    /// <summary>A name of a value.</summary>
    Name,

    /// <summary>A name with an opening parenthesis behind it.</summary>
    Function,

    /// <summary>An operator, a parenthesis or a comma.</summary>
    Sign,
}

/// <summary>A token of a formula.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its text; for a sign, as the parser knows it.</param>
/// <param name="Offset">Where it starts in the formula's text, from 0.</param>
/// <param name="Value">The value of a literal or word.</param>
internal sealed record Token(TokenKind Kind, string Text, int Offset, Quantity Value = default);
