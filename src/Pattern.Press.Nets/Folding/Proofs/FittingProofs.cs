namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves that pieces go over, around and into each other: with room, and without passing through anything.</summary>
internal static class FittingProofs
{
    private const int Positions = 6;

    public static IEnumerable<FoldingProof> Of(KitProofs.Working work)
    {
        var pieces = work.Thing.Closed.Where(part => part.Pose is not null).ToList();
        foreach (var part in pieces.Where(part => part.Copy == 0 && part.Part.To is not null))
        {
            if (pieces.Find(one => one.Part.Part == part.Part.To) is not { } host)
                continue;
            foreach (var proof in Rooms(work, part, host))
                yield return proof;
            if (part.Part.Goes != GoesWhere.Beside)
                yield return GoesOn(work, part, pieces);
        }

        if (pieces.Count > 1)
            yield return Together(work, pieces);
    }

    private static IEnumerable<FoldingProof> Rooms(KitProofs.Working work, PosedPart part, PosedPart host)
    {
        var covers = AssembledThing.Covers(part.Part);
        if (!covers && part.Part.Goes != GoesWhere.Inside)
            yield break;
        var (outer, inner) = covers ? (part, host) : (host, part);
        var along = AssembledThing.Direction(part.Part.Leaves);
        if (Nesting.Of(work.Slabs(outer)[0], work.Slabs(inner)[0], along) is not { } room)
            yield break;

        // What is glued in place only has to go in; what slides wants room to.
        var least = work.IsGluedIn(part) ? 0 : KitProofs.Clearance(Math.Max(work.Caliper(part), work.Caliper(host)));
        var holds = room.Room >= least - KitProofs.Working.Rounding;
        yield return new(FoldingProofKind.Clearance, part.Part.Part, room.Room, least, holds, [room.Outer, room.Inner]) { Other = host.Part.Part };
        var most = Math.Max(2 * work.Kit.Ease, 4 * least);
        if (covers && holds && work.Kit.Ease > 0)
            yield return new(FoldingProofKind.NotTooLoose, part.Part.Part, room.Room, most, room.Room <= most, [room.Outer, room.Inner]) { Other = host.Part.Part, IsWarning = true };
        if (covers)
            yield break;

        // Gussets that lie flat against the walls go down beside what is inside; where they have no room the walls give way.
        Nesting? best = null;
        foreach (var laid in work.Slabs(host).Skip(1))
        {
            if (Nesting.BesideGussets(laid, work.Slabs(part)[0], along) is { } beside && (best is null || beside.Room > best.Room))
                best = beside;
        }

        if (best is not null)
            yield return new(FoldingProofKind.RoomBesideGussets, part.Part.Part, best.Room, 0, best.Room >= -KitProofs.Working.Rounding, [best.Outer, best.Inner]) { Other = host.Part.Part, IsWarning = true };
    }

    // From off to on in a few positions, what covers the host itself away.
    private static FoldingProof GoesOn(KitProofs.Working work, PosedPart part, List<PosedPart> pieces)
    {
        var way = AssembledThing.Direction(part.Part.Leaves);
        var rest = pieces.Where(one => one.Part.Part != part.Part.Part && !(AssembledThing.Covers(one.Part) && one.Part.To == part.Part.To)
            && pieces.IndexOf(one) < pieces.IndexOf(part)).ToList();
        var far = rest.SelectMany(one => one.Corners).Max(way.Dot) - part.Corners.Min(way.Dot);
        var own = part.Pose!.Panels;
        Crossing? deepest = null;
        var ways = rest.Select(one => work.Slabs(one).Count).DefaultIfEmpty(1).Max();
        for (var laid = 0; laid < ways; laid++)
        {
            var standing = rest.SelectMany(one => PanelsOf(work, one, laid)).ToList();
            Crossing? here = null;
            for (var step = 0; step < Positions; step++)
            {
                var shift = RigidMotion.By(way * (far * step / Positions));
                foreach (var panel in own)
                    here = Deeper(here, Deepest(new PosedPanel(panel.Panel, shift.After(panel.Motion)), standing));
            }

            if (laid == 0 || (here?.Depth ?? 0) < deepest!.Depth)
                deepest = here;
            if (deepest is null)
                break;
        }

        var limit = Math.Max(work.Caliper(part), rest.Max(work.Caliper));
        var holds = (deepest?.Depth ?? 0) <= limit + Crossings.Tolerance;
        return new(FoldingProofKind.GoesTogether, part.Part.Part, deepest?.Depth ?? 0, limit, holds, holds ? [] : [deepest!.First, deepest.Second]) { Other = part.Part.To };
    }

    private static FoldingProof Together(KitProofs.Working work, List<PosedPart> pieces)
    {
        var limit = work.Thickest + Crossings.Tolerance;
        (Crossing? Crossing, string First, string Second) deepest = default;
        var ways = pieces.Max(one => work.Slabs(one).Count);
        for (var laid = 0; laid < ways; laid++)
        {
            (Crossing? Crossing, string First, string Second) here = default;
            for (var i = 0; i < pieces.Count; i++)
            {
                var standing = PanelsOf(work, pieces[i], laid).ToList();
                for (var j = i + 1; j < pieces.Count; j++)
                {
                    foreach (var panel in PanelsOf(work, pieces[j], laid))
                    {
                        if (Deepest(panel, standing) is { } found && found.Depth > (here.Crossing?.Depth ?? 0))
                            here = (found, pieces[j].Part.Part, pieces[i].Part.Part);
                    }
                }
            }

            if (laid == 0 || (here.Crossing?.Depth ?? 0) < (deepest.Crossing?.Depth ?? 0))
                deepest = here;
            if (deepest.Crossing is null)
                break;
        }

        var depth = deepest.Crossing?.Depth ?? 0;
        var holds = depth <= limit;
        return new(FoldingProofKind.NothingPassesAssembled, holds ? pieces[0].Part.Part : deepest.First!, depth, limit, holds, holds ? [] : [deepest.Crossing!.First, deepest.Crossing.Second])
        {
            Other = holds ? null : deepest.Second,
        };
    }

    private static IEnumerable<PosedPanel> PanelsOf(KitProofs.Working work, PosedPart part, int laid)
    {
        var ways = work.Slabs(part);
        return ways[Math.Min(laid, ways.Count - 1)].Select(slab => slab.Panel);
    }

    private static Crossing? Deepest(PosedPanel panel, List<PosedPanel> others)
    {
        Crossing? deepest = null;
        foreach (var other in others)
        {
            var depth = Crossings.Depth(panel, other);
            if (depth > Crossings.Tolerance && depth > (deepest?.Depth ?? 0))
                deepest = new Crossing(panel.Panel.Name, other.Panel.Name, depth);
        }

        return deepest;
    }

    private static Crossing? Deeper(Crossing? a, Crossing? b) => a is null || (b is not null && b.Depth > a.Depth) ? b : a;
}
