namespace Pattern.Press.Nets.Folding;

/// <summary>An order in which hands fold a piece whose panels form no loops: in steps, what is in one step together.</summary>
internal sealed class FoldingOrder
{
    /// <summary>A fold past this angle, in degrees, lays its panels on each other.</summary>
    private const double LiesOn = 179;

    private readonly HingeTree tree;
    private readonly Dictionary<Fold, int> steps;

    private FoldingOrder(HingeTree tree, Func<Hinge, double> rank)
    {
        this.tree = tree;
        var ranks = tree.Outwards.ToDictionary(hinge => hinge.Fold, rank);
        var order = ranks.Values.Distinct().Order().ToList();
        steps = ranks.ToDictionary(pair => pair.Key, pair => order.IndexOf(pair.Value));
        Steps = order.Count;
    }

    /// <summary>How many steps it takes.</summary>
    public int Steps { get; }

    /// <summary>
    /// The usual order: the tabs, then the walls, last the panels that go all the way over, those that face each other together.
    /// </summary>
    public static FoldingOrder Usual(HingeTree tree) => new(tree, hinge => Rank(hinge, tree.Piece));

    /// <summary>
    /// An order fold by fold that leads through, looked for as hands do: at each step the first fold that can be made wholly
    /// without passing through anything, those that the usual order has first, or what goes all the way over, tried first. Null
    /// where it comes to a stop.
    /// </summary>
    /// <param name="tree">How the piece hangs together.</param>
    /// <param name="overFirst">Whether what goes all the way over is folded while everything is flat.</param>
    /// <param name="mayBeMade">Whether nothing is in the way in a pose.</param>
    /// <param name="positions">How many positions of each fold are looked at.</param>
    public static FoldingOrder? Search(HingeTree tree, bool overFirst, Func<Pose, bool> mayBeMade, int positions)
    {
        var waiting = tree.Outwards.OrderBy(hinge => overFirst && hinge.Fold.Angle > LiesOn ? -1 : Rank(hinge, tree.Piece)).ToList();
        var made = new Dictionary<Fold, int>();
        while (waiting.Count > 0)
        {
            var next = waiting.Find(hinge => Enumerable.Range(1, positions).All(i => mayBeMade(With(hinge, (double)i / positions))));
            if (next is null)
                return null;
            waiting.Remove(next);
            made.Add(next.Fold, made.Count);
        }

        return new(tree, hinge => made[hinge.Fold]);

        Pose With(Hinge turning, double part) => Folder.Make(tree, hinge =>
            hinge == turning ? hinge.Fold.Angle * part : made.ContainsKey(hinge.Fold) ? hinge.Fold.Angle : 0);
    }

    /// <summary>The piece folded part of the way: 0 flat, 1 finished; each step takes an equal share.</summary>
    public Pose At(double opening) => Folder.Make(tree, hinge =>
        hinge.Fold.Angle * Math.Clamp((opening * Steps) - steps[hinge.Fold], 0, 1));

    // Panels that go all the way over pass through each other's way at the corners, so those that face each other go
    // together and the others after them: by the way their folds run, from 0 to below 180 degrees.
    private static double Rank(Hinge hinge, Piece piece)
    {
        if (hinge.Fold.Angle <= LiesOn)
            return piece.Panels[hinge.Turning].Role == PanelRole.Tab ? 0 : 1;
        var along = hinge.To - hinge.From;
        var heading = Math.Round(Math.Atan2(along.Y, along.X) * 180 / Math.PI, 3);
        return 2 + (((heading % 180) + 180) % 180 / 180);
    }
}
