using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>What names in the words of a booklet stand for: values of the two fits, stocks by their name, and figures.</summary>
internal sealed class ModelBindings : IBindings
{
    private readonly BookletContext _context;
    private readonly ValueText _values;
    private readonly FigureMaker _figures;
    private readonly SortedDictionary<string, IReadOnlyList<Inline>> _words = new(StringComparer.Ordinal);

    public ModelBindings(BookletContext context, ValueText values, FigureMaker figures)
    {
        _context = context;
        _values = values;
        _figures = figures;
        foreach (var (use, stock) in context.Source.Stocks)
            _words[$"{use}.name"] = [new TextInline(stock.Name)];
        if (context.Source.Item is { } item)
            _words["item.name"] = [new TextInline(item.Name)];
    }

    /// <inheritdoc/>
    public IReadOnlyCollection<string> Names =>
        [.. _context.Primary.Values.Keys.Concat(_words.Keys).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public IReadOnlyList<Inline>? Value(string name)
    {
        if (_words.TryGetValue(name, out var words))
            return words;
        if (!_context.Primary.Values.TryGetValue(name, out var here))
            return null;
        var there = _context.Secondary.Values.GetValueOrDefault(name);
        // The item's own sizes are facts, not fits: off a ruler's marks they are said to the nearest mark.
        return name.StartsWith("item.", StringComparison.Ordinal)
            ? _values.Both(Nearest(here, _context.Primary.Kit.Ruler), there is null ? null : Nearest(there, _context.Secondary.Kit.Ruler))
            : _values.Both(here, there);
    }

    /// <inheritdoc/>
    public Block? Figure(FigureSource figure, Problems problems) => _figures.Make(figure, problems);

    private static Value Nearest(Value value, Ruler ruler)
    {
        // What the maker wrote in the ruler's own units, to a tenth of a millimetre or a 64th of an inch, stays as it is.
        var finest = ruler.System == UnitSystem.Metric ? new Ruler(UnitSystem.Metric, Length.Millimetre / 10) : new Ruler(UnitSystem.Imperial, Length.Inch / 64);
        return value is LengthValue { Length: var length } && !finest.Marks(length)
            ? new LengthValue(ruler.Round(length, Rounding.Nearest))
            : value;
    }
}
