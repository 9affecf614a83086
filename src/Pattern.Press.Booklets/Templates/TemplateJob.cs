using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>What template pages are made of.</summary>
public sealed record TemplateJob
{
    /// <summary>Which template goes where.</summary>
    public required TemplatePlan Plan { get; init; }

    /// <summary>The page the plan was made for.</summary>
    public required TemplatePage Page { get; init; }

    /// <summary>The kit that is drawn.</summary>
    public required Kit Kit { get; init; }

    /// <summary>The stocks by their ids in the kit.</summary>
    public required IReadOnlyDictionary<string, Stock> Stocks { get; init; }

    /// <summary>The words.</summary>
    public required IFigureWords Words { get; init; }

    /// <summary>Fonts, colours and lines.</summary>
    public required StyleSheet Styles { get; init; }

    /// <summary>What finds no room on the pages, each as a sentence, with the id of the stock whose name is among the words; "" for names of pieces.</summary>
    internal ICollection<(string Message, string Stock)> Misfits { get; } = [];

    internal string StockName(Part part) => Stocks.TryGetValue(part.Stock, out var stock) ? stock.Name : part.Stock;

    /// <summary>A template page's label in the contents and in a viewer.</summary>
    internal static string Label(int number) => TemplatePages.LabelPrefix + number.ToString(CultureInfo.InvariantCulture);

    // A template is as large as it is in the fit that is drawn. The other fit's sizes are those of another template.
    internal string SizeOf(Part part) => Words.Number(LengthFormat.Format(part.Piece.Sheet, Kit.Ruler));
}
