namespace Pattern.Press.Nets.Folding;

/// <summary>Loops of panels that share folds, and so can only move together.</summary>
internal sealed class LoopGroup
{
    private readonly HingeTree tree;
    private readonly Lazy<double[]> finished;
    private readonly Lazy<LoopPath> together;

    private LoopGroup(HingeTree tree, IReadOnlyList<Hinge> loops, IReadOnlyList<Hinge> held)
    {
        (this.tree, Loops, Held) = (tree, loops, held);
        Bends = held.Any(hinge => tree.Strips.Rulings.Contains(hinge.Fold));
        finished = new(Settled);
        together = new(Together);
    }

    /// <summary>The folds that close the loops.</summary>
    public IReadOnlyList<Hinge> Loops { get; }

    /// <summary>The hinges of the tree on the way round them, from the root outwards.</summary>
    public IReadOnlyList<Hinge> Held { get; }

    /// <summary>Whether its panels bend.</summary>
    public bool Bends { get; }

    /// <summary>The finished angles, by the panel that turns: those the piece gives, or those by which the loops close.</summary>
    public double[] Finished => finished.Value;

    /// <summary>
    /// The way from flat to finished on which all folds at the panel nearest to the root keep the same part of their finished
    /// angles. Loops that are too stiff for that, such as four folds around a point or folds along arcs, are driven by one fold
    /// alone.
    /// </summary>
    public LoopPath FromFlat => together.Value;

    /// <summary>The groups of a piece, each as large as it has to be.</summary>
    public static IReadOnlyList<LoopGroup> Of(HingeTree tree)
    {
        var groups = new List<(List<Hinge> Loops, HashSet<Hinge> Held)>();
        foreach (var loop in tree.Loops)
        {
            var around = tree.Around(loop).ToHashSet();
            var joined = groups.Where(group => group.Held.Overlaps(around)).ToList();
            groups.RemoveAll(joined.Contains);
            groups.Add(([.. joined.SelectMany(group => group.Loops), loop], [.. joined.SelectMany(group => group.Held), .. around]));
        }

        return [.. groups.Select(group => new LoopGroup(tree, [.. tree.Loops.Where(group.Loops.Contains)], [.. tree.Outwards.Where(group.Held.Contains)]))];
    }

    /// <summary>A way on which some of its hinges are driven and others follow.</summary>
    /// <param name="open">The angles where the way begins, by the panel that turns; for those that follow a guess.</param>
    /// <param name="follow">The hinges that follow.</param>
    /// <param name="isOpenClosed">Whether the loops are known to close where the way begins.</param>
    public LoopPath Path(double[] open, IReadOnlyList<Hinge> follow, bool isOpenClosed) =>
        new(new LoopSolver(tree, Loops, follow), Finished, open, isOpenClosed);

    /// <summary>Angles near to given ones by which the loops close while only some hinges give way; null where there are none.</summary>
    public double[]? Settle(double[] near, IEnumerable<Hinge> follow) => new LoopSolver(tree, Loops, follow).Settle(near);

    private double[] Settled()
    {
        var given = new double[tree.Piece.Panels.Count];
        foreach (var hinge in Held)
            given[hinge.Turning] = hinge.Fold.Angle;

        // Curved folds say their angle at one place only, so the others are solved for, starting from that.
        return tree.Strips.Closing.Count == 0 ? given : Settle(given, Held) ?? given;
    }

    private LoopPath Together()
    {
        var flat = new double[tree.Piece.Panels.Count];
        var stiff = Held.FirstOrDefault(hinge => !tree.Strips.Rulings.Contains(hinge.Fold)) ?? Held[0];
        if (Bends)
            return Alone();
        var middle = Held[0].Fixed;
        var path = Path(flat, [.. Held.Where(hinge => hinge.Fixed != middle)], true);
        return path.Closes || Alone() is not { Closes: true } alone ? path : alone;

        LoopPath Alone() => Path(flat, [.. Held.Where(hinge => hinge != stiff)], true);
    }
}
