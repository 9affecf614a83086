using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>
/// The sheet plan as it stands on the page: rectangles to scale, cut apart along the drawn lines in the order of their numbers
/// by somebody who reads the captions, and what is left over is what they say.
/// </summary>
public sealed partial class SheetsAsPrinted
{
    // A tenth of a line's thickness on paper, and what is read between two marks, in millimetres of the sheet.
    private const double OnPaper = 0.05;
    private const double OnSheet = 0.6;

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Every_drawn_sheet_is_to_scale_and_comes_apart_along_its_numbered_cuts(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var kit = booklet.Primary.Kit;
        var wanted = kit.Parts.ToDictionary(part => part, part => part.Quantity * booklet.Source.Kits);
        var found = 0;
        foreach (var page in printed.Pages)
        {
            var captions = Caption().Matches(page.Text).ToList();
            if (captions.Count == 0)
                continue;
            var lists = CutList().Matches(page.Text).ToDictionary(list => list.Groups["figure"].Value, list => list.Groups["cuts"].Value);
            var frames = Frames(page, booklet).ToList();
            Assert.Equal(captions.Count, frames.Count);
            foreach (var (caption, frame) in captions.Zip(frames))
            {
                found++;
                var stock = booklet.Source.Stocks.Values.First(stock => caption.Groups["stock"].Value.StartsWith(stock.Name, StringComparison.Ordinal));
                var sheet = stock.SheetAsCut;
                var times = caption.Groups["count"].Success ? int.Parse(caption.Groups["count"].Value, CultureInfo.InvariantCulture) : 1;
                var drawing = new Drawing(frame, sheet.Width.Millimetres);
                Assert.Equal(sheet.Height.Millimetres, frame.Height / drawing.Scale, OnSheet);

                var left = CutApart(page, drawing, sheet, caption.Groups["cuts"] is { Success: true } cuts ? cuts.Value : lists[caption.Groups["figure"].Value]);
                var parts = kit.Parts.Where(part => part.Stock == stock.Id).ToList();
                var offcuts = new List<Bounds>();
                foreach (var piece in left)
                {
                    var part = parts.Find(part => wanted[part] > 0 && Fits(part.Piece.Sheet, piece, stock.MayTurn) && IsCard(page, drawing, piece));
                    if (part is null)
                        offcuts.Add(piece);
                    else
                        wanted[part] -= times;
                }

                Assert.All(offcuts, offcut => Assert.False(IsCard(page, drawing, offcut), $"A rectangle of {offcut.Width} × {offcut.Height} mm is drawn that nothing needs."));
                AssertLeftOver(booklet, offcuts, stock, caption.Groups["left"].Value);
            }
        }

        Assert.True(found > 0);
        Assert.All(wanted, pair => Assert.True(pair.Value == 0, $"{pair.Key.Piece.Name}: {pair.Value} too few."));
    }

    // The distances and numbers of the caption, the places of the lines: nothing else is known of the cuts.
    private static List<Bounds> CutApart(PrintedPage page, Drawing drawing, Size sheet, string cuts)
    {
        var lines = page.Strokes.Where(stroke => stroke.Curves.Count == 0 && stroke.Lines.Count == 1 && stroke.Lines[0].Length > 0.2)
            .Select(stroke => stroke.Lines[0])
            .Where(line => drawing.Holds(line.From) && drawing.Holds(line.To))
            .Select(line => (From: drawing.OnSheet(line.From), To: drawing.OnSheet(line.To)))
            .ToList();
        var numbers = page.Runs.Where(run => !run.IsBold && drawing.Holds(run.Middle) && run.Text.All(char.IsDigit)).ToList();
        List<Bounds> table = [new(0, 0, sheet.Width.Millimetres, sheet.Height.Millimetres)];
        var next = 1;
        foreach (var words in Item().Replace(cuts, "; $1 $2").TrimStart(';', ' ').Split("; "))
        {
            var said = Operation().Match(words);
            Assert.True(said.Success, words);
            Assert.Equal(next++, int.Parse(said.Groups["number"].Value, CultureInfo.InvariantCulture));
            var down = said.Groups["way"].Value == "down";
            var distance = LengthParser.Parse(said.Groups["at"].Value.Split(" (")[0]).Millimetres;
            int Times(string group) => said.Groups[group].Success ? int.Parse(said.Groups[group].Value, CultureInfo.InvariantCulture) : 1;

            // The number stands on one of the lines that it is for.
            var number = drawing.OnSheet(numbers.Find(run => run.Text == said.Groups["number"].Value)!.Middle);
            Assert.Contains(lines, line => new Edge(line.From, line.To).DistanceTo(number) * drawing.Scale < 0.6);
            for (var i = 0; i < Times("times") * Times("parts"); i++)
            {
                var part = table.FindIndex(part => Line(part) >= 0);
                Assert.True(part >= 0, $"Nothing on the table is cut at “{words}”.");
                var area = table[part];
                lines.RemoveAt(Line(area));
                table.RemoveAt(part);
                table.Insert(part, down ? area with { Left = area.Left + distance } : area with { Top = area.Top + distance });
                table.Insert(part, down ? area with { Right = area.Left + distance } : area with { Bottom = area.Top + distance });
            }

            // A line from edge to edge of the part, as far in as the words say.
            int Line(Bounds part) => lines.FindIndex(line => down
                ? At(line.From.X, part.Left + distance) && At(line.To.X, part.Left + distance) && Spans(line.From.Y, line.To.Y, part.Top, part.Bottom)
                : At(line.From.Y, part.Top + distance) && At(line.To.Y, part.Top + distance) && Spans(line.From.X, line.To.X, part.Left, part.Right));
        }

        Assert.True(lines.Count == 0, $"{lines.Count} drawn lines are never cut.");
        return table;
    }

