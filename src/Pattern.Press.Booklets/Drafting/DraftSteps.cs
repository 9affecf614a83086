using System.Globalization;
using System.Text;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>Writes the steps of a draft from the pieces of a fit: cut, score, cut away, mats, fold and glue, put together.</summary>
internal sealed class DraftSteps(Model model, Item item)
{
    private readonly List<(string Path, string Text)> _steps = [];

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
            text.Append(CultureInfo.InvariantCulture, $"Score only as far as the figure shows: a line that ends at a cut goes no further.{each}\n\n");
            text.Append("::: tip\nScore twice with a light hand rather than once with a heavy one. Where your board has no groove at a mark, make two small\npencil marks, one at each end of the line, and score along a ruler.\n:::\n");
            Step($"Score the {name}", piece.Id, "scores", 8, ["scoring board or ruler", "bone folder"], text.ToString());
        }

        if (piece.Waste.Count > 0 || piece.Cuts.Any(cut => cut.IsArc))
            CutAway(part, each);
    }

    private void CutAway(Part part, string each)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var text = new StringBuilder($"Cut away what is shaded in the figure. Cut from the edge of the sheet towards the middle, and stop where the lines meet.{each}\n");
        if (piece.Panels.Any(panel => panel.Role == PanelRole.Tab))
            text.Append("\nThe ends of the tabs lean inwards a little, so that they slip in without catching; the exact angle does not matter.\n");
        if (piece.Cuts.Any(cut => cut.IsArc && cut.Bulge != 0))
            text.Append("\nDraw the curves round a coin or copy them from the full-size template.\n");
        Step($"Cut the {name} to shape", piece.Id, "waste", 10, ["scissors or craft knife", "steel ruler", "cutting mat"], text.ToString(),
            "Cut away from the hand that holds the card, and stop short of a corner rather than beyond it.");
    }

    private void Trace(Part part)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var text = new StringBuilder($"The lines of the {name} run aslant or along curves, so it is easier traced than measured.\n\n");
        text.Append("1. Print the full-size template at the back at 100 %, and check its square with a ruler. Where it takes several pages, join\n   them as the page before the templates shows.\n");
        text.Append("2. Fix the template on the inside of the sheet with a little removable tape.\n");
        if (piece.Folds.Count > 0)
            text.Append("3. Prick through both ends of every score with the pin, take the template off, and score from hole to hole.\n");
        if (piece.Folds.Any(fold => fold.Bulge != 0))
            text.Append("4. The curved scores are scored through the template, slowly, with the point of the bone folder; a plate of the right size is\n   a good guide.\n");
        var last = piece.Folds.Count == 0 ? 3 : piece.Folds.Any(fold => fold.Bulge != 0) ? 5 : 4;
        text.Append(CultureInfo.InvariantCulture, $"{last}. Cut along the solid lines.{(part.Quantity > 1 ? $" Make {{{{{piece.Id}.quantity}}}} of it." : "")}\n");
        Step($"Trace, score and cut the {name}", piece.Id, "flat", 20, ["printed template", "pin", "bone folder", "craft knife", "cutting mat"], text.ToString(),
            "On curves turn the card, not the knife, and keep your other hand behind the blade.");
    }

    private void Mats()
    {
        var mats = model.Kit.Parts.Where(part => part.Kind == PartKind.Mat).ToList();
        if (mats.Count == 0)
            return;
        var text = new StringBuilder("The mats are the panels of paper that go on the faces. Cut them to the sizes in the table “What to cut”, and glue them on while\neverything is still flat.\n\n");
        foreach (var mat in mats)
        {
            var many = mat.Quantity > 1 ? $"{{{{{mat.Piece.Id}.quantity}}}} of “{mat.Piece.Name}”" : $"“{mat.Piece.Name}”";
            text.Append(CultureInfo.InvariantCulture, $"- {many}: for {mat.For}.\n");
        }

        text.Append("\nGlue from the middle outwards and leave the same border of card on all sides.\n");
        var first = mats.First(mat => mat.Goes is not null).Goes!;
        foreach (var goes in mats.Select(mat => mat.Goes).OfType<string>().Distinct().Where(goes => goes != first))
            text.Append(Figure(goes, "mats"));
        Step("Cut the mats and glue them on", first, "mats", 20, ["steel ruler", "craft knife", "cutting mat", "glue"], text.ToString());
    }

    private void Fold(Part part)
    {
        var (piece, name) = (part.Piece, Lower(part.Piece.Name));
        var bends = piece.Panels.Any(panel => panel.Bend is not null);
        if (piece.Folds.Count == 0 && !bends)
            return;
        var text = new StringBuilder();
        var number = 1;
        var folds = piece.Folds.Select(fold => (piece.Panel(fold.Child).Kind, fold.Direction, fold.Angle)).Distinct().GroupBy(fold => fold.Kind, StringComparer.Ordinal);
        if (piece.Folds.Count > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Crease every score first, with the bone folder, and open it again: ");
            text.Append(Listed(piece.Folds.GroupBy(fold => fold.Direction).Select(group => group.Key == FoldDirection.Valley ? "valley folds towards you" : "mountain folds away from you")));
            text.Append(".\n");
        }

        if (bends && piece.Folds.Count == 0)
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Draw the card over the edge of the table, with its inside up, until it curls by itself. Roll it until the ends overlap.\n");
        else if (bends)
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Bow the panels between the curved scores with your hands; do not crease them.\n");
        foreach (var group in folds.Where(group => Glued(piece, group.Key) is null))
        {
            var fold = group.First();
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Fold {The(piece, group.Key)} {Way(fold.Direction, fold.Angle)}.{Note(piece, group.Key)}\n");
        }

        foreach (var glue in piece.GlueAreas.Select(area => (piece.Panel(area.Panel).Kind, area.Side)).Distinct())
        {
            var side = glue.Side == SheetSide.Away ? "outside" : "inside";
            var panels = piece.Panels.Where(panel => panel.Kind == glue.Kind).ToList();
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Put glue or tape on the {side} of {The(piece, glue.Kind)}{(bends && piece.Folds.Count == 0 ? ", along the shaded strip only" : "")}.");
            text.Append(panels[0].Note is { } note
                ? $" {(panels.Count == 1 ? "It is" : "Each is")} {Note(note)}. Press while you count to ten.\n"
                : " Press it down while you count to ten.\n");
        }

        foreach (var seam in model.Kit.Assembly.Seams.Where(seam => seam.Piece == piece.Id && seam.Hold == SeamHold.Tuck && piece.Panels.Any(panel => panel.Kind == seam.Panel)))
            text.Append(CultureInfo.InvariantCulture, $"{number++}. {Upper(The(piece, seam.Panel))} {(piece.Panels.Count(panel => panel.Kind == seam.Panel) == 1 ? "is" : "are")} tucked in behind {The(piece, seam.OtherPanel)} when you close it; no glue there.\n");
        if (part.Quantity > 1)
            text.Append(CultureInfo.InvariantCulture, $"{number}. Do the same with every {name}.\n");
        text.Append(Figure(piece.Id, SeamClosing.Of(piece, model.Kit.Assembly.Seams, []) is null ? "folded" : "gluing"));
        var figure = piece.GlueAreas.Count > 0 ? "glue" : piece.Folds.Count > 0 ? "folds" : "flat";
        Step($"{(piece.Folds.Count == 0 ? "Roll" : "Fold")}{(piece.GlueAreas.Count > 0 ? " and glue" : "")} the {name}", piece.Id, figure, 12, ["bone folder", "glue or double-sided tape"], text.ToString());
    }

    private void Together()
    {
        var text = new StringBuilder();
        var first = true;
        var number = 1;
        foreach (var part in model.Kit.Assembly.Parts)
        {
            var here = part.Part == Assembly.Item ? "the {{item.name}}" : $"the {Name(part.Part)}{(Quantity(part.Part) > 1 ? "s" : "")}";
            var there = part.To is null ? "" : part.To == Assembly.Item ? "the {{item.name}}" : $"the {Name(part.To)}";
            if (!first || model.Kit.Assembly.Parts.Count == 1)
            {
                text.Append(CultureInfo.InvariantCulture, $"{number++}. ").Append(part.Goes switch
                {
                    GoesWhere.Inside when part.Part == Assembly.Item => $"Put {here} into {there}.",
                    GoesWhere.Inside => $"Set {here} into {there}{Glue(part.Part)}.",
                    GoesWhere.Over => $"Put {here} over {there}. It should slide down without force.",
                    GoesWhere.Around => $"Slide {here} around {there}.",
                    GoesWhere.On => $"Lay {here} on {there}.",
                    _ => $"Look {here} over from all sides and press every glued place once more.",
                }).Append('\n');
            }

            first = false;
        }

        foreach (var part in model.Kit.Assembly.Parts.Where(part => part.Opens.Count > 0))
            text.Append(CultureInfo.InvariantCulture, $"{number++}. Close the {Name(part.Part)}.\n");
        text.Append(CultureInfo.InvariantCulture, $"\nThat is all. Let the glue dry for a quarter of an hour before you give it away.\n");
        Step(item.Name == "gift" ? "Put it together" : $"Put in the {item.Name}", Pieces.First().Piece.Id, "finished", 5, [], text.ToString());
    }

    private string Glue(string id)
    {
        var others = model.Kit.Assembly.Seams.Where(seam => seam.Piece == id && seam.OtherPiece != id && seam.Hold == SeamHold.Glue).ToList();
        var piece = Pieces.First(part => part.Piece.Id == id).Piece;
        return others.Count == 0 ? "" : $" and glue {Listed(others.Select(seam => $"{The(piece, seam.Panel)} to its {seam.OtherPanel}"))}";
    }

    private static string? Glued(Piece piece, string kind) => piece.GlueAreas.Select(area => piece.Panel(area.Panel).Kind).FirstOrDefault(glued => glued == kind);

    private static bool HasScores(Piece piece, bool across) =>
        piece.Folds.Any(fold => fold.Bulge == 0 && (across ? IsNear(fold.From.X, fold.To.X) : IsNear(fold.From.Y, fold.To.Y)));

    private static string Way(FoldDirection direction, double angle) => (direction, angle) switch
    {
        (FoldDirection.Valley, > 179) => "right over towards you, until they lie flat",
        (FoldDirection.Mountain, > 179) => "right over away from you, until they lie flat",
        (FoldDirection.Valley, > 88 and < 92) => "up to a right angle",
        (FoldDirection.Mountain, > 88 and < 92) => "back to a right angle",
        (FoldDirection.Valley, _) => "up towards you, as far as the finished shape needs",
        _ => "back away from you, as far as the finished shape needs",
    };

    private static string Note(Piece piece, string kind) =>
        piece.Panels.First(panel => panel.Kind == kind) is { Note: { } note } panel ? $" {(piece.Panels.Count(other => other.Kind == panel.Kind) == 1 ? "It" : "Each")} {(note.StartsWith("glued", StringComparison.Ordinal) || note.StartsWith("tucked", StringComparison.Ordinal) ? "is " : "")}{note}." : "";

    private static string Note(string note) => note.StartsWith("folds ", StringComparison.Ordinal) ? note[6..] : note;

    private static string The(Piece piece, string kind)
    {
        var count = piece.Panels.Count(panel => panel.Kind == kind);
        return count switch
        {
            1 => $"the {kind}",
            2 => $"both {Plural(kind)}",
            _ => $"the {Number(count)} {Plural(kind)}",
        };
    }

    private static string Plural(string kind) => kind.EndsWith('s') ? kind : kind.EndsWith("half", StringComparison.Ordinal) ? kind[..^1] + "ves" : kind + "s";

    private static string Number(int count) => count <= 12
        ? new[] { "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve" }[count]
        : count.ToString(CultureInfo.InvariantCulture);

    private static string Listed(IEnumerable<string> words)
    {
        var all = words.Distinct().ToList();
        return all.Count < 2 ? string.Concat(all) : $"{string.Join(", ", all.SkipLast(1))} and {all[^1]}";
    }

    private string Name(string id) => Lower(Pieces.First(part => part.Piece.Id == id).Piece.Name);

    private int Quantity(string id) => id == Assembly.Item ? 1 : Pieces.First(part => part.Piece.Id == id).Quantity;

    private static string Stock(Part part) => $"{{{{{part.Stock}.name}}}}";

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string Upper(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Figure(string of, string show) => $"\n::: figure\nof: {of}\nshow: {show}\n:::\n";

    private void Step(string title, string piece, string figure, int minutes, string[] tools, string text, string? caution = null)
    {
        var number = (_steps.Count + 1).ToString("00", CultureInfo.InvariantCulture);
        var slug = new string([.. title.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]).Replace("--", "-", StringComparison.Ordinal).Trim('-');
        var front = new StringBuilder("---\n");
        front.Append(CultureInfo.InvariantCulture, $"title: {Draft.Quoted(title)}\npiece: {piece}\nfigure: {figure}\ntime: {minutes} min\n");
        if (tools.Length > 0)
            front.Append(CultureInfo.InvariantCulture, $"tools: [{string.Join(", ", tools.Select(Draft.Quoted))}]\n");
        if (caution is not null)
            front.Append(CultureInfo.InvariantCulture, $"caution: {Draft.Quoted(caution)}\n");
        _steps.Add(($"steps/{number}-{slug}.md", $"{front}---\n\n{text}"));
    }
}
