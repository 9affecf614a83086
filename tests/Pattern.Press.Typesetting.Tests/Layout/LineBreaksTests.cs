using System.Text;
using Pattern.Press.Typesetting.Layout.Text;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>Rules and their numbers are those of Unicode Standard Annex #14, "Unicode Line Breaking Algorithm".</summary>
public class LineBreaksTests
{
    // ¦ stands for each place where a line may break; \u002F is a slash.
    [Theory]
    [InlineData("one ¦two")] // LB18: break after spaces
    [InlineData("one   ¦two")] // LB7, LB18: not between spaces
    [InlineData("one\n¦two")] // LB4
    [InlineData("58\u00A0mm")] // LB12: no-break space
    [InlineData("58\u202Fmm")] // LB12: narrow no-break space
    [InlineData("no\u2060-\u2060break")] // LB11: word joiner
    [InlineData("zero\u200B¦width")] // LB8
    [InlineData("zero\u200B ¦width")] // LB7, LB8: the space stays on the line
    [InlineData("half-¦fold")] // LB21: break after a hyphen, not before
    [InlineData("half\u2010¦fold")] // LB21
    [InlineData("half\u2011fold")] // LB12: non-breaking hyphen
    [InlineData("pat\u00AD¦tern")] // LB21: soft hyphen
    [InlineData("A-4")] // LB25: hyphen before a number
    [InlineData("cut ¦-4 ¦mm")] // LB20a, LB25: a sign stays with its number
    [InlineData("cut ¦−4 ¦mm")] // LB25: PR × NU
    [InlineData("-fold")] // LB20a: a hyphen that begins a word
    [InlineData("Oslo–¦Bergen")] // LB21: en dash
    [InlineData("folds—¦all")] // B2, tailored: only after the em dash
    [InlineData("folds— ¦all")]
    [InlineData("folds – ¦all")] // tailored: a dash between spaces ends the line
    [InlineData("3–5 ¦mm")] // tailored: a range is one number
    [InlineData("and/¦or")] // LB13: not before a slash, but after
    [InlineData("1/4")] // LB25: SY × NU
    [InlineData("cut ¦2 1/4 ¦wide")] // tailored: a fraction stays with its number
    [InlineData("cut ¦2 ¼ ¦wide")]
    [InlineData("1,000.50 ¦g")] // LB25: IS × NU
    [InlineData("50%")] // LB25: NU × PO
    [InlineData("90° ¦turn")]
    [InlineData("2″ ¦wide")] // LB24, LB25: PO after NU
    [InlineData("£5")] // LB25: PR × NU
    [InlineData("(see ¦there) ¦now")] // LB13, LB14, LB30
    [InlineData("( see")] // LB14: OP SP* ×
    [InlineData("word !")] // LB13: not before an exclamation mark, even after spaces
    [InlineData("stop. ¦Go")] // LB13, LB18
    [InlineData("e.g. ¦this")] // LB29: IS × AL
    [InlineData("“quoted” ¦word")] // LB19
    [InlineData("say ¦“yes” ¦or")] // LB15a, LB19
    [InlineData("\"yes\" ¦or")] // LB19
    [InlineData("it’s ¦folded")] // LB19: the apostrophe
    [InlineData("wait… ¦now")] // LB22: not before an ellipsis
    [InlineData("wait…")]
    [InlineData("B12")] // LB23
    [InlineData("cafe\u0301 ¦au")] // LB9: a combining mark stays on its letter
    [InlineData("220 ¦g/¦m²")] // SY before a letter
    public void Lines_may_break_exactly_where_the_annex_says(string marked)
    {
        var text = marked.Replace("¦", "", StringComparison.Ordinal);
        var breaks = LineBreaks.Find(text);
        var found = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            if (breaks[i])
                found.Append('¦');
            found.Append(text[i]);
        }

        Assert.Equal(marked, found.ToString());
    }

    // Lines of LineBreakTest.txt of the Unicode Character Database, in its notation: × no break, ÷ a break; code points
    // between (from memory).
    [Theory]
    [InlineData("× 0023 × 0023 ÷")]
    [InlineData("× 0023 × 0020 ÷ 0023 ÷")]
    [InlineData("× 0023 × 0308 × 0023 ÷")]
    [InlineData("× 0023 × 0308 × 0020 ÷ 0023 ÷")]
    [InlineData("× 0023 × 00A0 ÷")]
    [InlineData("× 0023 × 0020 ÷ 00A0 ÷")]
    [InlineData("× 00A0 × 0023 ÷")]
    [InlineData("× 0023 × 00AD ÷")]
    [InlineData("× 00AD ÷ 0023 ÷")]
    [InlineData("× 0023 × 0029 ÷")]
    [InlineData("× 0023 × 0020 × 0029 ÷")]
    [InlineData("× 0023 × 0021 ÷")]
    [InlineData("× 0028 × 0023 ÷")]
    [InlineData("× 0028 × 0020 × 0023 ÷")]
    [InlineData("× 0030 × 0030 ÷")]
    [InlineData("× 0030 × 0025 ÷")]
    [InlineData("× 0023 × 0030 ÷")]
    [InlineData("× 002D × 0030 ÷")]
    [InlineData("× 002F × 0030 ÷")]
    [InlineData("× 0023 × 002F ÷")]
    [InlineData("× 0023 × 2024 ÷")]
    [InlineData("× 0023 × 2060 × 0023 ÷")]
    [InlineData("× 0023 × 0020 × 2060 ÷")]
    [InlineData("× 0023 × 200B ÷ 0023 ÷")]
    [InlineData("× 200B × 0020 ÷ 0023 ÷")]
    [InlineData("× 2014 × 2014 ÷")]
    [InlineData("× 000A ÷ 0023 ÷")]
    [InlineData("× 0023 × 000A ÷")]
    public void Cases_of_the_standard_break_as_it_says(string line)
    {
        var words = line.Split(' ');
        var text = string.Concat(words.Where((_, i) => i % 2 == 1).Select(code => (char)Convert.ToInt32(code, 16)));
        var breaks = LineBreaks.Find(text);
        Assert.Equal(words.Where((_, i) => i % 2 == 0).SkipLast(1).Select(mark => mark == "÷"), breaks);
    }

    [Fact]
    public void Nothing_breaks_in_an_empty_text() => Assert.Empty(LineBreaks.Find(""));
}
