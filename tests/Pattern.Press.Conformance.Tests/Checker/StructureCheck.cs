using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks the logical structure, and that content and structure lead to each other.</summary>
internal sealed class StructureCheck
{
    // The line widths of drawings, which boxes need not hold, in points.
    private const double WidthOfLines = 2;

    // Where the search for a standard type gives up and says that it goes in circles.
    private const int LongestMapping = 20;

    private readonly PdfObjects _objects;
    private readonly Findings _findings;
    private readonly Dictionary<(long Page, int Mark), List<Box>> _marks;
    private readonly DictionaryToken? _roles;
    private readonly Dictionary<(long Page, int Mark), long> _owners = [];
    private readonly Dictionary<long, (long Element, string Type)> _annotations = [];
    private readonly Dictionary<string, long> _notes = new(StringComparer.Ordinal);
    private readonly HashSet<long> _visited = [];
    private bool _hasLanguage;
    private int _lastHeading;
    private bool _plainHeadings;

    private StructureCheck(PdfObjects objects, DictionaryToken root, Dictionary<(long Page, int Mark), List<Box>> marks, Findings findings)
    {
        (_objects, _findings, _marks) = (objects, findings, marks);
        _roles = objects.Dictionary(root, "RoleMap");
        _hasLanguage = !string.IsNullOrEmpty(objects.Text(objects.Catalog, "Lang"));
    }

    /// <summary>Runs the checks; returns the types of the elements that annotations belong to, by the annotation's object.</summary>
    public static IReadOnlyDictionary<long, string> Run(PdfObjects objects, Dictionary<(long Page, int Mark), List<Box>> marks, Findings findings)
    {
        if (objects.Dictionary(objects.Catalog, "StructTreeRoot") is not { } root)
        {
            findings.Report("UA 7.1b", "There is no structure tree.");
            return new Dictionary<long, string>();
        }

        var check = new StructureCheck(objects, root, marks, findings);
        check.CheckRoles();
        var number = PdfObjects.Reference(objects.Catalog, "StructTreeRoot");
        foreach (var kid in objects.Kids(root))
            check.Visit(kid, "StructTreeRoot", number, 0);
        check.CheckMarks();
        check.CheckParents(root);
        check.CheckNotes(root);
        return check._annotations.ToDictionary(pair => pair.Key, pair => pair.Value.Type);
    }

    private void CheckRoles()
    {
        foreach (var role in _roles?.Data.Keys ?? [])
        {
            if (StructureTypes.IsStandard(role))
                Report("02-004", $"The standard type {role} is mapped to another.");
        }
    }

    /// <summary>The standard type that a type stands for; itself if it stands for none.</summary>
    private string Standard(string type)
    {
        var mapped = type;
        for (var i = 0; i < LongestMapping; i++)
        {
            if (StructureTypes.IsStandard(mapped))
                return mapped;
            if (_objects.Name(_roles, mapped) is not { } next)
            {
                Report("02-001", $"The structure type {type} is not a standard one.");
                return type;
            }

            mapped = next;
        }

        Report("02-003", $"The structure type {type} is mapped in a circle.");
        return type;
    }

    private void Visit(IToken token, string parentType, long parentNumber, long inheritedPage)
    {
        var number = PdfObjects.Reference(token);
        if (_objects.Resolve(token) is not DictionaryToken element || !_visited.Add(number))
        {
            Report("PDF 14.7.2a", $"What stands in an element {parentType} is no element, or stands in the tree twice.");
            return;
        }

        var type = Standard(_objects.Name(element, "S") ?? "");
        if (PdfObjects.Reference(element, "P") != parentNumber)
            Report("PDF 14.7.2a", $"An element ({type}) names another parent than the one it stands in.");
        foreach (var checkpoint in StructureTypes.Misplaced(type, parentType))
            Report(checkpoint, $"The structure type {type} stands in {parentType}.");
        var outside = _hasLanguage;
        if (_objects.Text(element, "Lang") is { Length: > 0 } language)
        {
            _hasLanguage = true;
            if (!DocumentCheck.IsLanguage(language))
                Report("A 6.7.4", $"The language of an element {type} is “{language}”.");
        }

        CheckElement(element, type, number);
        var page = PdfObjects.Reference(element, "Pg");
        VisitKids(element, type, number, page == 0 ? inheritedPage : page);
        _hasLanguage = outside;
    }

