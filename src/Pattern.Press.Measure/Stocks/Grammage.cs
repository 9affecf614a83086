using System.Globalization;
using System.Text.RegularExpressions;

namespace Pattern.Press.Measure;

/// <summary>The mass of a square metre of paper in grams (ISO 536).</summary>
/// <param name="GramsPerSquareMetre">Grams per square metre; above 0 for any real paper.</param>
public readonly partial record struct Grammage(double GramsPerSquareMetre)
{
    private const double GramsPerPound = 453.59237;
    private const int SheetsPerReam = 500;

    /// <summary>
    /// The grammage of a basis weight: pounds × 453.59237 / (500 × area of the basic sheet in m²). One pound is
    /// 453.59237 g exactly (NIST SP 811, 2008, appendix B).
    /// </summary>
    public static Grammage FromBasisWeight(double pounds, BasicSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(pounds * GramsPerPound / (SheetsPerReam * sheet.Size.SquareMillimetres / 1e6));
    }

    /// <summary>The mass in grams of a sheet of this paper (area × grammage, ISO 536).</summary>
    public double MassOf(Size sheet) => sheet.SquareMillimetres / 1e6 * GramsPerSquareMetre;

    /// <summary>Reads <c>220 g/m2</c>, <c>220 gsm</c> or <c>80 lb cover</c>.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="grammage">The grammage, or zero if it could not be read.</param>
    /// <param name="problem">What is wrong and what to write instead; empty when it could be read.</param>
    public static bool TryParse(string text, out Grammage grammage, out string problem) =>
        TryParse(text, out grammage, out _, out problem);

    /// <summary>Reads the same, and says what stood there when it was a weight in pounds.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="grammage">The grammage, or zero if it could not be read.</param>
    /// <param name="basis">The weight in pounds, or null if it was written in grams.</param>
    /// <param name="problem">What is wrong and what to write instead; empty when it could be read.</param>
    public static bool TryParse(string text, out Grammage grammage, out BasisWeight? basis, out string problem)
    {
        grammage = default;
        basis = null;
        problem = "";
        var match = Pattern().Match(text.Trim());
        if (!match.Success)
        {
            problem = $"“{text}” is not a paper weight; write it as 220 g/m2, or as 80 lb cover.";
            return false;
        }

        var number = double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
        if (number <= 0)
        {
            problem = $"“{text}” weighs nothing; write the weight on the packet, such as 220 g/m2.";
            return false;
        }

        if (match.Groups["metric"].Success)
        {
            grammage = new(number);
            return true;
        }

        var name = match.Groups["sheet"].Value;
        var sheet = BasicSheet.All.FirstOrDefault(s => s.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        if (sheet is null)
        {
            problem = $"“{text}” does not name a basic sheet; write one of {string.Join(", ", BasicSheet.All.Select(s => $"{match.Groups["number"].Value} lb {s.Name}"))}.";
            return false;
        }

        basis = new BasisWeight(number, sheet);
        grammage = basis.Grammage;
        return true;
    }

    [GeneratedRegex(@"^(?<number>[0-9]{1,6}(?:\.[0-9]{1,3})?)\s*(?:(?<metric>g/m2|g/m²|gsm)|(?:lbs?|\#|pounds?)\s*(?<sheet>\w*))$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
