using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Tests.Fonts;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>A document whose every item is put in its place by hand, with everything pages can hold.</summary>
internal static class Sample
{
    public const string Ligatures = "The office fixes five baffling flaps, first offset by fifty.";
    public const string Fractions = "Cut 2 1/4 in × 15/16 in (57 mm × 24 mm) − no more.";

    public static ImageData Photograph { get; } = Picture(SKEncodedImageFormat.Jpeg, false);

    public static ImageData Cutout { get; } = Picture(SKEncodedImageFormat.Png, true);

    /// <summary>Three pages: a cover, a page of text, and a landscape template.</summary>
    public static PressDocument Document()
    {
        var root = new StructureElement(Role.Document);
        return new PressDocument
        {
            Pages = [Cover(root), Body(root), Template(root)],
            Structure = root,
            Title = "The Larkspur Box & Sleeve — größer",
            Author = "Mirabel Thorn",
            Subject = "A lidded box of card.",
            Language = "en-GB",
            Date = new DateOnly(2024, 3, 9),
            Bookmarks =
            [
                new Bookmark("Making", "making", [new Bookmark("What you need", "materials", [])]),
                new Bookmark("Template 1", "t1", []),
            ],
        };
    }

    /// <summary>A document of one page with some items, each tagged or not as given.</summary>
    public static PressDocument OnePage(StructureElement root, params PageItem[] items) => new()
    {
        Pages = [new Page { Width = 210, Height = 297, Items = items, Label = "1" }],
        Structure = root,
        Title = "One page",
        Language = "en-GB",
    };

    /// <summary>Text at a place.</summary>
    public static TextItem Text(double x, double y, string text, double size = 11, FontFace? face = null, Colour colour = default, FontFeatures features = FontFeatures.LiningFigures) =>
        new(Shaper.Shape(text, face ?? TestFonts.Sans, size, features), x, y, colour);

    /// <summary>Runs one after the other; those in braces are fractions.</summary>
    public static IReadOnlyList<PageItem> WithFractions(double x, double y, string text, double size = 11)
    {
        var items = new List<PageItem>();
        foreach (var (part, index) in text.Split('{', '}').Select((part, index) => (part, index)))
        {
            if (part.Length == 0)
                continue;
            var item = Text(x, y, part, size, features: index % 2 == 1 ? FontFeatures.Fraction : FontFeatures.LiningFigures);
            items.Add(item);
            x += item.Run.Width;
        }

        return items;
    }

    /// <summary>All text of some items in drawing order, of those that stand in no group.</summary>
    public static IEnumerable<TextItem> TextItems(IEnumerable<PageItem> items) => items.SelectMany(item => item switch
    {
        TextItem text => [text],
        TaggedItem tagged => TextItems(tagged.Items),
        ArtifactItem artifact => TextItems(artifact.Items),
        _ => [],
    });

    private static Page Cover(StructureElement root)
    {
        var sect = root.Add(Role.Sect);
        sect.Title = "Cover";
        var figure = sect.Add(Role.Figure);
        figure.AlternativeText = "The box, closed, 60 mm wide.";
        figure.Box = (75, 150, 60, 40);
        return new Page
        {
            Width = 210,
            Height = 297,
            Items =
            [
                new PathItem(PathBuilder.Rectangle(0, 0, 210, 120), new Colour(0x1F, 0x4F, 0x5C), null),
                new TaggedItem(sect.Add(Role.H1), [Text(20, 60, "The Larkspur Box", 34, TestFonts.SerifBold, Colour.White)]),
                new TaggedItem(figure, [Box(75, 150)]),
                new TaggedItem(sect.Add(Role.P),
                [
                    new TextItem(Shaper.Shape("FOR FIRST MAKERS", TestFonts.SansBold, 9, FontFeatures.NoLigatures) with { Tracking = 140 }, 20, 75, Colour.White),
                ]),
            ],
        };
    }

