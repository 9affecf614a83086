namespace Pattern.Press.Nets.Folding;

/// <summary>
/// Finds fold angles that keep loops of panels closed.
/// </summary>
/// <remarks>
/// Flat, and often finished too, is a point where several ways of folding meet: a gusset can go in or out. The finished
/// angles say which way is meant, so the search walks from there towards flat in small steps, each starting from where the
/// last one ended. Each step is a damped Gauss–Newton search; the damping also picks the smallest change where the angles
/// are not fully determined, which keeps symmetrical pieces symmetrical.
/// </remarks>
internal sealed class LoopSolver
{
    /// <summary>The longest step of a walk, as a part of the whole way.</summary>
    private const double LongestStep = 1.0 / 20;

    /// <summary>A loop is closed when its ends are this near, as a part of the piece's size.</summary>
    private const double Closed = 1e-10;

    private readonly HingeTree tree;
    private readonly IReadOnlyList<Hinge> loops;
    private readonly Hinge[] unknowns;
    private readonly int[] unknownOf;
    private readonly double[] angles;
    private readonly RigidMotion[] motions;
    private readonly double size;
    private readonly double[] residual;
    private readonly double[,] slopes;

    /// <param name="tree">How the piece hangs together.</param>
    /// <param name="loops">The loops that have to close.</param>
    /// <param name="unknowns">The hinges whose angles may be chosen for that.</param>
    public LoopSolver(HingeTree tree, IReadOnlyList<Hinge> loops, IEnumerable<Hinge> unknowns)
    {
        (this.tree, this.loops, this.unknowns) = (tree, loops, [.. unknowns]);
        var panels = tree.Piece.Panels.Count;
        unknownOf = new int[panels];
        Array.Fill(unknownOf, -1);
        for (var i = 0; i < this.unknowns.Length; i++)
            unknownOf[this.unknowns[i].Turning] = i;
        angles = new double[panels];
        motions = new RigidMotion[panels];
        size = Math.Max(tree.Piece.Sheet.Width.Millimetres, tree.Piece.Sheet.Height.Millimetres);
        residual = new double[loops.Count * 6];
        slopes = new double[residual.Length, this.unknowns.Length];
    }

    /// <summary>The angles nearest to given ones by which the loops close, by the panel that turns; null where there are none.</summary>
    public double[]? Settle(double[] near)
    {
        near.CopyTo(angles, 0);
        return Close() ? [.. angles] : null;
    }

    /// <summary>The angles of a guess, those of hinges that are no unknowns taken from elsewhere.</summary>
    public double[] Driven(double[] given, double[] guess)
    {
        double[] both = [.. given];
        foreach (var hinge in unknowns)
            both[hinge.Turning] = guess[hinge.Turning];
        return both;
    }

    /// <summary>
    /// Walks evenly from one set of angles to another. The unknowns follow so that the loops stay closed; what they would be at
    /// the end is a guess, by which the first step sets out.
    /// </summary>
    /// <returns>The angles at every step, first to last without the end itself; null where the loops do not stay closed.</returns>
    public IReadOnlyList<double[]>? Walk(double[] from, double[] to)
    {
        from.CopyTo(angles, 0);
        var steps = (int)Math.Ceiling(1 / LongestStep);
        var way = new List<double[]> { (double[])from.Clone() };
        for (var step = 1; step < steps; step++)
        {
            var part = (double)step / steps;
            foreach (var hinge in tree.Outwards)
                angles[hinge.Turning] = from[hinge.Turning] + ((to[hinge.Turning] - from[hinge.Turning]) * part);

            // Straight on from the last two positions. Near flat every angle is proportional to every other, which a straight
            // line through the last two meets as well.
            foreach (var hinge in step == 1 ? [] : unknowns)
                angles[hinge.Turning] = (2 * way[^1][hinge.Turning]) - way[^2][hinge.Turning];
            if (!Close())
                return null;
            way.Add([.. angles]);
        }

        return way;
    }

