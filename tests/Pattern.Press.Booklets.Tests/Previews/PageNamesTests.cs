using Pattern.Press.Booklets.Previews;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Tests.Previews;

public sealed class PageNamesTests
{
    private static List<Page> Pages(params string[] labels) => [.. labels.Select(label => new Page { Width = 210, Height = 297, Items = [], Label = label })];

    [Fact]
    public void Pages_are_called_by_the_number_printed_on_them()
    {
        var names = PageNames.Of(Pages("", "1", "2", "3", "T1", "T2", "4"));
        Assert.Equal(["cover", "1", "2", "3", "T1", "T2", "4"], names);
        Assert.Equal("cover, 1 to 3, T1 to T2, 4", PageNames.InWords(names));
        Assert.Equal(4, PageNames.Find(names, "t1"));
        Assert.Equal(0, PageNames.Find(names, "cover"));
        Assert.Null(PageNames.Find(names, "5"));
    }

    [Fact]
    public void No_two_pages_have_one_name() => Assert.Equal(["cover", "cover-2", "1"], PageNames.Of(Pages("", "", "1")));

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    [InlineData(22)]
    [InlineData(40)]
    public void A_contact_sheet_shows_every_page_whole_and_none_over_another(int count)
    {
        var pages = Pages([.. Enumerable.Range(1, count).Select(n => $"{n}")]);
        pages[^1] = pages[^1] with { Width = 297, Height = 210 };
        var sheet = ContactSheet.Of(pages, Samples.Styles);
        var groups = sheet.Items.OfType<GroupItem>().ToList();
        Assert.Equal(count, groups.Count);
        var boxes = groups.Zip(pages, (group, page) => (From: group.Transform.Apply(new PagePoint(0, 0)), To: group.Transform.Apply(new PagePoint(page.Width, page.Height)))).ToList();
        Assert.All(boxes, box => Assert.True(box.From.X >= 0 && box.From.Y >= 0 && box.To.X <= sheet.Width && box.To.Y <= sheet.Height));
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
                Assert.True(boxes[i].To.X <= boxes[j].From.X || boxes[j].To.X <= boxes[i].From.X || boxes[i].To.Y <= boxes[j].From.Y || boxes[j].To.Y <= boxes[i].From.Y);
        }

        // Nothing is stretched, and the number stands below its page.
        Assert.All(groups, group => Assert.Equal(group.Transform.A, group.Transform.D));
        var numbers = sheet.Items.OfType<TextItem>().Select(text => text.Run.Text).ToList();
        Assert.Equal(pages.Select(page => page.Label), numbers);
    }
}
