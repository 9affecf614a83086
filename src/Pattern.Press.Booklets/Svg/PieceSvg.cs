using System.Globalization;
using System.Text;
using System.Xml;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Svg;

/// <summary>
/// Writes a piece as SVG 1.1 at true size, for cutting machines and drawing programs. One unit is one millimetre, the
/// picture is as large as the sheet the piece is cut from, and lines of each kind are in a group of their own, whose id is
/// <c>cut</c>, <c>valley</c>, <c>mountain</c> or <c>glue</c>: a machine is told once what to do with each. Arcs are arcs.
/// </summary>
public static class PieceSvg
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>The file.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="lines">The colours and widths of its lines.</param>
    /// <param name="title">What it is called.</param>
    /// <param name="description">What to cut it from, and which side is up.</param>
    public static byte[] Write(Piece piece, LineStyles lines, string title, string description)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(lines);
        using var bytes = new MemoryStream();
        var settings = new XmlWriterSettings { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" };
        using (var writer = XmlWriter.Create(bytes, settings))
        {
            var (width, height) = (Number(piece.Sheet.Width.Millimetres), Number(piece.Sheet.Height.Millimetres));
            writer.WriteStartElement("svg", Namespace);
            writer.WriteAttributeString("version", "1.1");
            writer.WriteAttributeString("width", width + "mm");
            writer.WriteAttributeString("height", height + "mm");
            writer.WriteAttributeString("viewBox", $"0 0 {width} {height}");
            writer.WriteElementString("title", Namespace, title);
            writer.WriteElementString("desc", Namespace, description);

            // Glue lies lowest, so that no line is hidden by its ground; cuts come last, because a piece is scored first.
            WriteGroup(writer, "glue", new Stroke(lines.Glue, lines.ThinWidth), piece.GlueAreas.Select(area => (Closed(area.Outline.Edges), Side(area))));
            WriteGroup(writer, "valley", lines.ValleyStroke, Folds(piece, FoldDirection.Valley));
            WriteGroup(writer, "mountain", lines.MountainStroke, Folds(piece, FoldDirection.Mountain));
            WriteGroup(writer, "cut", lines.CutStroke, CutPaths.Of(piece.Cuts).Select(path => (path.IsClosed ? Closed(path.Edges) : Open(path.Edges), (string?)null)));
            writer.WriteEndElement();
        }

        return bytes.ToArray();
    }

    private static IEnumerable<(string Path, string? Side)> Folds(Piece piece, FoldDirection direction) =>
        FoldRun.Of(piece).Where(run => run.Direction == direction).Select(run => (Open([new Edge(run.From, run.To)]), (string?)null));

    private static string? Side(GlueArea area) => area.Side == SheetSide.Facing ? "facing" : "away";

    private static void WriteGroup(XmlWriter writer, string id, Stroke stroke, IEnumerable<(string Path, string? Side)> paths)
    {
        // A group without lines is written too: who sets up a machine finds all four in every file.
        writer.WriteStartElement("g", Namespace);
        writer.WriteAttributeString("id", id);
        writer.WriteAttributeString("fill", "none");
        writer.WriteAttributeString("stroke", stroke.Colour.ToString());
        writer.WriteAttributeString("stroke-width", Number(stroke.Width));
        writer.WriteAttributeString("stroke-linejoin", "round");
        if (stroke.Dash.Count > 0)
            writer.WriteAttributeString("stroke-dasharray", Dashes(stroke.Dash));
        foreach (var (path, side) in paths)
        {
            writer.WriteStartElement("path", Namespace);
            writer.WriteAttributeString("d", path);
            if (side is not null)
                writer.WriteAttributeString("class", side);
            if (side == "away")
                writer.WriteAttributeString("stroke-dasharray", Dashes(DrawingStrokes.HiddenDash));
            writer.WriteEndElement();
        }

        writer.WriteEndElement();
    }

    private static string Dashes(IEnumerable<double> lengths) => string.Join(" ", lengths.Select(Number));

    private static string Closed(IReadOnlyList<Edge> edges)
    {
        // Closing the path draws the last side when it is straight; an arc has to be drawn.
        var drawn = edges[^1].IsArc ? edges : [.. edges.SkipLast(1)];
        return Open(drawn) + " Z";
    }

    private static string Open(IReadOnlyList<Edge> edges)
    {
        var path = new StringBuilder($"M {At(edges[0].From)}");
        foreach (var edge in edges)
        {
            path.Append(' ');
            if (edge.IsArc)
            {
                // Angles turn clockwise on the page in SVG as they do here, so a positive sweep is sweep flag 1 (SVG 1.1,
                // 8.3.8). An arc is given there by its ends and a radius, which leave its middle loose about a half circle:
                // a radius rounded to the nanometre moves it by micrometres, and the one of two arcs that is meant is in
                // doubt. In parts of no more than a quarter neither is.
                var radius = Number(edge.Radius);
                var parts = edge.PartsOf(Math.PI / 2);
                for (var part = 1; part <= parts; part++)
                {
                    var to = part == parts ? edge.To : edge.At((double)part / parts);
                    path.Append(CultureInfo.InvariantCulture, $"{(part > 1 ? " " : "")}A {radius} {radius} 0 0 {(edge.Sweep > 0 ? 1 : 0)} {At(to)}");
                }
            }
            else
            {
                path.Append("L ").Append(At(edge.To));
            }
        }

        return path.ToString();
    }

    private static string At(Point point) => $"{Number(point.X)} {Number(point.Y)}";

    // To the nanometre, in which lengths are exact.
    private static string Number(double millimetres)
    {
        var text = millimetres.ToString("0.######", CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