    private void Keep(double[] values)
    {
        for (var i = 0; i < unknowns.Length; i++)
            values[i] = angles[unknowns[i].Turning];
    }

    private bool Close()
    {
        var (error, n) = (Measure(), unknowns.Length);
        var damping = 1e-6;
        var (normal, right, kept) = (new double[n, n], new double[n], new double[n]);
        for (var round = 0; round < 60 && error > 1e-15 * size; round++)
        {
            Slope();
            Keep(kept);
            Array.Clear(normal);
            Array.Clear(right);
            for (var k = 0; k < residual.Length; k++)
            {
                // Each loop has but a few of the unknowns on its way.
                for (var i = 0; i < n; i++)
                {
                    if (slopes[k, i] is var slope && slope == 0)
                        continue;
                    right[i] -= slope * residual[k];
                    for (var j = 0; j <= i; j++)
                        normal[i, j] += slope * slopes[k, j];
                }
            }

            // The damping shrinks with the error, so that the last rounds are as quick as undamped ones.
            var scale = damping * Math.Min(1, error / size) * size * size;
            for (var i = 0; i < n; i++)
                normal[i, i] += scale + (1e-14 * size * size);
            LinearSystem.Solve(normal, right);
            for (var i = 0; i < n; i++)
                angles[unknowns[i].Turning] = kept[i] + (right[i] * 180 / Math.PI);

            var now = Measure();
            if (now < error)
            {
                error = now;
                damping = Math.Max(damping / 4, 1e-9);
                continue;
            }

            for (var i = 0; i < n; i++)
                angles[unknowns[i].Turning] = kept[i];
            Measure();
            if (damping > 1e3 || error < Closed * 1e-3 * size)
                break;
            damping *= 16;
        }

        return error < Closed * size;
    }

    /// <summary>Folds, and measures how far the ends of each loop's fold are apart; the length of all those gaps together.</summary>
    private double Measure()
    {
        tree.Fold(hinge => angles[hinge.Turning], motions);
        var sum = 0.0;
        for (var loop = 0; loop < loops.Count; loop++)
        {
            var hinge = loops[loop];
            var (a, b) = (motions[hinge.Fixed], motions[hinge.Turning]);
            Put(loop * 6, a.Apply(hinge.From) - b.Apply(hinge.From));
            Put((loop * 6) + 3, a.Apply(hinge.To) - b.Apply(hinge.To));
        }

        foreach (var value in residual)
            sum += value * value;
        return Math.Sqrt(sum);

        void Put(int at, Vector3d gap) => (residual[at], residual[at + 1], residual[at + 2]) = (gap.X, gap.Y, gap.Z);
    }

    /// <summary>How the gaps change with each unknown angle, in millimetres for each radian.</summary>
    private void Slope()
    {
        Array.Clear(slopes);
        for (var loop = 0; loop < loops.Count; loop++)
        {
            var closing = loops[loop];
            Add(loop * 6, closing.Fixed, closing, 1);
            Add(loop * 6, closing.Turning, closing, -1);
        }
    }

    private void Add(int row, int panel, Hinge closing, double sign)
    {
        var (from, to) = (motions[panel].Apply(closing.From), motions[panel].Apply(closing.To));
        for (var hinge = tree.HingeOf[panel]; hinge is not null; hinge = tree.HingeOf[hinge.Fixed])
        {
            var column = unknownOf[hinge.Turning];
            if (column < 0)
                continue;
            var carrier = motions[hinge.Fixed];
            var axis = carrier.Turned(hinge.To - hinge.From).Unit * (hinge.Fold.Direction == FoldDirection.Valley ? sign : -sign);
            var start = carrier.Apply(hinge.From);
            Put(row, axis.Cross(from - start));
            Put(row + 3, axis.Cross(to - start));

            void Put(int at, Vector3d change)
            {
                slopes[at, column] += change.X;
                slopes[at + 1, column] += change.Y;
                slopes[at + 2, column] += change.Z;
            }
        }
    }
}
