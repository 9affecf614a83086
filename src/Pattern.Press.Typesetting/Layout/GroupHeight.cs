namespace Pattern.Press.Typesetting.Layout;

/// <summary>How high a group came out in a trial, in millimetres.</summary>
/// <param name="Height">Its height.</param>
/// <param name="Gap">The room above it.</param>
/// <param name="After">The room below it.</param>
internal readonly record struct GroupHeight(double Height, double Gap, double After);
