using System.Collections.Concurrent;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>What bends is cut into strips that stand off the smooth surface by no more than the tolerance says.</summary>
public sealed class FacetsTests
{
    // In millimetres.
    private const double Tolerance = 0.05;

    // Fits serve several tests, and what is flat in one size is flat in all.
    private static readonly ConcurrentDictionary<string, RandomFit[]> Known = new(StringComparer.Ordinal);

    public static TheoryData<string> Bent => FinenessTests.Bent;

    [Theory]
    [InlineData(10, 0.05)]
    [InlineData(36, 0.05)]
    [InlineData(140, 0.05)]
    [InlineData(140, 0.5)]
    [InlineData(500, 2)]
    public void As_many_strips_as_the_sagitta_asks_for_and_no_more(double radius, double tolerance)
    {
        // Sagitta of a chord, s = r (1 − cos(θ/2)): CRC Standard Mathematical Tables and Formulae, 30th ed., segments of a circle (from memory).
        var count = Facets.Of(radius, 360, tolerance);
        Assert.InRange(Facets.Sagitta(2 * Math.PI * radius / count, 360.0 / count), 0, tolerance);
        Assert.InRange(radius * (1 - Math.Cos(Math.PI / count)), 0, tolerance);
        Assert.True(Facets.Sagitta(2 * Math.PI * radius / (count - 1), 360.0 / (count - 1)) > tolerance);
        Assert.InRange(Facets.Of(radius, 90, tolerance), count / 4, (count / 4) + 1);
    }

