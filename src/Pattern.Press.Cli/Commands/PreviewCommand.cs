using System.CommandLine;
using System.Globalization;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Previews;
using Pattern.Press.Cli.Output;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Png;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Cli.Commands;

/// <summary><c>preview FOLDER</c>: makes pictures of pages, as they will be printed.</summary>
internal static class PreviewCommand
{
    private const int UsualWidth = 1000;
    private const int LeastWidth = 50;
    private const int MostWidth = 8000;

    public static Command Create(TextWriter output, TextWriter errors)
    {
        var folder = Shared.Folder();
        var pages = new Option<string[]>("--page")
        {
            Description = "A page to draw, by the number printed on it (3, T2) or “cover”; may be given several times. Without it, the cover and a sheet with all pages.",
            HelpName = "N",
            AllowMultipleArgumentsPerToken = false,
        };
        var width = new Option<int>("--width")
        {
            Description = "The width of each picture in pixels.",
            HelpName = "PX",
            DefaultValueFactory = _ => UsualWidth,
            CustomParser = result =>
            {
                if (int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var pixels) && pixels is >= LeastWidth and <= MostWidth)
                    return pixels;
                result.AddError($"“{result.Tokens[0].Value}” is not a width. Write a whole number of pixels from {LeastWidth} to {MostWidth}.");
                return UsualWidth;
            },
        };
        var print = new PrintOptions();
        var into = Shared.Out();
        var command = new Command("preview", "Makes pictures (PNG) of pages: those that are named, or the cover and all pages small.") { folder, pages, width };
        print.AddTo(command);
        command.Options.Add(into);
        command.SetAction(parsed => Preview(
            parsed.GetValue(folder)!,
            print.Of(parsed) with { FirstPaperOnly = true },
            parsed.GetValue(pages) ?? [],
            parsed.GetValue(width),
            parsed.GetValue(into)!,
            output,
            errors));
        return command;
    }

    private static int Preview(string folder, BuildOptions options, string[] wanted, int width, string into, TextWriter output, TextWriter errors)
    {
        var problems = new Problems();
        var name = Path.GetFileName(Path.GetFullPath(folder).TrimEnd(Path.DirectorySeparatorChar));
        var laidOut = new BookletPress(Resources.OfProgram).LayOut(folder, options, problems);
        ProblemReport.Write(problems.All, errors);
        if (laidOut is null)
            return Shared.NothingWritten(name, folder, errors);

        var pictures = new List<(string File, Page Page)>();
        foreach (var booklet in laidOut)
        {
            var pages = booklet.Document.Pages;
            var names = PageNames.Of(pages);
            var stem = $"{booklet.Name}-{booklet.Paper.Id}";
            foreach (var page in wanted)
            {
                if (PageNames.Find(names, page) is not { } index)
                {
                    errors.WriteLine($"There is no page “{page}” on {booklet.Paper.Name} paper. Its pages are {PageNames.InWords(names)}.");
                    return ExitCode.WrongUsage;
                }

                var file = $"{stem}-{(pages[index].Label.Length > 0 ? "page-" : "")}{names[index]}.png";
                if (!pictures.Exists(picture => picture.File == file))
                    pictures.Add((file, pages[index]));
            }

            if (wanted.Length == 0)
            {
                pictures.Add(($"{stem}-{names[0]}.png", pages[0]));
                pictures.Add(($"{stem}-pages.png", ContactSheet.Of(pages, booklet.Styles)));
            }
        }

        try
        {
            foreach (var file in OutputFolder.Write(into, [.. pictures.Select(picture => (picture.File, PngExporter.Render(picture.Page, width)))]))
                output.WriteLine(file);
            return ExitCode.Done;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return Shared.CannotWrite(into, problem, errors);
        }
    }
}
