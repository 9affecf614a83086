using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Tests.Files;

public sealed class KnownTextsTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Boxes.Folder, "open-tray.yaml"));

    [Fact]
    public void A_structure_that_is_read_again_is_the_same_until_its_text_changes()
    {
        var problems = new Problems();
        var first = Catalogue.ReadText(Text, "a-tray", "a-tray.yaml", problems);
        Assert.NotNull(first);
        Assert.Same(first, Catalogue.ReadText(Text, "a-tray", "a-tray.yaml", problems));

        var changed = Catalogue.ReadText(Text + "\n# Another day.\n", "a-tray", "a-tray.yaml", problems);
        Assert.NotNull(changed);
        Assert.NotSame(first, changed);
        Assert.NotSame(first, Catalogue.ReadText(Text, "b-tray", "b-tray.yaml", problems));
        Assert.Empty(problems.All);
    }

    [Fact]
    public void What_is_wrong_with_a_structure_is_said_every_time()
    {
        var wrong = Text.Replace("title:", "titel:", StringComparison.Ordinal);
        var (first, second) = (new Problems(), new Problems());
        Assert.Null(Catalogue.ReadText(wrong, "a-tray", "a-tray.yaml", first));
        Assert.Null(Catalogue.ReadText(wrong, "a-tray", "a-tray.yaml", second));
        Assert.True(first.HasErrors);
        Assert.Equal(first.All, second.All);
    }

    [Fact]
    public void Warnings_are_said_every_time_too_and_many_texts_are_not_kept_for_ever()
    {
        var known = new KnownTexts<int, object>();
        var made = 0;
        for (var round = 0; round < 2; round++)
        {
            var problems = new Problems();
            Assert.NotNull(known.Get(-1, found =>
            {
                found.Warning(new Place("a file"), "Something is odd.", "");
                return made++;
            }, problems));
            Assert.Single(problems.All);
        }

        Assert.Equal(2, made);
        var oldest = known.Get(0, _ => new object(), new Problems());
        Assert.Same(oldest, known.Get(0, _ => new object(), new Problems()));
        for (var i = 1; i < 1000; i++)
            known.Get(i, _ => new object(), new Problems());
        Assert.NotSame(oldest, known.Get(0, _ => new object(), new Problems()));
    }
}