    [Fact]
    public void There_are_never_more_than_the_bound_nor_fewer_than_one()
    {
        Assert.Equal(Facets.Most, Facets.Of(1e5, 360, 0.01));
        Assert.Equal(1, Facets.Of(10, 0, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => Facets.Of(0, 360, 0.05));
        Assert.Throws<ArgumentOutOfRangeException>(() => Facets.Of(10, 360, 0));
    }

    [Fact]
    public void What_is_flat_is_left_as_it_is()
    {
        foreach (var structure in RandomFits.Catalogue.Where(structure => !IsBent(structure.Id)))
        {
            if (RandomFits.Make(structure, 1) is { } fit)
                Assert.Same(fit.Model.Kit, Facets.Within(fit.Model.Kit, 1e-4));
        }
    }

    [Theory]
    [MemberData(nameof(Bent))]
    public void Every_strip_keeps_the_tolerance_in_any_size(string id)
    {
        foreach (var kit in Fits(id).Select(fit => Facets.Within(fit.Model.Kit, Tolerance)))
        {
            // Each strip between two rulings, where it is widest.
            foreach (var bend in kit.Pieces.SelectMany(part => part.Piece.Panels).Select(panel => panel.Bend).OfType<Bend>())
            {
                Assert.InRange(bend.Rulings.Count + 1, 1, Facets.Most);
                for (var i = 1; i < bend.Rulings.Count; i++)
                {
                    var (a, b) = (bend.Rulings[i - 1], bend.Rulings[i]);
                    var onSheet = Math.Asin(Math.Abs((a.To - a.From).Cross(b.To - b.From)) / (a.From.DistanceTo(a.To) * b.From.DistanceTo(b.To))) * 180 / Math.PI;
                    var bent = Math.Max(Math.Abs(a.Angle), Math.Abs(b.Angle));
                    Assert.InRange(Facets.Sagitta(Math.Max(a.From.DistanceTo(b.From), a.To.DistanceTo(b.To)), Math.Sqrt((bent * bent) + (onSheet * onSheet))), 0, Tolerance);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Bent))]
    public void Twice_as_fine_no_number_that_is_proven_changes_by_more_than_the_tolerance_explains(string id)
    {
        foreach (var fit in Fits(id).Take(2))
        {
            var usual = Facets.Within(fit.Model.Kit, Tolerance);
            var finer = usual with { Parts = [.. usual.Parts.Select(part => part.Kind == PartKind.Piece ? part with { Piece = part.Piece.Finer(2) } : part)] };
            var (one, other) = (Proofs(fit, usual), Proofs(fit, finer));
            Assert.Equal(one.Select(proof => (proof.Kind, proof.Piece)), other.Select(proof => (proof.Kind, proof.Piece)));

            // Flat middles lie two thirds of the tolerance inside the smooth surface and edges one third outside, on either
            // side of what is measured; all of that together is twice the tolerance.
            Assert.All(one.Zip(other), pair =>
            {
                if (double.IsFinite(pair.First.Found))
                    Assert.InRange(pair.First.Found - pair.Second.Found, -2 * Tolerance, 2 * Tolerance);
                Assert.Equal(pair.First.Holds, pair.Second.Holds);
            });
        }
    }

    [Theory]
    [InlineData("cylinder-band")]
    [InlineData("cone")]
    [InlineData("cone-wrap")]
    public void What_is_rolled_has_the_volume_and_the_surface_of_the_handbook(string id)
    {
        var compared = 0;
        foreach (var fit in Fits(id))
        {
            var piece = Facets.Within(fit.Model.Kit.Pieces.First().Piece, Tolerance);
            var pose = Folder.Finished(piece);
            var panel = piece.Panels.Single(one => one.Bend is not null);
            var rulings = panel.Bend!.Rulings;
            var strips = pose.Strips.StripsOf(panel.Name).Select(strip => pose.Panel(strip.Name)).ToList();
            var (inner, outer) = (rulings.Select((ruling, i) => strips[i].At(ruling.From)).ToList(), rulings.Select((ruling, i) => strips[i].At(ruling.To)).ToList());

            // Once round, where the rulings come to lie on the first ones again; an overlap narrower than a strip has none.
            var round = outer.FindIndex(1, place => place.DistanceTo(outer[0]) < 1e-6);
            if (round < 0)
                continue;
            compared++;
            (inner, outer) = (inner[..round], outer[..round]);
            var (low, high) = (Middle(outer), Middle(inner));
            var (large, small) = (Area(outer, low), Area(inner, high));
            var volume = low.DistanceTo(high) / 3 * (large + small + Math.Sqrt(large * small));

            // The smooth one from the sheet alone, where it is a sector of a ring or a rectangle.
            var (first, second) = (rulings[0], rulings[1]);
            var slope = first.From.DistanceTo(first.To);
            var angle = Math.Abs(Math.Asin((first.To - first.From).Cross(second.To - second.From) / (slope * slope)));
            var far = first.To.DistanceTo(second.To);
            var ratio = first.From.DistanceTo(second.From) / far;
            var (r1, r2) = angle < 1e-9 ? (round * far / (2 * Math.PI), round * far / (2 * Math.PI)) : (slope * ratio / (1 - ratio) * angle * round / (2 * Math.PI), slope / (1 - ratio) * angle * round / (2 * Math.PI));

            // CRC Standard Mathematical Tables and Formulae, 30th ed. (from memory): frustum of a right circular cone, volume
            // πh/3 (r₁² + r₁r₂ + r₂²), lateral area πs (r₁ + r₂); a cone with r₁ = 0, a cylinder with r₁ = r₂.
            var height = Math.Sqrt((slope * slope) - ((r2 - r1) * (r2 - r1)));
            var (smooth, area) = (Math.PI * height / 3 * ((r1 * r1) + (r1 * r2) + (r2 * r2)), Math.PI * slope * (r1 + r2));

            // No place of a strip is farther from the smooth surface than the tolerance.
            Assert.InRange(volume, smooth - (area * Tolerance), smooth);

            // Of a sector each strip keeps the part under its chord: sin a / a, which is more than 1 − a²/6.
            Assert.InRange(SolidMeasure.Surface(strips.Skip(1).Take(round)), area * (1 - (angle * angle / 6)) * (1 - 1e-9), area * (1 + 1e-9));
        }

        Assert.True(compared > 1, $"{compared} compared");
    }

    private static Vector3d Middle(List<Vector3d> rim) => rim.Aggregate((a, b) => a + b) * (1.0 / rim.Count);

    private static double Area(List<Vector3d> rim, Vector3d at) =>
        Enumerable.Range(0, rim.Count).Sum(i => (rim[i] - at).Cross(rim[(i + 1) % rim.Count] - at).Length) / 2;

    private static IReadOnlyList<FoldingProof> Proofs(RandomFit fit, Kit kit)
    {
        var calipers = fit.Stocks.ToDictionary(stock => stock.Key, stock => stock.Value.Caliper.Millimetres);
        return KitProofs.Of(new KitToProve(kit, ModelProofs.Body(fit.Item), 0, part => calipers.GetValueOrDefault(part.Stock)));
    }

    private static bool IsBent(string id) => Fits(id).Length > 0;

    private static RandomFit[] Fits(string id) => Known.GetOrAdd(id, _ => [.. Enumerable.Range(1, 6)
        .Select(seed => RandomFits.Make(RandomFits.Catalogue.Single(structure => structure.Id == id), seed)).OfType<RandomFit>()
        .TakeWhile((fit, i) => i > 0 || HasBends(fit)).Where(HasBends)]);

    private static bool HasBends(RandomFit fit) => fit.Model.Kit.Pieces.Any(part => part.Piece.Panels.Any(panel => panel.Bend is not null));
}