    private void VisitKids(DictionaryToken element, string type, long number, long page)
    {
        var (count, content) = (0, false);
        foreach (var kid in _objects.Kids(element))
        {
            count++;
            switch (_objects.Resolve(kid))
            {
                case NumericToken mark:
                    content |= Own(page, mark.Int, number);
                    break;
                case DictionaryToken part when _objects.Name(part, "Type") == "MCR":
                    var own = PdfObjects.Reference(part, "Pg");
                    content |= Own(own == 0 ? page : own, (int)(_objects.Number(part, "MCID") ?? -1), number);
                    break;
                case DictionaryToken part when _objects.Name(part, "Type") == "OBJR":
                    if (!_annotations.TryAdd(PdfObjects.Reference(part, "Obj"), (number, type)))
                        Report("PDF 14.7.4b", $"An annotation belongs to two elements.");
                    break;
                default:
                    Visit(kid, type, number, page);
                    break;
            }
        }

        if (count == 0 && type is not ("TD" or "TH"))
            Report("Press empty", $"An element {type} has no content.");
        if (content && !_hasLanguage)
            Report("11-001", $"The text of an element {type} has no language.");
    }

    private bool Own(long page, int mark, long element)
    {
        if (!_owners.TryAdd((page, mark), element))
            Report("PDF 14.7.4b", $"The content {mark} of a page belongs to two elements.");
        return true;
    }

    private void CheckElement(DictionaryToken element, string type, long number)
    {
        var attributes = _objects.Dictionary(element, "A");
        var words = _objects.Text(element, "Alt") ?? _objects.Text(element, "ActualText");
        if (words is not null && !_hasLanguage)
            Report("11-002", $"The alternative text of an element {type} has no language.");
        switch (type)
        {
            case "Figure" or "Formula":
                if (string.IsNullOrWhiteSpace(words))
                    Report(type == "Figure" ? "13-004" : "17-002", $"A {type} has no alternative text.");
                if (type == "Figure")
                    CheckBox(element, attributes);
                break;
            case "TH":
                // Tables here have no lists of headers by name, so each header says what it heads.
                if (_objects.Name(attributes, "Scope") is not ("Row" or "Column" or "Both"))
                    Report("15-003", "A header cell does not say what it heads.");
                break;
            case "Table":
                TableCheck.Run(_objects, element, _findings);
                break;
            case "L":
                var labelled = _objects.Elements(element).SelectMany(_objects.Elements).Any(part => _objects.Name(part, "S") == "Lbl");
                if (labelled && _objects.Name(attributes, "ListNumbering") is null or "None")
                    Report("16-001", "A list with labels does not say how it is numbered.");
                break;
            case "Note":
                if (_objects.Text(element, "ID") is not { Length: > 0 } name)
                    Report("19-003", "A note has no identifier.");
                else if (!_notes.TryAdd(name, number))
                    Report("19-004", $"Two notes are called {name}.");
                break;
            default:
                break;
        }

        CheckHeading(type);
        if (_objects.Elements(element).Count(part => _objects.Name(part, "S") == "H") > 1)
            Report("14-006", $"An element {type} holds several headings H.");
    }

    private void CheckHeading(string type)
    {
        if (type is not (['H'] or ['H', >= '1' and <= '6']))
            return;
        if ((type == "H" && _lastHeading > 0) || (type != "H" && _plainHeadings))
            Report("14-007", "Headings with and without a level are mixed.");
        if (type == "H")
        {
            _plainHeadings = true;
            return;
        }

        var level = type[1] - '0';
        if (_lastHeading == 0 && level != 1)
            Report("14-002", $"The first heading is {type}.");
        else if (level > _lastHeading + 1)
            Report("14-003", $"A heading {type} follows H{_lastHeading}.");
        _lastHeading = level;
    }

