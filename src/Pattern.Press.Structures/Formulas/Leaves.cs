using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Formulas;

/// <summary>A number, a length, a word, yes or no.</summary>
internal sealed record LiteralNode(int Offset, Quantity Value) : Node(Offset)
{
    public override Kind? Check(Checking checking) => Value.Kind;

    public override Quantity Evaluate(Working working) => Value;
}

/// <summary>A name that stands for a value.</summary>
internal sealed record NameNode(int Offset, string Name) : Node(Offset)
{
    private int _slot = -1;

    public override Kind? Check(Checking checking)
    {
        _slot = checking.Names.Find(Name);
        if (_slot >= 0)
            return checking.Names[_slot].Kind;
        checking.Problem(Offset, $"“{Name}” is not a name of this structure.", Spelling.Advice(Name, checking.Names.All));
        return null;
    }

    public override Quantity Evaluate(Working working) =>
        working.Values[_slot] ?? throw working.Fail(
            Offset,
            Name.StartsWith("item.", StringComparison.Ordinal) ? "There is no item to take a size from." : $"There is no value for “{Name}”.",
            true);
}
