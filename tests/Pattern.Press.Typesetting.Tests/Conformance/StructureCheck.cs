using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Conformance;

/// <summary>Checks the logical structure, and that content and structure lead to each other.</summary>
internal sealed class StructureCheck
{
    // ISO 32000-1, 14.8.4: the standard structure types.
    private static readonly HashSet<string> _standard = new(
        [
            "Document", "Part", "Art", "Sect", "Div", "BlockQuote", "Caption", "TOC", "TOCI", "Index", "NonStruct", "Private",
            "P", "H", "H1", "H2", "H3", "H4", "H5", "H6", "L", "LI", "Lbl", "LBody", "Table", "TR", "TH", "TD", "THead", "TBody",
            "TFoot", "Span", "Quote", "Note", "Reference", "BibEntry", "Code", "Link", "Annot", "Ruby", "Warichu", "Figure",
            "Formula", "Form",
        ],
        StringComparer.Ordinal);

    private readonly PdfObjects _objects;
    private readonly List<Finding> _findings;
    private readonly Dictionary<(long Page, int Mark), long> _owners = [];
    private readonly Dictionary<long, long> _annotationOwners = [];
    private readonly HashSet<string> _noteNames = new(StringComparer.Ordinal);
    private readonly HashSet<long> _visited = [];
    private int _lastHeading;

    private StructureCheck(PdfObjects objects, List<Finding> findings)
    {
        _objects = objects;
        _findings = findings;
    }

    public static void Run(PdfObjects objects, List<(long Page, int Mark)> marks, List<Finding> findings)
    {
        if (objects.Dictionary(objects.Catalog, "StructTreeRoot") is not { } root)
        {
            findings.Add(new Finding("ISO 14289-1, 7.1", "There is no structure tree."));
            return;
        }

        var check = new StructureCheck(objects, findings);
        var rootNumber = PdfObjects.Reference(objects.Catalog, "StructTreeRoot");
        foreach (var kid in check.Kids(root))
            check.Visit(kid, "StructTreeRoot", rootNumber, 0);
        check.CheckMarks(marks);
        check.CheckParents(root);
    }

    private IEnumerable<IToken> Kids(DictionaryToken element)
    {
        if (!element.TryGet(NameToken.Create("K"), out var kids))
            return [];
        return kids is ArrayToken array ? array.Data : _objects.Resolve(kids) is ArrayToken referenced ? referenced.Data : [kids];
    }

    private void Visit(IToken token, string parentType, long parentNumber, long inheritedPage)
    {
        var number = PdfObjects.Reference(token);
        var element = (DictionaryToken)_objects.Resolve(token);
        var type = _objects.Name(element, "S") ?? "";
        if (!_visited.Add(number))
        {
            Report("ISO 32000-1, 14.7.2", $"An element ({type}) stands in the tree twice.");
            return;
        }

        if (PdfObjects.Reference(element, "P") != parentNumber)
            Report("ISO 32000-1, 14.7.2", $"An element ({type}) names another parent than the one it stands in.");
        if (!_standard.Contains(type))
            Report("02-001", $"The structure type {type} is not a standard one.");
        CheckNesting(type, parentType);
        CheckElement(element, type);
        var page = PdfObjects.Reference(element, "Pg");
        if (page == 0)
            page = inheritedPage;
        foreach (var kid in Kids(element))
        {
            switch (_objects.Resolve(kid))
            {
                case NumericToken mark:
                    Own(page, mark.Int, number);
                    break;
                case DictionaryToken part when _objects.Name(part, "Type") == "MCR":
                    var own = PdfObjects.Reference(part, "Pg");
                    Own(own == 0 ? page : own, (int)(_objects.Number(part, "MCID") ?? -1), number);
                    break;
                case DictionaryToken part when _objects.Name(part, "Type") == "OBJR":
                    _annotationOwners[PdfObjects.Reference(part, "Obj")] = number;
                    if (type != "Link")
                        Report("28-011", $"A link belongs to an element {type}.");
                    break;
                default:
                    Visit(kid, type, number, page);
                    break;
            }
        }
    }

    private void Own(long page, int mark, long element)
    {
        if (!_owners.TryAdd((page, mark), element))
            Report("ISO 32000-1, 14.7.4", $"The content {mark} of a page belongs to two elements.");
    }

    /// <summary>09-004 to 09-006: what may stand in what (ISO 32000-1, tables 333 to 337).</summary>
    private void CheckNesting(string type, string parent)
    {
        bool? fits = type switch
        {
            "Document" => parent == "StructTreeRoot",
            "TR" => parent is "Table" or "THead" or "TBody" or "TFoot",
            "TH" or "TD" => parent == "TR",
            "THead" or "TBody" or "TFoot" => parent == "Table",
            "LI" => parent == "L",
            "Lbl" => parent is "LI" or "TOCI" or "Note" or "Reference" or "BibEntry" or "P" or "Caption",
            "LBody" => parent == "LI",
            "TOCI" => parent == "TOC",
            _ => parent switch
            {
                "Table" => type == "Caption",
                "TR" or "THead" or "TBody" or "TFoot" => false,
                "L" => type is "L" or "Caption",
                "LI" => false,
                "TOC" => type is "TOC" or "Caption",
                _ => true,
            },
        };
        if (fits != true)
            Report(parent[0] == 'T' || type[0] == 'T' ? "09-004" : "09-005", $"The structure type {type} stands in {parent}.");
    }

