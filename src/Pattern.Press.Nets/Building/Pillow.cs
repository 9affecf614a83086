using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>
/// A pillow box: a front and a back that bow apart, closed at both ends by pairs of flaps that are folded in along arcs.
/// </summary>
/// <remarks>
/// A curved fold in one plane makes each side the mirror image of the other in that plane. With the planes at 45° to the
/// length, the flaps stand square to it, the front's depth at a place is how far the arc reaches in there, and each flap,
/// twice as deep, spans from front to back exactly. The bow then follows from the sheet not stretching: where the arc has
/// the slope m, the front leans by arcsin m.
/// </remarks>
public static class Pillow
{
    /// <summary>What the front is called.</summary>
    public const string Front = "front";

    /// <summary>What the back is called.</summary>
    public const string Back = "back";

    /// <summary>What the end flaps are called.</summary>
    public const string Flap = "end flap";

    /// <summary>What the tab along the side is called.</summary>
    public const string Tab = "glue tab";

    // Odd, so that one strip lies in the middle; two stand off the smooth surface by less than a hair in drawings.
    private const int UsualStrips = 19;

    /// <summary>Builds the piece, with the front to the left.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="width">How wide the front is, flat; above 0.</param>
    /// <param name="length">How long its sides are.</param>
    /// <param name="rise">How far the arcs reach in, and the flaps out; above 0, below 0.2 of the width.</param>
    /// <param name="tab">How wide the glue tab is.</param>
    /// <exception cref="NetException">The sizes make no pillow.</exception>
    public static Piece Build(string id, string name, Length width, Length length, Length rise, Length tab) =>
        Build(id, name, width, length, rise, tab, UsualStrips);

    private static Piece Build(string id, string name, Length width, Length length, Length rise, Length tab, int strips)
    {
        var (wide, high, bow, strip) = (width.Millimetres, length.Millimetres, rise.Millimetres, tab.Millimetres);
        var reasons = new List<string>();
        if (bow <= 0 || bow > 0.2 * wide)
            reasons.Add("The arcs of a pillow box reach in by more than nothing and at most a fifth of its width; deeper ones cannot be folded.");
        if (high <= 2 * bow)
            reasons.Add("The box is so short that the arcs at its two ends would meet.");
        if (strip <= 0 || strip >= wide / 2)
            reasons.Add("The glue tab has to be wider than nothing and narrower than half the box.");
        if (reasons.Count > 0)
            throw new NetException(id, reasons);

        var (top, bottom) = (bow, bow + high);
        var bulge = 2 * bow / wide;
        var angles = Bow(wide, bow, strips);
        double[] marks = [.. Enumerable.Range(1, strips - 1).Select(i => i * wide / strips)];
        var panels = new List<Panel>();
        var folds = new List<Fold>();
        foreach (var (kind, left) in new[] { (Front, 0.0), (Back, wide) })
        {
            Point topLeft = new(left, top), topRight = new(left + wide, top), bottomRight = new(left + wide, bottom), bottomLeft = new(left, bottom);
            var body = new Outline([new Edge(topLeft, topRight, -bulge), new Edge(topRight, bottomRight), new Edge(bottomRight, bottomLeft, -bulge), new Edge(bottomLeft, topLeft)]);
            panels.Add(new Panel(kind, kind, PanelRole.Panel, LineWork.Tidied(body.Edges))
            {
                Bend = new Bend([.. marks.Select((x, i) => new Ruling(new(left + x, top + Arc(x, wide, bow)), new(left + x, bottom - Arc(x, wide, bow)), angles[i] - angles[i + 1]))]),
            });
            foreach (var (end, from, to, outwards) in new[] { ("upper", topLeft, topRight, -1), ("lower", bottomRight, bottomLeft, 1) })
            {
                var flap = $"{end} {(kind == Front ? "left" : "right")} {Flap}";
                panels.Add(new Panel(flap, Flap, PanelRole.Panel, LineWork.Tidied([new Edge(from, to, bulge), new Edge(to, from, bulge)]))
                {
                    Bend = new Bend([.. marks.Select((x, i) => new Ruling(
                        new(left + x, from.Y - (outwards * Arc(x, wide, bow))), new(left + x, from.Y + (outwards * Arc(x, wide, bow))), angles[i + 1] - angles[i]))]),
                });
                folds.Add(new Fold(kind, flap, from, to, FoldDirection.Valley, 90) { Bulge = -bulge });
            }
        }

        var turn = 180 - (2 * angles[0]);
        // What is cut out does not depend on how finely it is folded.
        var lean = Math.Min((strip * Math.Tan(Bow(wide, bow, UsualStrips)[0] * Math.PI / 180) * 1.1) + 0.5, high / 3);
        var right = 2 * wide;
        panels.Add(new Panel(Tab, Tab, PanelRole.Tab, Outline.Through(new(right, top), new(right + strip, top + lean), new(right + strip, bottom - lean), new(right, bottom)), "glued inside the front, along its free side")
        {
            Bend = new Bend([.. marks.Select((x, i) => (x, Angle: angles[i] - angles[i + 1])).Where(ruling => ruling.x < strip - 0.01).Select(ruling => new Ruling(
                new(right + ruling.x, top + (lean * ruling.x / strip)), new(right + ruling.x, bottom - (lean * ruling.x / strip)), ruling.Angle))]),
        });
        folds.Insert(0, new Fold(Front, Back, new(wide, top), new(wide, bottom), FoldDirection.Valley, turn));
        folds.Add(new Fold(Back, Tab, new(right, top), new(right, bottom), FoldDirection.Valley, turn));
        var made = new PieceAssembly
        {
            Id = id,
            Name = name,
            Sheet = new Size((width * 2) + tab, length + (rise * 2)),
            Root = Front,
            Panels = panels,
            Folds = folds,
            GlueAreas = [new GlueArea(Tab, panels[^1].Outline, SheetSide.Away)],
        }.Build();
        return made with { Remade = times => Build(id, name, width, length, rise, tab, (UsualStrips * times) | 1) };
    }

    /// <summary>How thick the pillow is in the middle, from front to back, in millimetres: twice the arcs' rise.</summary>
    public static double Thickness(double rise) => 2 * rise;

    // How far the arc reaches in at a distance from the side.
    private static double Arc(double x, double wide, double rise)
    {
        var radius = ((wide * wide / 4) + (rise * rise)) / (2 * rise);
        var off = x - (wide / 2);
        return Math.Sqrt((radius * radius) - (off * off)) - radius + rise;
    }

    // How far each strip leans, from one side to the other, in degrees.
    private static double[] Bow(double wide, double rise, int strips)
    {
        var strip = wide / strips;
        return [.. Enumerable.Range(0, strips).Select(i =>
            Math.Asin((Arc((i + 1) * strip, wide, rise) - Arc(i * strip, wide, rise)) / strip) * 180 / Math.PI)];
    }
}
