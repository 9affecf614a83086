using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>What one conversion of a text knows and collects.</summary>
internal sealed class ConversionContext
{
    private readonly List<(string Name, Place Place)> _ownTargets = [];
    private readonly SortedSet<string> _ownDestinations = new(StringComparer.Ordinal);

    public required MarkdownText Text { get; init; }

    public required string Folder { get; init; }

    public required IBindings Bindings { get; init; }

    public required Problems Problems { get; init; }

    public required MarkdownOptions Options { get; init; }

    public required Positions Places { get; init; }

    /// <summary>Notes that raw HTML is not read.</summary>
    public void RefuseHtml(int index, string html)
    {
        var isComment = html.StartsWith("<!--", StringComparison.Ordinal);
        Problems.Error(
            Places.At(index),
            isComment ? "A comment in HTML cannot be read here." : $"HTML cannot be read here: “{(html.Length <= 40 ? html : html[..37] + "…")}”.",
            isComment ? "Keep notes in a file of their own." : "Write it in Markdown, such as *emphasis*; for a plain < put \\ before it.");
    }

    /// <summary>Where a link leads; null after noting what is wrong with it.</summary>
    public (string Target, bool IsAddress)? Target(string url, Place place)
    {
        if (url.StartsWith('#'))
        {
            // Figures are numbered, and links to them checked, when the whole booklet is known.
            if (url.StartsWith("#" + Numbering.FigurePrefix, StringComparison.Ordinal))
                return (url[1..], false);
            _ownTargets.Add((url[1..], place));
            return (OwnName(url[1..]), false);
        }

        if (Uri.TryCreate(url, UriKind.Absolute, out var address) && url.Contains(':', StringComparison.Ordinal))
        {
            if (address.Scheme is "http" or "https" or "mailto")
                return (url, true);
            Problems.Error(place, $"The link {url} leads to a place that readers cannot follow.", "Links lead to web addresses (https://…), e-mail addresses (mailto:…), step files, or places in the booklet (#name).");
            return null;
        }

        var file = Uri.UnescapeDataString(url);
        if (Options.Files.TryGetValue(file, out var destination) || Options.Files.TryGetValue("steps/" + file, out destination) ||
            (file.StartsWith("../", StringComparison.Ordinal) && Options.Files.TryGetValue(file[3..], out destination)))
            return (destination, false);
        if (file.Length == 0)
            Problems.Error(place, "The link leads nowhere.", "Write where between the parentheses: [the lid](#lid).");
        else
            Problems.Error(place, $"The link leads to “{file}”, which is not a file of this booklet.", Spelling.Nearest(file, Options.Files.Keys.Concat(Options.Files.Keys.Select(known => known[(known.LastIndexOf('/') + 1)..]))) is { } nearest ? $"Did you mean “{nearest}”?" : "For the web write the whole address, https:// and all.");
        return null;

        string OwnName(string name) => Options.Destinations?.Contains(name) == true ? name : Options.DestinationPrefix + name;
    }

    /// <summary>A destination for a heading of this text that no other heading of it has.</summary>
    public string Destination(string words)
    {
        var name = Slug(words);
        var unique = name;
        for (var n = 2; !_ownDestinations.Add(unique); n++)
            unique = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{name}-{n}");
        return Options.DestinationPrefix + unique;
    }

    /// <summary>Checks the links that lead into the booklet, once all headings are known.</summary>
    public void CheckTargets()
    {
        if (Options.Destinations is not { } known)
            return;
        foreach (var (name, place) in _ownTargets)
        {
            if (!known.Contains(name) && !_ownDestinations.Contains(name))
                Problems.Error(place, $"The link leads to “#{name}”, which is not in this booklet.", Spelling.Advice(name, [.. known.Concat(_ownDestinations).Distinct(StringComparer.Ordinal)]));
        }
    }

    /// <summary>Words as the name of a place: small letters, figures and hyphens.</summary>
    public static string Slug(string words)
    {
        var slug = new System.Text.StringBuilder();
        foreach (var c in words)
        {
            if (char.IsLetterOrDigit(c))
                slug.Append(char.ToLowerInvariant(c));
            else if (slug.Length > 0 && slug[^1] != '-' && c is not ('’' or '\''))
                slug.Append('-');
        }

        var name = slug.ToString().TrimEnd('-');
        return name.Length > 0 ? name : "section";
    }
}
