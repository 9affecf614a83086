using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Something that was proven, in words, with its numbers in both columns.</summary>
/// <param name="What">What was proven.</param>
/// <param name="Found">What was found in the primary column and in the other.</param>
/// <param name="Limit">What it must not go beyond, in both.</param>
/// <param name="Verdict">What it comes to in the primary column.</param>
internal sealed record ProofText(string What, (string Here, string There) Found, (string Here, string There) Limit, Verdict Verdict)
{
    /// <summary>Whether the same number is told under another limit too.</summary>
    public bool IsSecondLimit { get; init; }
}

/// <summary>Says in plain words what was proven about the two fits of a booklet.</summary>
internal sealed class ProofTexts(BookletContext context)
{
    /// <summary>Every proof once, those of a piece that say alike as one.</summary>
    public IEnumerable<ProofText> All()
    {
        var there = Gathered(context.Folding.Secondary).ToDictionary(Key, proof => proof);
        foreach (var here in Gathered(context.Folding.Primary))
        {
            if (What(here) is not { } what)
                continue;
            var other = there.GetValueOrDefault(Key(here));
            yield return new ProofText(
                what,
                (Number(here, here.Found, Here), other is null ? "" : Number(other, other.Found, There)),
                (Limit(here, Here), other is null ? "" : Limit(other, There)),
                here.Verdict)
            {
                IsSecondLimit = here.Kind == FoldingProofKind.NotTooLoose,
            };
        }
    }

    /// <summary>What a proof is about, in words; null for a number without a limit that a reader has no use for.</summary>
    public string? What(FoldingProof proof)
    {
        var phrases = context.Phrases;
        var (piece, other, item) = (("piece", Name(proof.Piece)), ("other", Lower(proof.Other)), ("item", Sentence(context.Source.Item?.Name ?? "")));
        return proof.Kind switch
        {
            FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay => phrases.Format("proofs.closes", piece),
            FoldingProofKind.NothingPassesFinished or FoldingProofKind.NothingPassesOnTheWay => phrases.Format("proofs.passes", piece),
            FoldingProofKind.SeamsLieFlat => phrases.Format("proofs.seams_flat", piece),
            FoldingProofKind.SeamsLieInside => phrases.Format("proofs.seams_inside", piece),
            FoldingProofKind.GlueHasRoom => phrases.Format("proofs.glue_width", piece),
            FoldingProofKind.EdgesMeet => phrases.Format("proofs.edges_meet", piece),
            FoldingProofKind.ClosesAllRound => phrases.Format("proofs.closed", piece),
            FoldingProofKind.Encloses => phrases.Format("proofs.encloses", piece),
            FoldingProofKind.FoldsFlat => phrases.Format("proofs.folds_flat", piece),
            FoldingProofKind.NothingPassesAssembled => phrases["proofs.assembled"],
            FoldingProofKind.GoesTogether => phrases.Format("proofs.goes_together", piece, other),
            FoldingProofKind.Clearance => phrases.Format("proofs.clearance", piece, other),
            FoldingProofKind.NotTooLoose => phrases.Format("proofs.not_too_loose", piece, other),
            FoldingProofKind.RoomBesideGussets => phrases.Format("proofs.beside_gussets", piece),
            FoldingProofKind.RoomAroundItem => phrases.Format("proofs.around_item", item),
            FoldingProofKind.RoomBetweenItems => phrases.Format("proofs.between_items", item),
            FoldingProofKind.RoomAboveItem => phrases.Format("proofs.above_item", item),
            FoldingProofKind.ItemPassesOpening => phrases.Format("proofs.opening", item),
            FoldingProofKind.RoomAroundPutIn => phrases.Format("proofs.around_put_in", ("piece", Lower(proof.Piece)), ("other", Name(proof.Other))),
            FoldingProofKind.PutInPassesOpening => phrases.Format("proofs.opening_put_in", ("piece", Lower(proof.Piece)), ("other", Name(proof.Other))),
            _ => null,
        };
    }

    /// <summary>A number of a proof with its unit, as it is said on a ruler.</summary>
    public string Number(FoldingProof proof, double number, Ruler ruler)
    {
        var metric = ruler.System == UnitSystem.Metric;
        return proof.Kind switch
        {
            FoldingProofKind.Encloses => metric
                ? context.Phrases.Format("proofs.volume_metric", ("n", Plain(number / 1000)))
                : context.Phrases.Format("proofs.volume_imperial", ("n", Plain(number / (25.4 * 25.4 * 25.4)))),
            FoldingProofKind.FoldsFlat => Plain(number) + "°",
            _ when double.IsInfinity(number) => "–",
            FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay when number < 0.0005 =>
                context.Phrases.Format("proofs.under", ("length", Point(metric ? "0.001 mm" : "0.001 in"))),
            _ => Point(Proven(Length.FromMillimetres(number), ruler, proof.LimitIsLeast)),
        };
    }

