namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Finds what panels with glue lie on in the assembled thing, and looks at seams that are said outright.</summary>
public static class SeamFinding
{
    /// <summary>Planes that differ by more than this are not against each other: the cosine of 3 degrees.</summary>
    private const double Parallel = 0.9986;

    /// <summary>Every panel that takes glue or is tucked in, with what it lies on.</summary>
    /// <param name="assembly">The assembly.</param>
    /// <param name="parts">Its parts, closed, without thickness between the layers of a piece.</param>
    /// <param name="reach">How far apart two panels may be that lie on each other, in millimetres.</param>
    public static IReadOnlyList<FoundSeam> Of(Assembly assembly, IReadOnlyList<PosedPart> parts, double reach)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        ArgumentNullException.ThrowIfNull(parts);
        var found = new List<FoundSeam>();
        foreach (var part in parts.Where(part => part is { Pose: not null, Copy: 0 }))
        {
            var said = assembly.Seams.Where(seam => seam.Piece == part.Part.Part && seam.Hold != SeamHold.Meet).ToList();
            var glued = part.Pose!.Piece.GlueAreas.GroupBy(glue => glue.Panel, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First().Side, StringComparer.Ordinal);
            foreach (var panel in part.Pose.Panels)
            {
                var own = said.Where(seam => seam.Panel == panel.Panel.Kind).ToList();
                if (own.Count == 0 && !glued.ContainsKey(panel.Panel.Name))
                    continue;
                SheetSide? side = glued.TryGetValue(panel.Panel.Name, out var glue) ? glue : null;
                found.Add(Find(part, panel, side, own, parts, reach));
            }
        }

        return found;
    }

    private static FoundSeam Find(PosedPart part, PosedPanel panel, SheetSide? glue, List<Seam> said, IReadOnlyList<PosedPart> parts, double reach)
    {
        FoundSeam? best = null;
        var most = 0.0;
        foreach (var other in parts.Where(one => one.Pose is not null))
        {
            // Without a word, a panel is glued to its own piece.
            var here = said.Where(seam => seam.OtherPiece == other.Part.Part).ToList();
            if (said.Count == 0 ? other != part : here.Count == 0)
                continue;
            foreach (var target in other.Pose!.Panels)
            {
                if ((other == part && target == panel) || (said.Count == 0 ? target.Panel.Role == PanelRole.Tab : !here.Any(seam => seam.OtherPanel == target.Panel.Kind)))
                    continue;
                if (Compare(part, panel, glue, other, target, here.FirstOrDefault()?.Side, here.FirstOrDefault()?.Hold ?? SeamHold.Glue, reach) is not var (seam, area) || area <= most)
                    continue;
                (best, most) = (seam, area);
            }
        }

        return best ?? new FoundSeam(part, panel, null, null, default, double.PositiveInfinity, double.PositiveInfinity, SeamHold.Glue);
    }

    private static (FoundSeam Seam, double Area)? Compare(
        PosedPart part, PosedPanel panel, SheetSide? glue, PosedPart other, PosedPanel target, SheetSide? wanted, SeamHold hold, double reach)
    {
        var turned = panel.Facing.Dot(target.Facing);
        if (Math.Abs(turned) < Parallel)
            return null;
        var start = target.Corners[0];
        var away = 0.0;
        var signed = 0.0;
        foreach (var corner in panel.Corners)
        {
            var height = target.Facing.Dot(corner - start);
            away = Math.Max(away, Math.Abs(height));
            signed += height;
        }

        if (away > reach)
            return null;

        // Glue on a side presses that side against the target; without glue the side is where the panel lies.
        var side = glue is { } glued
            ? (glued == SheetSide.Facing ? turned : -turned) < 0 ? SheetSide.Facing : SheetSide.Away
            : wanted ?? (signed >= 0 ? SheetSide.Facing : SheetSide.Away);
        if (wanted is { } needed && needed != side)
            return null;
        var flat = OnSheetOf(panel, target);
        var area = Overlap.Area(flat, target.Panel.Outline);
        if (area <= 0.02 * flat.Area)
            return null;
        var beyond = flat.Corners.Where(corner => !target.Panel.Outline.Contains(corner)).Select(target.Panel.Outline.DistanceTo).DefaultIfEmpty(0).Max();
        return (new FoundSeam(part, panel, other, target, side, away, beyond < LineWork.Tolerance ? 0 : beyond, hold), area);
    }

    /// <summary>A panel's outline dropped on another panel, on that panel's sheet, clockwise.</summary>
    internal static Outline OnSheetOf(PosedPanel panel, PosedPanel target)
    {
        var home = target.Motion.Inverse;
        Point[] corners = [.. panel.Corners.Select(corner => home.Apply(corner)).Select(at => new Point(at.X, -at.Y))];
        var flat = Outline.Through(corners);
        return flat.IsClockwise ? flat : flat.Reversed;
    }
}
