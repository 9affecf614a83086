using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Pattern.Press.Structures.Reading;

/// <summary>Reads YAML text into nodes that know their place, for every kind of file the project reads.</summary>
public static class YamlSource
{
    /// <summary>Reads one YAML document whose top is a mapping.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, for problems.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="firstLine">The line of the file at which the text starts, for front matter.</param>
    /// <returns>The mapping, or null when the text is broken (and a problem was noted).</returns>
    public static YamlMap? Read(string text, string file, Problems problems, int firstLine = 1)
    {
        if (YamlNesting.TooDeep(text) is { } deep)
        {
            problems.Error(new Place(file, firstLine + deep), "The YAML nests too deep here to be read.");
            return null;
        }

        using var reader = new StringReader(text);
        var parser = new Parser(reader);
        try
        {
            var stream = new YamlStream();
            stream.Load(parser);
            if (stream.Documents.Count == 0)
                return new YamlMap(new YamlMappingNode(), file, firstLine - 1, new Place(file, firstLine), problems);
            if (stream.Documents[0].RootNode is YamlMappingNode map)
                return new YamlMap(map, file, firstLine - 1, new Place(file, firstLine), problems);
            problems.Error(new Place(file, firstLine), "The file should be a list of “name: value” lines.");
            return null;
        }
        catch (YamlException broken)
        {
            var place = new Place(file, (int)broken.Start.Line + firstLine - 1, (int)broken.Start.Column);
            problems.Error(place, $"The YAML cannot be read here: {Plain(broken)}.", "Check the indentation, the colons and the quotation marks of this line and the one above.");
            return null;
        }
        catch (InvalidOperationException)
        {
            // A bracket that is never closed makes some versions of the library lose their own place; what was read last
            // is then as near as one comes.
            var last = parser.Current?.Start;
            problems.Error(
                new Place(file, (int)(last?.Line ?? 1) + firstLine - 1, (int)(last?.Column ?? 0)),
                "The YAML cannot be read from here on: a [list] or a {mapping} may never be closed.",
                "Look for a “[” without its “]”, or a “{” without its “}”, and check the indentation.");
            return null;
        }
        catch (ArgumentException broken)
        {
            // Two equal keys surface as an argument error without a place in some versions of the library.
            problems.Error(new Place(file, firstLine), $"The YAML cannot be read: {broken.Message.TrimEnd('.')}.");
            return null;
        }
    }

    private static string Plain(YamlException broken)
    {
        var message = (broken.InnerException ?? broken).Message;
        var colon = message.IndexOf("): ", StringComparison.Ordinal);
        message = (colon >= 0 ? message[(colon + 3)..] : message).Trim().TrimEnd('.');
        return message.Length > 0 ? char.ToLowerInvariant(message[0]) + message[1..] : "it is not well formed";
    }
}
