using Pattern.Press.Nets;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Reads how the pieces of a structure come together: the sections <c>assembly</c> and <c>seams</c>.</summary>
internal static class AssemblyReader
{
    private const int MostEntries = 50;

    private static readonly string[] Stances = ["as drawn", "upside down", "on edge"];
    private static readonly string[] Ways = ["inside", "over", "around", "on", "beside"];
    private static readonly string[] Directions = ["up", "to the right", "to the left", "to the front", "to the back"];
    private static readonly string[] Claims = ["closed", "flat-foldable"];
    private static readonly string[] Holds = ["glue", "tuck"];

    /// <summary>Reads both sections; null when the file has neither, or after noting problems.</summary>
    /// <param name="map">The file.</param>
    /// <param name="ids">The ids of all its pieces, sound or not.</param>
    /// <param name="pieces">The sound ones.</param>
    /// <param name="reading">What the file gathers.</param>
    public static AssemblyDefinition? Read(YamlMap map, IReadOnlyList<string> ids, IReadOnlyList<PieceDefinition> pieces, FileReading reading)
    {
        var written = map.Find("assembly");
        var entries = written is null ? [] : reading.Section(map, "assembly", MostEntries);
        var parts = new List<AssembledDefinition>();
        foreach (var (id, place, value) in entries)
        {
            if (id != Assembly.Item && !ids.Contains(id))
                reading.Problems.Error(place, $"“{id}” is not one of the pieces.", Spelling.Advice(id, [.. ids, Assembly.Item]));
            else if (value.AsMap() is { } entry && Part(id, entry, parts, pieces, reading) is { } part)
                parts.Add(part);
        }

        if (written is not null)
            AllAreThere(written, [.. entries.Select(entry => entry.Key)], ids, reading);
        var seams = Seams(map, ids, pieces, reading);
        return written is null && seams.Count == 0 ? null : new AssemblyDefinition(parts, seams);
    }

    private static void AllAreThere(YamlItem written, List<string> named, IReadOnlyList<string> ids, FileReading reading)
    {
        foreach (var id in ids.Where(id => !named.Contains(id)))
            reading.Problems.Error(written.Place, $"The piece “{id}” is nowhere in the assembly.", $"Say where it goes: {id}: {{goes: inside {ids[0]}}}.");
    }

    private static AssembledDefinition? Part(
        string id, YamlMap entry, List<AssembledDefinition> before, IReadOnlyList<PieceDefinition> pieces, FileReading reading)
    {
        var kinds = KindsOf(id, pieces);
        var part = new AssembledPart(id);
        var goes = entry.Find("goes");
        if (goes is not null)
            part = Goes(part, goes, before, reading);
        else if (before.Count > 0)
            reading.Problems.Error(entry.Place, $"Where “{id}” goes is missing; only the first piece stands by itself.", $"Write goes: inside {before[0].Part.Part}, or over, around or on it.");
        if (goes is not null && before.Count == 0)
            reading.Problems.Error(goes.Place, "The first piece stands by itself; it goes nowhere.", "Take “goes” out, or put the piece it goes to first.");
        if (entry.Find("then") is { } then && then.AsChoice(["inside"]) is not null)
        {
            if (part.Goes == GoesWhere.Beside && id != Assembly.Item)
                part = part with { IsPutIn = true };
            else
                reading.Problems.Error(then.Place, "Only a piece that goes beside another one is put inside that in the end.", "Write goes: inside alone, or goes: beside and a piece.");
        }

        part = Stands(part, entry.Find("stands"), kinds, reading);
        part = part with
        {
            Leaves = entry.Find("leaves")?.AsChoice(Directions) is { } way ? (Leaving)Array.IndexOf(Directions, way) : default,
        };
        if (id != Assembly.Item)
            part = Opens(Claim(part, entry.Find("claims")), entry.Find("opens"), kinds);
        var turned = entry.Find("turned") is { } turn ? reading.Formula(turn, Kind.Number) : null;
        var lies = id == Assembly.Item && entry.Find("on_its_side") is { } when ? reading.Formula(when, Kind.YesNo) : null;
        var at = entry.Find("at")?.AsMap() is { } shift ? Shift(shift, reading) : new ShiftDefinition(null, null, null);
        var repeats = new List<RepeatDefinition>();
        foreach (var item in entry.Find("repeat")?.AsList() ?? [])
        {
            if (item.AsMap() is { } row && Repeat(row, reading) is { } repeat)
                repeats.Add(repeat);
        }

        entry.RefuseTheRest();
        return new AssembledDefinition(part, turned, lies, at, repeats);
    }

