using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>Every number in the printed tables is that of the model fitted on the column's own ruler.</summary>
public sealed partial class TablesAgainstModel
{
    private static readonly Length MostRelief = Length.FromMillimetres(2);

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void What_to_cut_is_what_the_two_fits_say(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var phrases = booklet.Phrases;
        var several = booklet.Metric.Kit.Parts.Count > 1;
        string[] use = several ? [phrases["measurements.cuts.use"]] : [];
        var rows = PrintedTable.Read(
            printed.Pages,
            [phrases["measurements.cuts.piece"], .. use, phrases["measurements.cuts.quantity"], .. Columns(booklet)],
            leftAligned: several ? 2 : 1);

        var expected = new List<string[]>();
        foreach (var stock in booklet.Metric.Kit.Parts.Select(part => part.Stock).Distinct())
        {
            expected.Add([phrases.Format("measurements.cuts.from", ("stock", booklet.Source.Stocks[stock].Name)), .. use.Select(_ => ""), "", "", ""]);
            foreach (var part in booklet.Metric.Kit.Parts.Where(part => part.Stock == stock))
            {
                var other = booklet.Imperial.Kit.Parts.Single(there => there.Piece.Id == part.Piece.Id);
                expected.Add(
                [
                    part.Piece.Name,
                    .. use.Select(_ => part.For ?? Use(booklet, part)),
                    Sizes.Text(part.Quantity),
                    Sizes.Text(part.Piece.Sheet, booklet.Metric.Kit.Ruler),
                    Sizes.Text(other.Piece.Sheet, booklet.Imperial.Kit.Ruler),
                ]);
            }
        }

        Assert.Equal(expected.Select(row => string.Join(" | ", row)), rows.Select(row => string.Join(" | ", row)));
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Where_to_score_and_how_large_panels_are_is_what_the_two_fits_say(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var rows = PrintedTable.Read(printed.Pages, [booklet.Phrases["measurements.what"], .. Columns(booklet)], leftAligned: 1);
        Assert.Equal(
            Pieces(booklet).SelectMany(pair => Expected(booklet, pair.Metric, pair.Imperial)).Select(row => string.Join(" | ", row)),
            rows.Select(row => string.Join(" | ", row)));
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void From_each_score_to_the_next_is_a_panel_and_all_together_are_the_sheet(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var rows = PrintedTable.Read(printed.Pages, [booklet.Phrases["measurements.what"], .. Columns(booklet)], leftAligned: 1).ToList();
        foreach (var (metric, imperial) in Pieces(booklet))
        {
            var own = rows.Skip(1 + rows.FindIndex(row => row[0] == metric.Name && row[1].Length == 0)).TakeWhile(row => row[1].Length > 0).ToList();
            foreach (var (across, label) in new[] { (true, "measurements.piece.scores_across"), (false, "measurements.piece.scores_down") })
            {
                if (Marks(metric, across).Count == 0)
                    continue;
                var row = own.Single(row => row[0] == booklet.Phrases[label]);
                AreWholePanels(ReadLengths(row[1]), metric, across);
                AreWholePanels(ReadLengths(row[2]), imperial, across);
            }
        }
    }

    // Every piece says where it goes, so that no row is without a word.
    private static string Use(Finished booklet, Part part)
    {
        var placed = booklet.Metric.Kit.Assembly.Find(part.Piece.Id);
        if (placed?.To is null)
            return "the main part";
        var other = booklet.Metric.Kit.Parts.Single(one => one.Piece.Id == placed.To).Piece.Name.ToLowerInvariant();
        return $"goes {placed.Goes.ToString().ToLowerInvariant()} the {other}";
    }

    private static string[] Columns(Finished booklet)
    {
        string Head(UnitSystem system)
        {
            var words = booklet.Phrases[system == UnitSystem.Metric ? "system.metric" : "system.imperial"];
            return system == booklet.Source.Primary ? booklet.Phrases.Format("measurements.primary", ("system", words)) : words;
        }

        return [Head(UnitSystem.Metric), Head(UnitSystem.Imperial)];
    }

    private static IEnumerable<(Piece Metric, Piece Imperial)> Pieces(Finished booklet) =>
        booklet.Metric.Kit.Parts.Where(part => part.Kind == PartKind.Piece)
            .Select(part => (part.Piece, booklet.Imperial.Kit.Parts.Single(other => other.Piece.Id == part.Piece.Id).Piece));

    private static IEnumerable<string[]> Expected(Finished booklet, Piece metric, Piece imperial)
    {
        var (phrases, rulers) = (booklet.Phrases, (Metric: booklet.Metric.Kit.Ruler, Imperial: booklet.Imperial.Kit.Ruler));
        yield return [metric.Name, "", ""];
        foreach (var (across, label, value) in new[]
        {
            (true, "measurements.piece.scores_across", "scores_across"),
            (false, "measurements.piece.scores_down", "scores_down"),
        })
        {
            var (here, there) = (Marks(metric, across), Marks(imperial, across));
            if (here.Count == 0)
                continue;

            // The folds as they lie in the net and the values that steps may name are two ways to the same marks.
            Assert.Equal(here, ((LengthListValue)booklet.Metric.Values[$"{metric.Id}.{value}"]).Lengths);
            Assert.Equal(there, ((LengthListValue)booklet.Imperial.Values[$"{metric.Id}.{value}"]).Lengths);
            yield return [phrases[label], Sizes.Text(here, rulers.Metric), Sizes.Text(there, rulers.Imperial)];
        }

        var panels = metric.Panels.Where(panel => panel.Role == PanelRole.Panel)
            .OrderBy(panel => panel.Name == metric.Root ? 0 : 1)
            .Select(panel => (panel.Kind, Here: SizeOf(metric, panel), There: SizeOf(imperial, imperial.Panel(panel.Name))));
        foreach (var alike in panels.GroupBy(panel => (panel.Here, panel.There)).OrderBy(group => 0))
        {
            var kinds = alike.GroupBy(panel => panel.Kind, StringComparer.Ordinal).Select(kind => kind.Count() == 1
                ? kind.Key
                : phrases.Format("measurements.piece.panels", ("panel", kind.Key), ("count", Sizes.Text(kind.Count()))));
            var words = phrases.Join([.. kinds]);
            yield return [char.ToUpperInvariant(words[0]) + words[1..], Sizes.Text(alike.Key.Here, rulers.Metric), Sizes.Text(alike.Key.There, rulers.Imperial)];
        }
    }

    // Folds that run straight down the sheet have a mark at its top edge, those that run across one at its left.
    private static IReadOnlyList<Length> Marks(Piece piece, bool across) => ScoreSchedule.For(piece).IsByPoints ? [] :
    [
        .. piece.Folds.Where(fold => fold.Bulge == 0).Where(fold => across ? Math.Abs(fold.From.X - fold.To.X) < 1e-6 : Math.Abs(fold.From.Y - fold.To.Y) < 1e-6)
            .Select(fold => Length.FromMillimetres(across ? fold.From.X : fold.From.Y))
            .Distinct()
            .Order(),
    ];

    // Along the fold that the panel hangs on by away from it; the root as it lies.
    private static Size SizeOf(Piece piece, Panel panel)
    {
        var bounds = panel.Outline.Bounds;
        var size = new Size(
            Length.FromMillimetres(bounds.Right) - Length.FromMillimetres(bounds.Left),
            Length.FromMillimetres(bounds.Bottom) - Length.FromMillimetres(bounds.Top));
        var fold = piece.Folds.FirstOrDefault(fold => fold.Child == panel.Name);
        return fold is not null && Math.Abs(fold.From.X - fold.To.X) < 1e-6 ? new Size(size.Height, size.Width) : size;
    }

    // From the sheet's edge to the first mark, from mark to mark, and on to the other edge there is one panel each, and no
    // two of them leave anything between them.
    private static void AreWholePanels(IReadOnlyList<Length> marks, Piece piece, bool across)
    {
        var sheet = across ? piece.Sheet.Width : piece.Sheet.Height;
        Length[] stops = [Length.Zero, .. marks, sheet];
        for (var i = 1; i < stops.Length; i++)
        {
            Assert.Contains(piece.Panels, panel =>
            {
                var bounds = panel.Outline.Bounds;
                var (from, to) = across ? (bounds.Left, bounds.Right) : (bounds.Top, bounds.Bottom);
                // A tab may end short of the sheet's edge, so that it goes in easily.
                var spare = panel.Role == PanelRole.Tab ? MostRelief : Length.Zero;
                return Length.FromMillimetres(from) - stops[i - 1] <= (i == 1 ? spare : Length.Zero) && Length.FromMillimetres(from) >= stops[i - 1]
                    && stops[i] - Length.FromMillimetres(to) <= (i == stops.Length - 1 ? spare : Length.Zero) && Length.FromMillimetres(to) <= stops[i];
            });
        }
    }

    // “7/8, 1 3/4, 4 7/16 and 5 5/16 in”, each a whole number, a fraction, or both with a space between them.
    private static IReadOnlyList<Length> ReadLengths(string text)
    {
        var inches = text.EndsWith(" in", StringComparison.Ordinal);
        Assert.True(inches || text.EndsWith(" mm", StringComparison.Ordinal), text);
        return
        [
            .. Numbers().Matches(text).Select(number =>
            {
                var (whole, above, below) = (number.Groups["whole"].Value, number.Groups["above"].Value, number.Groups["below"].Value);
                var value = (whole.Length > 0 ? decimal.Parse(whole, System.Globalization.CultureInfo.InvariantCulture) : 0)
                    + (below.Length > 0 ? decimal.Parse(above, System.Globalization.CultureInfo.InvariantCulture) / decimal.Parse(below, System.Globalization.CultureInfo.InvariantCulture) : 0);
                return inches ? Length.FromInches(value) : Length.FromMillimetres(value);
            }),
        ];
    }

    [GeneratedRegex(@"(?<!/)\b(?<whole>\d+(\.\d+)?)(?![\d/.])( (?<above>\d+)/(?<below>\d+))?|(?<above>\d+)/(?<below>\d+)")]
    private static partial Regex Numbers();
}
