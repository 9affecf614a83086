using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>The outline of a panel in a panel tree, with formulas in place of sizes.</summary>
internal abstract class OutlineForm
{
    private static readonly Dictionary<string, Func<YamlMap, FileReading, OutlineForm?>> Shapes = new(StringComparer.Ordinal)
    {
        ["rectangle"] = (map, reading) => Of(map, reading, ["width", "height"], sizes => new TrapeziumOutline(sizes[0], sizes[0], sizes[1])),
        ["trapezium"] = (map, reading) => Of(map, reading, ["bottom", "top", "height"], sizes => new TrapeziumOutline(sizes[0], sizes[1], sizes[2])),
        ["triangle"] = TriangleOutline.From,
        ["regular polygon"] = RegularPolygonOutline.From,
        ["sector"] = SectorOutline.From,
        ["strip"] = StripOutline.From,
        ["corners"] = CornersOutline.From,
    };

    /// <summary>The names of the sides in the outline's order; null when they are numbered from 1.</summary>
    public virtual IReadOnlyList<string>? Sides => null;

    /// <summary>How many sides it has, where that is the same in every fit; else null.</summary>
    public virtual int? Count => Sides?.Count;

    /// <summary>The formulas the sizes come from.</summary>
    public abstract IEnumerable<Formula> Formulas { get; }

    /// <summary>Those of them that are lengths and can be nothing but never less.</summary>
    public virtual IEnumerable<Formula> Sizes => Formulas;

    /// <summary>The outline in millimetres, clockwise.</summary>
    /// <param name="values">The values of the fit.</param>
    /// <param name="hangs">How long the side is that it hangs from, in millimetres; 0 for the first panel.</param>
    public abstract Outline At(Evaluation values, double hangs);

    /// <summary>
    /// The lines along which it bends evenly, and the strip along its right side; null for shapes that do not bend.
    /// </summary>
    public virtual (Bend Bend, Outline? Strip)? Bent(Evaluation values, double turn, double strip) => null;

    /// <summary>Reads the shape; null after noting problems.</summary>
    public static OutlineForm? Read(YamlMap map, FileReading reading)
    {
        var shape = map.Need("shape", $"Write one of {string.Join(", ", Shapes.Keys)}.")?.AsChoice([.. Shapes.Keys]);
        return shape is null ? null : Shapes[shape](map, reading);
    }

    /// <summary>A length in millimetres, not rounded: where panels meet aslant, nothing lies on a ruler's marks.</summary>
    protected static double Millimetres(Formula formula, Evaluation values) => (double)formula.Evaluate(values).Amount / 1_000_000;

    private static OutlineForm? Of(YamlMap map, FileReading reading, string[] keys, Func<Formula[], OutlineForm> make)
    {
        Formula?[] sizes = [.. keys.Select(key => Needed(map, key, Kind.Length, reading))];
        return sizes.Any(size => size is null) ? null : make([.. sizes.OfType<Formula>()]);
    }

    private static Formula? Needed(YamlMap map, string key, Kind kind, FileReading reading) =>
        map.Need(key, $"Write a formula that gives {kind.WithArticle()}.") is { } item ? reading.Formula(item, kind) : null;

    private sealed class TrapeziumOutline(Formula bottom, Formula top, Formula height) : OutlineForm
    {
        public override IReadOnlyList<string> Sides => ["top", "right", "bottom", "left"];

        public override IEnumerable<Formula> Formulas => [bottom, top, height];

        public override Outline At(Evaluation values, double hangs)
        {
            var (wide, narrow, high) = (Millimetres(bottom, values), Millimetres(top, values), Millimetres(height, values));
            return Outline.Through(new((wide - narrow) / 2, 0), new((wide + narrow) / 2, 0), new(wide, high), new(0, high));
        }

        // Rulings upright, evenly across.
        public override (Bend Bend, Outline? Strip)? Bent(Evaluation values, double turn, double strip)
        {
            if (bottom != top)
                return null;
            var (wide, high) = (Millimetres(bottom, values), Millimetres(height, values));
            return (InSteps(Rulings), strip > 0 ? Outline.Rectangle(wide - strip, 0, wide, high) : null);

            IReadOnlyList<Ruling> Rulings(double step) =>
                [.. Parts(turn, step).Select(part => part * wide).Select(x => new Ruling(new(x, 0), new(x, high), Math.Sign(turn) * step))];
        }
    }

    // Rulings every five degrees of turn, from the left side on: after a full turn they come to lie on the first ones again.
    private const double Step = 5;

    private static Bend InSteps(Func<double, IReadOnlyList<Ruling>> rulings) => new(rulings(Step)) { RulingsIn = times => rulings(Step / times) };

