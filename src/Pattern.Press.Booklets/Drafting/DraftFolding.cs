using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using static Pattern.Press.Booklets.Drafting.DraftWords;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>
/// What is done to fold and glue a piece, in an order that works: what stands first, then tabs, then what is folded over
/// them, then the end that is closed for good; what is opened later stays open.
/// </summary>
internal sealed class DraftFolding
{
    private const double Flat = Nets.Fold.LaysOver;

    private readonly Assembly _assembly;
    private readonly StepWords _words;
    private readonly Part _part;
    private readonly IReadOnlyList<string> _opens;

    public DraftFolding(Assembly assembly, StepWords words, Part part)
    {
        (_assembly, _words, _part) = (assembly, words, part);
        _opens = assembly.Find(part.Piece.Id)?.Opens ?? [];
    }

    private Piece Piece => _part.Piece;

    private bool Bends => Piece.Panels.Any(panel => panel.Bend is not null);

    /// <summary>A closed body that something goes into stays open at its last face until then.</summary>
    public bool ClosesOverItem =>
        _assembly.Find(Piece.Id) is { ClaimsClosed: true } && _assembly.Find(Assembly.Item) is { Goes: GoesWhere.Inside } item && item.To == Piece.Id;

    /// <summary>Whether it is glued to itself, not only to another piece later.</summary>
    public bool IsGlued => Piece.GlueAreas.Any(area => !GoesElsewhere(Piece.Panel(area.Panel).Kind));

    /// <summary>The sentences, each a step of the work: the structure's own, or what follows from the piece.</summary>
    public IEnumerable<string> Lines() => _words.Fold.TryGetValue(Piece.Id, out var own) && own.Count > 0 ? own : Derived();

    private IEnumerable<string> Derived()
    {
        if (Piece.Folds.Count > 0)
            yield return $"Crease every score first, with the bone folder, and open it again: {Listed(Piece.Folds.GroupBy(fold => fold.Direction).Select(group => group.Key == FoldDirection.Valley ? "valley folds towards you" : "mountain folds away from you"))}.";
        if (Bends && Piece.Folds.Count == 0)
            yield return "Draw the card over the edge of the table a few times, its inside down on the edge, until it curls by itself.";
        var late = Late();
        var corners = Corners(late);
        if (corners is { } raised)
        {
            yield return $"Put glue or tape on the {raised.Side} of {The(Piece, raised.Tab)}.";
            yield return $"Fold {Listed(raised.Walls.Select(kind => The(Piece, kind)))} {raised.Way}, and bring each tab {raised.Where}. Press each corner from both sides while you count to ten.";
        }
        else
        {
            foreach (var kind in Walls(late))
                yield return Fold(kind);
        }

        foreach (var kind in Kinds().Where(GoesElsewhere))
            yield return $"{Fold(kind, withNote: false)} {(Count(Piece, kind) == 1 ? "It takes" : "They take")} glue only when the piece goes to its place.";
        foreach (var line in Gluing(corners?.Tab))
            yield return line;
        if (Bends && Piece.Folds.Count > 0)
            yield return "Bow the panels between the curved scores with your hands; do not crease them.";
        if (late.Count > 0)
            yield return Closing(late, "Close the end that stays closed:");
        if (_opens.Count > 0 && Kinds().All(_opens.Contains))
            yield return "Smooth each fold with the bone folder, and let it spring open again.";
        else if (_opens.Count > 0)
            yield return $"Leave {Listed(_opens.Where(kind => Count(Piece, kind) > 0).Select(kind => late.Count > 0 && Count(Piece, kind) >= 4 ? $"the other {Plural(kind)}" : The(Piece, kind)))} open until the end.";
    }

    private List<string> Walls(List<string> late) =>
        [.. Kinds().Where(kind => !TakesGlue(kind) && !_opens.Contains(kind) && !late.Contains(kind))];

