using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>Words that makers read, with the sizes in them, are those of the content and of the model.</summary>
public sealed partial class RunningText
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Sizes_in_steps_are_those_of_the_model(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var body = Plain(printed.Body);
        var steps = booklet.Source.Steps;
        var checkedValues = 0;
        for (var i = 0; i < steps.Count; i++)
        {
            // A step starts with its number and title; the contents have a colon between them.
            var start = body.IndexOf(Start(booklet, i), StringComparison.Ordinal);
            Assert.True(start >= 0, $"“{Start(booklet, i)}” is nowhere on the pages.");
            var end = i + 1 < steps.Count ? body.IndexOf(Start(booklet, i + 1), StringComparison.Ordinal) : body.Length;
            var words = body[start..end];
            foreach (var paragraph in Paragraphs(Path.Combine(Workshop.FolderOf(name), steps[i].File)))
            {
                foreach (Match value in Value().Matches(paragraph))
                {
                    // The word before it shows that it stands in its place.
                    var before = WordBefore().Match(paragraph[..value.Index]).Value;
                    Assert.Contains(before + Text(booklet, value.Groups[1].Value), words, StringComparison.Ordinal);
                    checkedValues++;
                }
            }
        }

        Assert.True(checkedValues > 0, "No step names a size.");
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_introduction_reads_as_it_was_written(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var text = Plain(printed.Pages[1].Text);
        var paragraphs = Paragraphs(Path.Combine(Workshop.FolderOf(name), "booklet.md")).ToList();
        Assert.NotEmpty(paragraphs);
        foreach (var paragraph in paragraphs)
        {
            var written = Value().Replace(paragraph, value => Text(booklet, value.Groups[1].Value)).Replace("*", "", StringComparison.Ordinal);
            Assert.Contains(Plain(written), text, StringComparison.Ordinal);
        }
    }

    private static string Start(Finished booklet, int step) => Plain(
        booklet.Phrases.Format("steps.number", ("n", Sizes.Text(step + 1))) + " " + booklet.Source.Steps[step].Title);

    // Everything below the front matter that is plain paragraphs: no lists of keys, no fences.
    private static IEnumerable<string> Paragraphs(string file)
    {
        var text = File.ReadAllText(file).Replace("\r\n", "\n", StringComparison.Ordinal);
        var body = text[(text.IndexOf("\n---\n", 3, StringComparison.Ordinal) + 5)..];
        return body.Split("\n\n", StringSplitOptions.RemoveEmptyEntries)
            .Select(paragraph => Spaces().Replace(paragraph, " ").Trim())
            .Where(paragraph => paragraph.Length > 0 && !paragraph.StartsWith(":::", StringComparison.Ordinal) && !paragraph.StartsWith('#'));
    }

    // In the maker's own units first, then the other fit's in brackets.
    private static string Text(Finished booklet, string name)
    {
        if (name == "item.name")
            return booklet.Source.Item!.Name;
        if (name.EndsWith(".name", StringComparison.Ordinal) && booklet.Source.Stocks.TryGetValue(name[..^5], out var stock))
            return stock.Name;
        var here = Said(name, booklet.Primary);
        return booklet.Primary.Values[name] is NumberValue or WordValue or FlagValue ? here : $"{here} ({Said(name, booklet.Secondary)})";
    }

    private static string Said(string name, Model model)
    {
        var (value, ruler) = (model.Values[name], model.Kit.Ruler);

        // The item is not fitted to any ruler: it is said to a tenth of a millimetre or a 64th of an inch if it was given
        // so, and to the nearest mark of the ruler if not.
        var finest = ruler.System == UnitSystem.Metric ? 100_000 : 396_875;
        if (name.StartsWith("item.", StringComparison.Ordinal) && value is LengthValue { Length: var length } && length.Nanometres % finest != 0)
        {
            var marks = Math.Round((decimal)length.Nanometres / ruler.Step.Nanometres, MidpointRounding.AwayFromZero);
            return Sizes.Text(Length.FromNanometres((long)marks * ruler.Step.Nanometres), ruler);
        }

        return Sizes.Text(value, ruler);
    }

    // Straight quotes for curly ones; spaces of all kinds alike.
    private static string Plain(string text) => Spaces().Replace(
        text.Replace('’', '\'').Replace('‘', '\'').Replace('“', '"').Replace('”', '"'), " ");

    [GeneratedRegex(@"\{\{\s*([a-z0-9_.]+)\s*\}\}")]
    private static partial Regex Value();

    [GeneratedRegex(@"[A-Za-z]+ $")]
    private static partial Regex WordBefore();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
