using System.Globalization;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>A booklet about a box that nobody has thought about: sizes, options, papers, margins and laps by lot.</summary>
public sealed class Variant : IDisposable
{
    private static readonly string[] _papers = ["a4", "letter", "a3", "a5", "legal", "tabloid"];
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("pattern-press-");

    public Variant(int seed)
    {
        var lot = new Random(seed);
        string Millimetres(int least, int most) => lot.Next(least, most + 1).ToString(CultureInfo.InvariantCulture) + " mm";
        string One(params string[] choices) => choices[lot.Next(choices.Length)];
        var item = One($"round: {Millimetres(25, 110)}", $"width: {Millimetres(25, 140)}\n  depth: {Millimetres(25, 110)}");
        var first = lot.Next(_papers.Length);
        var second = (first + lot.Next(1, _papers.Length)) % _papers.Length;
        var text = $"""
            ---
            title: A box by lot
            maker: The Long Table
            language: en-GB
            item:
              name: thing
              {item}
              height: {Millimetres(25, 130)}
            structure: explosion-box
            sizes:
              gussets: {One("yes", "yes", "no")}
              lid_walls: {One("single", "double")}
              platform: {One("yes", "no")}
              mats: {One("inside", "both", "none")}
            stocks:
              card:
                name: Card
                weight: 250 g/m2
                caliper: 0.{lot.Next(20, 45)} mm
                sheet: 900 x 900 mm
              mats:
                name: Paper
                weight: 120 g/m2
                caliper: 0.15 mm
                sheet: 900 x 900 mm
            primary: {One("metric", "imperial")}
            papers: [{_papers[first]}, {_papers[second]}]
            printer_margin: {Millimetres(4, 20)}
            lap: {Millimetres(2, 20)}
            theme: {One("handout", "market")}
            ---

            A box that opens.

            """;
        Folder = Path.Combine(_root.FullName, "box-by-lot");
        Directory.CreateDirectory(Path.Combine(Folder, "steps"));
        File.WriteAllText(Path.Combine(Folder, "booklet.md"), text);
        File.WriteAllText(Path.Combine(Folder, "steps", "01-cut.md"), "---\ntitle: Cut the base\npiece: base\nfigure: flat\n---\n\nCut a sheet of {{base.sheet}}.\n");
    }

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    public string Folder { get; }

    public void Dispose() => _root.Delete(recursive: true);
}
