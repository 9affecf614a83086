using System.CommandLine;

namespace Pattern.Press.Cli.Commands;

/// <summary>Arguments and options that several commands take.</summary>
internal static class Shared
{
    /// <summary>The booklet's folder.</summary>
    public static Argument<string> Folder() => new("FOLDER")
    {
        Description = "The booklet's folder: it holds booklet.md and a folder of steps.",
    };

    /// <summary>The folder to write to.</summary>
    public static Option<string> Out() => new("--out")
    {
        Description = "The folder to write to; made if it is not there.",
        HelpName = "DIR",
        DefaultValueFactory = _ => "out",
    };

    /// <summary>Says that problems kept anything from being written.</summary>
    public static int NothingWritten(string name, string folder, TextWriter errors)
    {
        errors.WriteLine($"{name}: nothing was written.");
        return Directory.Exists(folder) || File.Exists(folder) ? ExitCode.ContentHasProblems : ExitCode.CannotReadOrWrite;
    }

    /// <summary>Says that finished files could not be put where they were wanted.</summary>
    public static int CannotWrite(string folder, Exception problem, TextWriter errors)
    {
        errors.WriteLine($"{folder}: cannot be written to: {problem.Message}");
        errors.WriteLine("    Choose another folder with --out, or make room there. Nothing was changed.");
        return ExitCode.CannotReadOrWrite;
    }
}
