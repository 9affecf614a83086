using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Structures.Building;

/// <summary>A shape that mats can have.</summary>
internal interface IMatShape
{
    /// <summary>Its name in files.</summary>
    string Name { get; }

    /// <summary>Whether it comes in mirrored pairs, so that its hand has to be told.</summary>
    bool HasHand { get; }

    /// <summary>Whether it is told by one side and how many there are, not by a width and a height.</summary>
    bool HasSides => false;

    /// <summary>Whether its upper side is told beside its width.</summary>
    bool HasTop => false;

    /// <summary>The mat, cut from a rectangle of a size.</summary>
    /// <exception cref="NetException">The size leaves nothing of it.</exception>
    Piece Build(string id, string name, Size size, Hand hand);
}

/// <summary>The shapes that structure files can name. A further one is a class and a line here.</summary>
internal static class MatShapes
{
    /// <summary>All of them; the first is taken when a file names none.</summary>
    public static IReadOnlyList<IMatShape> All { get; } = [new Rectangle(), new MitredStrip(), new RegularPolygon(), new Trapezium()];

    private sealed class Rectangle : IMatShape
    {
        public string Name => "rectangle";

        public bool HasHand => false;

        public Piece Build(string id, string name, Size size, Hand hand) => Mats.Rectangle(id, name, size);
    }

    private sealed class MitredStrip : IMatShape
    {
        public string Name => "mitred strip";

        public bool HasHand => true;

        public Piece Build(string id, string name, Size size, Hand hand) => Mats.MitredStrip(id, name, size, hand);
    }

    // Made from its two level sides, by the one who knows the shorter.
    private sealed class Trapezium : IMatShape
    {
        public string Name => "trapezium";

        public bool HasHand => false;

        public bool HasTop => true;

        public Piece Build(string id, string name, Size size, Hand hand) => Mats.Rectangle(id, name, size);
    }

    // Made from its sides, by the one who knows how many there are.
    private sealed class RegularPolygon : IMatShape
    {
        public string Name => "regular polygon";

        public bool HasHand => false;

        public bool HasSides => true;

        public Piece Build(string id, string name, Size size, Hand hand) => Mats.Rectangle(id, name, size);
    }
}
