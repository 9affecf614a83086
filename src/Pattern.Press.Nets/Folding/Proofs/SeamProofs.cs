namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Proves that what is glued or tucked lies where it should.</summary>
internal static class SeamProofs
{
    private const double PlayBetweenPieces = 0.8;

    public static IEnumerable<FoldingProof> Of(KitProofs.Working work)
    {
        var byPiece = work.Seams.ToLookup(seam => seam.Part.Part.Part, StringComparer.Ordinal);
        foreach (var piece in work.Kit.Kit.Pieces.Select(part => part.Piece.Id).Where(byPiece.Contains))
        {
            var seams = byPiece[piece].ToList();
            yield return Flat(piece, seams, work);
            yield return Inside(piece, seams, work);
            if (Widths(seams, work).ToList() is { Count: > 0 } widths)
            {
                var (narrowest, panel) = widths.MinBy(width => width.Width);
                var holds = narrowest >= KitProofs.GlueWidth - KitProofs.Working.Rounding;
                yield return new(FoldingProofKind.GlueHasRoom, piece, narrowest, KitProofs.GlueWidth, holds, holds ? [] : [panel])
                {
                    IsWarning = narrowest >= KitProofs.LeastGlueWidth,
                };
            }
        }

        foreach (var proof in Meetings(work))
            yield return proof;
    }

    // Planes may be apart by the layers between them: twice the card, and where the other piece begins its card and mats.
    private static FoldingProof Flat(string piece, List<FoundSeam> seams, KitProofs.Working work)
    {
        var worst = seams.MaxBy(seam => Away(seam, work) - Play(seam))!;
        var limit = (2 * work.Thickest) + 0.05 + Play(worst);
        var (found, holds) = (Away(worst, work), Away(worst, work) <= limit);
        return new(FoldingProofKind.SeamsLieFlat, piece, found, limit, holds, holds ? [] : Names(worst)) { Other = OtherOf(worst) };
    }

    // The tab of a divider is pressed across the play that the divider needs to go in between two walls.
    private static double Play(FoundSeam seam) => seam.Other is not null && seam.Other != seam.Part && seam.Part.Part.Stands == Stance.OnEdge ? PlayBetweenPieces : 0;

    private static FoldingProof Inside(string piece, List<FoundSeam> seams, KitProofs.Working work)
    {
        var limit = work.Thickest + KitProofs.Working.Rounding;
        var worst = seams.MaxBy(seam => seam.Beyond)!;
        var holds = worst.Beyond <= limit;
        return new(FoldingProofKind.SeamsLieInside, piece, worst.Beyond, limit, holds, holds ? [] : Names(worst)) { Other = OtherOf(worst) };
    }

    private static double Away(FoundSeam seam, KitProofs.Working work)
    {
        if (seam.Other is null || seam.Other == seam.Part)
            return seam.Away;
        var mats = MatLayers.On(work.Kit.Kit, seam.Other.Part.Part, seam.Target!.Panel, seam.Side, work.Kit.Caliper);
        return Math.Abs(seam.Away - ((work.Caliper(seam.Part) + work.Caliper(seam.Other)) / 2) - mats);
    }

    private static string? OtherOf(FoundSeam seam) => seam.Other is null || seam.Other == seam.Part ? null : seam.Other.Part.Part;

    private static string[] Names(FoundSeam seam) =>
        seam.Target is null ? [seam.Panel.Panel.Name] : [seam.Panel.Panel.Name, seam.Target.Panel.Name];

    // How far a tab reaches from the fold it hangs on.
    private static IEnumerable<(double Width, string Panel)> Widths(IEnumerable<FoundSeam> seams, KitProofs.Working work)
    {
        foreach (var seam in seams.Where(seam => seam.Hold == SeamHold.Glue && seam.Panel.Panel.Role == PanelRole.Tab))
        {
            // A tab that bends is found strip by strip; it is as wide as it was before it was taken apart.
            var piece = work.Kit.Kit.Pieces.First(part => part.Piece.Id == seam.Part.Part.Part).Piece;
            var tab = piece.Panels.FirstOrDefault(panel => panel.Name == seam.Panel.Panel.Name)
                ?? piece.Panels.FirstOrDefault(panel => seam.Panel.Panel.Name.StartsWith(panel.Name + " ", StringComparison.Ordinal));
            if (tab is null || piece.Folds.FirstOrDefault(fold => fold.Child == tab.Name) is not { } hinge)
                continue;
            var along = hinge.To - hinge.From;
            var width = tab.Outline.Corners.Max(corner => Math.Abs(along.Cross(corner - hinge.From))) / hinge.From.DistanceTo(hinge.To);
            yield return (width, tab.Name);
        }
    }

    private static IEnumerable<FoldingProof> Meetings(KitProofs.Working work)
    {
        foreach (var seam in work.Kit.Kit.Assembly.Seams.Where(seam => seam.Hold == SeamHold.Meet))
        {
            var part = work.Thing.Closed.FirstOrDefault(one => one.Part.Part == seam.Piece && one.Pose is not null);
            var others = work.Thing.Closed.Where(one => one.Part.Part == seam.OtherPiece && one.Pose is not null).ToList();
            if (part is null || others.Count == 0)
                continue;
            var (widest, panel) = (0.0, "");
            foreach (var one in part.Pose!.Panels.Where(one => one.Panel.Kind == seam.Panel))
            {
                var nearest = others.SelectMany(other => other.Pose!.Panels.Where(target => target != one && target.Panel.Kind == seam.OtherPanel))
                    .Select(target => Gap(one, target)).DefaultIfEmpty(double.PositiveInfinity).Min();
                if (nearest >= widest)
                    (widest, panel) = (nearest, one.Panel.Name);
            }

            var limit = work.Thickest + KitProofs.Working.Rounding;
            var holds = widest <= limit;
            yield return new(FoldingProofKind.EdgesMeet, seam.Piece, widest, limit, holds, holds ? [] : [panel, seam.OtherPanel])
            {
                Other = seam.OtherPiece == seam.Piece ? null : seam.OtherPiece,
            };
        }
    }

    // The two edges that come nearest to each other, measured at their ends.
    private static double Gap(PosedPanel a, PosedPanel b)
    {
        var least = double.PositiveInfinity;
        foreach (var edge in a.Panel.Outline.Edges.Where(edge => !edge.IsArc))
        {
            foreach (var other in b.Panel.Outline.Edges.Where(edge => !edge.IsArc))
            {
                var (from, to) = (a.At(edge.From), a.At(edge.To));
                least = Math.Min(least, Math.Min(
                    Math.Max(from.DistanceTo(b.At(other.To)), to.DistanceTo(b.At(other.From))),
                    Math.Max(from.DistanceTo(b.At(other.From)), to.DistanceTo(b.At(other.To)))));
            }
        }

        return least;
    }
}
