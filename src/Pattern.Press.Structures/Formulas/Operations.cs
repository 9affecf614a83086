namespace Pattern.Press.Structures.Formulas;

/// <summary>Minus a value.</summary>
internal sealed record NegateNode(int Offset, Node Operand) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var kind = Operand.Check(checking);
        if (kind is null or Kind.Number or Kind.Length)
            return kind;
        checking.Problem(Offset, $"A minus needs a number or a length behind it, but this is {kind.Value.WithArticle()}.", "");
        return null;
    }

    public override Quantity Evaluate(Working working)
    {
        var value = Operand.Evaluate(working);
        return value with { Amount = -value.Amount };
    }
}

/// <summary>Yes becomes no, and no yes.</summary>
internal sealed record NotNode(int Offset, Node Operand) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var kind = Operand.Check(checking);
        if (kind is null or Kind.YesNo)
            return kind;
        checking.Problem(Offset, $"“not” needs yes or no behind it, but this is {kind.Value.WithArticle()}.", "Put a comparison in parentheses: not (a = b).");
        return null;
    }

    public override Quantity Evaluate(Working working) => Quantity.Of(!Operand.Evaluate(working).Flag);
}

/// <summary>Addition, subtraction, multiplication and division, with units.</summary>
internal sealed record ArithmeticNode(int Offset, char Sign, Node Left, Node Right) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var (left, right) = (Left.Check(checking), Right.Check(checking));
        if (left is null || right is null)
            return null;
        foreach (var (kind, node) in (ReadOnlySpan<(Kind, Node)>)[(left.Value, Left), (right.Value, Right)])
        {
            if (kind is Kind.Number or Kind.Length)
                continue;
            checking.Problem(node.Offset, $"“{Sign}” works on numbers and lengths, but this is {kind.WithArticle()}.", "");
            return null;
        }

        switch (Sign)
        {
            case '+' or '-' when left == right:
            case '*' when left == Kind.Number || right == Kind.Number:
            case '/' when right == Kind.Number:
                return left == Kind.Length || right == Kind.Length ? Kind.Length : Kind.Number;
            case '/' when left == Kind.Length:
                return Kind.Number;
            case '+' or '-':
                var bare = left == Kind.Number ? Left : Right;
                checking.Problem(bare.Offset, "A number cannot be added to a length or taken from it.", "If it is meant as a length, write its unit: 2 mm or 1/16 in.");
                return null;
            case '*':
                checking.Problem(Offset, "A length times a length is an area, which is no size to cut.", "Multiply a length by a plain number.");
                return null;
            default:
                checking.Problem(Offset, "A number cannot be divided by a length.", "");
                return null;
        }
    }

    public override Quantity Evaluate(Working working)
    {
        var (left, right) = (Left.Evaluate(working), Right.Evaluate(working));
        try
        {
            return Sign switch
            {
                '+' => left with { Amount = left.Amount + right.Amount },
                '-' => left with { Amount = left.Amount - right.Amount },
                '*' => new(left.Kind == Kind.Length ? Kind.Length : right.Kind, left.Amount * right.Amount),
                _ when right.Amount == 0 => throw working.Fail(Right.Offset, "This divides by zero.", false),
                _ => new(left.Kind == right.Kind ? Kind.Number : left.Kind, left.Amount / right.Amount),
            };
        }
        catch (OverflowException)
        {
            throw working.Fail(Offset, "This gives a number that is far too large.", false);
        }
    }
}

/// <summary>A comparison, which gives yes or no.</summary>
internal sealed record ComparisonNode(int Offset, string Sign, Node Left, Node Right) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var (left, right) = (Left.Check(checking), Right.Check(checking));
        if (left is null || right is null)
            return null;
        if (left != right)
        {
            checking.Problem(Offset, $"This compares {left.Value.WithArticle()} with {right.Value.WithArticle()}.", left is Kind.Length || right is Kind.Length ? "Lengths are written with their units: 2 mm or 1/16 in." : "");
            return null;
        }

        if (Sign is not ("=" or "!=") && left is not (Kind.Number or Kind.Length))
        {
            checking.Problem(Offset, $"“{Sign}” compares numbers and lengths only.", "");
            return null;
        }

        return ChoicesAllow(checking, Left, Right) && ChoicesAllow(checking, Right, Left) ? Kind.YesNo : null;
    }

    public override Quantity Evaluate(Working working)
    {
        var (left, right) = (Left.Evaluate(working), Right.Evaluate(working));
        return Quantity.Of(Sign switch
        {
            "=" => left == right,
            "!=" => left != right,
            "<" => left.Amount < right.Amount,
            "<=" => left.Amount <= right.Amount,
            ">" => left.Amount > right.Amount,
            _ => left.Amount >= right.Amount,
        });
    }

    private static bool ChoicesAllow(Checking checking, Node name, Node word)
    {
        if (name is not NameNode { Name: var parameter } || word is not LiteralNode { Value.Word: { } text })
            return true;
        var choices = checking.Names[checking.Names.Find(parameter)].Choices;
        if (choices is null || choices.Contains(text))
            return true;
        checking.Problem(word.Offset, $"“{text}” is not one of the choices of “{parameter}”.", Reading.Spelling.Advice(text, [.. choices]));
        return false;
    }
}

/// <summary><c>and</c>, <c>or</c>; the right side is left alone when the left one settles it.</summary>
internal sealed record LogicNode(int Offset, bool IsAnd, Node Left, Node Right) : Node(Offset)
{
    public override Kind? Check(Checking checking)
    {
        var sound = true;
        foreach (var node in (ReadOnlySpan<Node>)[Left, Right])
        {
            var kind = node.Check(checking);
            if (kind is not (null or Kind.YesNo))
                checking.Problem(node.Offset, $"“{(IsAnd ? "and" : "or")}” joins conditions, but this is {kind.Value.WithArticle()}.", "");
            sound &= kind == Kind.YesNo;
        }

        return sound ? Kind.YesNo : null;
    }

    public override Quantity Evaluate(Working working) =>
        Left.Evaluate(working).Flag == IsAnd ? Right.Evaluate(working) : Quantity.Of(!IsAnd);
}