    // Walls that are all raised alike, with tabs between them: hands raise them and close each corner as they go.
    private (string Tab, string Side, string Where, IReadOnlyList<string> Walls, string Way)? Corners(List<string> late)
    {
        const string Glued = "glued ";
        var tabs = Piece.GlueAreas.Select(area => (Piece.Panel(area.Panel).Kind, area.Side)).Distinct().Where(area => TurnIn(area.Kind) && !GoesElsewhere(area.Kind)).ToList();
        var walls = Walls(late);
        if (tabs is not [var (tab, side)] || Piece.Panels.First(panel => panel.Kind == tab).Note is not { } note || !note.StartsWith(Glued, StringComparison.Ordinal))
            return null;
        if (walls.Sum(kind => Count(Piece, kind)) < 2 || walls.Any(kind => Piece.Panels.Any(panel => panel.Kind == kind && (panel.Role == PanelRole.Gusset || panel.Note is not null))))
            return null;
        var ways = walls.Select(kind => Piece.Folds.First(fold => Piece.Panel(fold.Child).Kind == kind)).Select(fold => Way(fold.Direction, fold.Angle, false)).Distinct().ToList();
        return ways.Count == 1 ? (tab, side == SheetSide.Away ? "outside" : "inside", note[Glued.Length..], walls, ways[0]) : null;
    }

    /// <summary>How it is closed when all is inside; null when nothing opens.</summary>
    public string? Closing()
    {
        if (_opens.Count == 0)
            return null;
        var opening = $"Close the {Lower(Piece.Name)}";
        var tucked = _opens.Any(kind => TuckedBehind(kind) is not null);
        return tucked || _opens.Count < 3 ? Closing(_opens, opening + ":") : $"{opening} as the figure shows.";
    }

    private string Closing(IReadOnlyList<string> kinds, string opening)
    {
        // Flaps of one kind at both ends are folded in at one end at a time, and first.
        var first = kinds.Concat(_opens).Distinct().Where(kind => Count(Piece, kind) >= 4 && TuckedBehind(kind) is null && _opens.Count > 1).Select(kind => $"fold in both {Plural(kind)}");
        var folded = kinds.Where(kind => TuckedBehind(kind) is null && (Count(Piece, kind) < 4 || _opens.Count == 1) && Count(Piece, kind) > 0)
            .Select(kind => $"fold {(AngleOf(kind) > Flat ? "over" : "in")} {The(Piece, kind)}");
        var tucks = kinds.Where(kind => TuckedBehind(kind) is not null && Count(Piece, kind) > 0)
            .Select(kind => $"tuck {The(Piece, kind)} in behind {TuckedBehind(kind)}");
        var all = first.Concat(folded).Concat(tucks).ToList();
        var noGlue = all.Exists(words => words.StartsWith("tuck", StringComparison.Ordinal)) ? " No glue goes there." : "";
        return $"{opening} {Listed(all)}.{noGlue}";
    }

    // Tabs first; what is folded right over covers them.
    private IEnumerable<string> Gluing(string? done)
    {
        var areas = Piece.GlueAreas.Select(area => (Piece.Panel(area.Panel).Kind, area.Side)).Distinct().Where(area => area.Kind != done && !GoesElsewhere(area.Kind)).ToList();
        if (ClosesOverItem && areas.Count > 0)
            yield return "Begin at one end and work towards the other. Leave the last face and its tabs open until the item is inside.";
        foreach (var (kind, side) in areas.OrderBy(area => AngleOf(area.Kind) > Flat ? 1 : 0))
        {
            var panels = Piece.Panels.Where(panel => panel.Kind == kind).ToList();
            var (one, where) = (panels.Count == 1, side == SheetSide.Away ? "outside" : "inside");
            if (Bends && Piece.Folds.Count == 0)
                yield return $"Put glue or tape on the {where}, along the shaded strip only. Roll the card until its other end covers the strip, bring the edges level, and press while you count to ten.";
            else if (panels[0].Note is { } note)
                yield return TurnIn(kind)
                    ? $"Fold in {The(Piece, kind)}, with glue or tape on {(one ? "its" : "their")} {where}. {(one ? "It is" : "Each is")} {Said(note)}. Press {(one ? "it" : "each")} while you count to ten."
                    : $"Put glue or tape on the {where} of {The(Piece, kind)}. {(one ? "It is" : "Each is")} {Said(note)}. Press {(one ? "it" : "each")} while you count to ten.";
            else if (AngleOf(kind) > Flat)
                yield return $"Put glue or tape on the {where} of {The(Piece, kind)}, fold {(one ? "it" : "them")} right over, and press {(one ? "it" : "each")} down while you count to ten.";
            else
                yield return $"Put glue or tape on the {where} of {The(Piece, kind)}, and press {(one ? "it" : "each")} down while you count to ten.";
        }
    }

