using System.Globalization;
using System.Text;
using System.Xml.Linq;
using CsCheck;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Booklets.Svg;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Tests.Svg;

/// <summary>Files of pieces are read back as XML, and every line of them is looked for in the piece, and the other way round.</summary>
public sealed class PieceSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Pieces => ["base", "lid", "platform", "mat-top"];

    private static Piece Find(string id) => Samples.Box(65, 58, 70, 12, 22).Parts.First(part => part.Piece.Id == id).Piece;

    private static XElement Read(Piece piece) =>
        XDocument.Load(new MemoryStream(PieceSvg.Write(piece, Samples.Styles.Lines, "A box: part", "Cut 1 & keep it."))).Root!;

    private static IEnumerable<XElement> Paths(XElement svg, string group) =>
        Assert.Single(svg.Elements(Svg + "g"), g => (string?)g.Attribute("id") == group).Elements(Svg + "path");

    [Theory]
    [MemberData(nameof(Pieces))]
    public void One_unit_is_one_millimetre_and_the_picture_is_the_sheet(string id)
    {
        var piece = Find(id);
        var svg = Read(piece);
        string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
        var (width, height) = (Text(piece.Sheet.Width.Millimetres), Text(piece.Sheet.Height.Millimetres));
        Assert.Equal(width + "mm", svg.Attribute("width")!.Value);
        Assert.Equal(height + "mm", svg.Attribute("height")!.Value);
        Assert.Equal($"0 0 {width} {height}", svg.Attribute("viewBox")!.Value);
        Assert.Equal(("A box: part", "Cut 1 & keep it."), (svg.Element(Svg + "title")!.Value, svg.Element(Svg + "desc")!.Value));
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Every_cut_of_the_piece_is_in_the_group_of_cuts_once_and_nothing_else_is(string id)
    {
        var piece = Find(id);
        var drawn = Paths(Read(piece), "cut").SelectMany(path => Edges(path.Attribute("d")!.Value)).ToList();
        Same(piece.Cuts, drawn);
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Folds_are_in_the_group_of_their_direction(string id)
    {
        var piece = Find(id);
        var svg = Read(piece);
        foreach (var direction in Enum.GetValues<FoldDirection>())
        {
            var drawn = Paths(svg, direction.ToString().ToLowerInvariant()).SelectMany(path => Edges(path.Attribute("d")!.Value)).ToList();
            var folds = piece.Folds.Where(fold => fold.Direction == direction).ToList();

            // Folds that follow each other on one line are one line; so each lies on a line, and together they are as long.
            Assert.All(folds, fold => Assert.Contains(drawn, line => line.DistanceTo(fold.From) < 1e-5 && line.DistanceTo(fold.To) < 1e-5));
            Assert.Equal(folds.Sum(fold => fold.From.DistanceTo(fold.To)), drawn.Sum(line => line.Length), 5);
        }
    }

    [Theory]
    [InlineData("lid")]
    [InlineData("platform")]
    public void Glue_is_a_closed_area_that_says_which_side_it_is_on(string id)
    {
        var piece = Find(id);
        var paths = Paths(Read(piece), "glue").ToList();
        Assert.NotEmpty(paths);
        Assert.Equal(piece.GlueAreas.Count, paths.Count);
        foreach (var (area, path) in piece.GlueAreas.Zip(paths))
        {
            Assert.EndsWith(" Z", path.Attribute("d")!.Value, StringComparison.Ordinal);
            Assert.Equal(area.Side == SheetSide.Facing ? "facing" : "away", path.Attribute("class")!.Value);
            Same(area.Outline.Edges, Edges(path.Attribute("d")!.Value));
        }
    }

    [Fact]
    public void All_four_groups_are_there_even_when_they_are_empty() =>
        Assert.Equal(["cut", "glue", "mountain", "valley"], Read(Find("mat-top")).Elements(Svg + "g").Select(g => g.Attribute("id")!.Value).Order(StringComparer.Ordinal));

    [Fact]
    public void A_box_is_cut_in_one_go_round()
    {
        var path = Assert.Single(Paths(Read(Find("base")), "cut"));
        Assert.EndsWith(" Z", path.Attribute("d")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_piece_gives_the_same_bytes()
    {
        var first = PieceSvg.Write(Find("lid"), Samples.Styles.Lines, "Lid", "");
        Assert.Equal(first, PieceSvg.Write(Find("lid"), Samples.Styles.Lines, "Lid", ""));
        Assert.DoesNotContain('\r', Encoding.UTF8.GetString(first));
    }

    [Fact]
    public void Curves_stay_curves_whichever_way_and_however_far_they_turn()
    {
        Gen.Select(Gen.Double[-3, 3].Where(b => Math.Abs(b) > 0.05), Gen.Double[0, 6.28], Gen.Double[2, 40]).Sample((bulge, angle, chord) =>
        {
            var from = new Point(60, 60);
            var arc = new Edge(from, from + (new Point(Math.Cos(angle), Math.Sin(angle)) * chord), bulge);
            var piece = Find("mat-top") with { Cuts = [arc] };
            var path = Assert.Single(Paths(Read(piece), "cut")).Attribute("d")!.Value;
            Assert.Contains(" A ", path, StringComparison.Ordinal);
            // Each part is as long a piece of the way round as the others, and they follow one another.
            var read = Edges(path);
            for (var i = 0; i < read.Count; i++)
            {
                foreach (var part in new[] { 0.0, 0.2, 0.5, 0.8, 1 })
                    Assert.InRange(read[i].At(part).DistanceTo(arc.At((i + part) / read.Count)), 0, 1e-5);
            }
        }, iter: 300);
    }

    private static void Same(IReadOnlyList<Edge> expected, IReadOnlyList<Edge> found)
    {
        Assert.Equal(expected.Count, found.Count);
        foreach (var edge in expected)
        {
            Assert.Single(found, other =>
                (other.From.DistanceTo(edge.From) < 1e-5 && other.To.DistanceTo(edge.To) < 1e-5) ||
                (other.From.DistanceTo(edge.To) < 1e-5 && other.To.DistanceTo(edge.From) < 1e-5));
        }
    }

    // Path data of SVG 1.1, chapter 8: M, L, A and Z with absolute coordinates. The bulge of an arc is worked out from its
    // radius and flags: tan(sweep / 4), and the chord is 2 r sin(sweep / 2).
    private static List<Edge> Edges(string path)
    {
        var edges = new List<Edge>();
        var words = new Queue<string>(path.Split(' '));
        double Next() => double.Parse(words.Dequeue(), CultureInfo.InvariantCulture);
        Point start = default, at = default;
        while (words.TryDequeue(out var verb))
        {
            switch (verb)
            {
                case "M":
                    start = at = new Point(Next(), Next());
                    break;
                case "L":
                    var to = new Point(Next(), Next());
                    edges.Add(new Edge(at, to));
                    at = to;
                    break;
                case "A":
                    var radius = Next();
                    Assert.Equal(radius, Next());
                    Assert.Equal(0, Next());
                    var (large, clockwise) = (Next() == 1, Next() == 1);
                    var end = new Point(Next(), Next());
                    var sweep = 2 * Math.Asin(Math.Min(1, at.DistanceTo(end) / (2 * radius)));
                    sweep = large ? (2 * Math.PI) - sweep : sweep;
                    edges.Add(new Edge(at, end, (clockwise ? 1 : -1) * Math.Tan(sweep / 4)));
                    at = end;
                    break;
                case "Z":
                    if (at.DistanceTo(start) > 1e-5)
                        edges.Add(new Edge(at, start));
                    break;
                default:
                    Assert.Fail($"“{verb}” is no verb of these paths.");
                    break;
            }
        }

        return edges;
    }
}
