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
