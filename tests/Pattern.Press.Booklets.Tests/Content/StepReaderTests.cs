using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Content;

public sealed class StepReaderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    private StepSource ReadStep(string frontMatter, out Problems problems)
    {
        _folder.Write("steps/01-cut.md", $"---\n{frontMatter}\n---\n\nWords.\n");
        var (source, found) = _folder.Read();
        problems = found;
        return Assert.Single(source!.Steps);
    }

    [Fact]
    public void Every_key_of_a_step_is_read()
    {
        var step = ReadStep("""
            title: Score the base
            piece: base
            figure: {of: lid, show: scores, emphasise: [gusset], caption: "The *lid*"}
            time: 1 h 30 min
            tools: [Bone folder, Ruler]
            caution: Mind the blade.
            """, out var problems);
        Assert.Empty(problems.All);
        Assert.Equal((1, "Score the base", "base", 90, "Mind the blade."), (step.Number, step.Title, step.Piece, step.Minutes, step.Caution));
        Assert.Equal(["Bone folder", "Ruler"], step.Tools);
        Assert.Equal(("lid", FigureShow.Scores, "The *lid*", new Place("steps/01-cut.md", 4, 14)), (step.Figure!.Subject, step.Figure.Show, step.Figure.Caption, step.Figure.Place));
        Assert.Equal(["gusset"], step.Figure.Emphasise);
        Assert.Equal(("\nWords.\n", new Place("steps/01-cut.md", 9, 1)), (step.Body.Text, step.Body.Start));
    }

    [Theory]
    [InlineData("figure: waste", "base", FigureShow.Waste)]
    [InlineData("figure: finished", "", FigureShow.Finished)]
    [InlineData("figure: {}", "base", FigureShow.Flat)]
    [InlineData("figure: {show: folded}", "base", FigureShow.Folded)]
    [InlineData("figure: {of: lid}", "lid", FigureShow.Flat)]
    public void A_figure_is_of_the_step_s_piece_unless_it_says_otherwise(string figure, string subject, FigureShow show)
    {
        var step = ReadStep("title: A\npiece: base\n" + figure, out var problems);
        Assert.Empty(problems.All);
        Assert.Equal((subject, show), (step.Figure!.Subject, step.Figure.Show));
    }

    [Theory]
    [InlineData("kind: score", "base", FigureShow.Scores)]
    [InlineData("kind: assemble", "base", FigureShow.Insert)]
    [InlineData("kind: finish", "", FigureShow.Finished)]
    [InlineData("kind: fold\nfigure: waste", "base", FigureShow.Waste)]
    [InlineData("figure: exploded", "", FigureShow.Exploded)]
    [InlineData("figure: {of: item, show: insert}", "item", FigureShow.Insert)]
    public void What_is_done_in_a_step_decides_its_figure_where_none_is_asked_for(string keys, string subject, FigureShow show)
    {
        var step = ReadStep("title: A\npiece: base\n" + keys, out var problems);
        Assert.Empty(problems.All);
        Assert.Equal((subject, show), (step.Figure!.Subject, step.Figure.Show));
    }

    [Fact]
    public void An_unknown_kind_of_step_gets_the_nearest()
    {
        ReadStep("title: A\npiece: base\nkind: scor", out var problems);
        Assert.Contains("score", Assert.Single(problems.All).Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("10 min", 10)]
    [InlineData("10min", 10)]
    [InlineData("1 hour", 60)]
    [InlineData("2 h", 120)]
    [InlineData("1 h 5 min", 65)]
    [InlineData("45 minutes", 45)]
    public void A_time_is_read(string time, int minutes)
    {
        Assert.Equal(minutes, ReadStep("title: A\ntime: " + time, out var problems).Minutes);
        Assert.Empty(problems.All);
    }

    [Theory]
    [InlineData("time: 10", 3, 7, "has no unit", "10 min or 10 h")]
    [InlineData("time: overnight", 3, 7, "is not a time", "1 h 30 min")]
    [InlineData("time: 0 min", 3, 7, "is not a time for one step", "from 1 min to 24 h")]
    [InlineData("time: 100 h", 3, 7, "is not a time for one step", "from 1 min to 24 h")]
    [InlineData("figure: socres", 3, 9, "“socres” is not one of the choices", "“scores”")]
    [InlineData("figure: scores", 3, 9, "Which part the figure shows is missing.", "of: base")]
    [InlineData("figure: {of: base, show: finished}", 3, 14, "shows the whole thing", "show: folded")]
    [InlineData("figure: {fo: base}", 3, 10, "“fo” is not known here.", "“of”")]
    [InlineData("pieces: base", 3, 1, "“pieces” is not known here.", "“piece”")]
    [InlineData("cautions: Hot", 3, 1, "“cautions” is not known here.", "“caution”")]
    public void A_setting_that_cannot_be_is_said(string line, int atLine, int atColumn, string message, string advice)
    {
        ReadStep("title: A\n" + line, out var problems);
        Found.One(problems, "steps/01-cut.md", atLine, atColumn, message, advice);
    }

    [Fact]
    public void A_step_without_a_title_is_said()
    {
        _folder.Write("steps/01-cut.md", "---\npiece: base\n---\nWords.\n");
        Found.One(_folder.Read().Problems, "steps/01-cut.md", 2, 0, "“title” is missing.", "title: Score the base");
    }

    [Fact]
    public void Steps_come_in_the_order_of_their_numbers()
    {
        for (var n = 2; n <= 12; n++)
            _folder.Write($"steps/{n:00}-more.md", TemporaryFolder.Step);
        var (source, problems) = _folder.Read();
        Assert.Empty(problems.All);
        Assert.Equal(Enumerable.Range(1, 12), source!.Steps.Select(step => step.Number));
    }

    [Fact]
    public void Numbers_of_unequal_length_put_steps_out_of_order()
    {
        _folder.Delete("steps/01-cut.md");
        for (var n = 1; n <= 10; n++)
            _folder.Write($"steps/{n}-step.md", TemporaryFolder.Step);
        Found.One(_folder.Read().Problems, "steps/2-step.md", 0, 0, "after steps/10-step.md by name but before it by number", "same number of digits");
    }

    [Fact]
    public void Two_steps_with_one_number_are_said()
    {
        _folder.Write("steps/01-fold.md", TemporaryFolder.Step);
        Found.One(_folder.Read().Problems, "steps/01-fold.md", 0, 0, "The number 1 is taken by steps/01-cut.md already.", "number of its own");
    }

    [Fact]
    public void A_gap_between_steps_is_said()
    {
        _folder.Write("steps/03-fold.md", TemporaryFolder.Step);
        Found.One(_folder.Read().Problems, "steps/03-fold.md", 0, 0, "Step 2 is missing before this one", "start with 02-");
    }

    [Fact]
    public void Steps_start_at_one()
    {
        _folder.Delete("steps/01-cut.md");
        _folder.Write("steps/00-cut.md", TemporaryFolder.Step);
        Found.One(_folder.Read().Problems, "steps/00-cut.md", 0, 0, "The first step has the number 0", "start with 01-");
    }

    [Theory]
    [InlineData("fold.md", "starts with its number")]
    [InlineData("02fold.md", "a dash and a few words after its number")]
    [InlineData("02-.md", "a dash and a few words after its number")]
    [InlineData("02-fold.markdown", "ends in .md, not in .markdown")]
    [InlineData("02-fold", "this one has no ending")]
    public void A_step_that_is_named_otherwise_is_said(string file, string message)
    {
        _folder.Write("steps/" + file, TemporaryFolder.Step);
        Found.One(_folder.Read().Problems, "steps/" + file, 0, 0, message, "03-score-the-base.md");
    }

    [Fact]
    public void Pictures_and_what_editors_leave_behind_are_no_steps()
    {
        foreach (var file in new[] { "lid.png", "lid.JPG", ".DS_Store", "01-cut.md~", "Thumbs.db", ".01-cut.md.swp" })
            _folder.Write("steps/" + file, "x");
        Directory.CreateDirectory(Path.Combine(_folder.Path, "steps", "old"));
        var (source, problems) = _folder.Read();
        Assert.Empty(problems.All);
        Assert.Single(source!.Steps);
    }

    [Theory]
    [InlineData("", 0, "The step is empty.")]
    [InlineData("\n  \n", 0, "The step is empty.")]
    [InlineData("---\ntitle: Cut\n---\n", 4, "The step has a title but no words.")]
    public void An_empty_step_is_said(string text, int line, string message)
    {
        _folder.Write("steps/01-cut.md", text);
        Found.One(_folder.Read().Problems, "steps/01-cut.md", line, 0, message, "what to do");
    }

    [Fact]
    public void A_booklet_without_steps_is_said_unless_they_are_left_out()
    {
        _folder.Delete("steps/01-cut.md");
        Found.One(_folder.Read().Problems, "steps", 0, 0, "There are no steps.", "steps/01-name.md");
        Directory.Delete(Path.Combine(_folder.Path, "steps"));
        Found.One(_folder.Read().Problems, "steps", 0, 0, "There are no steps.", "leave_out: [steps]");
        var (_, problems) = _folder.ReadWith("date: 2026-11-12", "leave_out: steps");
        Assert.Empty(problems.All);
    }

    [Fact]
    public void A_folder_of_steps_with_a_name_nearly_right_is_pointed_at()
    {
        Directory.Move(Path.Combine(_folder.Path, "steps"), Path.Combine(_folder.Path, "step"));
        Found.One(_folder.Read().Problems, "steps", 0, 0, "There are no steps.", "a folder named “step”");
    }

    [Fact]
    public void A_step_that_is_a_link_out_of_the_folder_is_refused()
    {
        var outside = _folder.Write("../elsewhere.md", TemporaryFolder.Step);
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "steps", "02-fold.md"), outside);
        Found.One(_folder.Read().Problems, "steps/02-fold.md", 0, 0, "leads out of the booklet’s folder", "nothing outside it is read");
    }
}
