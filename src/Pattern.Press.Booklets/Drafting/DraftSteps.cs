using System.Globalization;
using System.Text;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>Writes the steps of a draft from the pieces of a fit: cut, score, cut away, mats, fold and glue, put together.</summary>
internal sealed class DraftSteps(Model model, Item item)
{
    private readonly List<(string Path, string Text)> _steps = [];
    private bool _saidHowToScore;
    private bool _saidHowTabsLean;
    private string? _traced;

    // What is glued to what within each piece.
    private readonly Dictionary<string, IReadOnlyList<FoundSeam>> _glued = new(StringComparer.Ordinal);

    private IEnumerable<Part> Pieces => model.Kit.Pieces;

    /// <summary>Whether a piece can be marked out with a ruler: all its scores run square to its edges.</summary>
    public static bool IsMeasured(Piece piece) =>
        piece.Folds.All(fold => fold.Bulge == 0 && (IsNear(fold.From.X, fold.To.X) || IsNear(fold.From.Y, fold.To.Y)))
        && piece.Cuts.Where(cut => cut.IsArc).All(cut => cut.Radius < 40)
        && piece.Panels.Where(panel => panel.Role == PanelRole.Panel).All(panel => panel.Bend is null || panel.Outline.Edges.All(edge => !edge.IsArc));

    /// <summary>The files, in order.</summary>
    public IReadOnlyList<(string Path, string Text)> Write()
    {
        CutOut();
        foreach (var part in Pieces)
        {
            if (IsMeasured(part.Piece))
                MarkOut(part);
            else
                Trace(part);
        }

        Mats();
        foreach (var part in Pieces)
            Fold(part);
        Together();
        return _steps;
    }

    private static bool IsNear(double a, double b) => Math.Abs(a - b) < 1e-6;

    private void CutOut()
    {
        var text = new StringBuilder();
        var several = Pieces.Count() > 1;
        text.Append(several ? "Cut a rectangle for each piece, with square corners.\n\n" : "Cut a rectangle with square corners.\n\n");
        foreach (var part in Pieces)
        {
            var (id, name) = (part.Piece.Id, Lower(part.Piece.Name));
            text.Append(part.Quantity > 1
                ? $"- Cut {{{{{id}.quantity}}}} for the {name}s, each {{{{{id}.sheet}}}}, from the {Stock(part)}.\n"
                : $"- The {name} is {{{{{id}.sheet}}}}, cut from the {Stock(part)}.\n");
        }

        text.Append(several
            ? "\nWrite its name lightly in pencil on the side of each that will be inside. From here on that side faces you whenever you measure,\nscore or cut.\n"
            : "\nMark the side that will be inside with a light pencil cross. From here on that side faces you whenever you measure, score or\ncut.\n");
        text.Append("\nLay a sheet of printer paper on every corner. If the edges do not agree, trim now: a sheet that is out of square cannot be\nfolded straight.\n");
        Step(several ? "Cut the pieces" : "Cut the sheet", Pieces.First().Piece.Id, "sheet", 10, ["steel ruler", "craft knife", "cutting mat", "pencil"], text.ToString(),
            "Stand up to cut, keep the steel ruler between the blade and your fingers, and cut away from the hand that holds the card.");
    }

    private void MarkOut(Part part)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var (across, down) = (HasScores(piece, true), HasScores(piece, false));
        var each = part.Quantity > 1 ? $" Do the same with every {name}." : "";
        if (across || down)
        {
            var text = new StringBuilder();
            text.Append(CultureInfo.InvariantCulture, $"Lay the {name} with its inside up. ");
            if (across)
                text.Append(CultureInfo.InvariantCulture, $"With its left edge against the fence, score from top to bottom at {{{{{piece.Id}.scores_across}}}}.\n\n");
            if (down)
                text.Append(CultureInfo.InvariantCulture, $"{(across ? "Turn the sheet a quarter, so that its top edge lies against the fence, and score" : "With its top edge against the fence, score")} at {{{{{piece.Id}.scores_down}}}}.\n\n");
            text.Append($"{(piece.Waste.Count > 0 ? "Score only as far as the figure shows: a line that ends at a cut goes no further." : "")}{each}".Trim());
            text.Append("\n\n");
            if (!_saidHowToScore)
                text.Append("::: tip\nScore twice with a light hand rather than once with a heavy one. Where your board has no groove at a mark, make two small\npencil marks, one at each end of the line, and score along a ruler.\n:::\n");
            _saidHowToScore = true;
            Step($"Score the {name}", piece.Id, "scores", 8, ["scoring board or ruler", "bone folder"], text.ToString());
        }