    private static IEnumerable<double> Parts(double turn, double step)
    {
        for (var i = 1; i * step < Math.Abs(turn) - (0.02 * step); i++)
            yield return i * step / Math.Abs(turn);
    }

    private sealed class TriangleOutline(Formula bottom, Formula height, Formula? peak) : OutlineForm
    {
        public override IReadOnlyList<string> Sides => ["right", "bottom", "left"];

        public override IEnumerable<Formula> Formulas => peak is null ? [bottom, height] : [bottom, height, peak];

        public static OutlineForm? From(YamlMap map, FileReading reading)
        {
            var (bottom, height) = (Needed(map, "bottom", Kind.Length, reading), Needed(map, "height", Kind.Length, reading));
            var peak = map.Find("peak") is { } item ? reading.Formula(item, Kind.Length) : null;
            return bottom is null || height is null ? null : new TriangleOutline(bottom, height, peak);
        }

        public override Outline At(Evaluation values, double hangs)
        {
            var (wide, high) = (Millimetres(bottom, values), Millimetres(height, values));
            return Outline.Through(new(peak is null ? wide / 2 : Millimetres(peak, values), 0), new(wide, high), new(0, high));
        }
    }

    private sealed class RegularPolygonOutline(Formula sides, Formula side) : OutlineForm
    {
        private const int MostSides = 60;

        public override IEnumerable<Formula> Formulas => [sides, side];

        public static OutlineForm? From(YamlMap map, FileReading reading)
        {
            var (sides, side) = (Needed(map, "sides", Kind.Number, reading), Needed(map, "side", Kind.Length, reading));
            return sides is null || side is null ? null : new RegularPolygonOutline(sides, side);
        }

        // The first side lies level at the bottom; the others follow clockwise.
        public override Outline At(Evaluation values, double hangs)
        {
            var amount = sides.Evaluate(values).Amount;
            if (!decimal.IsInteger(amount) || amount is < 3 or > MostSides)
                throw new FormulaException(sides.Place, FormattableString.Invariant($"“{sides.Text}” comes out at {amount:0.###}, but a polygon has from 3 to {MostSides} sides."));
            var count = (int)amount;
            return Polygons.Regular(count, Millimetres(side, values));
        }
    }

    private sealed class SectorOutline(Formula inner, Formula outer, Formula angle) : OutlineForm
    {
        // A half circle is the most that one arc can tell apart from its complement.
        private const double Half = 180;

        public override IReadOnlyList<string>? Sides => null;

        public override IEnumerable<Formula> Formulas => [inner, outer, angle];

        public static OutlineForm? From(YamlMap map, FileReading reading)
        {
            var (inner, outer) = (Needed(map, "inner", Kind.Length, reading), Needed(map, "outer", Kind.Length, reading));
            var angle = Needed(map, "angle", Kind.Number, reading);
            return inner is null || outer is null || angle is null ? null : new SectorOutline(inner, outer, angle);
        }

        public override Outline At(Evaluation values, double hangs)
        {
            var (near, far, wide) = (Millimetres(inner, values), Millimetres(outer, values), (double)angle.Evaluate(values).Amount);
            return Piece(near, far, -wide / 2, wide / 2);
        }

        public override (Bend Bend, Outline? Strip)? Bent(Evaluation values, double turn, double strip)
        {
            var (near, far, wide) = (Millimetres(inner, values), Millimetres(outer, values), (double)angle.Evaluate(values).Amount);
            var share = 2 * Math.Asin(Math.Min(1, strip / (2 * far))) * 180 / Math.PI;
            return (InSteps(Rulings), strip > 0 ? Piece(near, far, -wide / 2, (-wide / 2) + share) : null);

            IReadOnlyList<Ruling> Rulings(double step) =>
                [.. Parts(turn, step).Select(part => (0.5 - part) * wide).Select(at => new Ruling(On(near, at), On(far, at), Math.Sign(turn) * FacetTurn(wide * step / Math.Abs(turn), step)))];
        }

        // A fan: the middle of the sector points straight up from its apex; positive angles lie to the left.
        private static Point On(double radius, double degrees)
        {
            var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
            return new Point(-radius * sine, -radius * cosine);
        }

        // A cone of flat strips is a pyramid with as many sides as there are steps in a full turn. Its faces have the given angle
        // at the point; they turn by less than a step, as they lean.
        private static double FacetTurn(double degreesAtPoint, double step)
        {
            var (half, round) = (degreesAtPoint * Math.PI / 360, step * Math.PI / 180);
            var toSide = Math.Sin(half) / Math.Tan(round / 2);
            var (slope, rise) = (Math.Cos(half) * Math.Cos(half), (Math.Cos(half) * Math.Cos(half)) - (toSide * toSide));
            return Math.Acos(Math.Clamp(((rise * Math.Cos(round)) + (toSide * toSide)) / slope, -1, 1)) * 180 / Math.PI;
        }

