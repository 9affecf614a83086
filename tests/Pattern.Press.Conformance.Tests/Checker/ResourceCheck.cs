using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks what the content of pages is made of: operators, resources, colours, blending, and how large pages are.</summary>
internal static partial class ResourceCheck
{
    // ISO 32000-1, annex A.
    private static readonly HashSet<string> _operators = new(
        ("b B b* B* BDC BI BMC BT BX c cm CS cs d d0 d1 Do DP EI EMC ET EX f F f* G g gs h i ID j J K k l m M MP n q Q re RG rg ri s S SC sc " +
        "SCN scn sh T* Tc Td TD Tf Tj TJ TL Tm Tr Ts Tw Tz v w W W* y ' \"").Split(' '),
        StringComparer.Ordinal);

    // Words that stand in content without being operators.
    private static readonly HashSet<string> _values = new(["true", "false", "null"], StringComparer.Ordinal);

    private static readonly HashSet<string> _inks = new(["k", "K"], StringComparer.Ordinal);

    public static void Run(PdfObjects objects, Findings findings)
    {
        var shown = new Dictionary<long, int>();
        for (var i = 0; i < objects.Pages.Count; i++)
            CheckPage(objects, i, shown, findings);
        foreach (var (number, times) in shown)
        {
            if (times > 1 && objects.Object(number) is StreamToken form && objects.Name(form.StreamDictionary, "Subtype") == "Form" &&
                Encoding.Latin1.GetString(objects.Data(form)).Contains("/MCID", StringComparison.Ordinal))
                findings.Report("30-002", $"Object {number} holds tagged content and is shown {times} times.");
        }
    }

    private static void CheckPage(PdfObjects objects, int index, Dictionary<long, int> shown, Findings findings)
    {
        var page = objects.Pages[index].Page;
        var where = $"page {index + 1}";
        var content = Encoding.Latin1.GetString(objects.Content(index));
        foreach (var word in SyntaxCheck.Run(content, where, findings).Where(word => !_values.Contains(word)).Distinct())
        {
            if (!_operators.Contains(word))
                findings.Report("A 6.2.2a", $"There is an operator {word} on {where}.");
            if (_inks.Contains(word))
                findings.Report("A 6.2.4", $"There are colours of a printer on {where}.");
        }

        var resources = objects.Dictionary(page, "Resources");
        CheckNames(FontUse(), "Font");
        CheckNames(StateUse(), "ExtGState");
        foreach (var number in CheckNames(ObjectUse(), "XObject"))
            shown[number] = shown.GetValueOrDefault(number) + 1;
        CheckTransparency(objects, page, resources, where, findings);
        CheckBoxes(objects, page, where, findings);

        List<long> CheckNames(Regex use, string kind)
        {
            var found = new List<long>();
            var there = objects.Dictionary(resources, kind);
            foreach (var name in use.Matches(content).Select(match => match.Groups[1].Value))
            {
                if (there is null || PdfObjects.Reference(there, name) is not (> 0 and var number))
                    findings.Report("A 6.2.2b", $"The content of {where} uses {name}, which the page does not have.");
                else
                    found.Add(number);
            }

            return found;
        }
    }

    /// <summary>ISO 19005-2, 6.2.10: where something is see-through, the page says in which colours it is blended.</summary>
    private static void CheckTransparency(PdfObjects objects, DictionaryToken page, DictionaryToken? resources, string where, Findings findings)
    {
        var pictures = Streams("XObject").Any(picture => picture.ContainsKey(NameToken.Create("SMask")));
        var states = Values("ExtGState").OfType<DictionaryToken>().Any(state =>
            objects.Number(state, "ca") is < 1 || objects.Number(state, "CA") is < 1 || objects.Name(state, "BM") is not (null or "Normal"));
        if ((pictures || states) && objects.Name(objects.Dictionary(page, "Group"), "CS") is null)
            findings.Report("A 6.2.10b", $"Something on {where} is see-through, and nothing says how it is blended.");

        IEnumerable<IToken> Values(string kind) => objects.Dictionary(resources, kind)?.Data.Values.Select(objects.Resolve) ?? [];

        IEnumerable<DictionaryToken> Streams(string kind) => Values(kind).OfType<StreamToken>().Select(stream => stream.StreamDictionary);
    }

    private static void CheckBoxes(PdfObjects objects, DictionaryToken page, string where, Findings findings)
    {
        var media = objects.Rectangle(page, "MediaBox")!.Value;

        // ISO 19005-2, 6.1.13: from 3 to 14,400 units.
        if (Math.Min(media.Right - media.Left, media.Top - media.Bottom) < 3 || Math.Max(media.Right - media.Left, media.Top - media.Bottom) > 14_400)
            findings.Report("A 6.1.13e", $"The size of {where} is out of bounds.");
        if (objects.Rectangle(page, "TrimBox") is not { } trim || !trim.IsWithin(media))
            findings.Report("PDF 14.11.2", $"There is no trimmed size inside {where}.");
    }

    [GeneratedRegex(@"/(\S+) [-\d.]+ Tf\b")]
    private static partial Regex FontUse();

    [GeneratedRegex(@"/(\S+) gs\b")]
    private static partial Regex StateUse();

    [GeneratedRegex(@"/(\S+) Do\b")]
    private static partial Regex ObjectUse();
}
