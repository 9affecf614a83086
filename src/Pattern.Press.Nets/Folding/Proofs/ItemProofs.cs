namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves that the item has its ease on every side, does not touch what is above it, and can be put in.</summary>
internal static class ItemProofs
{
    public static IEnumerable<FoldingProof> Of(KitProofs.Working work)
    {
        var items = work.Thing.Closed.Where(part => part.Item is not null && part.Part.Goes == GoesWhere.Inside).ToList();
        if (items.Count == 0 || work.Thing.Closed.FirstOrDefault(one => one.Part.Part == items[0].Part.To && one.Pose is not null) is not { } host)
            yield break;

        // What is put on afterwards is in nobody's way, and is no wall beside the item either.
        var pieces = work.Thing.Closed.Where(part => part.Pose is not null).ToList();
        var beside = pieces.Where(part => !AssembledThing.Covers(part.Part)).ToList();
        var isFlat = host.Pose!.Panels.All(panel => Math.Abs(panel.Facing.Z) > 0.99);
        var ease = work.Kit.Ease;
        if (Between(items) is { } gap)
            yield return new(FoldingProofKind.RoomBetweenItems, host.Part.Part, gap, ease, gap >= ease - KitProofs.Working.Rounding, []) { Other = Assembly.Item };
        if (isFlat)
        {
            var card = work.Caliper(host) / 2;
            if (Least(items, item => ItemRoom.InPocket(item.Item!, item.Foot, host.Pose!, card, null, [])) is { } room)
                yield return Proof(FoldingProofKind.RoomAroundItem, room, ease);
            if (Least(items, item => ItemRoom.InPocket(item.Item!, item.Foot, host.Pose!, card, item.Part.Leaves, [.. host.Part.Opens])) is { } way)
                yield return Proof(FoldingProofKind.ItemPassesOpening, way, 0);
            yield break;
        }

        if (BestWay(work, beside, slabs => Least(items, item => ItemRoom.Around(item.Item!, item.Foot, slabs))) is { } around)
            yield return Proof(FoldingProofKind.RoomAroundItem, around, ease);
        var all = pieces.SelectMany(part => work.Slabs(part)[0]).ToList();
        if (Least(items, item => ItemRoom.Above(item.Item!, item.Foot, all)) is { } above)
            yield return Proof(FoldingProofKind.RoomAboveItem, above, 0);

        if (Passing(work, beside, items) is { } passes)
        {
            var proof = Proof(FoldingProofKind.ItemPassesOpening, passes, 0);
            yield return proof.Holds ? proof : proof with { WouldOpen = WouldOpen(host, passes, opens => Passing(work, [.. beside.Select(part => part.Part == host.Part ? part with { Part = part.Part with { Opens = opens } } : part)], items)) };
        }

        FoldingProof Proof(FoldingProofKind kind, ItemRoom room, double least)
        {
            var holds = room.Room >= least - KitProofs.Working.Rounding;
            return new(kind, host.Part.Part, room.Room, least, holds, [room.Panel]) { Other = Assembly.Item };
        }
    }

    private static ItemRoom? Passing(KitProofs.Working work, List<PosedPart> beside, List<PosedPart> items)
    {
        // In the state in which it is drawn.
        var open = beside.Select(part => part.Part.OpensWholly || part.Part.Opens.Count > 0 ? work.Thick(part, work.Thing.Filled(part, 0.5, 0)) : null).ToList();
        return BestWay(work, beside, slabs => Least(items, item => ItemRoom.Passing(item.Item!, item.Foot, item.Part.Leaves, slabs)), open);
    }

    // One kind of panel in its way after the other is opened, until it passes or nothing changes any more.
    private static IReadOnlyList<string> WouldOpen(PosedPart host, ItemRoom passes, Func<IReadOnlyList<string>, ItemRoom?> passing)
    {
        if (host.Part.OpensWholly)
            return [];
        var opens = host.Part.Opens.ToList();
        while (passes.Room < -KitProofs.Working.Rounding)
        {
            var kind = host.Pose!.Piece.Panels.FirstOrDefault(panel => panel.Name == passes.Panel)?.Kind;
            if (kind is null || opens.Contains(kind))
                return [];
            opens.Add(kind);
            if (passing([.. opens]) is not { } room)
                return [];
            passes = room;
        }

        return [.. opens.Skip(host.Part.Opens.Count)];
    }

