using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;

namespace Pattern.Press.Acceptance.BadInput;

/// <summary>
/// Every kind of proof made to fail by what a maker may write. It stops the booklet (or asks for attention), says what to
/// change and by how much, and once that is done to the letter it holds.
/// </summary>
public sealed partial class FailingProofs : IDisposable
{
    private const string Tuck = "60 x 40 x 90 mm";
    private const string TuckTab = "glue_tab: down(min(if(ruler.metric, 12 mm, 1/2 in), side_width * 0.6))";
    private const string TuckRow = "across: [glue_tab, front_width, side_width, front_width, side_width]";
    private const string TuckOpens = "box: {stands: on lower lid, opens: [upper lid, upper tuck flap, dust flap]}";
    private const string Gable = "80 x 60 x 50 mm";
    private const string GableOpens = "box: {stands: on floor, opens";

    private readonly string _folder = Directory.CreateTempSubdirectory("pattern-press-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    // The structure, the item, a size that is set; a part of what is said, and the size after the change that is asked for.
    [Theory]
    [InlineData("explosion-box", "58 mm round x 64 mm", "lid_clearance", 1, "room to move, at the tightest place", @"Make the lid (?<n>\d+) mm longer and wider", 1)]
    [InlineData("explosion-box", "58 mm round x 64 mm", "lid_clearance", 15, "so that it does not slide about", @"the lid can be (?<n>\d+) mm shorter and narrower", -1)]
    [InlineData("open-tray", "80 x 55 x 25 mm", "floor_length", 81, "room on each side", @"Make the tray (?<n>\d+) mm longer and wider inside", 1)]
    [InlineData("tuck-end-box", Tuck, "body_height", 88, "room above", @"Make the box (?<n>\d+) mm higher", 1)]
    [InlineData("lidded-tray", "80 x 55 x 25 mm", "lid_clearance", 1, "room to move, at the tightest place", @"Make the lid (?<n>\d+) mm longer and wider", 1)]
    public void A_size_that_is_set_wrong(string structure, string item, string size, int wrong, string said, string advice, int way)
    {
        var folder = Draft(structure, item);
        Set(folder, size, wrong);
        var told = Check(folder);
        Assert.Contains(said, told, StringComparison.Ordinal);
        var change = Regex.Match(told, advice);
        Assert.True(change.Success, told);
        Set(folder, size, wrong + (way * int.Parse(change.Groups["n"].Value, CultureInfo.InvariantCulture)));
        Assert.DoesNotContain(said, Check(folder), StringComparison.Ordinal);
    }

    // The structure, the item, a line of the structure's file and what is wrong there; a part of what is said, the advice,
    // and the line with what is asked for.
    [Theory]
    [InlineData("tuck-end-box", Tuck, TuckTab, "glue_tab: if(ruler.metric, 4 mm, 3/16 in)", "the narrowest glue tab: 4 mm", @"Make the glue tab (?<n>\d+) mm wider", "glue_tab: if(ruler.metric, 4 mm + {n} mm, 1/4 in)")]
    [InlineData("tuck-end-box", Tuck, TuckTab, "glue_tab: side_width + 3 mm", "what is glued reaches over an edge by: 3 mm", @"Make the tab (?<n>\d+) mm narrower or shorter", "glue_tab: side_width + 3 mm - {n} mm")]
    [InlineData("tuck-end-box", Tuck, TuckRow, "across: [glue_tab, front_width, side_width, front_width - 2.5 mm, side_width]", "what is glued stands off by", @"bring the two (?<n>[\d.]+) mm nearer to each other", "across: [glue_tab, front_width, side_width, front_width - 2.5 mm + {n} mm, side_width]")]
    [InlineData("tuck-end-box", Tuck, "fold: valley 90, taper: 15 deg, glue: away", "fold: mountain 90, taper: 15 deg, glue: away", "nothing lies there (glue tab)", "fold the box so that its glue comes to lie on something", "fold: valley 90, taper: 15 deg, glue: away")]
    [InlineData("tuck-end-box", Tuck, TuckOpens, "box: {stands: on lower lid}", "room on each side on its way in", @"under “assembly”: {box: {opens: \[(?<n>[a-z, ]+)\]}}", "box: {stands: on lower lid, opens: [{n}]}")]
    [InlineData("tuck-end-box", Tuck, TuckOpens, "box: {stands: on lower lid, opens: [upper lid]}", "room on each side on its way in", @"under “assembly”: {box: {opens: \[(?<n>[a-z, ]+)\]}}", "box: {stands: on lower lid, opens: [{n}]}")]
    [InlineData("gable-top-box", Gable, "ridge_room: 4 * card.caliper", "ridge_room: 0.2 * card.caliper", "how far panels press into each other", @"Make “free gusset” or “gusset 2” (?<n>\d+) mm shorter or narrower where they meet", "ridge_room: 0.2 * card.caliper + {n} mm")]
    [InlineData("gable-top-box", Gable, "roof_turn: atan(side_width / 2 / roof_rise)", "roof_turn: atan(side_width / 2 / roof_rise) + 2", "the widest gap where folded panels meet again", @"between “roof 2” and “gusset \d” they have to come (?<n>[\d.]+) mm nearer to each other, by edges .* or by the angles", "roof_turn: atan(side_width / 2 / roof_rise)")]
    [InlineData("gable-top-box", Gable, GableOpens, "box: {claims: flat-foldable, stands: on floor, opens", "how far its folds are from folding flat: they cannot", "leave out “claims: flat-foldable”", GableOpens)]
    [InlineData("open-tray", "80 x 55 x 25 mm", "tray: {}", "tray: {claims: closed}", "the widest gap all round", "leave out “claims: closed”", "tray: {}")]
    [InlineData("tuck-end-box", Tuck, "    front tuck flap: {onto", "    lower lid: {meets: upper lid}\n    front tuck flap: {onto", "the widest gap between edges that meet", @"make the two edges equally long, and fold what lies between them so that they come [\d.]+ mm nearer", "    front tuck flap: {onto")]
    [InlineData("card-and-envelope", "148 x 105 mm", "envelope: {opens: [top flap]}", "envelope: {}", "on its way in", @"under “assembly”: {envelope: {opens: \[(?<n>[a-z, ]+)\]}}", "envelope: {opens: [{n}]}")]
    public void A_structure_that_does_not_work(string structure, string item, string line, string wrong, string said, string advice, string right)
    {
        var folder = Draft(structure, item);
        var own = Own(folder, structure, line, wrong);
        var told = Check(folder);
        Assert.Contains(said, told, StringComparison.Ordinal);
        var change = Regex.Match(told, advice);
        Assert.True(change.Success, told);
        Assert.DoesNotContain("  narrower", told, StringComparison.Ordinal);
        File.WriteAllText(own, File.ReadAllText(own).Replace(wrong, right.Replace("{n}", change.Groups["n"].Value, StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.DoesNotContain(said, Check(folder), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_items_that_stand_too_near_to_each_other()
    {
        const string Repeat = "repeat: {times: in_a_row, right: item_long + ease}";
        var folder = Draft("tuck-end-box", "30 x 20 x 60 mm");
        Set(folder, "in_a_row", 2, "");
        var own = Own(folder, "tuck-end-box", Repeat, "repeat: {times: in_a_row, right: item_long}");
        var told = Check(folder);
        var change = NearItems().Match(told);
        Assert.True(change.Success, told);
        File.WriteAllText(own, File.ReadAllText(own).Replace("right: item_long}", $"right: item_long + {change.Groups["n"].Value} mm}}", StringComparison.Ordinal));
        Assert.DoesNotContain("room between one and the next", Check(folder), StringComparison.Ordinal);
    }

    [Fact]
    public void A_card_that_is_too_large_for_its_envelope()
    {
        // As it is for the example, but much too small where the play is less.
        const string Width = "envelope_width: up(max(card_width, card_height) + play + card_layers + paper.caliper)";
        const string Wrong = "envelope_width: up(max(card_width, card_height) + 3 * play - 12 mm + card_layers + paper.caliper)";
        var folder = Draft("card-and-envelope", "148 x 105 mm");
        var own = Own(folder, "card-and-envelope", Width, Wrong);
        Set(folder, "play", 3);
        var told = Check(folder);
        Assert.Contains("Card in the envelope: room on each side", told, StringComparison.Ordinal);
        var change = EnvelopeLarger().Match(told);
        Assert.True(change.Success, told);
        File.WriteAllText(own, File.ReadAllText(own).Replace("- 12 mm", $"- 12 mm + {change.Groups["n"].Value} mm", StringComparison.Ordinal));
        Assert.DoesNotContain("Card in the envelope: room on each side", Check(folder), StringComparison.Ordinal);
    }

    // What goes in too tightly, presses and pushes against folded gussets: each says its own amount, and the largest of them is
    // enough for all.
    [Fact]
    public void A_platform_that_does_not_drop_in()
    {
        const string Slack = "default: max(1 mm, platform_layers + 2 * gusset_layers)";
        var folder = Draft("explosion-box", "58 mm round x 64 mm");
        Set(folder, "platform", "yes");
        var own = Own(folder, "explosion-box", Slack, "default: 0.5 mm * 2");
        File.WriteAllText(Path.Combine(folder, "booklet.md"), File.ReadAllText(Path.Combine(folder, "booklet.md")).Replace("caliper: 0.3", "caliper: 0.6", StringComparison.Ordinal));
        var told = Check(folder);
        Assert.Contains("Platform: room beside folded gussets", told, StringComparison.Ordinal);
        var most = PlatformSmaller().Matches(told).Max(match => int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture));
        File.WriteAllText(own, File.ReadAllText(own).Replace("default: 0.5 mm * 2", $"default: 1 mm + {most} mm", StringComparison.Ordinal));
        told = Check(folder);
        Assert.DoesNotContain("Platform: room", told, StringComparison.Ordinal);
        Assert.DoesNotContain("Platform and base", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_that_comes_out_beyond_its_limits_says_where_to_turn()
    {
        var folder = Draft("explosion-box", "58 mm round x 64 mm");
        Set(folder, "platform", "yes");
        Own(folder, "explosion-box", "default: max(1 mm, platform_layers + 2 * gusset_layers)", "default: item.height / 4");
        var told = Check(folder);
        Assert.Contains("“platform_slack” comes out at", told, StringComparison.Ordinal);
        Assert.Contains("Change what it follows from, such as the item, its ease or the card, or set it yourself under “sizes”.", told, StringComparison.Ordinal);
    }

    private string Draft(string structure, string item)
    {
        var (code, output, errors) = BookletCopy.Run("draft", structure, "--item", item, "--name", "trial", "--into", _folder);
        Assert.True(code == 0, output + errors);
        return Path.Combine(_folder, "trial");
    }

    private static void Set(string folder, string size, int amount, string unit = " mm") => Set(folder, size, amount.ToString(CultureInfo.InvariantCulture) + unit);

    private static void Set(string folder, string size, string value)
    {
        var file = Path.Combine(folder, "booklet.md");
        var text = Regex.Replace(File.ReadAllText(file), $@"^  {size}:.*\n", "", RegexOptions.Multiline);
        text = text.Contains("\nsizes:\n", StringComparison.Ordinal) ? text : new Regex(@"^(structure:.*\n)", RegexOptions.Multiline).Replace(text, "$1sizes:\n", 1);
        File.WriteAllText(file, text.Replace("\nsizes:\n", $"\nsizes:\n  {size}: {value}\n", StringComparison.Ordinal));
    }

    // The structure's file beside the booklet, with a mistake in it.
    private static string Own(string folder, string structure, string line, string wrong)
    {
        var text = File.ReadAllText(Path.Combine(Workshop.ContentFolder, "structures", structure + ".yaml"));
        Assert.Contains(line, text, StringComparison.Ordinal);
        var own = Path.Combine(folder, "own.yaml");
        File.WriteAllText(own, text.Replace(line, wrong, StringComparison.Ordinal));
        var booklet = Path.Combine(folder, "booklet.md");
        File.WriteAllText(booklet, File.ReadAllText(booklet).Replace($"structure: {structure}", "structure: ./own.yaml", StringComparison.Ordinal));
        return own;
    }

    private static string Check(string folder)
    {
        var (_, output, errors) = BookletCopy.Run("check", folder);
        return string.Join('\n', output.Split('\n').Where(line => line.StartsWith("FAILS", StringComparison.Ordinal))) + errors;
    }

    [GeneratedRegex(@"Place them (?<n>[\d.]+) mm farther apart")]
    private static partial Regex NearItems();

    [GeneratedRegex(@"Make the envelope (?<n>\d+) mm longer and wider inside")]
    private static partial Regex EnvelopeLarger();

    [GeneratedRegex(@"[Mm]ake (the platform|one of them) (?<n>\d+) mm (shorter and narrower|smaller there)")]
    private static partial Regex PlatformSmaller();
}
