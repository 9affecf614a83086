using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A part of a set line: one run in one style that belongs to one element.</summary>
/// <param name="X">From the start of the line, in millimetres.</param>
/// <param name="Run">The glyphs.</param>
/// <param name="Width">How wide it is, without the space that ends a line, in millimetres.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Part">The element it belongs to.</param>
/// <param name="Destination">If it is the number of a page, of which destination; otherwise empty.</param>
internal sealed record LinePiece(double X, ShapedRun Run, double Width, TextStyle Style, InlinePart Part, string Destination);

/// <summary>A finished line of a paragraph.</summary>
/// <param name="Pieces">Its parts, left to right.</param>
/// <param name="Width">How wide it is, in millimetres.</param>
internal sealed record SetLine(LinePiece[] Pieces, double Width);
