using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>
/// One of the five regular solids, laid out flat: its faces folded to each other along the edges of a spanning tree, and a
/// glue tab on one side of every other edge. Among many trees the one with the smallest sheet is taken that leaves room for
/// its tabs.
/// </summary>
/// <remarks>
/// Faces of a regular solid never overlap when they are unfolded, whichever tree is taken (T. Horiyama and W. Shoji, “Edge
/// unfoldings of Platonic solids never overlap”, CCCG 2011); tabs can.
/// </remarks>
public static class RegularSolid
{
    /// <summary>What its faces are called.</summary>
    public const string FaceKind = "face";

    /// <summary>What its tabs are called.</summary>
    public const string TabKind = "glue tab";

    private static readonly Dictionary<string, Lazy<SolidNets>> Solids = new(StringComparer.Ordinal)
    {
        ["tetrahedron"] = new(() => new SolidNets(SolidCorners.Tetrahedron)),
        ["cube"] = new(() => new SolidNets(SolidCorners.Cube)),
        ["octahedron"] = new(() => new SolidNets(SolidCorners.Octahedron)),
        ["dodecahedron"] = new(() => new SolidNets(SolidCorners.Dodecahedron)),
        ["icosahedron"] = new(() => new SolidNets(SolidCorners.Icosahedron)),
    };

    /// <summary>The names of the five.</summary>
    public static IReadOnlyCollection<string> Names => Solids.Keys;

    /// <summary>Builds the piece.</summary>
    /// <param name="id">The piece's id.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="solid">One of <see cref="Names"/>.</param>
    /// <param name="edge">The length of its edges; above 0.</param>
    /// <param name="tab">How deep its tabs are; above 0.</param>
    /// <param name="taper">How far the ends of the tabs lean inwards, in degrees, 0 to below 90.</param>
    /// <param name="ruler">The ruler that the sides of the sheet lie on.</param>
    /// <exception cref="NetException">There is no room for the tabs.</exception>
    public static Piece Build(string id, string name, string solid, Length edge, Length tab, double taper, Ruler ruler)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var (side, depth) = (edge.Millimetres, tab.Millimetres);
        var lean = depth * Math.Tan(taper * Math.PI / 180);
        if (side <= 0 || depth <= 0 || taper is not (>= 0 and < 90) || side - (2 * lean) < 1)
            throw new NetException(id, ["A tab is so deep or leans so much that nothing is left of its far side."]);
        var strip = Outline.Through(new(lean, 0), new(side - lean, 0), new(side, depth), new(0, depth));
        var nets = Solids[solid].Value;
        var best = nets.Trees.Select(tree => nets.WithTabs(tree, side, strip)).FirstOrDefault(layout => layout is not null)
            ?? throw new NetException(id, ["The tabs are so deep that they would lie over each other; make them less deep, or let their ends lean more."]);
        var fold = new CellFold(FoldDirection.Valley, 180 - nets.Dihedral);
        return new PanelTree
        {
            Id = id,
            Name = name,
            Ruler = ruler,
            Root = Face(best.Faces[0], 0),
            Hanging =
            [
                .. best.Folds.Select(hang => new HangingPanel(Face(best.Faces[hang.Face], hang.Face), hang.By, NameOf(hang.On), hang.OnEdge, fold)),
                .. best.Tabs.Select((seam, i) => new HangingPanel(
                    new TreePanel(FormattableString.Invariant($"{TabKind} {i + 1}"), strip)
                    {
                        Kind = TabKind,
                        Role = PanelRole.Tab,
                        Note = "glued under the face that its edge comes to",
                        Glue = SheetSide.Away,
                    },
                    2,
                    NameOf(seam.On),
                    seam.OnEdge,
                    fold)),
            ],
        }.Build();
    }

    private static TreePanel Face(Outline outline, int number) => new(NameOf(number), outline) { Kind = FaceKind };

    private static string NameOf(int face) => FormattableString.Invariant($"{FaceKind} {face + 1}");
}
