using System.Globalization;
using System.Text.RegularExpressions;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads how long a step takes: <c>10 min</c>, <c>1 h</c>, <c>1 h 30 min</c>.</summary>
internal static partial class Duration
{
    private const int MostMinutes = 24 * 60;

    /// <summary>Reads a time.</summary>
    /// <param name="text">What the maker wrote.</param>
    /// <param name="minutes">The time in minutes, from 1 to a day.</param>
    /// <param name="problem">What is wrong and what to write instead; empty when it could be read.</param>
    public static bool TryParse(string text, out int minutes, out string problem)
    {
        minutes = 0;
        problem = "";
        var match = Pattern().Match(text.Trim());
        if (!match.Success)
        {
            problem = int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var bare)
                ? $"“{text}” has no unit; write {bare} min or {bare} h."
                : $"“{text}” is not a time; write it as 10 min, 1 h or 1 h 30 min.";
            return false;
        }

        minutes = (60 * Number(match.Groups["hours"])) + Number(match.Groups["minutes"]);
        if (minutes is >= 1 and <= MostMinutes)
            return true;
        problem = $"“{text}” is not a time for one step; it can be from 1 min to 24 h.";
        return false;
    }

    private static int Number(Group group) =>
        group.Success ? int.Parse(group.ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^(?=.)(?:(?<hours>\d{1,4})\s*(?:h|hours?))?\s*(?:(?<minutes>\d{1,5})\s*(?:min|minutes?|mins))?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase)]
    private static partial Regex Pattern();
}
