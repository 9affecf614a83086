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
}
