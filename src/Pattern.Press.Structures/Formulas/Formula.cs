using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Formulas;

/// <summary>A formula of a structure file: parsed once, worked out for every fit.</summary>
internal sealed class Formula
{
    private readonly Node _root;
    private readonly Place _place;
    private readonly Func<int, string, bool, FormulaException> _fail;

    private Formula(string text, Place place, Node root, IReadOnlyList<string> names)
    {
        Text = text;
        _place = place;
        _root = root;
        Names = names;
        _fail = (offset, message, needsItem) => new FormulaException(At(offset), message, needsItem);
    }

    /// <summary>The formula as written.</summary>
    public string Text { get; }

    /// <summary>Where it starts.</summary>
    public Place Place => _place;

    /// <summary>The names it uses, in the order they appear, each once.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>Whether it is a name and nothing else.</summary>
    public bool IsName => _root is NameNode;

    /// <summary>Reads a formula.</summary>
    /// <returns>The formula, or null after noting what is wrong with it.</returns>
    public static Formula? Read(string text, Place place, Problems problems)
    {
        void Problem(int offset, string message, string advice) => problems.Error(Move(place, offset), message, advice);
        if (Lexer.Read(text, Problem) is not { } tokens || Parser.Read(tokens, Problem) is not { } root)
            return null;
        var names = tokens.Where(token => token.Kind == TokenKind.Name).Select(token => token.Text).Distinct(StringComparer.Ordinal);
        return new Formula(text, place, root, [.. names]);
    }

    /// <summary>Finds out what the formula gives, and reports unknown names and units that do not go together.</summary>
    public Kind? Check(Names names, Problems problems) =>
        _root.Check(new Checking(names, (offset, message, advice) => problems.Error(At(offset), message, advice)));

    /// <summary>Works the formula out.</summary>
    /// <exception cref="FormulaException">It gives nothing: it divides by zero, or needs an item where there is none.</exception>
    public Quantity Evaluate(Evaluation values) => _root.Evaluate(new Working(values, _fail));

    private Place At(int offset) => Move(_place, offset);

    // A column is known where the formula stands on one line; else the line has to do.
    private static Place Move(Place place, int offset) =>
        place.Column == 0 ? place : place with { Column = place.Column + offset };
}