    /// <summary>A figure's box is on its page and holds what is drawn.</summary>
    private void CheckBox(DictionaryToken element, DictionaryToken? attributes)
    {
        var kids = _objects.Kids(element).Select(_objects.Resolve).OfType<NumericToken>().ToList();
        var number = PdfObjects.Reference(element, "Pg");
        var page = _objects.Pages.FirstOrDefault(page => page.Number == number).Page;
        if (_objects.Rectangle(attributes, "BBox") is not { HasArea: true } box || (page is not null && !box.IsWithin(_objects.Rectangle(page, "MediaBox")!.Value)))
        {
            Report("UA 7.3", "A figure has no bounding box, or one that is not on its page.");
            return;
        }

        foreach (var painted in kids.SelectMany(kid => _marks.GetValueOrDefault((number, kid.Int), [])))
        {
            // A straight line has no area, so its box is made as wide as the line.
            var drawn = new Box(painted.Left - 0.05, painted.Bottom - 0.05, painted.Right + 0.05, painted.Top + 0.05);
            if (drawn.HasArea && !drawn.IsWithin(box, WidthOfLines))
                Report("Press marks", $"A figure with the box {box} draws at {painted}.");
        }
    }

    /// <summary>Every mark on a page leads to an element, and every element's content is there.</summary>
    private void CheckMarks()
    {
        foreach (var mark in _marks.Keys.Where(mark => !_owners.ContainsKey(mark)))
            Report("PDF 14.7.4b", $"The content {mark.Mark} of a page belongs to no element.");
        foreach (var owned in _owners.Keys.Where(owned => !_marks.ContainsKey(owned)))
            Report("PDF 14.7.4b", $"An element has the content {owned.Mark} of a page that does not hold it.");
    }

    /// <summary>The way back from content to elements gives the same elements (ISO 32000-1, 14.7.4.4).</summary>
    private void CheckParents(DictionaryToken root)
    {
        var parents = new Dictionary<int, IToken>();
        Collect(_objects.Dictionary(root, "ParentTree"));
        if (_objects.Number(root, "ParentTreeNextKey") is not { } next || parents.Keys.Any(key => key >= next))
            Report("PDF 14.7.4c", "The parent tree does not say where it goes on.");
        foreach (var (number, page) in _objects.Pages)
        {
            if (_objects.Number(page, "StructParents") is { } key)
            {
                var list = parents.TryGetValue((int)key, out var found) ? _objects.Resolve(found) as ArrayToken : null;
                var owners = _owners.Where(owner => owner.Key.Page == number).ToList();
                if (list is null || list.Length != owners.Count || owners.Any(owner => owner.Key.Mark >= list.Length || PdfObjects.Reference(list.Data[owner.Key.Mark]) != owner.Value))
                    Report("PDF 14.7.4c", "The parent tree and the structure tree differ on a page.");
            }

            foreach (var reference in _objects.Array(page, "Annots")?.Data ?? [])
            {
                var owner = _annotations.GetValueOrDefault(PdfObjects.Reference(reference)).Element;
                if (owner > 0 && (_objects.Number((DictionaryToken)_objects.Resolve(reference), "StructParent") is not { } parent ||
                    PdfObjects.Reference(parents.GetValueOrDefault((int)parent, NullToken.Instance)) != owner))
                    Report("PDF 14.7.4c", "The parent tree and the structure tree differ on an annotation.");
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

    /// <summary>Notes are found by their identifiers (ISO 32000-1, 14.7.2, table 322).</summary>
    private void CheckNotes(DictionaryToken root)
    {
        var names = _objects.Array(_objects.Dictionary(root, "IDTree"), "Names")?.Data ?? [];
        foreach (var (name, number) in _notes)
        {
            if (!names.Chunk(2).Any(pair => pair.Length == 2 && PdfObjects.Text(pair[0]) == name && PdfObjects.Reference(pair[1]) == number))
                Report("PDF 14.7.2b", $"The note {name} cannot be found by its name.");
        }
    }

    private void Report(string checkpoint, string message) => _findings.Report(checkpoint, message);
}