    /// <summary>Proves of what is put into a flat piece at last, as a card into its envelope, that it goes in and has room there.</summary>
    public static IEnumerable<FoldingProof> OfPutIn(KitProofs.Working work)
    {
        var ways = new[] { Leaving.Back, Leaving.Front, Leaving.Right, Leaving.Left };
        foreach (var part in work.Thing.Parts.Where(part => part.IsPutIn))
        {
            // Without a place of its own the item lies in what is put in.
            var carried = work.Kit.Kit.Assembly.Find(Assembly.Item) is null ? work.Kit.Item : null;
            if (work.Thing.PutIn(part, carried?.Height ?? 0) is not var (host, body))
                continue;
            var card = work.Caliper(host) / 2;
            if (carried is not null && Carried(carried, body, work.Kit.Kit.Pieces.First(one => one.Piece.Id == part.Part).Piece) is { } over)
                yield return Proof(FoldingProofKind.RoomAroundItem, part.Part, Assembly.Item, new ItemRoom(over, ""), work.Kit.Ease);
            if (!host.Pose!.Panels.All(panel => Math.Abs(panel.Facing.Z) > 0.99))
                continue;
            if (ItemRoom.InPocket(body.Item!, body.Foot, host.Pose, card, null, []) is { } room)
                yield return Proof(FoldingProofKind.RoomAroundPutIn, host.Part.Part, part.Part, room, KitProofs.Clearance(2 * card));

            // In through the side where most of it is open.
            if (Widest(host.Part.Opens) is { } widest)
            {
                var proof = Proof(FoldingProofKind.PutInPassesOpening, host.Part.Part, part.Part, widest, 0);
                yield return proof.Holds ? proof : proof with { WouldOpen = WouldOpen(host, widest, Widest) };
            }

            ItemRoom? Widest(IReadOnlyList<string> opens) =>
                ways.Select(way => ItemRoom.InPocket(body.Item!, body.Foot, host.Pose!, card, way, [.. opens])).OfType<ItemRoom>().MaxBy(one => one.Room);
        }

        static FoldingProof Proof(FoldingProofKind kind, string host, string other, ItemRoom room, double least) =>
            new(kind, host, room.Room, least, room.Room >= least - KitProofs.Working.Rounding, room.Panel.Length > 0 ? [room.Panel] : []) { Other = other };
    }

    // How much of the panel that lies still shows around the item at the least.
    private static double? Carried(ItemBody item, PosedPart body, Piece piece)
    {
        var bounds = piece.Panel(piece.Root).Outline.Bounds;
        var (wide, narrow) = (Math.Max(bounds.Width, bounds.Height), Math.Min(bounds.Width, bounds.Height));
        return body.Item is null ? null : Math.Min(wide - Math.Max(item.Width, item.Depth), narrow - Math.Min(item.Width, item.Depth)) / 2;
    }

    // The least distance of two items; seen from above, things that are round as they stand are discs and all others oblongs.
    private static double? Between(List<PosedPart> items)
    {
        double? least = null;
        for (var i = 0; i < items.Count; i++)
        {
            for (var j = i + 1; j < items.Count; j++)
            {
                var (one, other, apart) = (items[i].Item!, items[j].Item!, items[j].Foot - items[i].Foot);
                var (right, back) = (Math.Abs(apart.X) - ((one.Width + other.Width) / 2), Math.Abs(apart.Y) - ((one.Depth + other.Depth) / 2));
                var gap = one.IsRound && !items[i].Part.IsTipped
                    ? Math.Sqrt((apart.X * apart.X) + (apart.Y * apart.Y)) - ((one.Width + other.Width) / 2)
                    : right > 0 && back > 0 ? Math.Sqrt((right * right) + (back * back)) : Math.Max(right, back);
                least = Math.Min(least ?? gap, gap);
            }
        }

        return least;
    }

    // The best that can be had with the gussets laid one way or another.
    private static ItemRoom? BestWay(
        KitProofs.Working work, List<PosedPart> parts, Func<IReadOnlyList<Slab>, ItemRoom?> measure, List<IReadOnlyList<Slab>?>? instead = null)
    {
        ItemRoom? best = null;
        var ways = parts.Select(part => work.Slabs(part).Count).DefaultIfEmpty(1).Max();
        for (var way = 0; way < ways; way++)
        {
            var slabs = new List<Slab>();
            for (var i = 0; i < parts.Count; i++)
            {
                var own = work.Slabs(parts[i]);
                slabs.AddRange(instead?[i] ?? own[Math.Min(way, own.Count - 1)]);
            }

            if (measure(slabs) is { } room && (best is null || room.Room > best.Room))
                best = room;
        }

        return best;
    }

    private static ItemRoom? Least(List<PosedPart> items, Func<PosedPart, ItemRoom?> measure) =>
        items.Select(measure).OfType<ItemRoom>().MinBy(room => room.Room);
}
