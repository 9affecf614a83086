using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Goes through every object of the file, whether anything leads to it or not, and looks for what must not be there.</summary>
internal static class ObjectCheck
{
    // ISO 32000-1, 12.6.4; the press uses links to addresses and places alone.
    private static readonly HashSet<string> _actions = new(
        ["GoToR", "GoToE", "Launch", "Thread", "Sound", "Movie", "Hide", "SubmitForm", "ResetForm", "ImportData", "JavaScript", "SetOCGState", "Rendition", "Trans", "GoTo3DView"],
        StringComparer.Ordinal);

    // ISO 32000-1, tables 136 and 137, and 8.6.5.8.
    private static readonly HashSet<string> _blendModes = new(
        ["Normal", "Compatible", "Multiply", "Screen", "Overlay", "Darken", "Lighten", "ColorDodge", "ColorBurn", "HardLight", "SoftLight", "Difference", "Exclusion", "Hue", "Saturation", "Color", "Luminosity"],
        StringComparer.Ordinal);

    private static readonly HashSet<string> _intents = new(
        ["RelativeColorimetric", "AbsoluteColorimetric", "Perceptual", "Saturation"],
        StringComparer.Ordinal);

    public static void Run(PdfDocument document, PdfObjects objects, Findings findings)
    {
        foreach (var number in document.Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(key => key.ObjectNumber).Order())
            Walk(objects, objects.Object(number), $"object {number}", findings);
        CheckOptionalContent(objects, findings);
    }

    private static void Walk(PdfObjects objects, IToken token, string where, Findings findings)
    {
        switch (token)
        {
            case StreamToken stream:
                CheckStream(objects, stream.StreamDictionary, where, findings);
                Walk(objects, stream.StreamDictionary, where, findings);
                break;
            case DictionaryToken dictionary:
                CheckDictionary(objects, dictionary, where, findings);
                foreach (var value in dictionary.Data.Values)
                    Walk(objects, value, where, findings);
                break;
            case ArrayToken array:
                foreach (var value in array.Data)
                    Walk(objects, value, where, findings);
                break;
            default:
                break;
        }
    }

    private static void CheckDictionary(PdfObjects objects, DictionaryToken entries, string where, Findings findings)
    {
        if (objects.Name(entries, "S") is { } action && _actions.Contains(action))
            findings.Report("A 6.5.1", $"There is an action {action} in {where}.");
        if (Has("JS") || Has("JavaScript"))
            findings.Report("A 6.5.1", $"There is a script in {where}.");
        if (Has("AA"))
            findings.Report("A 6.5.2", $"Something happens by itself because of {where}.");
        if (Has("AcroForm") || Has("XFA"))
            findings.Report("A 6.4", $"There is a form in {where}.");
        if (Has("XFA"))
            findings.Report("25-001", $"The form in {where} is made while it is read.");
        if (Has("EmbeddedFiles") || Has("EF"))
            findings.Report("A 6.8", $"There are files in {where}.");
        if (Has("EF") && !(Has("F") && Has("UF")))
            findings.Report("21-001", $"The file in {where} lacks a name.");
        if (Has("AlternatePresentations") || Has("PresSteps"))
            findings.Report("A 6.10", $"There is another presentation in {where}.");
        if (Has("Requirements"))
            findings.Report("A 6.11", $"There are demands on readers in {where}.");
        if (objects.Dictionary(entries, "Perms") is { } permissions && permissions.Data.Keys.Any(key => key is not ("UR3" or "DocMDP")))
            findings.Report("A 6.1.12", $"There are permissions of an unknown kind in {where}.");
        if (Has("TR") || Has("HTP") || (objects.Name(entries, "TR2") is { } transfer && transfer != "Default"))
            findings.Report("A 6.2.5", $"A graphics state in {where} changes how the printer prints.");
        if (objects.Name(entries, "BM") is { } blend && !_blendModes.Contains(blend))
            findings.Report("A 6.2.10a", $"The way of blending {blend} in {where} is unknown.");
        if ((objects.Name(entries, "RI") ?? (objects.Name(entries, "Subtype") == "Image" ? objects.Name(entries, "Intent") : null)) is { } intent && !_intents.Contains(intent))
            findings.Report("A 6.2.6", $"The rendering intent {intent} in {where} is unknown.");

        bool Has(string key) => entries.ContainsKey(NameToken.Create(key));
    }

    private static void CheckStream(PdfObjects objects, DictionaryToken entries, string where, Findings findings)
    {
        var subtype = objects.Name(entries, "Subtype");
        if (subtype == "PS" || objects.Name(entries, "Subtype2") == "PS" || entries.ContainsKey(NameToken.Create("PS")) || entries.ContainsKey(NameToken.Create("OPI")))
            findings.Report("A 6.2.9", $"There is a program for the printer in {where}.");
        if (subtype == "Form" && entries.ContainsKey(NameToken.Create("Ref")))
            findings.Report("30-001", $"There is a page of another file in {where}.");
        if (subtype != "Image")
            return;
        if (objects.Get<BooleanToken>(entries, "Interpolate") is { Data: true })
            findings.Report("A 6.2.8a", $"The picture in {where} is to be smoothed.");
        if (entries.ContainsKey(NameToken.Create("Alternates")))
            findings.Report("A 6.2.8b", $"The picture in {where} has others in its stead.");
        if (objects.Number(entries, "BitsPerComponent") is not (1 or 2 or 4 or 8 or 16))
            findings.Report("A 6.2.8c", $"The samples of the picture in {where} are of an unusual size.");
        if (objects.Name(entries, "ColorSpace") == "DeviceCMYK")
            findings.Report("A 6.2.4", $"The picture in {where} has colours of a printer.");
    }

    private static void CheckOptionalContent(PdfObjects objects, Findings findings)
    {
        if (objects.Dictionary(objects.Catalog, "OCProperties") is not { } properties)
            return;
        var first = objects.Dictionary(properties, "D");
        if (string.IsNullOrEmpty(objects.Text(first, "Name")))
            findings.Report("20-001", "The configuration of optional content has no name.");
        foreach (var other in (objects.Array(properties, "Configs")?.Data ?? []).Select(objects.Resolve).OfType<DictionaryToken>())
        {
            if (string.IsNullOrEmpty(objects.Text(other, "Name")))
                findings.Report("20-002", "A further configuration of optional content has no name.");
            CheckAutomatic(other);
        }

        CheckAutomatic(first);

        void CheckAutomatic(DictionaryToken? configuration)
        {
            if (configuration?.ContainsKey(NameToken.Create("AS")) == true)
                findings.Report("20-003", "Optional content changes by itself.");
        }
    }
}
