using System.Globalization;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>What margins and words leave of a page for drawing, in millimetres.</summary>
/// <param name="Lying">Whether the page lies on its long side.</param>
/// <param name="Corner">The area's top-left corner on the page.</param>
/// <param name="Width">Across.</param>
/// <param name="Height">Down.</param>
internal sealed record DrawingArea(bool Lying, Point Corner, double Width, double Height)
{
    /// <summary>The least side of a tile worth printing and gluing (common practice, no source).</summary>
    public const double LeastSide = 40;

    /// <summary>The areas a page offers, upright before lying, without those too small to be of use.</summary>
    /// <exception cref="TilePlanException">None is of use, or the lap is too large for one.</exception>
    public static IReadOnlyList<DrawingArea> Of(TemplatePage page, double lap)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentOutOfRangeException.ThrowIfNegative(lap);
        var all = new[] { false, true }.Select(lying => (Area: Of(page, lying), Room: page.Printable(lying).Width)).ToList();
        if (all.TrueForAll(one => one.Room < page.LeastWidth - 1e-9))
        {
            var widest = all.Max(one => one.Room);
            throw new TilePlanException(
                TilePlanProblem.PageTooNarrow,
                widest,
                page.LeastWidth,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Margins leave {Math.Max(0, widest):0.#} mm of the page's width; what each page says needs {page.LeastWidth:0} mm."));
        }

        var wide = all.Where(one => one.Room >= page.LeastWidth - 1e-9).Select(one => one.Area).ToList();
        var usable = wide.Where(area => area.Shorter >= LeastSide).ToList();
        if (usable.Count == 0)
        {
            var best = wide.MaxBy(area => area.Shorter)!;
            throw new TilePlanException(
                TilePlanProblem.AreaTooSmall,
                best.Shorter,
                LeastSide,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Margins and captions leave {Math.Max(0, best.Width):0.#} × {Math.Max(0, best.Height):0.#} mm of the page for templates; at least {LeastSide:0} mm each way is needed. Use larger paper or smaller margins."));
        }

        // Two laps must not meet in the middle of a tile, or three pages would have to be glued over each other there.
        var fitting = usable.Where(area => lap <= area.Shorter / 3).ToList();
        if (fitting.Count == 0)
        {
            var most = usable.Max(area => area.Shorter) / 3;
            throw new TilePlanException(
                TilePlanProblem.LapTooLarge,
                lap,
                most,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"A lap of {lap:0.#} mm is too wide for tiles of this page; it can be {Math.Floor(most):0} mm at most."));
        }

        return fitting;
    }

    /// <summary>The area of a page laid one way.</summary>
    public static DrawingArea Of(TemplatePage page, bool lying)
    {
        var area = page.Drawing(lying);
        return new DrawingArea(lying, new Point(area.Left, area.Top), area.Width, area.Height);
    }

    private double Shorter => Math.Min(Width, Height);
}
