using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>How each kind of text of a style sheet is set.</summary>
internal sealed class Looks
{
    private readonly TextLook[] _headings;

    public Looks(StyleSheet styles)
    {
        var (scale, palette) = (styles.Scale, styles.Palette);
        var body = scale.Leading * TextStyle.Point;
        // Smaller text keeps the proportion of size to leading; larger text needs less of it.
        var ratio = scale.Leading / scale.Body;
        Body = new TextLook(styles.Text, scale.Body, body, palette.Text);
        Lead = new TextLook(styles.Text, scale.Lead, scale.Lead * Math.Min(ratio, 1.34) * TextStyle.Point, palette.Text);
        Small = new TextLook(styles.Text, scale.Small, scale.Small * Math.Min(ratio, 1.32) * TextStyle.Point, palette.Text);
        Caption = Small with { Colour = palette.Muted };
        Table = new TextLook(styles.Text, scale.Table, scale.Table * Math.Min(ratio, 1.3) * TextStyle.Point, palette.Text);
        TableHead = Table with { Base = Emphasis.Bold, Colour = palette.Heading };
        TableCaption = Table with { Base = Emphasis.Bold, Colour = palette.Heading };
        Numbers = Table with { Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures };
        NumbersHead = TableHead with { Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures };
        Literal = Body with { Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures | FontFeatures.NoLigatures };
        CalloutTitle = Body with { Base = Emphasis.Bold, Colour = palette.Heading };
        Overline = new TextLook(styles.Text, scale.Small * 1.08, scale.Small * 1.5 * TextStyle.Point, palette.Accent, Emphasis.Bold,
            FontFeatures.LiningFigures | FontFeatures.SmallCapitals | FontFeatures.NoLigatures)
        {
            Tracking = 0.09,
        };
        RunningHead = new TextLook(styles.Text, scale.Small, scale.Small * ratio * TextStyle.Point, palette.Muted);
        PageNumber = RunningHead with { Features = FontFeatures.LiningFigures | FontFeatures.TabularFigures };
        _headings =
        [
            Heading(styles, scale.Heading1, 1.14),
            Heading(styles, scale.Heading2, 1.18),
            Heading(styles, scale.Heading3, 1.22),
            Body with { Base = Emphasis.Bold, Colour = palette.Heading },
        ];
    }

    public TextLook Body { get; }

    public TextLook Lead { get; }

    public TextLook Small { get; }

    public TextLook Caption { get; }

    public TextLook Table { get; }

    public TextLook TableHead { get; }

    public TextLook TableCaption { get; }

    /// <summary>Cells of a column of numbers.</summary>
    public TextLook Numbers { get; }

    public TextLook NumbersHead { get; }

    public TextLook Literal { get; }

    public TextLook CalloutTitle { get; }

    public TextLook Overline { get; }

    public TextLook RunningHead { get; }

    public TextLook PageNumber { get; }

    /// <summary>The look of headings of a level from 1 to 4.</summary>
    public TextLook OfHeading(int level) => _headings[Math.Clamp(level, 1, _headings.Length) - 1];

    private static TextLook Heading(StyleSheet styles, double size, double leading) =>
        new(styles.Display, size, size * leading * TextStyle.Point, styles.Palette.Heading, Emphasis.Bold);
}
