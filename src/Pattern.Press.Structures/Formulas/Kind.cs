namespace Pattern.Press.Structures.Formulas;

/// <summary>What sort of thing a formula gives.</summary>
internal enum Kind
{
    /// <summary>A plain number; angles are numbers of degrees.</summary>
    Number,

    /// <summary>A length.</summary>
    Length,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>One of a parameter's choices.</summary>
    Word,
}

/// <summary>Words for kinds in messages.</summary>
internal static class KindWords
{
    /// <summary>The kind with its article: <c>a length</c>.</summary>
    public static string WithArticle(this Kind kind) => kind switch
    {
        Kind.Number => "a number",
        Kind.Length => "a length",
        Kind.YesNo => "yes or no",
        _ => "a word",
    };
}
