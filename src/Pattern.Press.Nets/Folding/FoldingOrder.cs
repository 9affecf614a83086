namespace Pattern.Press.Nets.Folding;

/// <summary>
/// An order in which hands fold a piece: in steps, what is in one step together. Folds that no loop of panels holds are made
/// each for itself; those of a loop move together, and what opens of it, such as a roof, only once the rest stands.
/// </summary>
internal sealed class FoldingOrder
{
    /// <summary>The rank of what is folded once the walls stand.</summary>
    private const double AfterWalls = 1.5;

    private readonly HingeTree tree;
    private readonly IReadOnlyList<Move> moves;
    private readonly Dictionary<Move, int> steps;

    private FoldingOrder(HingeTree tree, IReadOnlyList<Move> moves, Func<Move, double> rank)
    {
        (this.tree, this.moves) = (tree, moves);
        var ranks = moves.ToDictionary(move => move, rank);
        var order = ranks.Values.Distinct().Order().ToList();
        steps = ranks.ToDictionary(pair => pair.Key, pair => order.IndexOf(pair.Value));
        Steps = order.Count;
    }

    /// <summary>How many steps it takes.</summary>
    public int Steps { get; }

    /// <summary>
    /// The usual order: the tabs, then the walls, last the panels that go all the way over, those that face each other
    /// together. Where panels form loops, what opens follows the walls.
    /// </summary>
    /// <param name="tree">How the piece hangs together.</param>
    /// <param name="opens">The kinds of panels that are opened when it is finished.</param>
    public static FoldingOrder Usual(HingeTree tree, IReadOnlyList<string> opens) => new(tree, MovesOf(tree, opens), move => move.Rank);

    /// <summary>
    /// An order move by move that leads through, looked for as hands do: at each step the first that can be made wholly
    /// without passing through anything, those that the usual order has first, or what goes all the way over, tried first. Null
    /// where it comes to a stop.
    /// </summary>
    /// <param name="tree">How the piece hangs together.</param>
    /// <param name="opens">The kinds of panels that are opened when it is finished.</param>
    /// <param name="overFirst">Whether what goes all the way over is folded while everything is flat.</param>
    /// <param name="mayBeMade">Whether nothing is in the way in a pose.</param>
    /// <param name="positions">How many positions of each move are looked at.</param>
    public static FoldingOrder? Search(HingeTree tree, IReadOnlyList<string> opens, bool overFirst, Func<Pose, bool> mayBeMade, int positions)
    {
        var moves = MovesOf(tree, opens);
        var waiting = moves.OrderBy(move => overFirst && move.GoesOver ? -1 : move.Rank).ToList();
        var made = new List<Move>();
        while (waiting.Count > 0)
        {
            var next = waiting.Find(move => (move.After is null || made.Contains(move.After))
                && Enumerable.Range(1, positions).All(i => mayBeMade(Pose(tree, [.. made, move], one => one == move ? (double)i / positions : 1))));
            if (next is null)
                return null;
            waiting.Remove(next);
            made.Add(next);
        }

        return new(tree, made, move => made.IndexOf(move));
    }

    /// <summary>The piece folded part of the way: 0 flat, 1 finished; each step takes an equal share.</summary>
    /// <remarks>Parts are rounded, so that what was solved for at one is known again at the same part of another order.</remarks>
    public Pose At(double opening) => Pose(tree, moves, move => Math.Round(Math.Clamp((opening * Steps) - steps[move], 0, 1), 12));

    private static Pose Pose(HingeTree tree, IReadOnlyList<Move> moves, Func<Move, double> part)
    {
        var angles = new double[tree.Piece.Panels.Count];
        foreach (var move in moves)
        {
            // What comes after another move of the same folds takes over from it.
            if (part(move) is var made && (made == 0 && move.After is not null))
                continue;
            foreach (var (hinge, angle) in move.At(made))
                angles[hinge.Turning] = angle;
        }

        return Folder.Make(tree, hinge => angles[hinge.Turning]);
    }