    private void CheckElement(DictionaryToken element, string type)
    {
        var attributes = _objects.Dictionary(element, "A");
        switch (type)
        {
            case "Figure" or "Formula":
                if (string.IsNullOrWhiteSpace(_objects.Text(element, "Alt")) && string.IsNullOrWhiteSpace(_objects.Text(element, "ActualText")))
                    Report(type == "Figure" ? "13-004" : "17-002", $"A {type} has no alternative text.");
                if (_objects.Array(attributes, "BBox") is not { Length: 4 })
                    Report("ISO 14289-1, 7.3", $"A {type} has no bounding box.");
                break;
            case "TH":
                // 15-003: tables here have no lists of headers by name, so each header says what it heads.
                if (_objects.Name(attributes, "Scope") is not ("Row" or "Column" or "Both"))
                    Report("15-003", "A header cell does not say what it heads.");
                break;
            case "Table":
                CheckTable(element);
                break;
            case "L":
                var labelled = Elements(element).SelectMany(Elements).Any(part => _objects.Name(part, "S") == "Lbl");
                if (labelled && _objects.Name(attributes, "ListNumbering") is null or "None")
                    Report("ISO 14289-1, 7.6", "A list with labels does not say how it is numbered.");
                break;
            case "Note":
                if (_objects.Text(element, "ID") is not { Length: > 0 } name)
                    Report("19-003", "A note has no identifier.");
                else if (!_noteNames.Add(name))
                    Report("19-004", $"Two notes are called {name}.");
                break;
            case ['H', var digit]:
                var level = digit - '0';
                if (_lastHeading == 0 && level != 1)
                    Report("14-002", $"The first heading is {type}.");
                else if (level > _lastHeading + 1)
                    Report("14-003", $"A heading {type} follows H{_lastHeading}.");
                _lastHeading = level;
                break;
            case "H":
                Report("14-007", "Headings with and without a number are mixed.");
                break;
            default:
                break;
        }
    }

    /// <summary>15-005 (ISO 14289-1, 7.5): every row covers the same columns.</summary>
    private void CheckTable(DictionaryToken table)
    {
        var widths = Elements(table)
            .SelectMany(part => _objects.Name(part, "S") == "TR" ? [part] : Elements(part).Where(row => _objects.Name(row, "S") == "TR"))
            .Select(row => Elements(row).Sum(cell => _objects.Number(_objects.Dictionary(cell, "A"), "ColSpan") ?? 1))
            .Distinct()
            .ToList();
        if (widths.Count > 1)
            Report("15-005", $"The rows of a table cover {string.Join(", ", widths)} columns.");
    }

    private IEnumerable<DictionaryToken> Elements(DictionaryToken element) => Kids(element)
        .Select(_objects.Resolve)
        .OfType<DictionaryToken>()
        .Where(part => _objects.Name(part, "S") is not null);

    /// <summary>01-005: every mark on a page leads to an element, and every element's content is there.</summary>
    private void CheckMarks(List<(long Page, int Mark)> marks)
    {
        foreach (var mark in marks)
        {
            if (!_owners.ContainsKey(mark))
                Report("01-005", $"The content {mark.Mark} of a page belongs to no element.");
        }

        var present = marks.ToHashSet();
        foreach (var owned in _owners.Keys)
        {
            if (!present.Contains(owned))
                Report("ISO 32000-1, 14.7.4", $"An element has the content {owned.Mark} of a page that does not hold it.");
        }
    }

    /// <summary>The way back from content to elements gives the same elements (ISO 32000-1, 14.7.4.4).</summary>
    private void CheckParents(DictionaryToken root)
    {
        var parents = new Dictionary<int, IToken>();
        Collect(_objects.Dictionary(root, "ParentTree"));
        foreach (var (number, page) in _objects.Pages)
        {
            if (_objects.Number(page, "StructParents") is { } key)
            {
                var list = parents.TryGetValue((int)key, out var found) ? _objects.Resolve(found) as ArrayToken : null;
                var owners = _owners.Where(owner => owner.Key.Page == number).ToList();
                if (list is null || owners.Any(owner => owner.Key.Mark >= list.Length || PdfObjects.Reference(list.Data[owner.Key.Mark]) != owner.Value))
                    Report("ISO 32000-1, 14.7.4.4", "The parent tree and the structure tree differ on a page.");
            }

            foreach (var reference in _objects.Array(page, "Annots")?.Data ?? [])
            {
                var annotation = (DictionaryToken)_objects.Resolve(reference);
                var owner = _annotationOwners.GetValueOrDefault(PdfObjects.Reference(reference));
                if (owner == 0)
                    Report("28-011", "A link belongs to no element Link.");
                else if (_objects.Number(annotation, "StructParent") is not { } key2 || PdfObjects.Reference(parents.GetValueOrDefault((int)key2, NullToken.Instance)) != owner)
                    Report("ISO 32000-1, 14.7.4.4", "The parent tree and the structure tree differ on a link.");
            }
        }

        void Collect(DictionaryToken? node)
        {
            foreach (var kid in _objects.Array(node, "Kids")?.Data ?? [])
                Collect((DictionaryToken)_objects.Resolve(kid));
            var numbers = _objects.Array(node, "Nums")?.Data ?? [];
            for (var i = 0; i + 1 < numbers.Count; i += 2)
                parents[((NumericToken)numbers[i]).Int] = numbers[i + 1];
        }
    }

    private void Report(string checkpoint, string message) => _findings.Add(new Finding(checkpoint, message));
}
