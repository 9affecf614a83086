using Pattern.Press.Typesetting.Tests.Export;

namespace Pattern.Press.Conformance.Breaking;

/// <summary>Every check can fail: a sound file is broken in one way after the other, and found out.</summary>
public class BreakageTests
{
    private static readonly byte[] _file = Pdf.Write(Sample.Document());
    private static readonly PlainPdf _plain = new(_file);

    public static TheoryData<int, string, string> Broken
    {
        get
        {
            var data = new TheoryData<int, string, string>();
            foreach (var (breakage, index) in Breakages.All.Select((breakage, index) => (breakage, index)))
                data.Add(index, breakage.Condition, breakage.What);
            return data;
        }
    }

    [Fact]
    public void A_document_with_everything_conforms() => Assert.Empty(PdfConformance.Check(_file));

    [Fact]
    public void A_file_taken_apart_and_put_together_still_conforms() => Assert.Empty(PdfConformance.Check(_plain.Copy().Build()));

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_file_is_found_out(int index, string condition, string what)
    {
        var findings = PdfConformance.Check(Breakages.All[index].Break(_plain.Copy()));
        Assert.True(findings.Any(finding => finding.Checkpoint == condition), $"Nobody noticed {what}. Found instead: {string.Join("; ", findings)}");
    }

    [Fact]
    public void Every_condition_of_the_checklist_is_broken_somewhere() =>
        Assert.Empty(Checklist.All.Select(condition => condition.Id).Except(Breakages.All.Select(breakage => breakage.Condition)));

    [Fact]
    public void No_condition_stands_in_the_checklist_twice() =>
        Assert.Equal(Checklist.All.Count, Checklist.All.Select(condition => condition.Id).Distinct().Count());
}
