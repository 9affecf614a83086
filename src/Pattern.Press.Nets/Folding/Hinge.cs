namespace Pattern.Press.Nets.Folding;

/// <summary>A fold as a line in the space of the flat sheet, with the panel that stays and the panel that turns.</summary>
internal sealed class Hinge
{
    /// <param name="fold">The fold.</param>
    /// <param name="piece">Its piece.</param>
    /// <param name="fixedPanel">The place of the panel that stays in the piece's list.</param>
    /// <param name="turning">The place of the panel that turns.</param>
    public Hinge(Fold fold, Piece piece, int fixedPanel, int turning)
    {
        Fold = fold;
        Fixed = fixedPanel;
        Turning = turning;
        var along = fold.To - fold.From;
        var middle = fold.From.MidwayTo(fold.To);
        var side = piece.Panels[turning].Outline.Edges.Where(edge => !edge.IsArc).MinBy(edge => edge.DistanceTo(middle));

        // An outline runs clockwise on the page, so its inside lies to the right of each edge. A turn by the right-hand
        // rule lifts what lies to the left of its axis: the axis runs against the turning panel's own edge.
        var (from, to) = along.Dot(side.To - side.From) > 0 ? (fold.To, fold.From) : (fold.From, fold.To);
        From = Vector3d.OnSheet(from);
        To = Vector3d.OnSheet(to);
    }

    public Fold Fold { get; }

    public int Fixed { get; }

    public int Turning { get; }

    /// <summary>The start of the axis, on the flat sheet.</summary>
    public Vector3d From { get; }

    /// <summary>The end of the axis; a turn by the right-hand rule lifts the turning panel towards the maker.</summary>
    public Vector3d To { get; }

    /// <summary>The turn of the moving panel on the flat sheet when the fold is at an angle, in degrees in its own direction.</summary>
    public RigidMotion Turn(double angle) =>
        RigidMotion.Turn(From, To - From, Fold.Direction == FoldDirection.Valley ? angle : -angle);

    /// <summary>
    /// The angle of the fold, in degrees in its own direction, between two panels that have been moved each in its own way.
    /// It lies above −180 and up to 180, or, for a fold that goes the whole way over, from 0 to 180 with rounding kept
    /// from turning 180 into −180.
    /// </summary>
    public double AngleBetween(RigidMotion fixedPanel, RigidMotion turning)
    {
        var axis = fixedPanel.Turned(To - From).Unit;
        var (a, b) = (fixedPanel.ZAxis, turning.ZAxis);
        var sine = axis.Dot(a.Cross(b));
        var angle = Math.Atan2(sine, a.Dot(b)) * 180 / Math.PI;
        if (Fold.Direction == FoldDirection.Mountain)
            angle = -angle;
        return angle < -180 + 1e-6 ? angle + 360 : angle;
    }
}
