namespace Pattern.Press.Structures.Reading;

/// <summary>How bad a problem is.</summary>
public enum Severity
{
    /// <summary>The booklet can be built, but something deserves a look.</summary>
    Warning,

    /// <summary>The booklet cannot be built.</summary>
    Error,
}

/// <summary>Something wrong with what a maker wrote, said so that a maker can put it right.</summary>
/// <param name="Severity">How bad it is.</param>
/// <param name="File">The file it is in, relative to the booklet's folder.</param>
/// <param name="Line">The line, from 1; 0 when the whole file is meant.</param>
/// <param name="Column">The column, from 1; 0 when the whole line is meant.</param>
/// <param name="Message">What is wrong, as a sentence.</param>
/// <param name="Advice">What to write or do instead, as a sentence; empty when the message says it.</param>
public sealed record Problem(Severity Severity, string File, int Line, int Column, string Message, string Advice = "")
{
    /// <summary>The problem on one line: <c>booklet.md:7:3: error: … …</c></summary>
    public override string ToString()
    {
        var place = (Line, Column) switch
        {
            (0, _) => File,
            (_, 0) => $"{File}:{Line}",
            _ => $"{File}:{Line}:{Column}",
        };
        return $"{place}: {(Severity == Severity.Error ? "error" : "warning")}: {Message}{(Advice.Length > 0 ? " " + Advice : "")}";
    }
}
