using System.Globalization;
using Pattern.Press.Booklets.Figures;

namespace Pattern.Press.Booklets.Tests.Figures;

/// <summary>English words for figures, enough to draw and to read back.</summary>
internal sealed class EnglishWords : IFigureWords
{
    private static readonly Dictionary<string, string> Texts = new(StringComparer.Ordinal)
    {
        ["figure.waste"] = "cut away",
        ["figure.glue.facing"] = "glue here",
        ["figure.glue.away"] = "glue on the back",
        ["figure.fold.valley"] = "valley",
        ["figure.fold.mountain"] = "mountain",
        ["figure.fold.valley-flat"] = "valley, right over",
        ["figure.fold.mountain-flat"] = "mountain, right back",
        ["figure.legend.valley"] = "valley fold: fold towards you",
        ["figure.legend.mountain"] = "mountain fold: fold away from you",
        ["key.cut"] = "cut",
        ["key.valley"] = "valley fold: score, fold towards you",
        ["key.mountain"] = "mountain fold: score, fold away from you",
        ["key.glue"] = "glue goes here",
        ["key.waste"] = "waste: cut away",
        ["key.dimension"] = "a measurement; do not cut",
        ["key.mark"] = "registration mark: must meet its other half",
        ["key.trim"] = "trim the page here before joining",
        ["list.comma"] = ", ",
        ["list.last"] = "{before} and {last}",
        ["alt.times"] = "{count} × {what}",
        ["alt.flat.flat"] = "{piece}, laid flat on its sheet of {sheet}.",
        ["alt.flat.sheet"] = "The sheet for the {piece}: {sheet}.",
        ["alt.flat.scores"] = "Score lines of the {piece} on its sheet of {sheet}.",
        ["alt.flat.diagonals"] = "Diagonal score lines of the {piece}.",
        ["alt.flat.waste"] = "What is cut away from the sheet of the {piece}, {sheet}.",
        ["alt.flat.folds"] = "The {piece} with the direction of each fold.",
        ["alt.flat.glue"] = "The {piece} with the areas that take glue hatched.",
        ["alt.flat.mats"] = "The {piece} with its mats in place.",
        ["alt.panels"] = "Panels: {panels}.",
        ["alt.folds"] = "Folds: {folds}.",
        ["alt.valley.one"] = "one valley fold",
        ["alt.valley.many"] = "{count} valley folds",
        ["alt.mountain.one"] = "one mountain fold",
        ["alt.mountain.many"] = "{count} mountain folds",
        ["alt.no-folds"] = "none",
        ["alt.glue.one"] = "One area takes glue.",
        ["alt.glue.many"] = "{count} areas take glue.",
        ["alt.waste.one"] = "One area is cut away.",
        ["alt.waste.many"] = "{count} areas are cut away.",
        ["alt.diagonal"] = "From {from} to {to}.",
        ["alt.mats"] = "Mats: {mats}.",
        ["alt.from-left"] = "From the left edge: {marks}.",
        ["template.title"] = "Templates",
        ["template.tile"] = "tile {tile} of {tiles}",
        ["template.whole"] = "full size, on one page",
        ["template.cut"] = "Cut {count} from {stock}.",
        ["template.cut-count"] = "cut {count}",
        ["template.size"] = "Sheet {size}.",
        ["template.side"] = "The inside of the card faces you.",
        ["template.side-shared"] = "The side that will be seen faces you.",
        ["template.joins.left"] = "Joins {tile} on the left at {marks}.",
        ["template.joins.right"] = "Joins {tile} on the right at {marks}.",
        ["template.joins.above"] = "Joins {tile} above at {marks}.",
        ["template.joins.below"] = "Joins {tile} below at {marks}.",
        ["template.lap"] = "{tile} is glued on here, up to the line",
        ["template.trim"] = "trim here, then glue on {tile}",
        ["template.butt"] = "trim here, then tape to {tile}",
        ["template.page"] = "Template page {number} of {count}",
        ["template.check"] = "Measure the bars. If they are not 50\u00a0mm, 50\u00a0mm and 2\u00a0in, print this page again at actual size (100\u00a0%), with fitting to the page switched off.",
        ["template.shared"] = "Small templates",
        ["template.shared-stock"] = "All on this page from {stock}.",
        ["template.one-way"] = "This paper has an up: keep the tops of the templates to the top of the pattern.",
        ["template.left-hand"] = "{piece}, left hand",
        ["template.right-hand"] = "{piece}, right hand",
        ["joining.title"] = "Joining the pages",
        ["joining.how"] = "Trim a page along its line of dashes and dots, lay it on its neighbour so that the line and the halves of each mark meet, and glue it down over the shaded strip. The lap shows the drawing on both pages: if the lines agree, it lies true.",
        ["joining.how-butt"] = "Trim both pages along the line of dashes and dots, bring the edges together so that the halves of each mark meet, and tape them on the back.",
        ["joining.piece"] = "{piece}, pages {tiles}",
        ["joining.step"] = "{number}. Trim {tile} and glue it over {others}; {marks} meet.",
        ["joining.step-butt"] = "{number}. Trim {tile} and tape it to {others}; {marks} meet.",
        ["joining.last"] = "{number}. Measure one long line across the join before you cut.",
        ["alt.scale"] = "Scale check: a bar of 50 mm and a bar of 2 in.",
        ["alt.scale-down"] = "Scale check: an upright bar of 50 mm.",
        ["alt.template"] = "Full-size template of the {piece}, tile {tile} of {tiles}, with an upright bar of 50 mm.",
        ["alt.small-template"] = "Full-size template: {piece}, {size}.",
        ["alt.joining"] = "How the pages {tiles} of the {piece} lie beside each other, with the letters of their marks.",
        ["alt.from-top"] = "From the top edge: {marks}.",
    };

    /// <inheritdoc/>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var text = Texts[key];
        foreach (var (name, value) in values)
            text = text.Replace("{" + name + "}", value, StringComparison.Ordinal);
        return text.Contains('{', StringComparison.Ordinal)
            ? throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"{key}: {text}"))
            : text;
    }
}