        private static Outline Piece(double near, double far, double from, double to)
        {
            var edges = new List<Edge>();
            var parts = (int)Math.Ceiling((to - from) / Half - 1e-9);
            if (near > 0)
            {
                edges.AddRange(Enumerable.Range(0, parts).Select(i => Arc(near, Share(from, to, i, parts), Share(from, to, i + 1, parts))));
                edges.Add(new Edge(On(near, to), On(far, to)));
            }
            else
            {
                edges.Add(new Edge(On(0, 0), On(far, to)));
            }

            edges.AddRange(Enumerable.Range(0, parts).Select(i => Arc(far, Share(to, from, i, parts), Share(to, from, i + 1, parts))));
            edges.Add(new Edge(On(far, from), near > 0 ? On(near, from) : On(0, 0)));
            return new Outline(edges);
        }

        private static double Share(double from, double to, int part, int parts) => from + ((to - from) * part / parts);

        // On the page an arc from a smaller angle to a larger one turns anticlockwise.
        private static Edge Arc(double radius, double from, double to) =>
            new(On(radius, from), On(radius, to), -Math.Tan((to - from) * Math.PI / 720));
    }

    private sealed class StripOutline(Formula depth, Formula? taper, Formula? rightTaper) : OutlineForm
    {
        public override IReadOnlyList<string> Sides => ["top", "right", "bottom", "left"];

        public override IEnumerable<Formula> Formulas => taper is null ? [depth] : [depth, taper];

        public static OutlineForm? From(YamlMap map, FileReading reading)
        {
            var depth = Needed(map, "depth", Kind.Length, reading);
            var taper = map.Find("taper") is { } item ? reading.Formula(item, Kind.Number) : null;
            var right = map.Find("right_taper") is { } other ? reading.Formula(other, Kind.Number) : taper;
            return depth is null ? null : new StripOutline(depth, taper, right);
        }

        public override Outline At(Evaluation values, double hangs)
        {
            var high = Millimetres(depth, values);
            var (left, right) = (Lean(taper), Lean(rightTaper));

            // Ends that lean so that they end at marks of the ruler, where that leaves enough of the strip.
            var (leftMark, rightMark) = (Mark(left), Mark(right));
            if (hangs - leftMark - rightMark > hangs / 4)
                (left, right) = (leftMark, rightMark);
            return Outline.Through(new(left, 0), new(hangs - right, 0), new(hangs, high), new(0, high));

            double Lean(Formula? angle) => angle is null ? 0 : high * Math.Tan((double)angle.Evaluate(values).Amount * Math.PI / 180);
            double Mark(double lean) => values.Ruler.Round(Length.FromMillimetres(lean), Rounding.Up).Millimetres;
        }
    }

    private sealed class CornersOutline(IReadOnlyList<(Formula X, Formula Y, Formula? Rise)> corners) : OutlineForm
    {
        public override IEnumerable<Formula> Formulas => corners.SelectMany(corner => new[] { corner.X, corner.Y });

        public override int? Count => corners.Count;

        // A corner may lie on either side of where the panel hangs.
        public override IEnumerable<Formula> Sizes => [];

        public static OutlineForm? From(YamlMap map, FileReading reading)
        {
            if (map.Need("corners", "List the corners clockwise, each as [right, down]: corners: [[0 mm, 0 mm], [width, 0 mm], [0 mm, height]].") is not { } list)
                return null;
            var corners = new List<(Formula, Formula, Formula?)>();
            foreach (var item in list.AsList())
            {
                var numbers = item.AsList();
                if (numbers.Count is not (2 or 3))
                {
                    reading.Problems.Error(item.Place, "A corner has two lengths, to the right and down, and a third where an arc starts.", "Write [right, down], or [right, down, rise of the arc to the next corner].");
                    return null;
                }

                if (reading.FormulaList(item, Kind.Length) is not { } sizes)
                    return null;
                corners.Add((sizes[0], sizes[1], sizes.Count == 3 ? sizes[2] : null));
            }

            if (corners.Count >= 3)
                return new CornersOutline(corners);
            reading.Problems.Error(list.Place, "A panel has at least three corners.");
            return null;
        }

        public override Outline At(Evaluation values, double hangs)
        {
            Point[] points = [.. corners.Select(corner => new Point(Millimetres(corner.X, values), Millimetres(corner.Y, values)))];
            var edges = new Edge[points.Length];
            for (var i = 0; i < points.Length; i++)
            {
                var (from, to) = (points[i], points[(i + 1) % points.Length]);
                var rise = corners[i].Rise is { } formula ? Millimetres(formula, values) : 0;
                edges[i] = new Edge(from, to, rise == 0 ? 0 : 2 * rise / from.DistanceTo(to));
            }

            return new Outline(edges);
        }
    }
}
