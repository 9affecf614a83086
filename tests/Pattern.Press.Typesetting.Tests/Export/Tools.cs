using System.ComponentModel;
using System.Diagnostics;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>PDF tools of other makers. A test that needs one that is not installed is skipped.</summary>
internal static class Tools
{
    /// <summary>The text as Poppler takes it out, without line ends.</summary>
    public static string PdfToText(byte[] file) => WithFile(file, path => Run("pdftotext", path, "-").Trim('\n', '\f'));

    /// <summary>The structure with its text as Poppler reads it.</summary>
    public static string StructureText(byte[] file) => WithFile(file, path => Run("pdfinfo", "-struct-text", path));

    /// <summary>A page as Poppler draws it.</summary>
    public static SKBitmap PdfToPicture(byte[] file, int page, int width) => WithFile(file, path =>
    {
        var number = FormattableString.Invariant($"{page}");
        var picture = Path.ChangeExtension(path, null);
        Run("pdftoppm", "-png", "-singlefile", "-f", number, "-l", number, "-scale-to-x", FormattableString.Invariant($"{width}"), "-scale-to-y", "-1", path, picture);
        return SKBitmap.Decode(picture + ".png");
    });

    /// <summary>Runs a tool on a file; gives everything it says in words of warning or error.</summary>
    public static string Complaints(byte[] file, string tool, params string[] arguments) => WithFile(file, path =>
    {
        var (output, errors, code) = Start(tool, [.. arguments, path]);

        // Some builds of MuPDF say on every file that they were made without colour management.
        var lines = $"{output}\n{errors}".Split('\n').Where(line => !line.Contains("ICC support is not available", StringComparison.Ordinal))
            .Where(line => code != 0 || line.Contains("warning", StringComparison.OrdinalIgnoreCase) || line.Contains("error", StringComparison.OrdinalIgnoreCase))
            .Where(line => !line.StartsWith("No syntax or stream encoding errors", StringComparison.Ordinal) && !line.StartsWith("errors that qpdf cannot detect", StringComparison.Ordinal));
        return string.Join('\n', lines);
    });

    private static string Run(string tool, params string[] arguments)
    {
        var (output, errors, code) = Start(tool, arguments);
        Assert.True(code == 0, errors);
        Assert.Equal("", errors);
        return output;
    }

    private static (string Output, string Errors, int Code) Start(string tool, string[] arguments)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        try
        {
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (output, errors.GetAwaiter().GetResult(), process.ExitCode);
        }
        catch (Win32Exception)
        {
            Assert.Skip($"{tool} is not installed.");
            throw;
        }
    }

    private static T WithFile<T>(byte[] file, Func<string, T> use)
    {
        var folder = Directory.CreateTempSubdirectory("press-pdf");
        try
        {
            var path = Path.Combine(folder.FullName, "file.pdf");
            File.WriteAllBytes(path, file);
            return use(path);
        }
        finally
        {
            folder.Delete(true);
        }
    }
}
