using System.Globalization;
using System.Text;
using NCalc;
using NCalc.Exceptions;
using NCalc.Visitors;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Formulas;

/// <summary>
/// Turns tokens into a tree. The expression library knows the grammar (which operator binds how strongly) but neither
/// units nor places, so it is given the tokens' numbers in place of the tokens, and its tree is turned into ours.
/// </summary>
internal static class Parser
{
    private static readonly LogicalExpressionParserOptions Options = new()
    {
        ArgumentSeparator = ArgumentSeparator.Comma,
        IntegerNumberType = IntegerNumberType.Int64,
        FloatingPointNumberType = FloatingPointNumberType.Decimal,
    };

    private static readonly string[] FunctionNames = ["if", "min", "max", "abs", "up", "down", "near", .. MeasureNode.All.Keys];

    /// <summary>Reads the tokens of a formula.</summary>
    /// <returns>The tree, or null after a problem.</returns>
    public static Node? Read(IReadOnlyList<Token> tokens, Action<int, string, string> problem)
    {
        if (!Sequence.IsSound(tokens, problem))
            return null;
        var text = new StringBuilder();
        for (var i = 0; i < tokens.Count; i++)
        {
            text.Append(tokens[i].Kind == TokenKind.Sign ? tokens[i].Text : string.Create(CultureInfo.InvariantCulture, $"t{i}"));
            if (tokens[i].Kind != TokenKind.Function)
                text.Append(' ');
        }

        try
        {
            return LogicalExpressionParser.Parse(text.ToString(), Options, CultureInfo.InvariantCulture, CancellationToken.None)
                .Accept(new Translation(tokens, problem));
        }
        catch (Exception broken) when (broken is NCalcException or InvalidOperationException)
        {
            problem(tokens[0].Offset, "The formula cannot be read.", "Put parentheses around its parts.");
            return null;
        }
    }

    private sealed class Translation(IReadOnlyList<Token> tokens, Action<int, string, string> problem) : ILogicalExpressionVisitor<Node?>
    {
        public Node? Visit(Identifier expression)
        {
            var token = TokenOf(expression);
            return token.Kind == TokenKind.Name ? new NameNode(token.Offset, token.Text) : new LiteralNode(token.Offset, token.Value);
        }

        public Node? Visit(UnaryExpression expression)
        {
            if (expression.Expression.Accept(this) is not { } operand)
                return null;
            return expression.Type switch
            {
                UnaryExpressionType.Negate => new NegateNode(operand.Offset, operand),
                UnaryExpressionType.Not => new NotNode(operand.Offset, operand),
                _ => Refuse(operand.Offset),
            };
        }

        public Node? Visit(BinaryExpression expression)
        {
            if (expression.LeftExpression.Accept(this) is not { } left || expression.RightExpression.Accept(this) is not { } right)
                return null;
            var at = left.Offset;
            return expression.Type switch
            {
                BinaryExpressionType.Plus => new ArithmeticNode(at, '+', left, right),
                BinaryExpressionType.Minus => new ArithmeticNode(at, '-', left, right),
                BinaryExpressionType.Times => new ArithmeticNode(at, '*', left, right),
                BinaryExpressionType.Div => new ArithmeticNode(at, '/', left, right),
                BinaryExpressionType.Equal => new ComparisonNode(at, "=", left, right),
                BinaryExpressionType.NotEqual => new ComparisonNode(at, "!=", left, right),
                BinaryExpressionType.Lesser => new ComparisonNode(at, "<", left, right),
                BinaryExpressionType.LesserOrEqual => new ComparisonNode(at, "<=", left, right),
                BinaryExpressionType.Greater => new ComparisonNode(at, ">", left, right),
                BinaryExpressionType.GreaterOrEqual => new ComparisonNode(at, ">=", left, right),
                BinaryExpressionType.And => new LogicNode(at, true, left, right),
                BinaryExpressionType.Or => new LogicNode(at, false, left, right),
                _ => Refuse(right.Offset),
            };
        }

        public Node? Visit(Function expression)
        {
            var token = TokenOf(expression.Identifier);
            var operands = new List<Node>();
            foreach (var parameter in expression.Parameters)
            {
                if (parameter.Accept(this) is not { } operand)
                    return null;
                operands.Add(operand);
            }

            var at = token.Offset;
            switch (token.Text, operands)
            {
                case ("if", [var condition, var then, var otherwise]):
                    return new IfNode(at, condition, then, otherwise);
                case ("min" or "max", [_, ..]):
                    return new ExtremeNode(at, token.Text == "min", operands);
                case ("abs", [var operand]):
                    return new AbsoluteNode(at, operand);
                case ("up", [var operand]):
                    return new RoundNode(at, Rounding.Up, operand);
                case ("down", [var operand]):
                    return new RoundNode(at, Rounding.Down, operand);
                case ("near", [var operand]):
                    return new RoundNode(at, Rounding.Nearest, operand);
                case var (name, values) when MeasureNode.All.TryGetValue(name, out var function):
                    if (values.Count == function.Values)
                        return new MeasureNode(at, function, values);
                    problem(at, $"“{name}” takes {(function.Values == 1 ? "one value" : "two values")}, but here it has {values.Count}.", function.Use);
                    return null;
                case ("if", _):
                    problem(at, $"“if” takes three values, but here it has {operands.Count}.", "Write if(condition, value when it holds, value when not).");
                    return null;
                case var (name, _) when FunctionNames.Contains(name):
                    problem(at, $"“{name}” takes {(name is "min" or "max" ? "at least one value" : "one value")}, but here it has {operands.Count}.", "");
                    return null;
                default:
                    problem(at, $"“{token.Text}” is not something a formula can do.", Spelling.Advice(token.Text, FunctionNames));
                    return null;
            }
        }

        // A list in parentheses and the question mark have no use here; plain values never reach the library.
        public Node? Visit(LogicalExpressionList expression) => Refuse(tokens[0].Offset);

        public Node? Visit(TernaryExpression expression) => Refuse(tokens[0].Offset);

        public Node? Visit(ValueExpression expression) => Refuse(tokens[0].Offset);

        private Token TokenOf(Identifier identifier) =>
            tokens[int.Parse(identifier.Name.AsSpan(1), NumberStyles.None, CultureInfo.InvariantCulture)];

        private Node? Refuse(int offset)
        {
            problem(offset, "A formula cannot do this.", "Formulas use + - * / ( ), comparisons, and, or, not, and if(condition, this, that).");
            return null;
        }
    }
}
