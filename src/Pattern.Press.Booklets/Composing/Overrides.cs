using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Lets what was asked for at the keyboard take the place of what the booklet says.</summary>
internal static class Overrides
{
    public static BookletSource Apply(BookletSource source, BuildOptions options, Problems problems)
    {
        if (options.Papers.Count > 0)
            source = source with { Papers = options.Papers };
        else if (options.FirstPaperOnly)
            source = source with { Papers = [.. source.Papers.Take(1)] };
        if (options.PrinterMargin is { } margin)
        {
            var place = new Place("--printer-margin");
            var written = LengthFormat.Format(margin, Ruler.WholeMillimetres);
            source = source with { PrinterMargin = margin, PrinterMarginPlace = place };
            if (PrintSettings.WrongMargin(margin, written) is var (wrong, instead))
                problems.Error(place, wrong, instead);
            else if (PrintSettings.CarefulMargin(margin, written) is var (careful, safe))
                problems.Warning(place, careful, safe);
        }

        if (options.Lap is { } lap)
        {
            var place = new Place("--lap");
            source = source with { Lap = lap, LapPlace = place };
            if (PrintSettings.WrongLap(lap, LengthFormat.Format(lap, Ruler.WholeMillimetres)) is var (wrong, instead))
                problems.Error(place, wrong, instead);
        }

        if (options.Copies is { } copies)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(copies, 1, nameof(options));

            // Materials are worked out for as many kits where the booklet lists them.
            if (!options.OnlyTemplates)
                source = source with { Kits = copies };
        }

        if (options.OnlyTemplates)
        {
            source = source with
            {
                Without = new SortedSet<BookletPart>(Enum.GetValues<BookletPart>().Where(part => part != BookletPart.Templates)),
                Introduction = source.Introduction with { Text = "" },
            };
        }

        return source;
    }
}