    // “inside base”: a way, and the piece it leads to, which has to come first.
    private static AssembledPart Goes(AssembledPart part, YamlItem written, List<AssembledDefinition> before, FileReading reading)
    {
        var words = (written.Scalar ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var way = words.Length == 2 ? Array.IndexOf(Ways, words[0]) : -1;
        if (way < 0)
        {
            reading.Problems.Error(written.Place, $"“{written.Scalar}” does not say where it goes.", $"Write one of {string.Join(", ", Ways)} and a piece, such as inside {(before.Count > 0 ? before[0].Part.Part : "base")}.");
            return part;
        }

        if (!before.Any(one => one.Part.Part == words[1]))
        {
            reading.Problems.Error(written.Place, $"“{words[1]}” is not among the parts above.", before.Count == 0 ? "" : Spelling.Advice(words[1], [.. before.Select(one => one.Part.Part)]));
            return part;
        }

        // A lid is put on upside down: its inside looks down.
        var goes = (GoesWhere)(way + 1);
        return part with { Goes = goes, To = words[1], Stands = goes == GoesWhere.Over ? Stance.UpsideDown : Stance.AsDrawn };
    }

    private static AssembledPart Stands(AssembledPart part, YamlItem? written, IReadOnlyCollection<string>? kinds, FileReading reading)
    {
        if (written?.Scalar is not { } text)
            return part;
        if (Array.IndexOf(Stances, text) is >= 0 and var stance)
            return part with { Stands = (Stance)stance };

        // What the panels of a broken piece are called is not known; it is told of once.
        if (text.StartsWith("on ", StringComparison.Ordinal) && (kinds is null || kinds.Contains(text[3..])))
            return part with { Stands = Stance.OnPanel, StandsOn = text[3..] };
        reading.Problems.Error(written.Place, $"“{text}” does not say how it stands.", $"Write one of {string.Join(", ", Stances)}, or on and one of its panels{(kinds is { Count: > 0 } ? $", such as on {kinds.First()}" : "")}.");
        return part;
    }

    private static AssembledPart Claim(AssembledPart part, YamlItem? written)
    {
        foreach (var claim in written?.AsList() ?? [])
        {
            part = claim.AsChoice(Claims) switch
            {
                "closed" => part with { ClaimsClosed = true },
                "flat-foldable" => part with { ClaimsFlatFoldable = true },
                _ => part,
            };
        }

        return part;
    }

    private static AssembledPart Opens(AssembledPart part, YamlItem? written, IReadOnlyCollection<string>? kinds)
    {
        if (written is null || kinds is null)
            return part;
        if (written.Scalar == "all")
            return part with { OpensWholly = true };
        return part with { Opens = [.. written.AsList().Select(one => one.AsChoice(kinds)).OfType<string>()] };
    }

    private static ShiftDefinition Shift(YamlMap map, FileReading reading)
    {
        var shift = new ShiftDefinition(Length(map, "right", reading), Length(map, "back", reading), Length(map, "up", reading));
        map.RefuseTheRest();
        return shift;
    }

    private static RepeatDefinition? Repeat(YamlMap map, FileReading reading)
    {
        var times = map.Need("times", "Say how many there are: times: 3.") is { } item ? reading.Formula(item, Kind.Number) : null;
        var step = Shift(map, reading);
        return times is null ? null : new RepeatDefinition(times, step);
    }

    private static Formula? Length(YamlMap map, string key, FileReading reading) =>
        map.Find(key) is { } item ? reading.Formula(item, Kind.Length) : null;

    private static List<Seam> Seams(YamlMap map, IReadOnlyList<string> ids, IReadOnlyList<PieceDefinition> pieces, FileReading reading)
    {
        var seams = new List<Seam>();
        foreach (var (id, place, value) in reading.Section(map, "seams", MostEntries))
        {
            if (!ids.Contains(id))
            {
                reading.Problems.Error(place, $"“{id}” is not one of the pieces.", Spelling.Advice(id, ids));
                continue;
            }

            foreach (var (panel, panelPlace, written) in value.AsMap()?.Entries ?? [])
            {
                var kinds = KindsOf(id, pieces);
                if (kinds is not null && !kinds.Contains(panel))
                    reading.Problems.Error(panelPlace, $"“{id}” has no “{panel}”.", Spelling.Advice(panel, kinds));
                else if (written.AsMap() is { } entry && Seam(id, panel, entry, ids, pieces, reading) is { } seam)
                    seams.Add(seam);
            }
        }

        return seams;
    }

    private static Seam? Seam(string id, string panel, YamlMap entry, IReadOnlyList<string> ids, IReadOnlyList<PieceDefinition> pieces, FileReading reading)
    {
        var (onto, meets) = (entry.Find("onto"), entry.Find("meets"));
        var other = entry.Find("of")?.AsChoice([.. ids]) ?? id;
        var side = entry.Find("side")?.AsChoice(["inside", "outside"]);
        var by = entry.Find("by")?.AsChoice(Holds);
        entry.RefuseTheRest();
        if ((onto is null) == (meets is null))
        {
            reading.Problems.Error(entry.Place, $"What “{panel}” comes to is not clear.", "Write either onto: and the panel it lies on, or meets: and the panel its edge lies against.");
            return null;
        }

        // A broken piece is told of once.
        if (KindsOf(other, pieces) is not { } kinds || (onto ?? meets)!.AsChoice(kinds) is not { } target)
            return null;
        var hold = meets is not null ? SeamHold.Meet : by == "tuck" ? SeamHold.Tuck : SeamHold.Glue;
        return new Seam(id, panel, other, target, side switch
        {
            "inside" => SheetSide.Facing,
            "outside" => SheetSide.Away,
            _ => null,
        }, hold);
    }

    private static IReadOnlyCollection<string>? KindsOf(string id, IReadOnlyList<PieceDefinition> pieces) =>
        pieces.FirstOrDefault(piece => piece.Id == id)?.Form.PanelKinds;
}
