using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Themes;

/// <summary>Reads a theme, <c>NAME/theme.yaml</c> in the folder of themes, and opens its fonts.</summary>
public static class ThemeReader
{
    private const string FileName = "theme.yaml";
    private const string FontsFolder = "fonts";
    private const int MostColumns = 3;
    private static readonly string[] Covers = ["plain", "field"];

    /// <summary>The names of the themes there are, in alphabetical order.</summary>
    public static IReadOnlyList<string> Names(string themesFolder) =>
        !Directory.Exists(themesFolder) ? [] :
        [
            .. Directory.EnumerateDirectories(themesFolder)
                .Where(folder => File.Exists(Path.Combine(folder, FileName)))
                .Select(folder => Path.GetFileName(folder)!)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>Reads a theme.</summary>
    /// <param name="themesFolder">The folder of themes.</param>
    /// <param name="name">The theme's name.</param>
    /// <param name="language">A BCP 47 tag of the language of the text.</param>
    /// <param name="problems">Takes everything that is wrong with the theme, in one go.</param>
    /// <param name="place">Where the maker named the theme, for problems.</param>
    /// <returns>The theme, or null when an error was noted.</returns>
    public static StyleSheet? Read(string themesFolder, string name, string language, Problems problems, Place place = default)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(problems);
        var names = Names(themesFolder);
        if (!names.Contains(name))
        {
            problems.Error(place, $"There is no theme “{name}”.", Spelling.Advice(name, names));
            return null;
        }

        var file = $"themes/{name}/{FileName}";
        var own = new Problems();
        var styles = TextFile.Read(Path.Combine(themesFolder, name, FileName), file, own) is { } text && YamlSource.Read(text, file, own) is { } map
            ? Read(new ThemeMap(map, "", own), themesFolder, name, language, own)
            : null;
        foreach (var problem in own.All)
            problems.Add(problem);
        return own.HasErrors ? null : styles;
    }

    private static StyleSheet? Read(ThemeMap map, string themesFolder, string name, string language, Problems problems)
    {
        map.Words("title", "Say what the theme is called, such as “title: Handout”.")?.AsText();
        var fonts = map.Inner("fonts", "Name the font files of “text” and “display”.");
        var text = fonts is null ? null : Family(fonts, "text", themesFolder, problems);
        var display = fonts is null ? null : Family(fonts, "display", themesFolder, problems);
        fonts?.RefuseTheRest();
        var scale = map.Inner("scale", "Give the sizes of type, such as “body: 11 pt”.") is { } s ? Scale(s, problems) : null;
        var palette = map.Inner("colours", "Give the colours, such as “text: \"#1a1a1a\"”.") is { } c ? Colours(c, problems) : null;
        var spacing = map.Inner("spacing", "Give the margins and distances, such as “top: 22 mm”.") is { } d ? Distances(d) : null;
        var lines = map.Inner("lines", "Give the lines of drawings, such as “cut_width: 0.5 mm”.") is { } l ? Lines(l, problems) : null;
        var columns = Columns(map.InnerIfAny("columns"));
        var justified = map.YesNo("justified");
        var cover = map.Choice("cover", Covers);
        map.RefuseTheRest();
        if (text is null || display is null || scale is null || palette is null || spacing is null || lines is null)
            return null;
        return new StyleSheet
        {
            Name = name,
            Text = text,
            Display = display,
            Scale = scale,
            Palette = palette,
            Spacing = spacing,
            Lines = lines,
            Columns = columns,
            Justified = justified,
            Cover = cover == "field" ? CoverStyle.Field : CoverStyle.Plain,
            Language = language,
        };
    }