    private static bool At(double one, double other) => Math.Abs(one - other) < OnSheet;

    private static bool Spans(double from, double to, double least, double most) => At(Math.Min(from, to), least) && At(Math.Max(from, to), most);

    private static bool Fits(Size size, Bounds piece, bool mayTurn) =>
        (At(piece.Width, size.Width.Millimetres) && At(piece.Height, size.Height.Millimetres))
        || (mayTurn && At(piece.Width, size.Height.Millimetres) && At(piece.Height, size.Width.Millimetres));

    private static bool IsCard(PrintedPage page, Drawing drawing, Bounds piece) => page.Fills.Any(fill =>
    {
        var (from, to) = (drawing.OnSheet(new(fill.Left, fill.Top)), drawing.OnSheet(new(fill.Right, fill.Bottom)));
        return At(from.X, piece.Left) && At(from.Y, piece.Top) && At(to.X, piece.Right) && At(to.Y, piece.Bottom);
    });

    private static void AssertLeftOver(Finished booklet, List<Bounds> offcuts, Stock stock, string said)
    {
        var ruler = booklet.Primary.Kit.Ruler;
        var step = ruler.Step.Millimetres;
        var trim = stock.Trim.Millimetres;

        // What is narrower than 25 mm is not worth a word, nor is the edge that is trimmed off; three sizes are said.
        var worth = offcuts.Where(offcut => Math.Min(offcut.Width, offcut.Height) > Math.Max(25, trim + 1)).OrderByDescending(offcut => offcut.Width * offcut.Height).ToList();
        foreach (var text in said.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var (many, size) = text.Split(" of ") is [var number, var after] ? (int.Parse(number, CultureInfo.InvariantCulture), after) : (1, text);
            var sides = size.Split(" (")[0].Split(" × ");
            var (width, height) = (LengthParser.Parse(sides[0] + (ruler.System == UnitSystem.Metric ? " mm" : " in")), LengthParser.Parse(sides[1]));
            Assert.True(ruler.Marks(width) && ruler.Marks(height), $"{text} is on no mark.");
            for (var i = 0; i < many; i++)
            {
                var left = worth.FindIndex(offcut => Down(offcut.Width - width.Millimetres) && Down(offcut.Height - height.Millimetres));
                Assert.True(left >= 0, $"{text} is not left over.");
                worth.RemoveAt(left);
            }
        }

        // Whatever is not said is smaller than what is, or there are three already.
        Assert.True(said.Split("; ").Length >= 3 || !worth.Exists(offcut => Math.Min(offcut.Width, offcut.Height) > 26), $"More is left over than {said}.");

        bool Down(double lost) => lost > -0.1 && lost < step + 0.1;
    }

    // Upright rectangles with the proportions of a stock's sheet, in the order of the file.
    private static IEnumerable<Bounds> Frames(PrintedPage page, Finished booklet)
    {
        foreach (var stroke in page.Strokes.Where(stroke => stroke.Curves.Count == 0 && stroke.Lines.Count >= 4 && stroke.Lines.All(line => line.IsLevel() || line.IsUpright())))
        {
            var points = stroke.Points.ToList();
            var frame = new Bounds(points.Min(p => p.X), points.Min(p => p.Y), points.Max(p => p.X), points.Max(p => p.Y));
            if (stroke.Lines.Count == 4 && booklet.Source.Stocks.Values.Any(stock => Math.Abs((frame.Height / frame.Width) - ((double)(stock.SheetAsCut.Height / stock.SheetAsCut.Width))) < 0.005))
                yield return frame;
        }
    }

    private const string Cut = @"(?:down|across) (?:at|every) [\d./ ]+(?:mm|in)(?: \([^)]*\))?(?:, \d+ times)?(?:, \d+ parts alike)?";

    // Few cuts stand in the caption, many in a list below the drawings.
    [GeneratedRegex(@"Figure (?<figure>\d+)\. (?:One sheet|(?<count>\d+) sheets) of (?<stock>[^:.]*?)(?:, all alike)?\.(?: Cuts: (?<cuts>[^.]*(?:\.\d[^.]*)*)\.)?(?: Left over: (?<left>[^.]*(?:\.\d[^.]*)*)\.)?")]
    private static partial Regex Caption();

    [GeneratedRegex(@"The cuts of Figure\s(?<figure>\d+), in this order: (?<cuts>1\. " + Cut + @"(?: \d+\. " + Cut + @")*)")]
    private static partial Regex CutList();

    [GeneratedRegex(@"(?:^|\s)(\d+)\. (down|across)(?= (?:at|every))")]
    private static partial Regex Item();

    [GeneratedRegex(@"^(?<number>\d+) (?<way>down|across) (?:at|every) (?<at>.+?)(?:, (?<times>\d+) times)?(?:, (?<parts>\d+) parts alike)?$")]
    private static partial Regex Operation();

    /// <summary>A drawn sheet on a page.</summary>
    private sealed record Drawing(Bounds Frame, double SheetWidth)
    {
        public double Scale => Frame.Width / SheetWidth;

        public bool Holds(Point at) => at.X > Frame.Left - OnPaper && at.X < Frame.Right + OnPaper && at.Y > Frame.Top - OnPaper && at.Y < Frame.Bottom + OnPaper;

        public Point OnSheet(Point at) => new((at.X - Frame.Left) / Scale, (at.Y - Frame.Top) / Scale);
    }
}
