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
    /// <summary>The longest step from finished towards flat.</summary>
    private const double LongestStep = 1.0 / 20;

    /// <summary>A loop is closed when its ends are this near, as a part of the piece's size.</summary>
    private const double Closed = 1e-10;

    private readonly HingeTree tree;
    private readonly double[] finished;
    private readonly Hinge[] unknowns;
    private readonly int[] unknownOf;
    private readonly double[] angles;
    private readonly RigidMotion[] motions;
    private readonly double size;
    private readonly double[] residual;
    private readonly double[,] slopes;

    private LoopSolver(HingeTree tree, Hinge[] unknowns, double[] finished)
    {
        this.tree = tree;
        this.finished = finished;
        this.unknowns = unknowns;
        var panels = tree.Piece.Panels.Count;
        unknownOf = new int[panels];
        Array.Fill(unknownOf, -1);
        for (var i = 0; i < unknowns.Length; i++)
            unknownOf[unknowns[i].Turning] = i;
        angles = new double[panels];
        motions = new RigidMotion[panels];
        size = Math.Max(tree.Piece.Sheet.Width.Millimetres, tree.Piece.Sheet.Height.Millimetres);
        residual = new double[tree.Loops.Count * 6];
        slopes = new double[residual.Length, unknowns.Length];
    }

    /// <summary>The angle of each fold of the tree at an opening from 0 to 1.</summary>
    public static IReadOnlyDictionary<Fold, double> Angles(HingeTree tree, double opening)
    {
        var held = tree.Loops.SelectMany(tree.Around).ToHashSet();
        if (held.Count == 0 || opening is 0)
            return tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => hinge.Fold.Angle * opening);
        var finished = Settled(tree, held);
        if (opening is 1)
            return tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => finished[hinge.Turning]);

        // All folds at the root are driven together. A loop that is too stiff for that, such as four folds around a point,
        // is driven by the first of them alone.
        var free = tree.Outwards.Where(hinge => held.Contains(hinge) && hinge.Fixed != tree.Root).ToArray();
        var solver = new LoopSolver(tree, free, finished);
        if (!solver.Walk(opening))
        {
            var stiff = new LoopSolver(tree, [.. tree.Outwards.Where(held.Contains).Skip(1)], finished);
            if (stiff.Walk(opening))
                solver = stiff;
        }

        return tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => solver.angles[hinge.Turning]);
    }

    // The finished angle of each panel's hinge. Curved folds say theirs at one place only, so the others are solved for,
    // starting from that.
    private static double[] Settled(HingeTree tree, HashSet<Hinge> held)
    {
        var given = new double[tree.Piece.Panels.Count];
        foreach (var hinge in tree.Outwards)
            given[hinge.Turning] = hinge.Fold.Angle;
        if (tree.Strips.Closing.Count == 0)
            return given;
        var solver = new LoopSolver(tree, [.. tree.Outwards.Where(held.Contains)], given);
        given.CopyTo(solver.angles, 0);
        solver.Close();
        return solver.angles;
    }

    /// <summary>Whether the loops stayed closed on the way from finished to the opening.</summary>
    private bool Walk(double opening)
    {
        finished.CopyTo(angles, 0);
        var steps = (int)Math.Ceiling((1 - opening) / LongestStep);
        var (last, before) = (new double[unknowns.Length], new double[unknowns.Length]);
        Keep(last);
        var at = 1.0;
        for (var step = 1; step <= steps; step++)
        {
            var next = 1 + ((opening - 1) * step / steps);
            foreach (var hinge in tree.Outwards)
            {
                if (unknownOf[hinge.Turning] < 0)
                    angles[hinge.Turning] = finished[hinge.Turning] * next;
            }

            for (var i = 0; i < unknowns.Length; i++)
            {
                // Straight on from the last two positions; on the first step, in proportion. Near flat every angle is
                // proportional to every other, which a straight line through the last two meets as well.
                var guess = step == 1 ? last[i] * (next / at) : (2 * last[i]) - before[i];
                angles[unknowns[i].Turning] = guess;
            }

            if (!Close())
                return false;
            (last, before) = (before, last);
            Keep(last);
            at = next;
        }

        return true;
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
            for (var i = 0; i < n; i++)
            {
                right[i] = 0;
                for (var k = 0; k < residual.Length; k++)
                    right[i] -= slopes[k, i] * residual[k];
                for (var j = 0; j < n; j++)
                {
                    normal[i, j] = 0;
                    for (var k = 0; k < residual.Length; k++)
                        normal[i, j] += slopes[k, i] * slopes[k, j];
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
        for (var loop = 0; loop < tree.Loops.Count; loop++)
        {
            var hinge = tree.Loops[loop];
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
        for (var loop = 0; loop < tree.Loops.Count; loop++)
        {
            var closing = tree.Loops[loop];
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