    // Tabs at the ends of walls are turned in when their neighbours stand; the tab of a ring is covered by its other end.
    private bool TurnIn(string kind) => Count(Piece, kind) > 1 && AngleOf(kind) is > 0 and < Flat;

    private string Fold(string kind, bool withNote = true)
    {
        var fold = Piece.Folds.First(fold => Piece.Panel(fold.Child).Kind == kind);
        var note = withNote ? Note(kind) : "";
        if (Piece.Folds.Any(other => Piece.Panel(other.Child).Kind == kind && Piece.Panel(other.Parent).Kind == kind && Piece.Panel(other.Child).Role == PanelRole.Gusset))
            return $"While you raise the walls on both sides of it, help each gusset to fold in half along its slanting score.{note}";
        return $"Fold {The(Piece, kind)} {Way(fold.Direction, fold.Angle, Count(Piece, kind) == 1)}.{note}";
    }

    private static string Way(FoldDirection direction, double angle, bool one) => (direction, angle) switch
    {
        (FoldDirection.Valley, > Flat) => $"right over towards you, until {(one ? "it lies" : "they lie")} flat",
        (FoldDirection.Mountain, > Flat) => $"right over away from you, until {(one ? "it lies" : "they lie")} flat",
        (FoldDirection.Valley, > 88 and < 92) => "up to a right angle",
        (FoldDirection.Mountain, > 88 and < 92) => "back to a right angle",
        (FoldDirection.Valley, < 90) => "up to a slope, as the figure shows",
        (FoldDirection.Valley, _) => "up and over, past a right angle, as the figure shows",
        _ => "back away from you, as the figure shows",
    };

    private string Note(string kind) => Piece.Panels.First(panel => panel.Kind == kind).Note is { } note
        ? $" {(Count(Piece, kind) == 1 ? "It" : "Each")} {(note.StartsWith("glued", StringComparison.Ordinal) || note.StartsWith("tucked", StringComparison.Ordinal) ? "is " : "")}{note}."
        : "";

    private static string Said(string note) => note.StartsWith("folds ", StringComparison.Ordinal) ? note[6..] : note;

    // Flaps that are tucked in and never opened, each with the panel it hangs on.
    private List<string> Late() =>
    [
        .. _assembly.Seams.Where(seam => seam.Piece == Piece.Id && seam.Hold == SeamHold.Tuck && !_opens.Contains(seam.Panel) && Count(Piece, seam.Panel) > 0)
            .SelectMany(seam => new[] { Piece.Panel(Piece.Folds.First(fold => Piece.Panel(fold.Child).Kind == seam.Panel).Parent).Kind, seam.Panel })
            .Where(kind => Kinds().Contains(kind)),
    ];

    private string? TuckedBehind(string kind) =>
        _assembly.Seams.FirstOrDefault(seam => seam.Piece == Piece.Id && seam.Panel == kind && seam.Hold == SeamHold.Tuck) is { } seam
            ? Count(Piece, seam.OtherPanel) == 1 ? $"the {seam.OtherPanel}" : $"the {Plural(seam.OtherPanel)}"
            : null;

    private bool TakesGlue(string kind) => Piece.GlueAreas.Any(area => Piece.Panel(area.Panel).Kind == kind);

    private bool GoesElsewhere(string kind) =>
        TakesGlue(kind) && _assembly.Seams.Any(seam => seam.Piece == Piece.Id && seam.Panel == kind && seam.OtherPiece != Piece.Id && seam.Hold == SeamHold.Glue);

    private double AngleOf(string kind) => Piece.Folds.Where(fold => Piece.Panel(fold.Child).Kind == kind).Select(fold => fold.Angle).FirstOrDefault();

    private IEnumerable<string> Kinds() => Piece.Folds.Select(fold => Piece.Panel(fold.Child).Kind).Distinct(StringComparer.Ordinal);
}