    /// <summary>
    /// A length that was proven, as exactly as a maker has a use for: hairs to the nearest hundredth of a millimetre or
    /// thousandth of an inch, everything else to tenths or to 64ths and never better than it is.
    /// </summary>
    /// <param name="found">What was found, or the limit it was held against.</param>
    /// <param name="ruler">The ruler of the column.</param>
    /// <param name="isLeast">Whether more of it is better.</param>
    public static string Proven(Length found, Ruler ruler, bool isLeast)
    {
        if (ruler.Marks(found))
            return LengthFormat.Format(found, ruler);
        var (step, decimals) = (ruler.System, found.Abs()) switch
        {
            (UnitSystem.Metric, var length) when length < Length.Millimetre => (Length.FromMillimetres(0.01m), 2),
            (UnitSystem.Metric, _) => (Length.FromMillimetres(0.1m), 1),
            (_, var length) when length < Length.Inch / 16 => (Length.FromInches(0.001m), 3),
            _ => (Length.Inch / 64, 0),
        };
        var parts = (decimal)found.Nanometres / step.Nanometres;
        // What floating point leaves beside a whole number is none of it.
        var whole = decimals > 1 || Math.Abs(parts - decimal.Round(parts)) < 1e-3m ? decimal.Round(parts, MidpointRounding.AwayFromZero) : isLeast ? decimal.Floor(parts) : decimal.Ceiling(parts);
        var unit = ruler.System == UnitSystem.Metric ? " mm" : " in";
        return decimals == 0
            ? LengthFormat.Format(Length.Inch / 64 * (int)whole, ruler)
            : (whole * (decimals == 1 ? 0.1m : decimals == 2 ? 0.01m : 0.001m)).ToString("0.###", CultureInfo.InvariantCulture) + unit;
    }

    private Ruler Here => context.Primary.Kit.Ruler;

    private Ruler There => context.Secondary.Kit.Ruler;

    private string Limit(FoldingProof proof, Ruler ruler)
    {
        // A volume is a fact, and a limit of nothing at all is clear by itself.
        if (proof.Kind == FoldingProofKind.Encloses || (proof.LimitIsLeast && proof.Limit == 0))
            return "";
        var number = proof.Kind is FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay
            ? Point(ruler.System == UnitSystem.Metric ? "0.001 mm" : "0.001 in")
            : Number(proof, proof.Limit, ruler);
        return proof.LimitIsLeast ? context.Phrases.Format("proofs.least", ("limit", number)) : context.Phrases.Format("proofs.most", ("limit", number));
    }

    // Of proofs that are said in the same words the one nearest to its limit stands for all.
    private IEnumerable<FoldingProof> Gathered(IReadOnlyList<FoldingProof> proofs) =>
        proofs.Where(proof => proof.Kind != FoldingProofKind.ClosesFinished || HasLoops(proof.Piece, proofs)).GroupBy(proof => What(proof) ?? "", StringComparer.Ordinal).Where(group => group.Key.Length > 0)
            .Select(group => group.OrderByDescending(proof => proof.Verdict).ThenByDescending(Strain).First())
            .OrderBy(Group);

    // Piece by piece, then how they go together, then the item.
    private int Group(FoldingProof proof)
    {
        if (proof.Other is not null || proof.Kind == FoldingProofKind.NothingPassesAssembled)
            return proof.Other == Assembly.Item ? int.MaxValue : int.MaxValue - 1;
        var pieces = context.Primary.Kit.Pieces.Select(part => part.Piece.Id).ToList();
        return pieces.IndexOf(proof.Piece);
    }

    // Where no panels form a loop there is nothing that could fail to meet.
    private static bool HasLoops(string piece, IReadOnlyList<FoldingProof> proofs) =>
        proofs.Any(proof => proof.Piece == piece && (proof.Kind == FoldingProofKind.ClosesOnTheWay || (proof.Kind == FoldingProofKind.ClosesFinished && !proof.Holds)));

    private static double Strain(FoldingProof proof) =>
        proof.LimitIsLeast ? proof.Limit - proof.Found : proof.Limit > 0 ? proof.Found / proof.Limit : proof.Found;

    private string Key(FoldingProof proof) => What(proof) ?? "";

    private string Name(string? id) => id is null ? "" : context.Primary.Kit.Parts.FirstOrDefault(part => part.Piece.Id == id)?.Piece.Name ?? id;

    private string Lower(string? id) => Name(id).ToLower(CultureInfo.InvariantCulture);

    private static string Sentence(string words) => words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];

    private string Plain(double number) => Point(number.ToString(number < 10 ? "0.##" : "0.#", CultureInfo.InvariantCulture));

    private string Point(string text) => context.Phrases.DecimalMark == "." ? text : text.Replace(".", context.Phrases.DecimalMark, StringComparison.Ordinal);
}
