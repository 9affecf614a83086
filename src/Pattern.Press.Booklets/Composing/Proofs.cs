using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Says what was proven about a booklet's two fits, for the command line.</summary>
internal static class Proofs
{
    /// <summary>A line for each check, with what was found in both columns.</summary>
    public static IReadOnlyList<string> Lines(BookletContext context)
    {
        var there = context.Secondary.Checks.ToDictionary(check => check.Name, StringComparer.Ordinal);
        return
        [
            .. context.Primary.Checks.Select(here =>
            {
                var both = there.TryGetValue(here.Name, out var other)
                    ? $"{Number(here.Found, context.Primary.Kit.Ruler)} ({Column(context)} {Number(other.Found, context.Secondary.Kit.Ruler)})"
                    : Number(here.Found, context.Primary.Kit.Ruler);
                var least = there.TryGetValue(here.Name, out other)
                    ? $"{Number(here.Least, context.Primary.Kit.Ruler)} ({Number(other.Least, context.Secondary.Kit.Ruler)})"
                    : Number(here.Least, context.Primary.Kit.Ruler);
                return $"{(here.Holds ? "holds" : "FAILS")}: {here.Name}: {both}; needed {least}.";
            }),
            .. new ProofTexts(context).All().Select(proof => Line(proof, Column(context))),
        ];
    }

    private static string Line(ProofText proof, string column)
    {
        var verdict = proof.Verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Doubtful => "look",
            _ => "FAILS",
        };
        var found = proof.Found.There.Length > 0 ? $"{proof.Found.Here} ({column} {proof.Found.There})" : proof.Found.Here;
        var limit = proof.Limit.Here.Length > 0 ? $"; needed {proof.Limit.Here}" : "";
        return $"{verdict}: {proof.What}: {found}{limit}.";
    }

    private static string Column(BookletContext context) => context.Source.Primary == UnitSystem.Metric ? "inch column" : "metric column";

    private static string Number(Length length, Ruler ruler) => ProofTexts.Proven(length, ruler, isLeast: true);
}
