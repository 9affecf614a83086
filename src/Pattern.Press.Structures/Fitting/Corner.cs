using Pattern.Press.Measure;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;

namespace Pattern.Press.Structures.Fitting;

/// <summary>What a parameter is set to at a corner of the ranges.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="IsMost">For a length or a number: whether it is as large as it may be, or as small.</param>
/// <param name="Fixed">For yes/no and for a choice: what it is.</param>
internal sealed record Setting(Parameter Parameter, bool IsMost, Quantity? Fixed);

/// <summary>The values of a structure at one corner of its parameters' ranges, for one item.</summary>
internal sealed class Corner
{
    // What a limit depends on may itself be at a limit, which then depends on a third one.
    private const int Rounds = 3;

    private static readonly Length UsualCaliper = Length.FromMillimetres(0.3m);
    private readonly Structure _structure;
    private readonly Item? _item;
    private readonly Ruler _ruler;
    private readonly SortedDictionary<string, Setting> _settings;

    private Corner(Structure structure, Item? item, Ruler ruler, IReadOnlyList<Setting> settings)
    {
        (_structure, _item, _ruler) = (structure, item, ruler);
        _settings = new SortedDictionary<string, Setting>(settings.ToDictionary(setting => setting.Parameter.Name, StringComparer.Ordinal), StringComparer.Ordinal);
        Values = Start();
    }

    /// <summary>Everything worked out there.</summary>
    public Evaluation Values { get; private set; }

    /// <summary>Works out a corner; null when it is none that a maker may choose.</summary>
    public static Corner? At(Structure structure, Item? item, Ruler ruler, IReadOnlyList<Setting> settings)
    {
        var corner = new Corner(structure, item, ruler, settings);
        return corner.WorkOut() && corner.IsAllowed() ? corner : null;
    }

    private bool WorkOut()
    {
        var chosen = new SortedDictionary<string, Quantity>(StringComparer.Ordinal);
        for (var round = 0; round <= Rounds; round++)
        {
            Values = Start();
            foreach (var definition in _structure.Definition.Order)
            {
                if (chosen.TryGetValue(definition.Name, out var set))
                    Values.Set(definition.Name, set);
                else if (definition is ParameterDefinition { Parameter: var parameter })
                    SetUsual(parameter);
                else if (definition is ValueDefinition value && Work(value.Formula) is { } result)
                    Values.Set(value.Name, result);
            }

            var before = chosen.Count;
            foreach (var setting in _settings.Values)
            {
                if (Extreme(setting) is { } extreme)
                    chosen[setting.Parameter.Name] = extreme;
            }

            if (round > 0 && chosen.Count < _settings.Count && chosen.Count == before)
                return false;
        }

        return true;
    }

    private void SetUsual(Parameter parameter)
    {
        if (_settings.TryGetValue(parameter.Name, out var setting) && setting.Fixed is { } known)
            Values.Set(parameter.Name, known);
        else if (parameter.DefaultFormula is { } formula && Work(formula) is { } usual)
            Values.Set(parameter.Name, usual.Kind == Kind.Length ? OnRuler(usual, parameter.Round) : usual);
    }

    private Quantity? Extreme(Setting setting)
    {
        if (setting.Fixed is { } word)
            return word;
        var formula = setting.IsMost ? setting.Parameter.MostFormula : setting.Parameter.LeastFormula;
        if (formula is not null)
            return Work(formula) is { } limit ? OnRuler(limit, setting.IsMost ? Rounding.Down : Rounding.Up) : null;
        return setting.Parameter.Kind != ParameterKind.Length ? null
            : Quantity.Of(setting.IsMost ? LengthRange.Most : _ruler.Round(LengthRange.Least, Rounding.Up));
    }

    // As when it is fitted: what matters lies within its limits, and all that must hold holds.
    private bool IsAllowed()
    {
        foreach (var parameter in _structure.Parameters)
        {
            if (parameter.WhenFormula is { } when && Work(when)?.Flag == false)
                continue;
            if (Values.Find(parameter.Name) is not { } value)
                return false;
            if (value.Kind is not (Kind.Length or Kind.Number))
                continue;
            if (parameter.LeastFormula is { } least && (Work(least) is not { } floor || value.Amount < floor.Amount))
                return false;
            if (parameter.MostFormula is { } most && (Work(most) is not { } ceiling || value.Amount > ceiling.Amount))
                return false;
            if (value.Kind == Kind.Length && (value.Amount < 1 || value.Amount > LengthRange.Most.Nanometres))
                return false;
        }

        foreach (var check in _structure.Definition.Checks)
        {
            if (check.When is { } when && Work(when)?.Flag != true)
                continue;
            if (Work(check.Found) is not { } found || Work(check.Least) is not { } least || found.Amount < least.Amount)
                return false;
        }

        return true;
    }

    private Evaluation Start()
    {
        var values = new Evaluation(_structure.Definition.Names, _ruler);
        values.Set("ruler.step", Quantity.Of(_ruler.Step));
        values.Set("ruler.metric", Quantity.Of(_ruler.System == UnitSystem.Metric));
        values.Set("item.given", Quantity.Of(_item is not null));
        if (_item is { } item)
        {
            values.Set("item.shape", Quantity.Of(item.Shape == ItemShape.Round ? "round" : "rectangular"));
            values.Set("item.width", Quantity.Of(item.Width));
            values.Set("item.depth", Quantity.Of(item.Depth));
            values.Set("item.height", Quantity.Of(item.Height));
        }

        foreach (var stock in _structure.StockDefinitions)
            values.Set($"{stock.Use.Id}.caliper", Quantity.Of(UsualCaliper));
        return values;
    }

    private Quantity OnRuler(Quantity value, Rounding rounding)
    {
        try
        {
            return value.Kind == Kind.Length ? Quantity.Of(_ruler.Round(value.Length, rounding)) : value;
        }
        catch (OverflowException)
        {
            return value;
        }
    }

    // What gives nothing here is told of when the structure is fitted.
    private Quantity? Work(Formula formula)
    {
        try
        {
            return formula.Evaluate(Values);
        }
        catch (FormulaException)
        {
            return null;
        }
    }
}
