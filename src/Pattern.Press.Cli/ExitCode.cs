namespace Pattern.Press.Cli;

/// <summary>What the command tells the shell.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The content has problems; they were listed.</summary>
    public const int ContentHasProblems = 1;

    /// <summary>The command was used wrongly.</summary>
    public const int WrongUsage = 2;

    /// <summary>Something could not be read or written.</summary>
    public const int CannotReadOrWrite = 3;
}
