namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>A panel as it is in the finished thing, with the thickness of its card and mats.</summary>
/// <param name="Panel">The panel, moved off what it lies on.</param>
/// <param name="Facing">From its middle to the surface of its facing side, mats included, in millimetres.</param>
/// <param name="Away">From its middle to the surface of the other side.</param>
internal sealed record Slab(PosedPanel Panel, double Facing, double Away)
{
    /// <summary>The thickness on the side that an arrow points to; half the card where it points along the panel.</summary>
    public double Towards(Vector3d way)
    {
        var turned = Panel.Facing.Dot(way);
        return turned > 0.3 ? Facing : turned < -0.3 ? Away : 0;
    }
}

/// <summary>Gives the panels of a folded piece their thickness: those that lie on each other are stacked, mats among them.</summary>
internal static class Stack
{
    /// <summary>The slabs of a piece.</summary>
    /// <param name="part">The piece, folded without thickness.</param>
    /// <param name="seams">What its panels lie on.</param>
    /// <param name="card">The thickness of its card, in millimetres.</param>
    /// <param name="mat">The thickness of the mats on a side of a panel.</param>
    public static IReadOnlyList<Slab> Of(Pose part, IEnumerable<FoundSeam> seams, double card, Func<Panel, SheetSide, double> mat)
    {
        var tree = HingeTree.Of(part.Strips);
        var count = part.Panels.Count;
        var shifts = new Vector3d[count];
        var extra = new (double Facing, double Away)[count];
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < count; i++)
            places.Add(part.Panels[i].Panel.Name, i);
        var tabs = seams.Where(seam => seam is { Other: not null, IsFoldedOver: false } && seam.Other == seam.Part).ToList();
        foreach (var hinge in tree.Outwards)
        {
            shifts[hinge.Turning] = shifts[hinge.Fixed];
            if (part.Angles[hinge.Fold] <= Fold.LaysOver)
                continue;
            var side = hinge.Fold.Direction == FoldDirection.Valley ? SheetSide.Facing : SheetSide.Away;
            var (carrier, panel) = (part.Panels[hinge.Fixed], part.Panels[hinge.Turning]);
            var between = tabs.Any(seam => seam.Target!.Panel.Name == carrier.Panel.Name && seam.Side == side && Overlaps(seam.Panel.Panel.Name, panel)) ? card : 0;
            shifts[hinge.Turning] += Normal(carrier, side) * (card + between + mat(carrier.Panel, side) + mat(panel.Panel, side));
        }

        foreach (var seam in tabs)
        {
            var (tab, target) = (places[seam.Panel.Panel.Name], places[seam.Target!.Panel.Name]);
            shifts[tab] = shifts[target] + (Normal(part.Panels[target], seam.Side) * card);

            // A mat on the target's side is glued over the tab.
            var over = mat(seam.Target.Panel, seam.Side);
            if (Normal(part.Panels[target], seam.Side).Dot(part.Panels[tab].Facing) > 0)
                extra[tab].Facing = over;
            else
                extra[tab].Away = over;
        }

        foreach (var loop in tree.Loops.Where(loop => part.Angles[loop.Fold] > Fold.LaysOver))
            Press(loop);

        return [.. part.Panels.Select((panel, i) => new Slab(
            new PosedPanel(panel.Panel, panel.Motion with { Shift = panel.Motion.Shift + shifts[i] }),
            (card / 2) + mat(panel.Panel, SheetSide.Facing) + extra[i].Facing,
            (card / 2) + mat(panel.Panel, SheetSide.Away) + extra[i].Away))];

        bool Overlaps(string tab, PosedPanel over) =>
            Overlap.Area(SeamFinding.OnSheetOf(part.Panels[places[tab]], over), over.Panel.Outline) > 0.01;

        // Two panels pressed back to back: half the card each, or the one that lies flat on its wall and the other on it.
        void Press(Hinge loop)
        {
            var (a, b) = (loop.Fixed, loop.Turning);
            var side = loop.Fold.Direction == FoldDirection.Valley ? SheetSide.Facing : SheetSide.Away;
            if (Lies(b))
                (a, b) = (b, a);
            if (Lies(a))
            {
                shifts[b] = shifts[a] + (Normal(part.Panels[a], side) * (card + mat(part.Panels[a].Panel, side) + mat(part.Panels[b].Panel, side)));
                return;
            }

            shifts[a] -= Normal(part.Panels[a], side) * (card / 2);
            shifts[b] -= Normal(part.Panels[b], side) * (card / 2);
        }

        bool Lies(int panel) => tree.HingeOf[panel] is { } hinge && part.Angles[hinge.Fold] > Fold.LaysOver;
    }

    private static Vector3d Normal(PosedPanel panel, SheetSide side) => side == SheetSide.Facing ? panel.Facing : -panel.Facing;
}
