using System.Globalization;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Previews;

/// <summary>What pages are called outside the booklet: by the number printed on them, or by their place.</summary>
public static class PageNames
{
    /// <summary>The name of the first page, which has no number.</summary>
    public const string Cover = "cover";

    /// <summary>The name of each page, in order: <c>cover</c>, <c>1</c>, <c>2</c>, <c>T1</c>; no two alike.</summary>
    public static IReadOnlyList<string> Of(IReadOnlyList<Page> pages)
    {
        ArgumentNullException.ThrowIfNull(pages);
        var names = new string[pages.Count];
        for (var i = 0; i < names.Length; i++)
            names[i] = pages[i].Label.Length > 0 ? pages[i].Label : i == 0 ? Cover : string.Create(CultureInfo.InvariantCulture, $"{Cover}-{i + 1}");
        return names;
    }

    /// <summary>Where the page of a name is, whether its letters are small or capital; null when there is none.</summary>
    public static int? Find(IReadOnlyList<string> names, string name)
    {
        ArgumentNullException.ThrowIfNull(names);
        for (var i = 0; i < names.Count; i++)
        {
            if (names[i].Equals(name, StringComparison.OrdinalIgnoreCase))
                return i;
        }

        return null;
    }

    /// <summary>All the names in few words: <c>cover, 1 to 14, T1 to T8</c>.</summary>
    public static string InWords(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        var runs = new List<(string First, string Last)>();
        foreach (var name in names)
        {
            if (runs.Count > 0 && Stem(runs[^1].Last) == Stem(name) && name.Any(char.IsAsciiDigit))
                runs[^1] = (runs[^1].First, name);
            else
                runs.Add((name, name));
        }

        return string.Join(", ", runs.Select(run => run.First == run.Last ? run.First : $"{run.First} to {run.Last}"));
    }

    private static string Stem(string name) => name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
}
