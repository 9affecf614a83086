using System.Globalization;
using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Formulas;

public class FormulaTests
{
    [Theory]
    [InlineData("1 + 2 * 3", "7")]
    [InlineData("(1 + 2) * 3", "9")]
    [InlineData("7 - 2 - 1", "4")]
    [InlineData("12 / 2 / 3", "2")]
    [InlineData("-2 * 3", "-6")]
    [InlineData("2 - -3", "5")]
    [InlineData("2 * -3", "-6")]
    [InlineData("--3", "3")]
    [InlineData("1.5 × 4 ÷ 3 − 1", "1")]
    [InlineData("10 deg + 35 deg", "45")]
    [InlineData("abs(2 - 5)", "3")]
    [InlineData("min(3, 1, 2) + max(3, 1, 2)", "4")]
    [InlineData("up(2.1) + down(2.9) + near(2.5)", "8")]
    public void Plain_numbers_are_worked_out_as_at_school(string text, string expected)
    {
        Assert.Equal(Quantity.Of(decimal.Parse(expected, CultureInfo.InvariantCulture)), Evaluate(text));
    }

    // 25.4 mm to the inch: NIST SP 811 (2008), appendix B.
    [Theory]
    [InlineData("2 mm", "2 mm")]
    [InlineData("1/16 in", "1/16 in")]
    [InlineData("2 1/4 in", "2.25 in")]
    [InlineData("2 1/4\" + 1 cm", "67.15 mm")]
    [InlineData("1 in", "25.4 mm")]
    [InlineData("2 in - 1/16 in", "1 15/16 in")]
    [InlineData("3 * 1/16 in", "3/16 in")]
    [InlineData("1 in * 3 / 4", "3/4 in")]
    [InlineData("1 in / 3 * 3", "1 in")]
    [InlineData("wall / 3 + wall / 3 + wall / 3", "90 mm")]
    [InlineData("wall * (10 mm / 4 mm)", "225 mm")]
    [InlineData("abs(10 mm - wall)", "80 mm")]
    [InlineData("-wall + 100 mm", "10 mm")]
    [InlineData("min(wall, 2 in, 8 cm)", "50.8 mm")]
    public void Lengths_keep_their_units_and_stay_exact(string text, string expected)
    {
        Assert.Equal(L(expected), Evaluate(text).Length);
    }

    [Theory]
    [InlineData("1 mm < 1/16 in", true)]
    [InlineData("25.4 mm = 1 in", true)]
    [InlineData("25.4 mm != 1 in", false)]
    [InlineData("wall >= 90 mm and wall <= 90 mm", true)]
    [InlineData("wall > 90 mm or wall < 90 mm", false)]
    [InlineData("not (wall ≥ 91 mm)", true)]
    [InlineData("yes and not no", true)]
    [InlineData("flag", true)]
    [InlineData("kind = \"double\"", true)]
    [InlineData("kind = 'single'", false)]
    [InlineData("1 = 2 or 3 > 2 and 1 < 2", true)]
    public void Comparisons_give_yes_or_no(string text, bool expected)
    {
        Assert.Equal(Quantity.Of(expected), Evaluate(text));
    }

    [Fact]
    public void If_works_out_only_the_value_it_chooses()
    {
        Assert.Equal(L("5 mm"), Evaluate("if(flag, 5 mm, wall / 0)").Length);
        Assert.Equal(L("5 mm"), Evaluate("if(not flag, wall / 0, 5 mm)").Length);
        Assert.Equal(Quantity.Of(false), Evaluate("not flag and 1 / 0 = 1"));
        Assert.Equal(Quantity.Of(true), Evaluate("flag or 1 / 0 = 1"));
    }

    [Theory]
    [InlineData("up(10.1 mm)", "11 mm", "7/16 in")]
    [InlineData("down(10.9 mm)", "10 mm", "3/8 in")]
    [InlineData("near(10.5 mm)", "11 mm", "7/16 in")]
    [InlineData("up(1 in)", "26 mm", "1 in")]
    [InlineData("up(-10.9 mm)", "-10 mm", "-3/8 in")]
    [InlineData("up(wall / 3 * 3)", "90 mm", "3 9/16 in")]
    [InlineData("up((1 in / 3) * 3)", "26 mm", "1 in")]
    [InlineData("down((2 in / 7) * 7)", "50 mm", "2 in")]
    public void Rounding_follows_the_ruler_of_the_fit(string text, string metric, string imperial)
    {
        Assert.Equal(L(metric), Evaluate(text).Length);
        Assert.Equal(L(imperial), Evaluate(text, Ruler.SixteenthInches).Length);
    }

