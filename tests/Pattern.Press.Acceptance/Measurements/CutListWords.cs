using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>What the cut list says about the way of a print or a grain, and about left and right hands.</summary>
public sealed class CutListWords
{
    private const string Print = "its pattern running down: the second side of each size runs with it";
    private const string Grain = "its grain running down: the second side of each size runs with it";

    [Theory]
    [InlineData("", null)]
    [InlineData("\n    grain: down", Grain)]
    [InlineData("\n    grain: across", Grain)]
    [InlineData("\n    one_way: yes", Print)]
    public void The_way_of_a_grain_or_a_print_is_said_where_the_stock_has_one(string more, string? says)
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "    pack: 6", "    pack: 6" + more);
        Assert.Equal(0, copy.Build("--paper", "a4").Code);
        var body = new PrintedBook(File.ReadAllBytes(Assert.Single(Directory.GetFiles(copy.Out)))).Body;
        Assert.Equal(says == Print, body.Contains(Print, StringComparison.Ordinal));
        Assert.Equal(says == Grain, body.Contains(Grain, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Mirrored_pieces_are_explained_where_there_are_any(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var handed = booklet.Primary.Kit.Parts.Where(part => part.Hand != Hand.Either).ToList();
        Assert.Equal(handed.Count > 0, printed.Body.Contains("Lay two sheets of their paper face to face", StringComparison.Ordinal));
        foreach (var part in handed)
            Assert.Contains(part.Piece.Name, printed.Body, StringComparison.Ordinal);
        Assert.Equal(handed.Where(part => part.Hand == Hand.Left).Sum(part => part.Quantity), handed.Where(part => part.Hand == Hand.Right).Sum(part => part.Quantity));
    }
}
