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

    /// <summary>The conditions that a type inside another breaks (tables 333 and 336 to 338).</summary>
    public static IEnumerable<string> Misplaced(string type, string parent) =>
        new[] { WrongParent(type, parent), WrongChild(type, parent) }.OfType<string>().Distinct();

    /// <summary>What the type allows around it.</summary>
    private static string? WrongParent(string type, string parent) => (type, parent) switch
    {
        ("TR", "Table" or "THead" or "TBody" or "TFoot") or ("TH" or "TD", "TR") or ("THead" or "TBody" or "TFoot", "Table") => null,
        ("TR" or "TH" or "TD" or "THead" or "TBody" or "TFoot", _) => "09-004",
        ("LI", "L") or ("LBody", "LI") => null,
        ("LI" or "LBody", _) => "09-005",
        ("TOCI", "TOC") => null,
        ("TOCI", _) => "09-006",
        ("RB" or "RT" or "RP", "Ruby") or ("WT" or "WP", "Warichu") => null,
        ("RB" or "RT" or "RP", _) => "09-007",
        ("WT" or "WP", _) => "09-008",
        _ => null,
    };

    /// <summary>What the type around allows in it.</summary>
    private static string? WrongChild(string type, string parent) => (parent, type) switch
    {
        ("Table", "TR" or "THead" or "TBody" or "TFoot" or "Caption") or ("THead" or "TBody" or "TFoot", "TR") or ("TR", "TH" or "TD") => null,
        ("Table" or "THead" or "TBody" or "TFoot" or "TR", _) => "09-004",
        ("L", "LI" or "L" or "Caption") or ("LI", "Lbl" or "LBody") => null,
        ("L" or "LI", _) => "09-005",
        ("TOC", "TOCI" or "TOC" or "Caption") or ("TOCI", "Lbl" or "Reference" or "NonStruct" or "P" or "TOC") => null,
        ("TOC" or "TOCI", _) => "09-006",
        ("Ruby", "RB" or "RT" or "RP") or ("Warichu", "WT" or "WP") => null,
        ("Ruby", _) => "09-007",
        ("Warichu", _) => "09-008",
        _ => null,
    };
}
