using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Fits a structure once: works out its values, looks at their limits, builds its parts, and checks the whole.</summary>
internal sealed class Fitter
{
    private readonly Structure _structure;
    private readonly FitRequest _request;
    private readonly Problems _problems;
    private readonly Evaluation _values;
    private readonly Blame _blame;
    private readonly HashSet<string> _idle = new(StringComparer.Ordinal);
    private readonly HashSet<string> _outside = new(StringComparer.Ordinal);
    private readonly List<Parameter> _missing = [];
    private readonly List<RoundedSize> _rounded = [];
    private bool _failed;

    public Fitter(Structure structure, FitRequest request, Problems problems)
    {
        _structure = structure;
        _request = request;
        _problems = problems;
        _values = new Evaluation(structure.Definition.Names, request.Ruler);
        _blame = new Blame(structure, request);
    }

    private Ruler Ruler => _request.Ruler;

    /// <summary>The model, or null after noting why there is none.</summary>
    public Model? Fit()
    {
        if (!ItemIsSound())
            return null;
        SetGivenNames();
        foreach (var definition in _structure.Definition.Order)
        {
            if (definition is ParameterDefinition { Parameter: var parameter })
                Set(parameter);
            else if (definition is ValueDefinition value && Work(value.Formula, silentWhenMissing: true) is { } result)
                _values.Set(value.Name, result);
        }

        StocksAreThere();
        NothingIsMissing();
        if (_failed)
            return null;
        // What the maker set comes first: a usual value that a wrong one drags along is no news.
        foreach (var parameter in _structure.Parameters.OrderBy(parameter => _request.Given.ContainsKey(parameter.Name) ? 0 : 1))
            WithinLimits(parameter);
        if (_failed)
            return null;
        var checks = Checks();
        var parts = new PartMaker(_structure, _request, _values, _blame, _problems).Make();
        if (_failed || parts is null || Assemble(parts) is not { } assembly || Words() is not { } words)
            return null;
        return new Model
        {
            Structure = _structure.Id,
            Kit = new Kit(Ruler, [.. parts.Select(part => part.Part)]) { Assembly = assembly },
            Values = ModelValues.All(_structure, _request, _values, _idle, parts),
            Parameters = [.. _structure.Parameters.Select(Fitted)],
            Checks = checks,
            Words = words,
            Rounded = _rounded,
        };
    }

    private StepWords? Words()
    {
        try
        {
            return _structure.Definition.Words.For(_values);
        }
        catch (FormulaException broken)
        {
            // What hangs on the item is not said where there is none.
            if (broken.NeedsItem)
                return StepWords.None;
            Fail(broken.Place, broken.Message);
            return null;
        }
    }

    private Assembly? Assemble(IReadOnlyList<MadePart> parts)
    {
        try
        {
            return AssemblyMaker.Make(_structure.Definition.Assembly, [.. parts.Select(part => part.Part)], _values);
        }
        catch (FormulaException broken)
        {
            Fail(broken.Place, broken.Message);
            return null;
        }
    }

    private bool ItemIsSound()
    {
        if (_request.Item is not { } item)
            return true;
        var sound = true;
        if (!_structure.Takes.Contains(item.Shape))
        {
            Fail(_blame.Fallback, $"The structure ({_structure.Title}) does not take {(item.Shape == ItemShape.Round ? "a round" : "a rectangular")} item.");
            sound = false;
        }

        var across = item.Shape == ItemShape.Round ? "diameter" : "width";
        var sides = new List<(string, Length)> { (across, item.Width), ("height", item.Height) };
        if (item.Shape == ItemShape.Rectangular)
            sides.Insert(1, ("depth", item.Depth));
        foreach (var (side, length) in sides)
        {
            if (LengthRange.Fault(length, LengthRange.Least) is not { } fault)
                continue;
            Fail(_blame.Fallback, $"The item’s {side} cannot be {LengthFormat.Format(length, Ruler)}.", fault);
            sound = false;
        }

        return sound;
    }

