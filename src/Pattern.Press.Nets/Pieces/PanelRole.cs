namespace Pattern.Press.Nets;

/// <summary>What a panel does in the finished thing.</summary>
public enum PanelRole
{
    /// <summary>A face that stays in sight or carries the thing: a floor, a wall, a lid top.</summary>
    Panel,

    /// <summary>A panel that takes glue.</summary>
    Tab,

    /// <summary>A panel that folds away between two walls.</summary>
    Gusset,
}
