namespace Pattern.Press.Nets.Folding;

/// <summary>
/// How a finished piece is opened whose loops of panels hold what opens, such as a roof with gussets: the first kind of
/// panels that is named leads, the others and the gussets follow by angles that keep every loop closed, and the walls stand.
/// </summary>
/// <remarks>
/// Flaps that hang on a fold along an arc do not open by rigid strips: pushed in, they and what they hang on bend opposite
/// ways, and between there and bending alike, with the fold flat, lies no way on which strips keep their rulings. Card gets
/// there by bending across them for a moment. So such flaps are either in or wholly out, following what they hang on; both
/// are poses with closed loops.
/// </remarks>
internal sealed class LoopOpening
{
    /// <summary>Folds whose finished angles differ by less, in degrees, are finished alike.</summary>
    private const double Alike = 1e-6;

    private readonly HingeTree tree;
    private readonly HashSet<string> kinds;
    private readonly List<(LoopGroup Group, double[]? Open, LoopPath? Path)> groups = [];
    private readonly Dictionary<Hinge, Hinge> twins = [];

    public LoopOpening(HingeTree tree, IReadOnlyList<string> kinds)
    {
        (this.tree, this.kinds) = (tree, [.. kinds]);
        foreach (var group in tree.Groups)
        {
            var opens = group.Held.Where(Opens).ToList();
            if (opens.Count == 0)
            {
                groups.Add((group, null, null));
                continue;
            }

            var lead = kinds.First(kind => opens.Exists(hinge => Is(hinge, kind)));
            var leaders = opens.Where(hinge => Is(hinge, lead) && !IsRuling(hinge)).ToList();
            var follow = group.Held.Where(hinge => !leaders.Contains(hinge) && (Opens(hinge) || tree.Piece.Panels[hinge.Turning].Role == PanelRole.Gusset)).ToList();
            double[] open = [.. group.Finished];
            foreach (var hinge in opens)
                open[hinge.Turning] = 0;
            if (group.Bends)
            {
                groups.Add((group, group.Settle(open, follow), null));
                continue;
            }

            // Wholly open, everything that opens stands straight on from what it hangs on; only gussets are solved for.
            var wide = group.Settle(open, follow.Where(hinge => !Opens(hinge)));
            groups.Add((group, wide, group.Path(wide ?? open, follow, wide is not null)));
        }

        // What hangs free on a panel beside a fold that loops hold, finished alike, is its mirror image: a gusset that is tucked
        // in where the others are glued turns as they do.
        var held = tree.Groups.SelectMany(group => group.Held.Concat(group.Loops)).ToHashSet();
        foreach (var free in tree.Outwards.Where(hinge => Opens(hinge) && !held.Contains(hinge)))
        {
            if (held.FirstOrDefault(hinge => (hinge.Fixed == free.Fixed || hinge.Turning == free.Fixed) && hinge.Fold.Direction == free.Fold.Direction && Math.Abs(hinge.Fold.Angle - free.Fold.Angle) < Alike) is { } twin)
                twins.Add(free, twin);
        }
    }

    /// <summary>Hinges that no loop holds and that turn as others do that loops hold.</summary>
    public IReadOnlyCollection<Hinge> Followers => twins.Keys;

    /// <summary>Whether loops hold what opens, and it can be followed on its way.</summary>
    public bool Moves(LoopGroup group) => groups.Exists(one => one.Group == group && one is { Open: not null, Path.Closes: true });

    /// <summary>Whether a hinge turns one of the panels that open.</summary>
    public bool Opens(Hinge hinge) => kinds.Contains(Kind(hinge)) || kinds.Contains(Name(hinge));

    /// <summary>The angles of the hinges that a group holds, by the panel that turns.</summary>
    /// <param name="group">The group.</param>
    /// <param name="part">How far what opens is folded: 0 wholly open, 1 finished.</param>
    public double[] At(LoopGroup group, double part)
    {
        var (_, open, path) = groups.Find(one => one.Group == group);
        return part is 1 ? group.Finished : path?.At(part) ?? open ?? group.Finished;
    }

    /// <summary>The angle of every fold of the tree; what opens and no loop holds keeps that part of its finished angle.</summary>
    public IReadOnlyDictionary<Fold, double> Angles(double part)
    {
        var angles = tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => hinge.Fold.Angle * (Opens(hinge) ? part : 1));
        foreach (var group in tree.Groups)
        {
            var own = At(group, part);
            foreach (var hinge in group.Held)
                angles[hinge.Fold] = own[hinge.Turning];
        }

        if (twins.Count > 0 && part is not 1)
        {
            var motions = new RigidMotion[tree.Piece.Panels.Count];
            tree.Fold(hinge => angles[hinge.Fold], motions);
            foreach (var (free, twin) in twins)
                angles[free.Fold] = twin.AngleBetween(motions[twin.Fixed], motions[twin.Turning]);
        }

        return angles;
    }

    private bool Is(Hinge hinge, string kindOrName) => Kind(hinge) == kindOrName || Name(hinge) == kindOrName;

    private string Name(Hinge hinge) => tree.Piece.Panels[hinge.Turning].Name;

    private string Kind(Hinge hinge) => tree.Piece.Panels[hinge.Turning].Kind;

    private bool IsRuling(Hinge hinge) => tree.Strips.Rulings.Contains(hinge.Fold);
}
