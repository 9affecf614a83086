namespace Pattern.Press.Typesetting.Fonts;

/// <summary>Which OpenType features to ask for beside kerning and standard ligatures.</summary>
[Flags]
public enum FontFeatures
{
    /// <summary>Kerning and standard ligatures only.</summary>
    None = 0,

    /// <summary>Figures as high as capitals (lnum).</summary>
    LiningFigures = 1,

    /// <summary>Figures of equal width (tnum).</summary>
    TabularFigures = 2,

    /// <summary>The run is one fraction such as 1/4 (frac).</summary>
    Fraction = 4,

    /// <summary>Small capitals for small letters (smcp).</summary>
    SmallCapitals = 8,

    /// <summary>No ligatures: for letter-spaced text.</summary>
    NoLigatures = 16,
}