    private static Page Body(StructureElement root)
    {
        var sect = root.Add(Role.Sect);
        var items = new List<PageItem>
        {
            new ArtifactItem(ArtifactKind.Header, [Text(20, 12, "The Larkspur Box", 8, TestFonts.SansItalic)]),
            new TaggedItem(sect.Add(Role.H1), [Text(20, 30, "Making", 22, TestFonts.SerifBold)]),
            new TaggedItem(sect.Add(Role.P), [Text(20, 40, Ligatures)]),
            new TaggedItem(sect.Add(Role.P), WithFractions(20, 46, "Cut 2\u2009{1/4} in × {15/16} in (57\u00A0mm × 24\u00A0mm) − no more.")),
        };
        var paragraph = sect.Add(Role.P);
        var before = Text(20, 52, "Turn to ");
        var link = Text(20 + before.Run.Width, 52, "template 1", colour: new Colour(0x1F, 0x4F, 0x8C));
        var after = Text(link.X + link.Run.Width, 52, " or write to us.");
        items.Add(new TaggedItem(paragraph.Add(Role.Span), [before]));
        var linkElement = paragraph.Add(Role.Link);
        items.Add(new TaggedItem(linkElement, [link]));
        items.Add(new TaggedItem(paragraph.Add(Role.Span), [after]));
        var web = sect.Add(Role.P).Add(Role.Link);
        var webText = Text(20, 58, "www.example.org");
        items.Add(new TaggedItem(web, [webText]));
        items.Add(new TaggedItem(sect.Add(Role.H2), [Text(20, 70, "What you need", 15, TestFonts.SerifBold)]));
        AddList(sect, items);
        AddTable(sect, items);
        var photograph = sect.Add(Role.Figure);
        photograph.AlternativeText = "A smooth field of colours.";
        photograph.Box = (20, 150, 60, 40);
        var cutout = sect.Add(Role.Figure);
        cutout.AlternativeText = "A disc with soft edges.";
        cutout.Box = (90, 150, 40, 40);
        cutout.Add(Role.Caption);
        items.Add(new TaggedItem(photograph, [new ImageItem(Photograph, 20, 150, 60, 40)]));
        items.Add(new ArtifactItem(ArtifactKind.Layout, [new PathItem(PathBuilder.Rectangle(88, 148, 44, 44), new Colour(240, 230, 200), null)]));
        items.Add(new TaggedItem(cutout, [new ImageItem(Cutout, 90, 150, 40, 40)]));
        items.Add(new TaggedItem(cutout.Children[0], [Text(90, 197, "A disc", 9, TestFonts.SansItalic)]));
        var note = sect.Add(Role.Note);
        items.Add(new TaggedItem(note, [Text(20, 210, "“Quotes”, naïve café — 3′ 6″ – ½ × ¼…")]));
        items.Add(new ArtifactItem(ArtifactKind.Footer, [Text(105, 287, "7", 9)]));
        return new Page
        {
            Width = 210,
            Height = 297,
            Items = items,
            Label = "7",
            Links =
            [
                new LinkArea(link.X, 48, link.Run.Width, 5, "t1", false, "Template 1", linkElement),
                new LinkArea(20, 54, webText.Run.Width, 5, "https://www.example.org/käfer", true, "The shop’s page", web),
            ],
            Destinations = [("making", 25), ("materials", 65)],
        };
    }

    private static void AddList(StructureElement sect, List<PageItem> items)
    {
        var list = sect.Add(Role.L);
        list.Numbering = ListNumbering.Decimal;
        foreach (var (text, i) in new[] { "Card of 300 g", "A knife", "A bone folder" }.Select((text, i) => (text, i)))
        {
            var item = list.Add(Role.LI);
            items.Add(new TaggedItem(item.Add(Role.Lbl), [Text(20, 78 + (6 * i), FormattableString.Invariant($"{i + 1}."))]));
            items.Add(new TaggedItem(item.Add(Role.LBody), [Text(27, 78 + (6 * i), text)]));
        }
    }

    private static void AddTable(StructureElement sect, List<PageItem> items)
    {
        var table = sect.Add(Role.Table);
        var row = table.Add(Role.THead).Add(Role.TR);
        Cell(row, Role.TH, 20, 102, "Piece", HeaderScope.Column);
        Cell(row, Role.TH, 70, 102, "Size", HeaderScope.Column).ColumnSpan = 2;
        items.Add(new ArtifactItem(ArtifactKind.Layout, [new PathItem(PathBuilder.Line(20, 104, 150, 104), null, new Stroke(Colour.Black, 0.2))]));
        var body = table.Add(Role.TBody);
        foreach (var (name, y) in new[] { ("Lid", 110), ("Base", 116) })
        {
            row = body.Add(Role.TR);
            Cell(row, Role.TH, 20, y, name, HeaderScope.Row);
            Cell(row, Role.TD, 70, y, "111 mm", null);
            Cell(row, Role.TD, 110, y, "98 mm", null);
        }

        StructureElement Cell(StructureElement parent, Role role, double x, double y, string text, HeaderScope? scope)
        {
            var cell = parent.Add(role);
            cell.Scope = scope;
            items.Add(new TaggedItem(cell.Add(Role.P), [Text(x, y, text, 10, features: FontFeatures.TabularFigures | FontFeatures.LiningFigures)]));
            return cell;
        }
    }

