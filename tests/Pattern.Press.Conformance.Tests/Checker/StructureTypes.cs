namespace Pattern.Press.Conformance;

/// <summary>The standard structure types, and what may stand in what (ISO 32000-1, 14.8.4).</summary>
internal static class StructureTypes
{
    private static readonly HashSet<string> _standard = new(
        [
            "Document", "Part", "Art", "Sect", "Div", "BlockQuote", "Caption", "TOC", "TOCI", "Index", "NonStruct", "Private",
            "P", "H", "H1", "H2", "H3", "H4", "H5", "H6", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD", "THead", "TBody",
            "TFoot", "Span", "Quote", "Note", "Reference", "BibEntry", "Code", "Link", "Annot", "Ruby", "RB", "RT", "RP", "Warichu",
            "WT", "WP", "Figure", "Formula", "Form",
        ],
        StringComparer.Ordinal);

    /// <summary>Whether a type is a standard one.</summary>
    public static bool IsStandard(string type) => _standard.Contains(type);

    /// <summary>The condition that a type inside another breaks; null if it may stand there (tables 333 and 336 to 338).</summary>
    public static string? Misplaced(string type, string parent) => (type, parent) switch
    {
        ("TR", "Table" or "THead" or "TBody" or "TFoot") => null,
        ("TH" or "TD", "TR") => null,
        ("THead" or "TBody" or "TFoot" or "Caption", "Table") => null,
        ("TR" or "TH" or "TD" or "THead" or "TBody" or "TFoot", _) => "09-004",
        (_, "Table" or "TR" or "THead" or "TBody" or "TFoot") => "09-004",
        ("LI" or "L" or "Caption", "L") => null,
        ("Lbl" or "LBody", "LI") => null,
        ("LI" or "LBody", _) => "09-005",
        (_, "L" or "LI") => "09-005",
        ("TOCI" or "TOC" or "Caption", "TOC") => null,
        ("Lbl" or "Reference" or "NonStruct" or "P" or "TOC", "TOCI") => null,
        ("TOCI", _) => "09-006",
        (_, "TOC" or "TOCI") => "09-006",
        ("RB" or "RT" or "RP", "Ruby") => null,
        ("RB" or "RT" or "RP", _) => "09-007",
        (_, "Ruby") => "09-007",
        ("WT" or "WP", "Warichu") => null,
        ("WT" or "WP", _) => "09-008",
        (_, "Warichu") => "09-008",
        _ => null,
    };
}
