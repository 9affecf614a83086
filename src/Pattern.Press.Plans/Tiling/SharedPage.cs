using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>Small templates of one stock that share a page.</summary>
/// <param name="Lying">Whether the page lies on its long side.</param>
/// <param name="Places">Where each goes, row by row.</param>
public sealed record SharedPage(bool Lying, IReadOnlyList<SharedPlace> Places)
{
    /// <summary>The stock that everything on the page is cut from, by its id.</summary>
    public string Stock => Places[0].Part.Stock;
}

/// <summary>A small template's place on a shared page.</summary>
/// <param name="Part">What is drawn; on as many places as there are kits where that saves paper, else on one.</param>
/// <param name="Turned">Whether it is turned clockwise by a quarter.</param>
/// <param name="PageX">The left of its sheet on the page, in millimetres.</param>
/// <param name="PageY">The top of its sheet on the page, in millimetres.</param>
public sealed record SharedPlace(Part Part, bool Turned, double PageX, double PageY)
{
    /// <summary>How many are cut from the template in this place: a kit's, or those of several kits.</summary>
    public int Cut { get; init; } = Part.Quantity;

    /// <summary>What is kept free below the template for its words; empty when no room was asked for.</summary>
    public LabelPlace Label { get; init; }
}

/// <summary>A rectangle on a page that is kept free for a label, in millimetres.</summary>
/// <param name="X">Its left.</param>
/// <param name="Y">Its top.</param>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
public readonly record struct LabelPlace(double X, double Y, double Width, double Height);

/// <summary>The room that a template's label takes below it, in millimetres.</summary>
/// <param name="Width">The least width a label needs, even where the template is narrower; 0 or more.</param>
/// <param name="Height">Its height; 0 or more.</param>
public readonly record struct LabelRoom(double Width, double Height);

/// <summary>All the shared pages of some small templates.</summary>
/// <param name="Pages">The pages, grouped by stock in the order in which stocks first occur.</param>
/// <param name="LeastPages">No plan could take fewer: a bound by area and side, stock by stock.</param>
/// <param name="TooLarge">Templates that no page has room for, with their label.</param>
public sealed record SharedPages(IReadOnlyList<SharedPage> Pages, int LeastPages, IReadOnlyList<Part> TooLarge);
