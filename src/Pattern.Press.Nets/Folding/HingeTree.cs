using System.Collections.Concurrent;
using System.Runtime.CompilerServices;

namespace Pattern.Press.Nets.Folding;

/// <summary>
/// How the panels of a piece hang together: a tree of hinges from the root outwards, each panel on the shortest way from
/// the root, and the folds that are left over, which close loops around interior points of the sheet.
/// </summary>
internal sealed class HingeTree
{
    private static readonly ConditionalWeakTable<StripPiece, HingeTree> Known = [];

    private readonly Lazy<IReadOnlyList<LoopGroup>> _groups;
    private readonly ConcurrentDictionary<string, LoopOpening> _openings = new(StringComparer.Ordinal);

    private HingeTree(StripPiece strips)
    {
        var piece = strips.Piece;
        (Strips, Piece) = (strips, piece);
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < piece.Panels.Count; i++)
            places.Add(piece.Panels[i].Name, i);

        Root = places[piece.Root];
        HingeOf = new Hinge?[piece.Panels.Count];
        var used = new HashSet<Fold>();
        var order = new List<Hinge>();
        Reach(fold => !strips.Closing.Contains(fold));
        if (order.Count + 1 < piece.Panels.Count)
            Reach(_ => true);

        Outwards = order;
        Loops = [.. piece.Folds.Where(fold => !used.Contains(fold))
            .Select(fold => new Hinge(fold, piece, places[fold.Parent], places[fold.Child]))];

        _groups = new(() => LoopGroup.Of(this));

        // Outwards from what is reached already, each panel on the shortest way.
        void Reach(Func<Fold, bool> mayCarry)
        {
            var reached = new Queue<int>([Root, .. order.Select(hinge => hinge.Turning)]);
            while (reached.TryDequeue(out var at))
            {
                foreach (var fold in piece.Folds)
                {
                    var (parent, child) = (places[fold.Parent], places[fold.Child]);
                    var other = parent == at ? child : child == at ? parent : -1;
                    if (other < 0 || other == Root || HingeOf[other] is not null || !mayCarry(fold))
                        continue;
                    var hinge = new Hinge(fold, piece, at, other);
                    HingeOf[other] = hinge;
                    order.Add(hinge);
                    used.Add(fold);
                    reached.Enqueue(other);
                }
            }
        }
    }

    /// <summary>The tree of a piece, made once.</summary>
    public static HingeTree Of(StripPiece strips) => Known.GetValue(strips, strips => new HingeTree(strips));

    /// <summary>The angle of each fold of the tree at an opening from 0 to 1, by which its loops stay closed; solved for once.</summary>
    public IReadOnlyDictionary<Fold, double> AnglesAt(double opening)
    {
        var angles = Outwards.ToDictionary(hinge => hinge.Fold, hinge => hinge.Fold.Angle * opening);
        foreach (var group in Groups)
        {
            var own = opening is 1 ? group.Finished : group.FromFlat.At(opening);
            foreach (var hinge in group.Held)
                angles[hinge.Fold] = own[hinge.Turning];
        }

        return angles;
    }

    /// <summary>How the panels of some kinds open that loops hold; solved for once.</summary>
    public LoopOpening Opening(IReadOnlyList<string> kinds) => _openings.GetOrAdd(string.Join('|', kinds), _ => new LoopOpening(this, kinds));

    /// <summary>The loops, in groups that move each for itself.</summary>
    public IReadOnlyList<LoopGroup> Groups => _groups.Value;

    /// <summary>The piece with what is known about its strips.</summary>
    public StripPiece Strips { get; }

    public Piece Piece { get; }

    /// <summary>The place of the root in the piece's list of panels.</summary>
    public int Root { get; }

    /// <summary>For each panel, the hinge it hangs on; null for the root.</summary>
    public Hinge?[] HingeOf { get; }

    /// <summary>The hinges of the tree, each after the one that carries it.</summary>
    public IReadOnlyList<Hinge> Outwards { get; }

    /// <summary>The folds that close loops.</summary>
    public IReadOnlyList<Hinge> Loops { get; }

    /// <summary>The hinges on the way round the loop that a fold closes: those above one of its panels but not above both.</summary>
    public IEnumerable<Hinge> Around(Hinge loop)
    {
        var above = Above(loop.Fixed).ToHashSet();
        above.SymmetricExceptWith(Above(loop.Turning));
        return Outwards.Where(above.Contains);
    }

    /// <summary>The hinges that move one panel but not another, from the root outwards.</summary>
    public IEnumerable<Hinge> Carrying(int panel, int still) => Above(panel).Except(Above(still)).Reverse();

    /// <summary>Moves every panel by the angles of the tree's folds.</summary>
    /// <param name="angle">The angle of each fold of the tree in degrees, in its own direction.</param>
    /// <param name="motions">Receives the move of each panel, in the piece's order.</param>
    public void Fold(Func<Hinge, double> angle, Span<RigidMotion> motions)
    {
        motions[Root] = RigidMotion.None;
        foreach (var hinge in Outwards)
            motions[hinge.Turning] = motions[hinge.Fixed].After(hinge.Turn(angle(hinge)));
    }

    private IEnumerable<Hinge> Above(int panel)
    {
        for (var hinge = HingeOf[panel]; hinge is not null; hinge = HingeOf[hinge.Fixed])
            yield return hinge;
    }
}
