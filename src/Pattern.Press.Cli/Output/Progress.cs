namespace Pattern.Press.Cli.Output;

/// <summary>One line that says what is going on: rewritten in place on a terminal, and nothing at all elsewhere.</summary>
internal sealed class Progress(string booklet, TextWriter output, bool isTerminal) : IProgress<string>
{
    private int _shown;

    /// <inheritdoc/>
    public void Report(string value)
    {
        if (!isTerminal)
            return;
        var line = $"{booklet}: {value} …";
        output.Write("\r" + line.PadRight(_shown));
        output.Flush();
        _shown = line.Length;
    }

    /// <summary>Takes the line away again.</summary>
    public void Clear()
    {
        if (_shown == 0)
            return;
        output.Write("\r" + new string(' ', _shown) + "\r");
        _shown = 0;
    }
}
