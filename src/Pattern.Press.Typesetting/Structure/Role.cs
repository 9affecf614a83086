namespace Pattern.Press.Typesetting.Structure;

/// <summary>The standard structure types of ISO 32000-1, 14.8.4, that booklets use. Names are those of the standard.</summary>
public enum Role
{
    Document,
    Sect,
    H1,
    H2,
    H3,
    H4,
    P,
    L,
    LI,
    Lbl,
    LBody,
    Table,
    THead,
    TBody,
    TR,
    TH,
    TD,
    Figure,
    Caption,
    Link,
    TOC,
    TOCI,
    BlockQuote,
    Note,
    Span,
    Div,
    Code,
}