        if (piece.Waste.Count > 0 || piece.Cuts.Any(cut => cut.IsArc))
            CutAway(part, each);
    }

    private void CutAway(Part part, string each)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var text = new StringBuilder($"Cut away what is shaded in the figure. Cut from the edge of the sheet towards the middle, and stop where the lines meet.{each}\n");
        foreach (var line in model.Words.Cut.GetValueOrDefault(piece.Id, []))
            text.Append(CultureInfo.InvariantCulture, $"\n{line}\n");
        if (piece.Panels.Any(panel => panel.Role == PanelRole.Tab) && !_saidHowTabsLean)
            text.Append("\nThe ends of the tabs lean inwards a little, so that they slip in without catching; the exact angle does not matter.\n");
        if (piece.Cuts.Any(cut => cut.IsArc && cut.Bulge != 0))
            text.Append("\nDraw the curves round a coin or copy them from the full-size template.\n");
        _saidHowTabsLean |= piece.Panels.Any(panel => panel.Role == PanelRole.Tab);
        Step($"Cut the {name} to shape", piece.Id, "waste", 10, ["scissors or craft knife", "steel ruler", "cutting mat"], text.ToString(),
            "Cut away from the hand that holds the card, and stop short of a corner rather than beyond it.");
    }

    private void Trace(Part part)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var scored = piece.Folds.Count > 0;
        var curved = piece.Folds.Any(fold => fold.Bulge != 0);
        var curves = curved || piece.Cuts.Any(cut => cut.IsArc);
        var lines = new List<string>();
        if (_traced is { } before)
        {
            lines.Add($"Fix its template on the inside of the sheet, as you did with the {before}.");
        }
        else
        {
            lines.Add("Print the full-size template at the back at 100 %, and check its square with a ruler. Where it takes several pages, join\n   them as the page before the templates shows.");
            lines.Add("Fix the template, printed side up, on the inside of the sheet with a little removable tape.");
        }

        if (scored && !curved)
            lines.Add("Prick through both ends of every line with the pin, and take the template off. Score the broken lines along a ruler, from\n   hole to hole.");
        else if (scored)
            lines.Add("Prick through both ends of every straight line with the pin.");
        if (curved)
        {
            lines.Add("Follow each curved score on the template, slowly and firmly, with the point of the bone folder: it leaves its mark in the\n   card below.");
            lines.Add("Take the template off. Score the straight lines along a ruler from hole to hole, and go over the curves once more; the\n   rim of a plate of about the right size is a good guide.");
        }

        lines.Add(scored
            ? $"{(curves ? "Tape the template on again over its pinholes, and cut along the solid lines." : "Cut the solid lines along the ruler, from hole to hole.")}"
            : "Cut along the solid lines, through the template and the card.");
        if (part.Quantity > 1)
            lines[^1] += $" Make {{{{{piece.Id}.quantity}}}} of it.";
        var how = _traced is null ? $"The lines of the {name} run {(curves ? "along curves" : "aslant")}, so it is easier traced than measured." : $"Trace the {name} in the same way.";
        var text = $"{how}\n\n{Numbered(lines)}";
        string[] tools = scored ? ["printed template", "pin", "steel ruler", "bone folder", "craft knife", "cutting mat"] : ["printed template", "craft knife", "cutting mat"];
        _traced ??= name;
        Step($"{(scored ? "Trace, score" : "Trace")} and cut the {name}", piece.Id, "flat", 20, tools, text, curves
            ? "On curves turn the card, not the knife, and keep your other hand behind the blade."
            : "Cut along a steel ruler, keep your other hand behind the blade, and stop short of a corner rather than beyond it.");
    }

    private void Mats()
    {
        var mats = model.Kit.Parts.Where(part => part.Kind == PartKind.Mat).ToList();
        if (mats.Count == 0)
            return;
        // Those that are no rectangles are cut round a template.
        var traced = mats.Count(mat => mat.Piece.Waste.Count > 0);
        var isOne = mats.Sum(mat => mat.Quantity) == 1;
        var (it, its, goes) = isOne ? ("it", "its full-size template", "it goes") : ("them", "their full-size templates", "they go");
        var text = new StringBuilder(isOne ? "The mat is a panel of paper that goes on a face. " : "The mats are the panels of paper that go on the faces. ");
        text.Append(traced == mats.Count
            ? $"Trace {it} from {its}, cut {it} out,\nand glue {it} on while everything is still flat.\n\n"
            : $"Cut {it} to the {(isOne ? "size" : "sizes")} in the table “What to cut”, and glue {it} on while\neverything is still flat.\n\n");
        foreach (var mat in mats.Where(mat => !IsLate(mat)).Concat(mats.Where(IsLate)))
        {
            var many = mat.Quantity > 1 ? $"{{{{{mat.Piece.Id}.quantity}}}} of “{mat.Piece.Name}”" : $"“{mat.Piece.Name}”";
            text.Append(CultureInfo.InvariantCulture, $"- {many}: for {mat.For}{(IsLate(mat) ? ". Keep for later: tabs are glued there first" : "")}.\n");
        }

        if (traced > 0 && traced < mats.Count)
            text.Append("\nThose that are no rectangles are traced from their full-size templates.\n");
        text.Append("\nGlue from the middle outwards and leave the same border of card on all sides.");
        if (mats.Exists(mat => mat.Side == SheetSide.Away))
        {
            text.Append(mats.Exists(mat => mat.Side == SheetSide.Facing)
                ? " Turn the card over for the mats that go on the outside."
                : $" Turn the card over first: {goes} on the outside.");
        }

        text.Append('\n');
        if (mats.Exists(IsRolled))
            text.Append("\nGo on while the glue still gives: card and mat are rolled together next, and have to take the curve as one.\n");
        var first = mats.First(mat => mat.Goes is not null).Goes!;
        foreach (var other in mats.Select(mat => mat.Goes).OfType<string>().Distinct().Where(piece => piece != first))
            text.Append(Figure(other, "mats"));
        // Two minutes for each, in quarters of an hour beyond the usual time (common practice, no source).
        var minutes = Math.Max(20, (int)Math.Ceiling(mats.Sum(mat => mat.Quantity) * 2 / 15.0) * 15);
        Step(isOne ? "Cut the mat and glue it on" : "Cut the mats and glue them on", first, "mats", minutes, ["steel ruler", "craft knife", "cutting mat", "glue"], text.ToString(),
            "Keep the steel ruler between the blade and your fingers, and cut away from the hand that holds the paper.");
    }

    // Whether it goes on a panel that goes round something; one that only bows bends by itself.
    private bool IsRolled(Part mat) => Pieces.FirstOrDefault(part => part.Piece.Id == mat.Goes)?.Piece.Panels
        .Any(panel => mat.On?.Contains(panel.Kind, StringComparer.OrdinalIgnoreCase) == true && panel.Bend is { } bend && Math.Abs(bend.Turn) > 180) == true;

    private void Fold(Part part)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var bends = piece.Panels.Any(panel => panel.Bend is not null);
        if (piece.Folds.Count == 0 && !bends)
            return;
        var lines = new DraftFolding(model.Kit.Assembly, model.Words, part).Lines().ToList();
        if (part.Quantity > 1)
            lines.Add($"Do the same with every {name}.");
        var text = new StringBuilder(Numbered(lines));
        foreach (var shown in GluingFigures(piece))
            text.Append(shown);
        var figure = piece.GlueAreas.Count > 0 ? "glue" : piece.Folds.Count > 0 ? "folds" : "flat";
        var glued = new DraftFolding(model.Kit.Assembly, model.Words, part).IsGlued;
        string[] tools = glued ? ["bone folder", "glue or double-sided tape"] : ["bone folder"];
        Step($"{(piece.Folds.Count == 0 ? "Roll" : "Fold")}{(glued ? " and glue" : "")} the {name}", piece.Id, figure, glued ? 12 : 6, tools, text.ToString());
        LateMats(part);
    }

    // What is glued first, and then each other kind of panel that is glued to the same piece; folded where none is.
    private IEnumerable<string> GluingFigures(Piece piece)
    {
        var (seams, opens) = (model.Kit.Assembly.Seams, model.Kit.Assembly.Find(piece.Id)?.Opens);
        if (SeamClosing.Of(piece, seams, [], opens) is not { } first)
        {
            yield return Figure(piece.Id, "folded");
            yield break;
        }

        yield return Figure(piece.Id, "gluing");
        var done = first.Seams.Select(seam => seam.Panel.Panel.Kind).ToHashSet(StringComparer.Ordinal);
        foreach (var kind in SeamClosing.Glued(piece, seams).Select(seam => seam.Panel.Panel.Kind).Distinct(StringComparer.Ordinal))
        {
            if (done.Add(kind) && SeamClosing.Of(piece, seams, [kind], opens) is not null)
                yield return Figure(piece.Id, "gluing", $"emphasise: {Draft.Quoted(kind)}", $"caption: {Draft.Quoted($"Then {DraftWords.The(piece, kind)}")}");
        }
    }

    // Mats on walls that tabs are glued to go over those tabs and hide them.
    private void LateMats(Part part)
    {
        var late = model.Kit.Parts.Where(mat => mat.Kind == PartKind.Mat && mat.Goes == part.Piece.Id && IsLate(mat)).ToList();
        if (late.Count == 0)
            return;
        var text = new StringBuilder("Let the glue of the tabs dry for a few minutes. Then glue in the mats that you kept; they hide the tabs.\n\n");
        foreach (var mat in late)
            text.Append(CultureInfo.InvariantCulture, $"- {(mat.Quantity > 1 ? $"{{{{{mat.Piece.Id}.quantity}}}} of “{mat.Piece.Name}”" : $"“{mat.Piece.Name}”")}: for {mat.For}.\n");
        text.Append("\nLower each in from above, its bottom edge first, and rub it down from the middle outwards. Leave the same border of card on all\nsides.\n");
        text.Append(Figure(part.Piece.Id, "folded", "mats: yes"));
        Step(late.Sum(mat => mat.Quantity) == 1 ? "Glue in the last mat" : "Glue in the last mats", part.Piece.Id, "", 6, ["glue"], text.ToString());
    }

    private bool IsLate(Part mat)
    {
        if (mat.On is not { Count: > 0 } kinds || Pieces.FirstOrDefault(part => part.Piece.Id == mat.Goes) is not { } host)
            return false;
        if (!_glued.TryGetValue(host.Piece.Id, out var seams))
            _glued[host.Piece.Id] = seams = SeamClosing.Glued(host.Piece, model.Kit.Assembly.Seams);
        return seams.Any(seam => seam.Side == mat.Side && kinds.Contains(seam.Target!.Panel.Kind, StringComparer.OrdinalIgnoreCase));
    }

    // What is glued into another piece is a step of its own, with its way there beside the words.
    private void SetIn(AssembledPart part)
    {
        var name = $"{Name(part.Part)}{(Quantity(part.Part) > 1 ? "s" : "")}";
        Step($"Set the {name} into the {Name(part.To!)}", part.Part, "insert", 10, ["glue or double-sided tape"], Numbered(Goes(part)));
    }

    private bool IsSetIn(AssembledPart part) =>
        part.Part != Assembly.Item && part.Goes == GoesWhere.Inside && part.To is not null and not Assembly.Item && Glued(part.Part) is not null;

    private void Together()
    {
        var parts = model.Kit.Assembly.Parts;
        foreach (var part in parts.Where(IsSetIn))
            SetIn(part);
        var lines = new List<string>();
        if (Pieces.Any(part => part.Piece.GlueAreas.Count > 0))
            lines.Add("Let the glue dry for a quarter of an hour.");
        if (parts.Count == 0 || parts is [{ Part: not Assembly.Item }])
            lines.Add($"Put the {{{{item.name}}}} into the {Name(parts.Count == 0 ? Pieces.First().Piece.Id : parts[0].Part)}.");
        foreach (var part in parts.Skip(parts is [{ Part: Assembly.Item }] ? 0 : 1).Where(part => !IsSetIn(part)))
            lines.AddRange(Goes(part));
        if (model.Words.Close.Count > 0)
        {
            lines.AddRange(model.Words.Close);
        }
        else
        {
            // What goes into something closed is closed before it.
            var closed = parts.Where(part => part.Goes == GoesWhere.On && part.Opens.Count > 0).Select(part => part.Part).ToHashSet(StringComparer.Ordinal);
            foreach (var part in Pieces.Where(part => !closed.Contains(part.Piece.Id)))
            {
                if (new DraftFolding(model.Kit.Assembly, model.Words, part).Closing() is { } closing)
                    lines.Add(closing);
            }
        }

        var first = Pieces.First().Piece.Id;
        var around = parts.FirstOrDefault(part => part.Part != Assembly.Item && part.Goes == GoesWhere.Around)?.Part;
        var text = Numbered(lines) + (around is null ? "" : "\n::: figure\nshow: finished\n:::\n") + (GoesInAtAnEnd(parts) ? Figure(Assembly.Item, "insert") : "");
        var isOne = model.Kit.Assembly.Find(Assembly.Item) is not { Places.Count: > 1 };
        Step(item.Name == "gift" ? "Put it together" : $"Put in the {(isOne ? item.Name : DraftWords.Plural(item.Name))}", around ?? first, around is null ? "finished" : "insert", 5, [], text);
    }

    // Where one has to turn the thing to put something in, the way in is shown.
    private static bool GoesInAtAnEnd(IReadOnlyList<AssembledPart> parts) => parts.Any(part =>
        part is { Part: Assembly.Item, Goes: GoesWhere.Inside, Leaves: not Leaving.Up } && parts.Any(host => host.Part == part.To && host.Opens.Count > 0));

    private static string Numbered(IEnumerable<string> lines) =>
        string.Concat(lines.Select((line, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}. {line}\n")));

    private IEnumerable<string> Goes(AssembledPart part)
    {
        if (model.Words.Place.TryGetValue(part.Part, out var own) && own.Count > 0)
        {
            foreach (var line in own)
                yield return line;
            yield break;
        }

        if (part.Part == Assembly.Item)
        {
            yield return Inserted(part);
            yield break;
        }

        var several = Quantity(part.Part) > 1;
        var here = $"the {Name(part.Part)}{(several ? "s" : "")}";
        var there = part.To is null or Assembly.Item ? "the {{item.name}}" : $"the {Name(part.To)}";
        switch (part.Goes)
        {
            case GoesWhere.Inside when Glued(part.Part) is { } glue:
                yield return $"Put glue or tape on the {glue.Side} of {glue.Tabs} of {here}. Set {(several ? "them" : "it")} into {there} and press {(glue.IsOne ? "the tab" : "the tabs")} against {glue.Walls}.";
                break;
            case GoesWhere.Inside:
                yield return $"Set {here} into {there}.";
                break;
            case GoesWhere.Over when model.Kit.Assembly.Find(part.To!) is { OpensWholly: true, ClaimsClosed: false }:
                yield return $"Raise the walls of {there}, hold them together with one hand, and put {here} over them. It should slide down without force.";
                break;
            case GoesWhere.Over:
                yield return $"Put {here} over {there}. It should slide down without force.";
                break;
            case GoesWhere.Around:
                yield return $"Slide {here} around {there}.";
                break;
            case GoesWhere.Beside:
                if (model.Kit.Assembly.Find(Assembly.Item) is null)
                    yield return $"Lay the {{{{item.name}}}} in {here} and close it.";
                yield return $"Slide {here} into {there}.";
                break;
            case GoesWhere.On:
                yield return $"Lay {here} on {there}.";
                break;
        }
    }

    private string Inserted(AssembledPart part)
    {
        var there = part.To is null ? "its place" : $"the {Name(part.To)}";
        if (part.Places.Count > 1)
            return $"Put {DraftWords.Before(item.Name)}{{{{item.name}}}} into each of the {DraftWords.Number(part.Places.Count)} places in {there}.";
        if (part.To is { } to && new DraftFolding(model.Kit.Assembly, model.Words, Pieces.First(piece => piece.Piece.Id == to)).ClosesOverItem)
            return $"Put the {{{{item.name}}}} into {there}, then glue the last face down.";
        return part.Goes == GoesWhere.On ? $"Lay the {{{{item.name}}}} on {there}." : $"Put the {{{{item.name}}}} into {there}.";
    }

    // The tabs by which a piece is glued to another one, and to which of its panels.
    private (string Tabs, bool IsOne, string Side, string Walls)? Glued(string id)
    {
        var seams = model.Kit.Assembly.Seams.Where(seam => seam.Piece == id && seam.OtherPiece != id && seam.Hold == SeamHold.Glue).ToList();
        if (seams.Count == 0)
            return null;
        var (piece, other) = (Pieces.First(part => part.Piece.Id == id).Piece, Pieces.First(part => part.Piece.Id == seams[0].OtherPiece).Piece);
        var side = piece.GlueAreas.First(area => piece.Panel(area.Panel).Kind == seams[0].Panel).Side == SheetSide.Away ? "outside" : "inside";
        var walls = seams.Select(seam => DraftWords.The(other, seam.OtherPanel)).Distinct();
        return (
            DraftWords.Listed(seams.Select(seam => DraftWords.The(piece, seam.Panel))),
            seams.Sum(seam => DraftWords.Count(piece, seam.Panel)) == 1,
            side,
            $"{DraftWords.Listed(walls)} of the {Lower(other.Name)}");
    }

    private static bool HasScores(Piece piece, bool across) =>
        piece.Folds.Any(fold => fold.Bulge == 0 && (across ? IsNear(fold.From.X, fold.To.X) : IsNear(fold.From.Y, fold.To.Y)));

    private string Name(string id) => Lower(Pieces.First(part => part.Piece.Id == id).Piece.Name);

    private int Quantity(string id) => id == Assembly.Item ? 1 : Pieces.First(part => part.Piece.Id == id).Quantity;

    private static string Stock(Part part) => $"{{{{{part.Stock}.name}}}}";

    private static string Lower(string name) => DraftWords.Lower(name);

    private static string Figure(string of, string show, params string[] more) =>
        $"\n::: figure\nof: {of}\nshow: {show}\n{string.Concat(more.Select(line => line + "\n"))}:::\n";

    private void Step(string title, string piece, string figure, int minutes, string[] tools, string text, string? caution = null)
    {
        var number = (_steps.Count + 1).ToString("00", CultureInfo.InvariantCulture);
        var slug = new string([.. title.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]).Replace("--", "-", StringComparison.Ordinal).Trim('-');
        var front = new StringBuilder("---\n");
        front.Append(CultureInfo.InvariantCulture, $"title: {Draft.Quoted(title)}\npiece: {piece}\n{(figure.Length > 0 ? $"figure: {figure}\n" : "")}time: {minutes} min\n");
        if (tools.Length > 0)
            front.Append(CultureInfo.InvariantCulture, $"tools: [{string.Join(", ", tools.Select(Draft.Quoted))}]\n");
        if (caution is not null)
            front.Append(CultureInfo.InvariantCulture, $"caution: {Draft.Quoted(caution)}\n");
        _steps.Add(($"steps/{number}-{slug}.md", $"{front}---\n\n{text}"));
    }
}