    [Theory]
    [InlineData("wall + 2", 8, "A number cannot be added to a length or taken from it. If it is meant as a length, write its unit: 2 mm or 1/16 in.")]
    [InlineData("3 - wall", 1, "A number cannot be added to a length or taken from it. If it is meant as a length, write its unit: 2 mm or 1/16 in.")]
    [InlineData("2 * (wall * wall)", 6, "A length times a length is an area, which is no size to cut. Multiply a length by a plain number.")]
    [InlineData("1 / wall", 1, "A number cannot be divided by a length.")]
    [InlineData("wall + flag", 8, "“+” works on numbers and lengths, but this is yes or no.")]
    [InlineData("wall < 3", 1, "This compares a length with a number. Lengths are written with their units: 2 mm or 1/16 in.")]
    [InlineData("flag < flag", 1, "“<” compares numbers and lengths only.")]
    [InlineData("if(flag, 1 mm, 0)", 1, "“if” chooses between a length and a number. Both should be of one kind; lengths have their units, 0 mm too.")]
    [InlineData("if(wall, 1, 2)", 4, "“if” starts with a condition, but this is a length. Write if(condition, value when it holds, value when not).")]
    [InlineData("if(flag, 1)", 1, "“if” takes three values, but here it has 2. Write if(condition, value when it holds, value when not).")]
    [InlineData("max(wall, 2)", 11, "“max” takes lengths only or numbers only, but this is a number. Lengths are written with their units: 2 mm or 1/16 in.")]
    [InlineData("abs(1, 2)", 1, "“abs” takes one value, but here it has 2.")]
    [InlineData("up(flag)", 4, "Only lengths and numbers can be rounded, but this is yes or no.")]
    [InlineData("not wall", 5, "“not” needs yes or no behind it, but this is a length. Put a comparison in parentheses: not (a = b).")]
    [InlineData("flag and wall", 10, "“and” joins conditions, but this is a length.")]
    [InlineData("-flag", 2, "A minus needs a number or a length behind it, but this is yes or no.")]
    [InlineData("wal + 2 mm", 1, "“wal” is not a name of this structure. Did you mean “wall”?")]
    [InlineData("kind = \"doubel\"", 8, "“doubel” is not one of the choices of “kind”. Did you mean “double”?")]
    [InlineData("mnx(wall, wall)", 1, "“mnx” is not something a formula can do. Did you mean “max”?")]
    [InlineData("wall +", 6, "A value is missing behind “+”.")]
    [InlineData("wall * / 2", 8, "A value is missing between “*” and “/”.")]
    [InlineData("* wall", 1, "A formula cannot start with “*”.")]
    [InlineData("max(wall, )", 11, "A value is missing between “,” and “)”.")]
    [InlineData("max()", 5, "A value is missing between “(” and “)”.")]
    [InlineData("wall not flag", 6, "An operator is missing before “not”.")]
    [InlineData("wall + + wall", 8, "A value is missing between “+” and “+”.")]
    [InlineData("(wall, wall)", 6, "A comma stands only between the values of if, min and max.")]
    [InlineData("max((wall, wall))", 10, "A comma stands only between the values of if, min and max.")]
    [InlineData("wall, wall", 5, "A comma stands only between the values of if, min and max.")]
    [InlineData("wall wall", 6, "An operator is missing before “wall”.")]
    [InlineData("2 * (wall", 5, "This parenthesis is never closed. In a [list], a formula with commas of its own needs quotation marks around it.")]
    [InlineData("wall)", 5, "This parenthesis closes nothing.")]
    [InlineData("wall % 2", 6, "“%” has no meaning in a formula. Formulas use + - * / ( ), comparisons, and, or, not, and if(condition, this, that).")]
    [InlineData("wall * 1/0 mm", 8, "“1/0 mm” divides by zero; write a fraction such as 2 1/4 in.")]
    [InlineData("wall / 0", 8, "This divides by zero.")]
    [InlineData("wall / (2 - 2)", 9, "This divides by zero.")]
    public void What_cannot_be_is_said_with_its_column(string text, int column, string message)
    {
        var problems = new Problems();
        try
        {
            Evaluate(text, Ruler.WholeMillimetres, problems);
        }
        catch (FormulaException broken)
        {
            problems.Error(broken.Place, broken.Message);
        }

        Assert.Equal($"box.yaml:7:{column + 10}: error: {message}", Words(problems));
    }

    [Fact]
    public void A_formula_has_bounds()
    {
        var problems = new Problems();
        Assert.Null(Formula.Read(string.Join(" + ", Enumerable.Repeat("1", 5000)), new Place("box.yaml", 1, 1), problems));
        Assert.Null(Formula.Read(new string('(', 500) + "1" + new string(')', 500), new Place("box.yaml", 2, 1), problems));
        Assert.Null(Formula.Read(new string('9', 60), new Place("box.yaml", 3, 1), problems));
        Assert.Equal(3, problems.All.Count);
        Assert.Throws<FormulaException>(() => Evaluate(string.Join(" * ", Enumerable.Repeat("1000000000", 9))));
    }

    [Fact]
    public void Sums_of_lengths_agree_with_whole_nanometres()
    {
        Gen.Int[1, 1_000_000].Array[1, 20].Sample(sixtyFourths =>
        {
            var text = string.Join(" + ", sixtyFourths.Select(n => $"{n}/64 in"));
            return Evaluate(text).Length == Length.FromNanometres(sixtyFourths.Sum(n => n * 396_875L));
        });
    }

    private static Quantity Evaluate(string text, Ruler? ruler = null, Problems? problems = null)
    {
        var names = new Names();
        names.Add("wall", Kind.Length);
        names.Add("flag", Kind.YesNo);
        names.Add("kind", Kind.Word, ["single", "double"]);
        var found = problems ?? new Problems();
        var formula = Formula.Read(text, new Place("box.yaml", 7, 11), found);
        formula?.Check(names, found);
        if (problems is null)
            Assert.Equal("", Words(found));
        if (found.HasErrors)
            return default;
        var values = new Evaluation(names, ruler ?? Ruler.WholeMillimetres);
        values.Set("wall", Quantity.Of(L("90 mm")));
        values.Set("flag", Quantity.Of(true));
        values.Set("kind", Quantity.Of("double"));
        return formula!.Evaluate(values);
    }
}
