using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
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
        return _values.Both(here, _context.Secondary.Values.GetValueOrDefault(name));
    }

    /// <inheritdoc/>
    public Block? Figure(FigureSource figure, Problems problems) => _figures.Make(figure, problems);
}
