namespace Pattern.Press.Nets.Folding;

/// <summary>The way into a piece: whether anything of it is met on the way, straight along which something inside comes off.</summary>
internal static class WayIn
{
    // Places in what goes in that are followed, each way.
    private const int Across = 9;

    /// <summary>What only touches the way is not in it.</summary>
    private const double Within = 0.98;

    /// <summary>Whatever lies ahead, however near.</summary>
    private const double Ahead = double.Epsilon;

    /// <summary>Whether a panel of a folded piece is in the way of anything inside.</summary>
    /// <param name="pose">The piece, where it stands.</param>
    /// <param name="inside">What is inside, in its place.</param>
    public static bool IsShut(Pose pose, IReadOnlyList<PosedPart> inside) => inside.Any(part =>
    {
        var panels = pose.Panels.Select(panel => new PanelInSight(panel, AssembledThing.Direction(part.Part.Leaves))).ToList();
        return Places(part.Item!).Any(place => panels.Exists(panel => panel.Meets(part.Foot + place, Ahead)));
    });

    /// <summary>Whether everything inside has room on its way between the panels of a folded piece, thick as they are.</summary>
    /// <param name="pose">The piece, where it stands.</param>
    /// <param name="card">How thick its card is, in millimetres.</param>
    /// <param name="inside">What is inside, in its place.</param>
    public static bool IsOpen(Pose pose, double card, IReadOnlyList<PosedPart> inside) => !IsShut(pose, inside) && inside.All(part =>
        Proofs.ItemRoom.Passing(part.Item!, part.Foot, part.Part.Leaves, pose.Panels.Select(panel => new Proofs.Slab(panel, card / 2, card / 2))) is not { Room: < 0 });

    // Places all over an item, seen from the middle of its underside.
    private static IEnumerable<Vector3d> Places(ItemBody item)
    {
        for (var i = 0; i < Across; i++)
        {
            for (var j = 0; j < Across; j++)
            {
                for (var k = 0; k < Across; k++)
                {
                    var place = new Vector3d(Part(i) * item.Width, Part(j) * item.Depth, Part(k) * item.Height);
                    if (!item.IsRound || item.Distance(place) < 0)
                        yield return place + (Vector3d.UnitZ * (item.Height / 2));
                }
            }
        }

        static double Part(int i) => Within * (((double)i / (Across - 1)) - 0.5);
    }
}
