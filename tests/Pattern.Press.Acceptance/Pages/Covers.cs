using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Acceptance.Pages;

/// <summary>What a buyer reads first: the title, who made it, and how large the finished thing is.</summary>
public sealed partial class Covers
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void A_cover_says_how_large_the_finished_thing_is_on_both_rulers(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var text = string.Join(' ', printed.Pages[0].Pieces().Select(piece => piece.Text)).Replace('\u00A0', ' ');
        Assert.Contains(booklet.Source.Maker, text, StringComparison.Ordinal);

        // To the nearest mark, what the folded fit measures, card and mats included; corners may hold one layer more.
        foreach (var (model, found) in new[] { (booklet.Metric, Metric().Match(text)), (booklet.Imperial, Imperial().Match(text)) })
        {
            Assert.True(found.Success, $"No finished size in: {text}");
            var (width, depth, height) = ModelProofs.Outside(model, booklet.Source.Item, booklet.Source.Stocks.Values);
            var unit = model.Kit.Ruler.System == UnitSystem.Metric ? "mm" : "in";
            var tolerance = (model.Kit.Ruler.Step.Millimetres / 2) + booklet.Source.Stocks.Values.Max(stock => stock.Caliper.Millimetres);
            foreach (var (group, size) in new[] { ("w", width), ("d", depth), ("h", height) })
            {
                Assert.True(LengthParser.TryParse($"{found.Groups[group].Value.Trim()} {unit}", out var said, out var why), why);
                Assert.InRange(said.Millimetres, size - tolerance, size + tolerance);
            }
        }
    }

    [GeneratedRegex(@"(?<w>[\d.]+) × (?<d>[\d.]+) × (?<h>[\d.]+) mm")]
    private static partial Regex Metric();

    [GeneratedRegex(@"(?<w>[\d /]+) × (?<d>[\d /]+) × (?<h>[\d /]+) in")]
    private static partial Regex Imperial();
}
