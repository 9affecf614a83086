namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>The classes of Unicode Standard Annex #14 that text in Latin letters needs, by the annex's own names.</summary>
internal enum LineBreakClass
{
    /// <summary>Letters and everything else without a rule of its own.</summary>
    AL,

    /// <summary>A break that must be taken.</summary>
    BK,

    /// <summary>Space.</summary>
    SP,

    /// <summary>Zero width space.</summary>
    ZW,

    /// <summary>Word joiner.</summary>
    WJ,

    /// <summary>No-break space and its kin.</summary>
    GL,

    /// <summary>A break is possible after it: en dash, soft hyphen.</summary>
    BA,

    /// <summary>Hyphen-minus and hyphen.</summary>
    HY,

    /// <summary>Em dash.</summary>
    B2,

    /// <summary>Closing brace.</summary>
    CL,

    /// <summary>Closing parenthesis or bracket.</summary>
    CP,

    /// <summary>Opening punctuation.</summary>
    OP,

    /// <summary>Straight quotation mark, which may open or close.</summary>
    QU,

    /// <summary>Quotation mark that opens.</summary>
    QI,

    /// <summary>Quotation mark that closes.</summary>
    QF,

    /// <summary>Exclamation and question marks.</summary>
    EX,

    /// <summary>Comma, full stop, colon, semicolon.</summary>
    IS,

    /// <summary>Slash.</summary>
    SY,

    /// <summary>Digit.</summary>
    NU,

    /// <summary>What stands before a number: a sign, a currency.</summary>
    PR,

    /// <summary>What stands after a number: percent, degree, prime.</summary>
    PO,

    /// <summary>Ellipsis.</summary>
    IN,

    /// <summary>Combining mark.</summary>
    CM,

    /// <summary>Ideograph.</summary>
    ID,
}
