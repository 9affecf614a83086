namespace Pattern.Press.Nets.Folding;

/// <summary>How thick the mats on a panel are.</summary>
public static class MatLayers
{
    /// <summary>The thickness in millimetres of what is glued on one side of a panel.</summary>
    /// <param name="kit">The kit with its mats.</param>
    /// <param name="piece">The panel's piece, by id.</param>
    /// <param name="panel">The panel.</param>
    /// <param name="side">The side.</param>
    /// <param name="caliper">How thick each part is.</param>
    /// <remarks>A mat that names no panels may be on any that is neither tab nor gusset.</remarks>
    public static double On(Kit kit, string piece, Panel panel, SheetSide side, Func<Part, double> caliper)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(caliper);
        var thickest = 0.0;
        foreach (var part in kit.Parts)
        {
            if (part.Kind != PartKind.Mat || part.Goes != piece || part.Side != side)
                continue;
            if (part.On is { Count: > 0 } kinds ? kinds.Contains(panel.Kind, StringComparer.OrdinalIgnoreCase) : panel.Role == PanelRole.Panel)
                thickest = Math.Max(thickest, caliper(part));
        }

        return thickest;
    }
}