    private static List<Move> MovesOf(HingeTree tree, IReadOnlyList<string> opens)
    {
        var held = tree.Groups.SelectMany(group => group.Held).ToHashSet();
        var moves = new List<Move>();
        var opening = tree.Groups.Count > 0 && opens.Count > 0 ? tree.Opening(opens) : null;
        foreach (var group in tree.Groups)
        {
            if (opening is null || !opening.Moves(group))
            {
                // What bows apart when its flaps are pushed in does so once the walls stand, one after the other: the flaps of the
                // second lie over those of the first.
                moves.Add(new Move(group.Bends ? AfterWalls + (moves.Count * 1e-3) : 1, false, null, part => Angles(group.Held, part is 1 ? group.Finished : group.FromFlat.At(part))));
                continue;
            }

            // First the walls, everything that opens straight on from them; then that.
            var follow = group.Held.Where(hinge => tree.Piece.Panels[hinge.Turning].Role == PanelRole.Gusset).ToList();
            var walls = new LoopPath(new LoopSolver(tree, group.Loops, follow), opening.At(group, 0), new double[tree.Piece.Panels.Count], true);
            var stand = new Move(1, false, null, part => Angles(group.Held, walls.At(part)));
            moves.Add(stand);
            IReadOnlyList<Hinge> lid = [.. group.Held, .. opening.Followers];
            moves.Add(new Move(AfterWalls, false, stand, part => opening.Angles(part) is var angles ? lid.Select(hinge => (hinge, angles[hinge.Fold])) : []));
            held.UnionWith(opening.Followers);
        }

        // What is rolled is rolled all at once.
        var rolled = tree.Outwards.Where(hinge => !held.Contains(hinge)).GroupBy(hinge => tree.Strips.Rulings.Contains(hinge.Fold) ? tree.Piece.Panels[hinge.Turning].Kind : "", StringComparer.Ordinal);
        foreach (var group in rolled)
        {
            if (group.Key.Length > 0)
                moves.Add(Plain([.. group], Rank(group.First(), tree.Piece)));
            else
                moves.AddRange(group.Select(hinge => Plain([hinge], opening is not null && opening.Opens(hinge) ? AfterWalls : Rank(hinge, tree.Piece))));
        }

        return moves;

        static Move Plain(IReadOnlyList<Hinge> hinges, double rank) =>
            new(rank, hinges[0].Fold.GoesOver, null, part => hinges.Select(hinge => (hinge, hinge.Fold.Angle * part)));

        static IEnumerable<(Hinge, double)> Angles(IReadOnlyList<Hinge> hinges, double[] angles) => hinges.Select(hinge => (hinge, angles[hinge.Turning]));
    }

    // Panels that go all the way over pass through each other's way at the corners, so those that face each other go
    // together and the others after them: by the way their folds run, from 0 to below 180 degrees.
    private static double Rank(Hinge hinge, Piece piece)
    {
        if (!hinge.Fold.GoesOver)
            return piece.Panels[hinge.Turning].Role == PanelRole.Tab ? 0 : 1;
        var along = hinge.To - hinge.From;
        var heading = Math.Round(Math.Atan2(along.Y, along.X) * 180 / Math.PI, 3);
        return 2 + (((heading % 180) + 180) % 180 / 180);
    }

    /// <summary>Folds that are made together.</summary>
    /// <param name="Rank">When the usual order has them.</param>
    /// <param name="GoesOver">Whether they go all the way over.</param>
    /// <param name="After">The move that has to be made before, of which this one takes over; null for none.</param>
    /// <param name="At">The angles of its hinges part of the way.</param>
    private sealed record Move(double Rank, bool GoesOver, Move? After, Func<double, IEnumerable<(Hinge Hinge, double Angle)>> At);
}
