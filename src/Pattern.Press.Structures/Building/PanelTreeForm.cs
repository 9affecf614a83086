using System.Globalization;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A panel tree with formulas in place of sizes.</summary>
internal sealed class PanelTreeForm(IReadOnlyList<TreePanelForm> panels, IReadOnlyList<(string Kind, string Other, FoldForm Fold)> joins) : IPieceForm
{
    private const int MostPanels = 300;
    private const double Same = 1e-6;

    public IReadOnlyCollection<string> PanelKinds { get; } = [.. panels.Select(panel => panel.Kind).Distinct(StringComparer.Ordinal)];

    public IEnumerable<Formula> Formulas => panels.SelectMany(panel => panel.Outline.Formulas);

    public IEnumerable<(Formula Size, Formula? When)> Sizes => panels.SelectMany(panel => panel.Outline.Sizes.Select(size => (size, panel.When)));

    // Panels go by their kind, with a number where there are several.
    public Place? PlaceOf(string reason, Evaluation values) =>
        panels.Where(panel => reason.Contains($"“{panel.Kind}”", StringComparison.Ordinal) || reason.Contains($"“{panel.Kind} ", StringComparison.Ordinal))
            .OrderBy(panel => reason.IndexOf($"“{panel.Kind}", StringComparison.Ordinal))
            .ThenByDescending(panel => panel.Kind.Length)
            .FirstOrDefault()?.Place;

    public Piece Build(string id, string name, Evaluation values) => new Making(id, values, panels).Build(name, joins);

    private sealed record Placed(TreePanelForm Form, string Name, Outline Outline, int By);

    private sealed class Making(string id, Evaluation values, IReadOnlyList<TreePanelForm> panels)
    {
        private readonly Dictionary<string, List<Placed>> made = new(StringComparer.Ordinal);
        private readonly Dictionary<string, int> ofKind = new(StringComparer.Ordinal);
        private readonly List<string> reasons = [];
        private readonly List<(Placed Panel, string? On, int OnSide)> order = [];

        public Piece Build(string name, IReadOnlyList<(string Kind, string Other, FoldForm Fold)> joins)
        {
            foreach (var form in panels)
            {
                made[form.Id] = [];
                if (form.When is null || form.When.Evaluate(values).Flag)
                    Hang(form);
                Refuse();
            }

            // One of a kind goes by its kind; several are numbered in the order in which they are hung.
            var names = order.ToDictionary(
                entry => entry.Panel.Name,
                entry => ofKind[entry.Panel.Form.Kind] == 1 ? entry.Panel.Form.Kind : entry.Panel.Name,
                StringComparer.Ordinal);
            var ready = order.Select(entry => Finished(entry.Panel, names[entry.Panel.Name], entry.OnSide >= 0)).ToList();
            Refuse();
            var finished = order.Zip(ready, (entry, panel) => (entry.Panel, panel)).ToDictionary(pair => pair.Panel.Name, StringComparer.Ordinal);
            var there = order.Select(entry => entry.Panel.Form.Kind).ToHashSet(StringComparer.Ordinal);
            return new PanelTree
            {
                Id = id,
                Name = name,
                Ruler = values.Ruler,
                Root = ready[0],
                Hanging = [.. order.Select((entry, i) => (entry, i)).Skip(1).Select(pair => new HangingPanel(
                    ready[pair.i], Now(pair.entry.Panel.Name, pair.entry.Panel.By), names[pair.entry.On!], Now(pair.entry.On!, pair.entry.OnSide), pair.entry.Panel.Form.Fold!.At(values)))],
                Joins = [.. joins.Where(join => there.Contains(join.Kind) && there.Contains(join.Other))
                    .Select(join => new TreeJoin(join.Kind, join.Other, join.Fold.At(values)))],
            }.Build();

            // Rounding and notches add sides, so the side is looked for again; one that was cut into is no fold any more.
            int Now(string panel, int side)
            {
                var (before, after) = finished[panel];
                var edge = before.Outline.Edges[side];
                var now = after.Outline.Edges.ToList().FindIndex(other => other.From.DistanceTo(edge.From) < Same && other.To.DistanceTo(edge.To) < Same);
                return now < 0 ? throw new NetException(id, [$"“{after.Name}” is folded along a side that is rounded or notched; only sides that are cut can be."]) : now;
            }
        }

