namespace Pattern.Press.Nets;

/// <summary>Where a part goes, seen from another.</summary>
public enum GoesWhere
{
    /// <summary>It stands on the ground, as the first part does.</summary>
    OnGround,

    /// <summary>Into the other one, on its floor or on what lies there already.</summary>
    Inside,

    /// <summary>Over the other one from above, as a lid: its walls outside, its top on the other's upper edges.</summary>
    Over,

    /// <summary>Around the other one, as a sleeve or a band, its middle at the other's middle.</summary>
    Around,

    /// <summary>On top of the other one, resting on its highest face.</summary>
    On,

    /// <summary>On the same ground, a little in front of the other one, as a card before its envelope.</summary>
    Beside,
}

/// <summary>How a part stands.</summary>
public enum Stance
{
    /// <summary>The root down as the sheet is drawn, its facing side up; an item upright.</summary>
    AsDrawn,

    /// <summary>Turned over about the line that runs from left to right: the root's facing side looks down.</summary>
    UpsideDown,

    /// <summary>The root upright, the lower edge of the sheet down, its facing side to the front.</summary>
    OnEdge,

    /// <summary>The outside of the panel <see cref="AssembledPart.StandsOn"/> down.</summary>
    OnPanel,
}

/// <summary>The way a part comes off when the thing is opened or shown apart, and is put on the other way round.</summary>
public enum Leaving
{
    /// <summary>Upwards.</summary>
    Up,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>To the left.</summary>
    Left,

    /// <summary>Towards the viewer.</summary>
    Front,

    /// <summary>Away from the viewer.</summary>
    Back,
}

/// <summary>A place beside the usual one, in millimetres.</summary>
/// <param name="Right">How far to the right of the middle.</param>
/// <param name="Back">How far to the back of the middle.</param>
/// <param name="Up">How far above where the part would rest.</param>
public readonly record struct PlaceShift(double Right, double Back, double Up);

/// <summary>One piece, or the item, in the finished thing.</summary>
/// <param name="Part">The piece's id, or <see cref="Assembly.Item"/>.</param>
public sealed record AssembledPart(string Part)
{
    /// <summary>Where it goes.</summary>
    public GoesWhere Goes { get; init; }

    /// <summary>The part it goes to, by id; null only on the ground.</summary>
    public string? To { get; init; }

    /// <summary>How it stands.</summary>
    public Stance Stands { get; init; }

    /// <summary>For <see cref="Stance.OnPanel"/>, the kind of panel, the first of which is down.</summary>
    public string? StandsOn { get; init; }

    /// <summary>How far it is turned about the upright axis, in degrees anticlockwise as seen from above.</summary>
    public double Turned { get; init; }

    /// <summary>Whether the item lies on its side, its top to the back before it is turned; a piece never does.</summary>
    public bool IsTipped { get; init; }

    /// <summary>
    /// Where its copies are: one place each, the middle when nothing is said. A part whose quantity is larger than the
    /// number of places is shown at those places only.
    /// </summary>
    public IReadOnlyList<PlaceShift> Places { get; init; } = [default];

    /// <summary>The way it comes off.</summary>
    public Leaving Leaves { get; init; }

    /// <summary>Whether it folds open as a whole when the thing is opened, as the walls of a box that falls open.</summary>
    public bool OpensWholly { get; init; }

    /// <summary>The kinds of panels that are folded open when the thing is opened, such as a flap; mostly none.</summary>
    public IReadOnlyList<string> Opens { get; init; } = [];

    /// <summary>Whether it claims to close all round: no edge without another against it.</summary>
    public bool ClaimsClosed { get; init; }

    /// <summary>Whether it claims to fold flat.</summary>
    public bool ClaimsFlatFoldable { get; init; }

    /// <summary>
    /// Whether it is put into what it stands beside in the end, pressed flat, as a card into its envelope; it is drawn beside it
    /// all the same.
    /// </summary>
    public bool IsPutIn { get; init; }
}
