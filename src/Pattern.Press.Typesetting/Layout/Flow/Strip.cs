using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>
/// A strip of a column from its left to its right: a line of text, a row of a table, a figure. It is never split; pages
/// are made by putting strips one below the other.
/// </summary>
internal abstract class Strip
{
    /// <summary>Its left edge, from the left of the text area, in millimetres.</summary>
    public double X { get; init; }

    /// <summary>What it is, for messages.</summary>
    public virtual string Kind => "A part of the text";

    /// <summary>The words in it that make it high, for messages; empty where they are not known.</summary>
    public virtual string Words => "";

    /// <summary>Its height in millimetres.</summary>
    public abstract double Height { get; }

    /// <summary>The room above it, unless it starts a page, in millimetres.</summary>
    public double Gap { get; set; }

    /// <summary>Whether a page may end below it.</summary>
    public Keep Keep { get; set; }

    /// <summary>Whether it starts a page.</summary>
    public bool StartsPage { get; set; }

    /// <summary>Whether it is (a line of) a heading, which wants at least two lines below it.</summary>
    public bool IsHeading { get; init; }

    /// <summary>Whether something drawn in it wants to be larger.</summary>
    public virtual bool IsCrowded => false;

    /// <summary>How much lettering found no room in what is drawn in it, from 0 to 1.</summary>
    public virtual double Crowding => 0;

    /// <summary>The ground it stands on; null for paper.</summary>
    public Frame? Frame { get; init; }

    /// <summary>Where it came from.</summary>
    public BlockSource? Source { get; init; }

    /// <summary>Strips that are shown again above this one if it starts a page: the header of a table.</summary>
    public IReadOnlyList<Strip> Repeated { get; init; } = [];

    /// <summary>Names of places that start here.</summary>
    public IReadOnlyList<string> Destinations { get; set; } = [];

    /// <summary>What hangs to the left of its first line: bullets, numbers.</summary>
    public IReadOnlyList<HangingLabel> Labels { get; set; } = [];

    /// <summary>From its top to its first baseline, where labels stand; in millimetres.</summary>
    public virtual double Baseline => Height;

    /// <summary>Puts it on a page, its top at a height.</summary>
    public void Place(PageCanvas canvas, double left, double top)
    {
        foreach (var name in Destinations)
            canvas.AddDestination(name, top);
        foreach (var label in Labels)
            label.Draw(canvas, left, top + Baseline);
        Draw(canvas, left + X, top);
    }

    /// <summary>Collects the names of all places in it.</summary>
    public virtual void CollectDestinations(ICollection<string> names)
    {
        foreach (var name in Destinations)
            names.Add(name);
    }

    /// <summary>Draws it with its top-left corner at a point.</summary>
    protected abstract void Draw(PageCanvas canvas, double x, double y);
}