        private void Hang(TreePanelForm form)
        {
            if (form.On is null)
            {
                Run(form, null, -1);
                return;
            }

            var parents = made[form.On];
            var chosen = form.Which switch
            {
                Which.First => parents.Take(1),
                Which.Last => parents.TakeLast(1),
                Which.AllButFirst => parents.Skip(1),
                Which.AllButLast => parents.SkipLast(1),
                _ => parents,
            };
            foreach (var parent in chosen.ToList())
            {
                foreach (var side in SidesOf(form, parent))
                    Run(form, parent, side);
            }
        }

        private IEnumerable<int> SidesOf(TreePanelForm form, Placed parent)
        {
            var free = Enumerable.Range(0, parent.Outline.Edges.Count).Where(side => side != parent.By).ToList();
            switch (form.OnSides)
            {
                case [{ Scalar: "all" }]:
                    return free;
                case [{ Scalar: "first" }]:
                    return free.Take(1);
                case [{ Scalar: "last" }]:
                    return free.TakeLast(1);
                case [{ Scalar: "all but first" }]:
                    return free.Skip(1);
                case [{ Scalar: "all but last" }]:
                    return free.SkipLast(1);
            }

            return form.OnSides.Select(item => Side(item, parent.Form.Outline, parent.Outline)).OfType<int>();
        }

        private void Run(TreePanelForm form, Placed? parent, int side)
        {
            var times = form.Times?.Evaluate(values).Amount ?? 1;
            if (!decimal.IsInteger(times) || times < 1 || order.Count + times > MostPanels)
            {
                reasons.Add(string.Create(CultureInfo.InvariantCulture, $"“{form.Kind}” is to be there {times:0.###} times, but that is a whole number of at least 1, and a piece has at most {MostPanels} panels."));
                return;
            }

            for (var i = 0; i < times && reasons.Count == 0; i++)
            {
                var hangs = parent is null ? 0 : parent.Outline.Edges[side].Chord;
                var outline = form.Outline.At(values, hangs);
                var by = parent is null ? -1 : By(form, outline);
                var number = ofKind[form.Kind] = ofKind.GetValueOrDefault(form.Kind) + 1;
                var placed = new Placed(form, string.Create(CultureInfo.InvariantCulture, $"{form.Kind} {number}"), outline, by);
                made[form.Id].Add(placed);
                order.Add((placed, parent?.Name, parent is null ? -1 : side));
                if (form.Next is null || i + 1 >= times)
                    continue;
                if (Side(form.Next, form.Outline, outline) is not { } next)
                    return;
                (parent, side) = (placed, next);
            }
        }

        // By the lower side where there is one with that name, else by the first.
        private int By(TreePanelForm form, Outline outline)
        {
            if (form.By is not null)
                return Side(form.By, form.Outline, outline) ?? 0;
            var lower = form.Outline.Sides?.ToList().IndexOf("bottom") ?? -1;
            return Math.Max(0, lower);
        }

        private int? Side(YamlItem item, OutlineForm form, Outline outline)
        {
            var word = item.Scalar ?? "";
            if (form.Sides is { } sides)
            {
                var index = sides.ToList().IndexOf(word);
                if (index >= 0)
                    return index;
                throw new FormulaException(item.Place, $"“{word}” is not a side of this panel. {Spelling.Advice(word, [.. sides])}");
            }

            if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= outline.Edges.Count)
                return number - 1;
            throw new FormulaException(item.Place, $"“{word}” is not a side of this panel; its sides are numbered from 1 to {outline.Edges.Count}.");
        }

        private TreePanel Finished(Placed placed, string name, bool hangs)
        {
            var form = placed.Form;
            var hinge = hangs ? placed.Outline.Edges[placed.By] : (Edge?)null;
            var (outline, holes) = form.Shape.At(values).Applied(placed.Outline, hinge, $"“{name}”", reasons);
            var turn = form.Bends is null ? 0 : (double)form.Bends.Evaluate(values).Amount;
            var strip = form.GlueStrip is null ? 0 : (double)form.GlueStrip.Evaluate(values).Amount / 1_000_000;
            var bent = form.Bends is null && form.GlueStrip is null ? null : form.Outline.Bent(values, turn, strip);
            if (bent is null && (form.Bends is not null || form.GlueStrip is not null))
                reasons.Add($"“{name}” cannot bend or take a strip of glue; only a rectangle and a sector can.");
            return new TreePanel(name, outline)
            {
                Kind = form.Kind,
                Role = form.Role,
                Note = form.Note,
                Glue = form.Glue,
                GlueOutline = bent?.Strip,
                Holes = holes,
                Bend = form.Bends is null ? null : bent?.Bend,
            };
        }

        private void Refuse()
        {
            if (reasons.Count > 0)
                throw new NetException(id, reasons);
        }
    }
}
