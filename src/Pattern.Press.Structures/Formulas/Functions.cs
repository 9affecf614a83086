using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Formulas;

/// <summary>A choice between two values; only the one chosen is worked out.</summary>
internal sealed record IfNode(int Offset, Node Condition, Node Then, Node Else) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var condition = Condition.Check(checking);
        var (then, otherwise) = (Then.Check(checking), Else.Check(checking));
        if (condition is not (null or Kind.YesNo))
            checking.Problem(Condition.Offset, $"“if” starts with a condition, but this is {condition.Value.WithArticle()}.", "Write if(condition, value when it holds, value when not).");
        if (then is null || otherwise is null || condition != Kind.YesNo)
            return null;
        if (then == otherwise)
            return then;
        checking.Problem(Offset, $"“if” chooses between {then.Value.WithArticle()} and {otherwise.Value.WithArticle()}.", "Both should be of one kind; lengths have their units, 0 mm too.");
        return null;
    }

    public override Quantity Evaluate(Working working) =>
        Condition.Evaluate(working).Flag ? Then.Evaluate(working) : Else.Evaluate(working);
}

/// <summary>The least or greatest of several values.</summary>
internal sealed record ExtremeNode(int Offset, bool Least, IReadOnlyList<Node> Operands) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        Kind? all = null;
        var sound = true;
        foreach (var operand in Operands)
        {
            var kind = operand.Check(checking);
            if (kind is null)
            {
                sound = false;
            }
            else if (kind is not (Kind.Number or Kind.Length) || kind != (all ?? kind))
            {
                checking.Problem(operand.Offset, $"“{(Least ? "min" : "max")}” takes lengths only or numbers only, but this is {kind.Value.WithArticle()}.", "Lengths are written with their units: 2 mm or 1/16 in.");
                return null;
            }
            else
            {
                all = kind;
            }
        }

        return sound ? all : null;
    }

    public override Quantity Evaluate(Working working)
    {
        var best = Operands[0].Evaluate(working);
        for (var i = 1; i < Operands.Count; i++)
        {
            var next = Operands[i].Evaluate(working);
            if (Least ? next.Amount < best.Amount : next.Amount > best.Amount)
                best = next;
        }

        return best;
    }
}

/// <summary>A value without its sign.</summary>
internal sealed record AbsoluteNode(int Offset, Node Operand) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var kind = Operand.Check(checking);
        if (kind is null or Kind.Number or Kind.Length)
            return kind;
        checking.Problem(Operand.Offset, $"“abs” takes a number or a length, but this is {kind.Value.WithArticle()}.", "");
        return null;
    }

    public override Quantity Evaluate(Working working)
    {
        var value = Operand.Evaluate(working);
        return value with { Amount = Math.Abs(value.Amount) };
    }
}

/// <summary>A length brought to a mark of the fit's ruler, or a number made whole.</summary>
internal sealed record RoundNode(int Offset, Rounding Rounding, Node Operand) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var kind = Operand.Check(checking);
        if (kind is null or Kind.Number or Kind.Length)
            return kind;
        checking.Problem(Operand.Offset, $"Only lengths and numbers can be rounded, but this is {kind.Value.WithArticle()}.", "");
        return null;
    }

    public override Quantity Evaluate(Working working)
    {
        var value = Operand.Evaluate(working);
        var step = value.Kind == Kind.Length ? working.Values.Ruler.Step.Nanometres : 1m;
        try
        {
            return value with { Amount = Whole(value.Amount / step) * step };
        }
        catch (OverflowException)
        {
            throw working.Fail(Offset, "This gives a number that is far too large.", false);
        }
    }

    // A third of a length times three misses the whole by the last of 28 digits; that must not cost a step of the ruler.
    private decimal Whole(decimal marks)
    {
        marks = decimal.Round(marks, 12);
        return Rounding switch
        {
            Rounding.Up => decimal.Ceiling(marks),
            Rounding.Down => decimal.Floor(marks),
            _ => decimal.Round(marks, MidpointRounding.AwayFromZero),
        };
    }
}