    private static Page Template(StructureElement root)
    {
        var sect = root.Add(Role.Sect);
        var figure = sect.Add(Role.Figure);
        figure.AlternativeText = "Template 1: the base, a rectangle of 100 mm × 60 mm with a valley fold.";
        figure.Box = (20, 30, 160, 120);
        return new Page
        {
            Width = 297,
            Height = 210,
            Label = "T1",
            Destinations = [("t1", 0)],
            Items =
            [
                new TaggedItem(sect.Add(Role.H1), [Text(20, 20, "Template 1", 18, TestFonts.SerifBold)]),
                new TaggedItem(figure,
                [
                    new PathItem(PathBuilder.Rectangle(20, 30, 100, 60), null, new Stroke(Colour.Black, 0.5)),
                    new PathItem(PathBuilder.Line(20, 60, 120, 60), null, new Stroke(new Colour(0x20, 0x60, 0xA0), 0.25, [3, 0.75])),
                    new PathItem(PathBuilder.Line(70, 30, 70, 90), null, new Stroke(new Colour(0xA0, 0x30, 0x20), 0.25, [6, 0.75, 0.125, 0.75], LineCap.Round)),
                    new PathItem(PathBuilder.Circle(95, 45, 10), new Colour(220, 220, 220), new Stroke(Colour.Black, 0.25)),
                    new GroupItem(
                        Transform.Turn(30).Then(Transform.Move(140, 60)),
                        PathBuilder.Rectangle(0, 0, 40, 20),
                        [
                            new PathItem(PathBuilder.Rectangle(-5, -5, 60, 60), new Colour(250, 220, 200), null),
                            Text(2, 10, "Turned and clipped off", 14),
                            new GroupItem(Transform.Scale(0.5).Then(Transform.Move(2, 14)), null, [Text(0, 0, "Half size", 14)]),
                        ]),
                ]),

                // Content inside a turned group has its tags inside as well.
                new GroupItem(
                    Transform.Turn(90).Then(Transform.Move(280, 40)),
                    PathBuilder.Rectangle(-5, -10, 120, 20),
                    [
                        new TaggedItem(sect.Add(Role.P), [Text(0, 0, "Read along the edge")]),
                        new PathItem(PathBuilder.Line(0, 2, 60, 2), null, new Stroke(Colour.Black, 0.3)),
                    ]),
                new ArtifactItem(ArtifactKind.Page, [new PathItem(PathBuilder.Line(5, 5, 10, 5), null, new Stroke(Colour.Black, 0.1))]),
                new ArtifactItem(ArtifactKind.Footer, [Text(285, 200, "T1", 9)]),
            ],
        };
    }

    private static GroupItem Box(double x, double y) => new(
        Transform.Move(x, y),
        null,
        [
            new PathItem(PathBuilder.Polygon(new(0, 10), new(40, 10), new(60, 0), new(20, 0)), new Colour(230, 230, 235), new Stroke(Colour.Black, 0.3)),
            new PathItem(PathBuilder.Rectangle(0, 10, 40, 30), new Colour(245, 245, 250), new Stroke(Colour.Black, 0.3)),
            Text(8, 27, "60 mm", 8),
        ]);

    private static ImageData Picture(SKEncodedImageFormat format, bool disc)
    {
        const int Size = 96;
        using var bitmap = new SKBitmap(new SKImageInfo(Size, Size, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        for (var y = 0; y < Size; y++)
        {
            for (var x = 0; x < Size; x++)
            {
                var distance = Math.Sqrt(Math.Pow(x - 47.5, 2) + Math.Pow(y - 47.5, 2));
                var alpha = disc ? (byte)Math.Clamp((48 - distance) * 16, 0, 255) : (byte)255;
                bitmap.SetPixel(x, y, new SKColor((byte)(x * 2), (byte)(y * 2), 120, alpha));
            }
        }

        using var data = bitmap.Encode(format, 90);
        return new ImageData(format == SKEncodedImageFormat.Png ? ImageFormat.Png : ImageFormat.Jpeg, data.ToArray(), Size, Size);
    }
}