    private void SetGivenNames()
    {
        _values.Set("ruler.step", Quantity.Of(Ruler.Step));
        _values.Set("ruler.metric", Quantity.Of(Ruler.System == UnitSystem.Metric));
        _values.Set("item.given", Quantity.Of(_request.Item is not null));
        if (_request.Item is { } item)
        {
            _values.Set("item.shape", Quantity.Of(item.Shape == ItemShape.Round ? "round" : "rectangular"));
            _values.Set("item.width", Quantity.Of(item.Width));
            _values.Set("item.depth", Quantity.Of(item.Depth));
            _values.Set("item.height", Quantity.Of(item.Height));
        }

        foreach (var stock in _structure.StockDefinitions)
        {
            if (_request.Stocks.TryGetValue(stock.Use.Id, out var chosen))
                _values.Set($"{stock.Use.Id}.caliper", Quantity.Of(chosen.Caliper));
        }
    }

    private void Set(Parameter parameter)
    {
        var matters = parameter.WhenFormula is null || Work(parameter.WhenFormula)?.Flag != false;
        if (!matters)
            _idle.Add(parameter.Name);
        if (_request.Given.TryGetValue(parameter.Name, out var given))
        {
            if (!matters)
                _problems.Warning(given.Place, $"“{parameter.Name}” changes nothing here: it matters only when {(parameter.WhenFormula?.IsName == true ? $"“{parameter.When}” is yes" : parameter.When)}.");
            if (ValueOf(parameter, given) is { } value)
                _values.Set(parameter.Name, value);
            return;
        }

        if (parameter.DefaultFormula is null || Work(parameter.DefaultFormula, silentWhenMissing: true) is not { } usual)
        {
            if (matters)
                _missing.Add(parameter);
            return;
        }

        _values.Set(parameter.Name, usual.Kind == Kind.Length ? Quantity.Of(Ruler.Round(usual.Length, parameter.Round)) : usual);
    }

    private Quantity? ValueOf(Parameter parameter, GivenValue given)
    {
        switch (parameter.Kind, given.Value)
        {
            case (ParameterKind.Length, LengthValue { Length: var length }):
                if (LengthRange.Fault(length, Length.FromNanometres(1)) is { } fault)
                {
                    Fail(given.Place, $"“{parameter.Name}” cannot be {LengthFormat.Format(length, Ruler)}.", fault);
                    return null;
                }

                var used = Ruler.Round(length, parameter.Round);
                if (used != length)
                    _rounded.Add(new RoundedSize(parameter.Name, given.Place, length, used));
                return Quantity.Of(used);
            case (ParameterKind.Number, NumberValue { Number: var number }):
                return Quantity.Of(number);
            case (ParameterKind.YesNo, FlagValue { Flag: var flag }):
                return Quantity.Of(flag);
            case (ParameterKind.Choice, WordValue { Word: var word }) when parameter.Choices.Contains(word):
                return Quantity.Of(word);
            default:
                Fail(given.Place, $"“{parameter.Name}” cannot be set to this.", $"It takes {ParameterReader.KindOf(parameter.Kind).WithArticle()}{(parameter.Choices.Count > 0 ? ": " + string.Join(", ", parameter.Choices) : "")}.");
                return null;
        }
    }

    private void StocksAreThere()
    {
        foreach (var (use, when) in _structure.StockDefinitions)
        {
            if (_request.Stocks.ContainsKey(use.Id) || (when is not null && Work(when)?.Flag == false))
                continue;
            Fail(_blame.Fallback, $"The stock “{use.Id}” is missing.", use.Means);
            _missing.Clear();
        }
    }

    private void NothingIsMissing()
    {
        // What follows from another missing size will follow once that is set.
        var missing = _missing.Select(parameter => parameter.Name).ToHashSet(StringComparer.Ordinal);
        var roots = _missing.Where(parameter => !_blame.Needed(parameter.DefaultFormula).Any(missing.Contains)).Select(parameter => parameter.Name).ToList();
        if (roots.Count == 0)
            return;
        var names = roots.Count == 1 ? $"“{roots[0]}” has" : $"“{string.Join("”, “", roots.SkipLast(1))}” and “{roots[^1]}” have";
        Fail(_blame.Fallback, $"{names} to be set{(_request.Item is null ? ", as there is no item to fit to" : "")}.", _request.Item is null ? "Set them, or name the item that goes inside." : "");
    }

