using System.Globalization;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>
/// Reads a piece that is unfolded from its faces: a first panel, and others that hang on its sides and on each other's.
/// </summary>
internal sealed class PanelTreeBuilder : IPieceBuilder
{
    private const int MostPanels = 60;
    private static readonly string[] What = ["panel", "tab", "gusset"];
    private static readonly string[] WhichWords = ["all", "first", "last", "all but first", "all but last"];

    public string Name => "panel tree";

    public IPieceForm? Read(YamlMap piece, FileReading reading)
    {
        if (piece.Need("panels", "List the panels, the one that lies still first: panels: {floor: {panel: floor, shape: rectangle, width: length, height: width}}.") is null)
            return null;
        var before = reading.Problems.All.Count;
        var panels = new List<TreePanelForm>();
        var known = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (id, place, value) in reading.Section(piece, "panels", MostPanels))
        {
            if (reading.NameIsSound(id, place) && value.AsMap() is { } entry && Panel(id, place, entry, known, reading) is { } panel)
                panels.Add(panel);
            known.Add(id);
        }

        foreach (var panel in panels)
            SidesAreThere(panel, panels, reading);
        var joins = new List<(string, string, FoldForm)>();
        foreach (var item in piece.Find("joins")?.AsList() ?? [])
        {
            if (item.AsMap() is { } entry && Join(entry, panels, reading) is { } join)
                joins.Add(join);
        }

        return reading.Problems.All.Count == before ? new PanelTreeForm(panels, joins) : null;
    }

    private static TreePanelForm? Panel(string id, Place place, YamlMap entry, HashSet<string> before, FileReading reading)
    {
        var given = What.Select(word => (word, item: entry.Find(word))).Where(pair => pair.item is not null).ToList();
        if (given.Count != 1)
        {
            reading.Problems.Error(place, given.Count == 0 ? $"“{id}” does not say what it is." : $"“{id}” cannot be a {given[0].word} and a {given[1].word}.", "Write one of panel, tab or gusset, such as panel: wall.");
            entry.RefuseSlips();
            return null;
        }

        var (what, words) = (given[0].word, given[0].item!.AsText() ?? "");
        var on = entry.Find("on");
        if (on is null && before.Count > 0)
            reading.Problems.Error(place, $"What “{id}” hangs from is missing; only the first panel lies by itself.", $"Write on: and one of {string.Join(", ", before)}.");
        else if (on is not null && !before.Contains(on.Scalar ?? ""))
            reading.Problems.Error(on.Place, $"“{on.Scalar}” is not among the panels above.", before.Count == 0 ? "The first panel lies by itself; take “on” out." : Spelling.Advice(on.Scalar ?? "", [.. before]));
        var times = entry.Find("times") is { } count ? reading.Formula(count, Kind.Number) : null;
        var next = entry.Find("next");
        if ((times is null) != (next is null))
            reading.Problems.Error(place, "A run of panels needs both how many there are and where the next one hangs.", "Write times: and next:, such as times: 6, next: right.");
        var fold = CellReader.Fold(entry.Find("fold"), reading);
        if (fold is null && (on is not null || times is not null))
            reading.Problems.Error(place, $"“{id}” has no fold.", "Write fold: and which way it folds and how far, such as fold: valley 90.");
        if (OutlineForm.Read(entry, reading) is not { } outline)
        {
            entry.RefuseSlips();
            return null;
        }

        var panel = new TreePanelForm
        {
            Id = id,
            Place = place,
            Kind = what == "panel" ? words : entry.Find("called")?.AsText() ?? (what == "tab" ? "glue tab" : what),
            Role = what switch { "tab" => PanelRole.Tab, "gusset" => PanelRole.Gusset, _ => PanelRole.Panel },
            Note = what == "panel" ? null : words,
            Fold = fold,
            Outline = outline,
            Shape = PanelShapeForm.Read(entry, reading),
            Glue = CellReader.Glue(entry),
            GlueStrip = entry.Find("glue_strip") is { } strip ? reading.Formula(strip, Kind.Length) : null,
            Bends = entry.Find("bends") is { } bends ? reading.Formula(bends, Kind.Number) : null,
            On = on?.Scalar,
            OnSides = on is null ? [] : entry.Need("edge", "Say on which side it hangs: edge: right, a number, or all.")?.AsList() ?? [],
            Which = (Which)Math.Max(0, Array.IndexOf(WhichWords, entry.Find("which")?.AsChoice(WhichWords))),
            By = entry.Find("by"),
            Times = times,
            Next = next,
            When = entry.Find("when") is { } when ? reading.Formula(when, Kind.YesNo) : null,
        };
        entry.RefuseTheRest();
        return panel;
    }

    // A side that is named has to be one; how many a polygon has is known only when it is fitted.
    private static void SidesAreThere(TreePanelForm panel, List<TreePanelForm> panels, FileReading reading)
    {
        if (panels.Find(other => other.Id == panel.On) is { } parent && panel.OnSides is not [{ Scalar: "all" or "first" or "last" or "all but first" or "all but last" }])
        {
            foreach (var side in panel.OnSides)
                SideIsThere(side, parent, ["all", "first", "last", "all but first", "all but last"], reading);
        }

        foreach (var side in new[] { panel.Next, panel.By }.OfType<YamlItem>())
            SideIsThere(side, panel, [], reading);
    }

    private static void SideIsThere(YamlItem side, TreePanelForm panel, string[] also, FileReading reading)
    {
        var word = side.Scalar ?? "";
        var isNumber = int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number);
        if (panel.Outline.Sides is { } sides)
        {
            if (!sides.Contains(word))
                reading.Problems.Error(side.Place, $"“{word}” is not a side of “{panel.Id}”.", Spelling.Advice(word, [.. sides, .. also]));
        }
        else if (!isNumber || number < 1 || number > (panel.Outline.Count ?? int.MaxValue))
        {
            reading.Problems.Error(
                side.Place,
                $"“{word}” is not a side of “{panel.Id}”.",
                $"Its sides are numbered {(panel.Outline.Count is { } count ? string.Create(CultureInfo.InvariantCulture, $"from 1 to {count}") : "from 1 on")}, clockwise.{(also.Length > 0 ? $" Also known here: {string.Join(", ", also)}." : "")}");
        }
    }

    private static (string, string, FoldForm)? Join(YamlMap entry, List<TreePanelForm> panels, FileReading reading)
    {
        var kinds = panels.Select(panel => panel.Kind).Distinct(StringComparer.Ordinal).ToList();
        var of = entry.Need("of", "Name two kinds of panels: of: [gusset, gable].");
        var fold = CellReader.Fold(entry.Need("fold", "Write which way it folds and how far, such as fold: mountain 120."), reading);
        entry.RefuseTheRest();
        if (of is null || fold is null)
            return null;
        var names = of.AsList().Select(item => item.AsChoice(kinds)).ToList();
        if (names.Count == 2)
            return names[0] is { } one && names[1] is { } other ? (one, other, fold) : null;
        reading.Problems.Error(of.Place, "Two kinds of panels are joined.", "Write of: [gusset, gable].");
        return null;
    }
}