    private static FontFamily? Family(ThemeMap fonts, string key, string themesFolder, Problems problems)
    {
        if (fonts.Inner(key, "Name its four faces: regular, italic, bold and bold_italic.") is not { } family)
            return null;
        var regular = Face(family, "regular", themesFolder, problems);
        var italic = Face(family, "italic", themesFolder, problems);
        var bold = Face(family, "bold", themesFolder, problems);
        var boldItalic = Face(family, "bold_italic", themesFolder, problems);
        family.RefuseTheRest();
        if (regular is null || italic is null || bold is null || boldItalic is null)
            return null;

        // Faces that were mixed up are easier to see here than in print.
        if (bold.WeightClass <= regular.WeightClass)
            problems.Error(family.PlaceOf("bold"), $"{bold.Name} is no bolder than {regular.Name}.", "Were the two mixed up?");
        foreach (var (slantedKey, slanted) in new[] { ("italic", italic), ("bold_italic", boldItalic) })
        {
            if (slanted.ItalicAngle == 0)
                problems.Error(family.PlaceOf(slantedKey), $"{slanted.Name} is not an italic face.", "Were the faces mixed up?");
        }

        return new FontFamily(regular, italic, bold, boldItalic);
    }

    private static FontFace? Face(ThemeMap family, string key, string themesFolder, Problems problems)
    {
        if (family.Words(key, $"Name a file in {FontsFolder}, such as “{key}: alegreya-sans/AlegreyaSans-Regular.ttf”.") is not { } item || item.AsText() is not { } path)
            return null;
        var folder = Path.Combine(themesFolder, FontsFolder);
        var (kind, full) = FolderPaths.Follow(folder, path);
        if (kind is PathKind.Outside or PathKind.Absolute)
        {
            problems.Error(item.Place, $"The font {path} lies outside the themes’ folder of fonts.", $"Put the font and its licence into a folder in {FontsFolder}, and name it from there.");
            return null;
        }

        if (kind != PathKind.Inside)
        {
            var known = Directory.Exists(folder)
                ? Directory.EnumerateFiles(folder, "*.ttf", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')).ToList()
                : [];
            var nearest = Spelling.Nearest(path, known);
            problems.Error(item.Place, $"There is no font {path} in the themes’ folder of fonts.", nearest is null ? $"Name a file in {FontsFolder}, such as “{key}: {known.Order(StringComparer.Ordinal).FirstOrDefault() ?? "my-family/MyFamily-Regular.ttf"}”." : $"Did you mean “{nearest}”?");
            return null;
        }

        try
        {
            return FaceCache.Open(full);
        }
        catch (FormatException broken)
        {
            problems.Error(item.Place, $"The font {path} cannot be used: {broken.Message}", "Use a static TrueType font (.ttf).");
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            problems.Error(item.Place, $"The font {path} cannot be read.", "Check that you may read it, and that no other program holds it.");
        }

        return null;
    }

    private static TypeScale Scale(ThemeMap map, Problems problems)
    {
        var scale = new TypeScale(
            Body: map.Points("body", 8, 16, usual: 11),
            Leading: map.Points("leading", 9, 32, usual: 15),
            Lead: map.Points("lead", 8, 24, usual: 13),
            Small: map.Points("small", 6, 14, usual: 9),
            Table: map.Points("table", 6, 16, usual: 10),
            Heading1: map.Points("heading_1", 8, 60, usual: 22),
            Heading2: map.Points("heading_2", 8, 48, usual: 15.5),
            Heading3: map.Points("heading_3", 8, 36, usual: 12),
            Title: map.Points("title", 14, 96, usual: 36),
            Drawing: map.Points("drawing", 6, 14, usual: 8));
        map.RefuseTheRest();
        if (map.AreRight("body", "leading") && (scale.Leading < scale.Body * 1.1 || scale.Leading > scale.Body * 2))
            problems.Error(map.PlaceOf("leading"), "The leading does not suit the size of the body.", "Lines stand 1.1 to 2 times the size of the type apart; 1.3 to 1.4 reads well.");
        Order("heading_1", scale.Heading1, "title", scale.Title);
        Order("heading_2", scale.Heading2, "heading_1", scale.Heading1);
        Order("heading_3", scale.Heading3, "heading_2", scale.Heading2);
        Order("body", scale.Body, "lead", scale.Lead);
        Order("small", scale.Small, "body", scale.Body);
        return scale;

        void Order(string lesserKey, double lesser, string greaterKey, double greater)
        {
            if (lesser > greater && map.AreRight(lesserKey, greaterKey))
                problems.Error(map.PlaceOf(lesserKey), $"scale.{lesserKey} is larger than scale.{greaterKey}, which stands above it.", "Make it smaller.");
        }
    }

    private static Palette? Colours(ThemeMap map, Problems problems)
    {
        var text = map.Paint("text");
        var heading = map.Paint("heading");
        var accent = map.Paint("accent");
        var muted = map.Paint("muted");
        var rule = map.Paint("rule");
        var tint = map.Paint("tint");
        var caution = map.Paint("caution");
        var coverGround = map.Paint("cover_ground");
        var coverText = map.Paint("cover_text");
        map.RefuseTheRest();
        foreach (var paint in new[] { text, heading, accent, muted, caution })
            Contrasts.Check(paint, Contrasts.OfText, problems, Contrasts.White, tint);
        Contrasts.Check(coverText, Contrasts.OfText, problems, coverGround);
        return (text, heading, accent, muted, rule, tint, caution, coverGround, coverText) is ({ } a, { } b, { } c, { } d, { } e, { } f, { } g, { } h, { } i)
            ? new Palette(a.Colour, b.Colour, c.Colour, d.Colour, e.Colour, f.Colour, g.Colour, h.Colour, i.Colour)
            : null;
    }

    private static ColumnCounts Columns(ThemeMap? map)
    {
        if (map is null)
            return new ColumnCounts(1, 1, 1, 1);
        var columns = new ColumnCounts(
            Contents: map.Count("contents", MostColumns),
            Materials: map.Count("materials", MostColumns),
            Credits: map.Count("credits", MostColumns),
            Key: map.Count("key", MostColumns));
        map.RefuseTheRest();
        return columns;
    }

    private static Spacing Distances(ThemeMap map)
    {
        var spacing = new Spacing(
            Top: map.Distance("top", 10, 60, usual: 20),
            Bottom: map.Distance("bottom", 10, 60, usual: 18),
            Left: map.Distance("left", 10, 60, usual: 26),
            Right: map.Distance("right", 10, 60, usual: 26),
            Paragraph: map.Distance("paragraph", 0, 15, usual: 2.2),
            Block: map.Distance("block", 1, 25, usual: 4.6),
            Gutter: map.Distance("gutter", 2, 25, usual: 8));
        map.RefuseTheRest();
        return spacing;
    }

    private static LineStyles? Lines(ThemeMap map, Problems problems)
    {
        var cutWidth = map.Distance("cut_width", 0.1, 1.5, usual: 0.5);
        var foldWidth = map.Distance("fold_width", 0.1, 1, usual: 0.35);
        var thinWidth = map.Distance("thin_width", 0.05, 0.5, usual: 0.18);
        var cut = map.Paint("cut");
        var valley = map.Paint("valley");
        var mountain = map.Paint("mountain");
        var glue = map.Paint("glue");
        var waste = map.Paint("waste");
        var dimension = map.Paint("dimension");
        var faded = map.Paint("faded");
        var card = map.Paint("card");
        var cardAway = map.Paint("card_away");
        map.RefuseTheRest();
        if (cutWidth <= foldWidth && map.AreRight("cut_width", "fold_width"))
            problems.Error(map.PlaceOf("cut_width"), "Lines to cut are no wider than folds.", "Weight tells them apart in a grey print; make lines to cut wider.");
        if (foldWidth < thinWidth && map.AreRight("fold_width", "thin_width"))
            problems.Error(map.PlaceOf("fold_width"), "Folds are thinner than thin lines.", "Make folds wider, or thin lines thinner.");
        foreach (var paint in new[] { cut, valley, mountain, glue, waste, faded })
            Contrasts.Check(paint, Contrasts.OfLines, problems, Contrasts.White, card, cardAway);
        // Figures are written in the colour of their dimension lines.
        Contrasts.Check(dimension, Contrasts.OfText, problems, Contrasts.White, card, cardAway);
        return (cut, valley, mountain, glue, waste, dimension, faded, card, cardAway) is ({ } a, { } b, { } c, { } d, { } e, { } f, { } g, { } h, { } i)
            ? new LineStyles(cutWidth, foldWidth, thinWidth, a.Colour, b.Colour, c.Colour, d.Colour, e.Colour, f.Colour, g.Colour, h.Colour, i.Colour)
            : null;
    }
}