    private void WithinLimits(Parameter parameter)
    {
        if (_idle.Contains(parameter.Name) || _values.Find(parameter.Name) is not { } value)
            return;
        if (value.Kind is not (Kind.Length or Kind.Number))
            return;
        var least = parameter.LeastFormula is null ? null : Work(parameter.LeastFormula);
        var most = parameter.MostFormula is null ? null : Work(parameter.MostFormula);
        if (value.Kind == Kind.Length)
        {
            least ??= new Quantity(Kind.Length, 1);
            most ??= Quantity.Of(LengthRange.Most);
        }

        if (least is { } floor && value.Amount < floor.Amount)
            OutOfLimits(parameter, value, parameter.LeastFormula, $"must be at least {Words(floor, Rounding.Up)}");
        else if (most is { } ceiling && value.Amount > ceiling.Amount)
            OutOfLimits(parameter, value, parameter.MostFormula, ceiling.Amount <= 0 ? "has no room at all" : $"can be at most {Words(ceiling, Rounding.Down)}");
    }

    private FittedParameter Fitted(Parameter parameter) => new(
        parameter,
        _values.Find(parameter.Name) is { } value ? ModelValues.Plain(value) : null,
        Limit(parameter.LeastFormula, Rounding.Up),
        Limit(parameter.MostFormula, Rounding.Down),
        !_idle.Contains(parameter.Name));

    // The limits of a parameter that does not matter here may come from something that is not there.
    private Value? Limit(Formula? formula, Rounding rounding)
    {
        try
        {
            return formula?.Evaluate(_values) is not { } limit ? null
                : limit.Kind == Kind.Length ? new LengthValue(Ruler.Round(limit.Length, rounding))
                : ModelValues.Plain(limit);
        }
        catch (Exception nothing) when (nothing is FormulaException or OverflowException)
        {
            return null;
        }
    }

    private void OutOfLimits(Parameter parameter, Quantity value, Formula? limit, string words)
    {
        var given = _request.Given.TryGetValue(parameter.Name, out var found);
        if (!given && _blame.Needed(limit, parameter.DefaultFormula).Any(_outside.Contains))
            return;
        _outside.Add(parameter.Name);
        var place = given ? found!.Place : _blame.Of(limit, parameter.DefaultFormula);
        Fail(place, $"“{parameter.Name}” {(given ? "is" : "comes out at")} {Words(value, Rounding.Nearest)}, but {words} here.", Advice());

        string Advice() =>
            parameter.Limits.Length > 0 ? parameter.Limits
            : given ? ""
            : "Change what it follows from, such as the item, its ease or the card, or set it yourself under “sizes”.";
    }

    private List<FitCheck> Checks()
    {
        var checks = new List<FitCheck>();
        foreach (var check in _structure.Definition.Checks)
        {
            if (check.When is not null && Work(check.When)?.Flag != true)
                continue;
            if (Work(check.Found)?.Length is not { } found || Work(check.Least)?.Length is not { } least)
                continue;
            var holds = found >= least;
            var advice = check.Advice is null ? "" : Fill(check.Advice);
            checks.Add(new FitCheck(check.Name, found, least, holds, advice));
            if (!holds)
                _problems.Error(_blame.Of(check.Found, check.Least), $"“{check.Name}” does not hold: it lacks {LengthFormat.Format(least - found, Ruler)}.", advice);
        }

        return checks;
    }

    private string Fill(TextTemplate advice)
    {
        try
        {
            return advice.Fill(_values);
        }
        catch (FormulaException broken)
        {
            Fail(broken.Place, broken.Message);
            return "";
        }
    }

    private string Words(Quantity value, Rounding rounding) => value.Kind == Kind.Length
        ? LengthFormat.Format(Ruler.Round(value.Length, rounding), Ruler)
        : value.Amount.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);

    // A formula that needs an item where there is none gives nothing; whether that matters is seen where it is used.
    private Quantity? Work(Formula formula, bool silentWhenMissing = false)
    {
        try
        {
            var result = formula.Evaluate(_values);
            if (result.Kind == Kind.Length)
                _ = result.Length;
            return result;
        }
        catch (FormulaException broken)
        {
            if (!broken.NeedsItem || !silentWhenMissing)
                Fail(broken.Place, broken.Message);
            return null;
        }
        catch (OverflowException)
        {
            Fail(formula.Place, $"“{formula.Text}” gives a length that is far too long.");
            return null;
        }
    }

    private void Fail(Place place, string message, string advice = "")
    {
        _failed = true;
        _problems.Error(place, message, advice);
    }
}
