namespace Pattern.Press.Structures.Reading;

/// <summary>
/// Finds YAML that nests so deep that reading it would exhaust the stack. The library reads nested values by recursion
/// and sets no bound of its own, and a stack that overflows takes the whole process with it.
/// </summary>
internal static class YamlNesting
{
    private const int MostInAFile = 2000;
    private const int MostInALine = 60;

    /// <summary>The line, counted from 0, from which the text nests too deep, or null when all is well.</summary>
    /// <remarks>
    /// Counts what can open a level rather than levels, which needs no reading: brackets over the whole text, and dashes
    /// and question marks that follow one another in a line. Levels made by indentation alone are bounded by the text's
    /// size, because each needs a deeper indentation than the one before.
    /// </remarks>
    public static int? TooDeep(string text)
    {
        var (line, brackets, inLine) = (0, 0, 0);
        for (var i = 0; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '\n':
                    line++;
                    inLine = 0;
                    break;
                case '[' or '{':
                    brackets++;
                    inLine++;
                    break;
                case '-' or '?' when i + 1 < text.Length && text[i + 1] is ' ' or '\t':
                    inLine++;
                    break;
            }

            if (brackets > MostInAFile || inLine > MostInALine)
                return line;
        }

        return null;
    }
}
