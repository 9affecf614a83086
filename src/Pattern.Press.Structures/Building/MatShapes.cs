using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A shape that mats can have, called by its name under <c>shape</c>.</summary>
internal interface IMatShape
{
    /// <summary>Its name in files.</summary>
    string Name { get; }

    /// <summary>Whether it comes in mirrored pairs: yes, no, or as its faces have it.</summary>
    bool? HasHand { get; }

    /// <summary>Whether the file says how many a kit takes; else as many as there are faces.</summary>
    bool IsCounted => true;

    /// <summary>Whether the file has to say which panels it goes on.</summary>
    bool NeedsPanels => false;

    /// <summary>Reads the keys it needs from the mat's entry; null after noting problems.</summary>
    IMatForm? Read(YamlMap mat, FileReading reading);
}

/// <summary>A mat as it is cut.</summary>
/// <param name="Piece">Its shape.</param>
/// <param name="Faces">How many faces there are for it, where that follows from the piece it goes on; else null.</param>
/// <param name="Inset">How far inside its face its edge lies, in millimetres, where it has its face's shape; else null.</param>
internal sealed record BuiltMat(Piece Piece, int? Faces = null, double? Inset = null);

/// <summary>A mat's shape, with formulas in place of sizes.</summary>
internal interface IMatForm
{
    /// <summary>The lengths its size comes from; none may be less than nothing.</summary>
    IReadOnlyList<Formula> Sizes { get; }

    /// <summary>The mat for one fit.</summary>
    /// <exception cref="NetException">The sizes leave nothing of it.</exception>
    /// <exception cref="FormulaException">A formula gives nothing.</exception>
    BuiltMat Build(MatDefinition mat, Piece host, Evaluation values);
}

/// <summary>The shapes that structure files can name. A further one is a class and a line here.</summary>
internal static class MatShapes
{
    /// <summary>All of them; the first is taken when a file names none.</summary>
    public static IReadOnlyList<IMatShape> All { get; } =
    [
        new Sized("rectangle", false, ["width", "height"], (mat, sizes) => Mats.Rectangle(mat.Id, mat.Name, new Size(sizes[0], sizes[1]))),
        new Sized("mitred strip", true, ["width", "height"], (mat, sizes) => Mats.MitredStrip(mat.Id, mat.Name, new Size(sizes[0], sizes[1]), mat.Hand)),
        new RegularPolygon(),
        new Sized("trapezium", false, ["width", "height", "top"], (mat, sizes) => Mats.Trapezium(mat.Id, mat.Name, new Size(sizes[0], sizes[1]), sizes[2])),
        new Inset(),
    ];

    private static Formula? Needed(YamlMap map, string key, FileReading reading) =>
        map.Need(key, "Write a formula that gives a length.") is { } item ? reading.Formula(item, Kind.Length) : null;

    // Told by lengths alone.
    private sealed class Sized(string name, bool hasHand, string[] keys, Func<MatDefinition, IReadOnlyList<Length>, Piece> build) : IMatShape
    {
        public string Name => name;

        public bool? HasHand => hasHand;

        public IMatForm? Read(YamlMap mat, FileReading reading)
        {
            Formula?[] sizes = [.. keys.Select(key => Needed(mat, key, reading))];
            return sizes.Any(size => size is null) ? null : new Form([.. sizes.OfType<Formula>()], build);
        }

        private sealed record Form(IReadOnlyList<Formula> Sizes, Func<MatDefinition, IReadOnlyList<Length>, Piece> Make) : IMatForm
        {
            public BuiltMat Build(MatDefinition mat, Piece host, Evaluation values) =>
                new(Make(mat, [.. Sizes.Select(size => size.Evaluate(values).Length)]));
        }
    }

    // Told by one side and how many there are.
    private sealed class RegularPolygon : IMatShape
    {
        public string Name => "regular polygon";

        public bool? HasHand => false;

        public IMatForm? Read(YamlMap mat, FileReading reading)
        {
            var sides = mat.Need("sides", "Say how many sides it has: sides: 6.") is { } count ? reading.Formula(count, Kind.Number) : null;
            var width = Needed(mat, "width", reading);
            return sides is null || width is null ? null : new Form(sides, width);
        }

        private sealed record Form(Formula Sides, Formula Side) : IMatForm
        {
            public IReadOnlyList<Formula> Sizes => [Side];

            public BuiltMat Build(MatDefinition mat, Piece host, Evaluation values) =>
                new(Mats.RegularPolygon(mat.Id, mat.Name, (double)Sides.Evaluate(values).Amount, Side.Evaluate(values).Length, values.Ruler));
        }
    }

    // The shape of the face itself, less a border.
    private sealed class Inset : IMatShape
    {
        public string Name => "inset";

        public bool? HasHand => null;

        public bool IsCounted => false;

        public bool NeedsPanels => true;

        public IMatForm? Read(YamlMap mat, FileReading reading) =>
            Needed(mat, "border", reading) is { } border ? new Form(border) : null;

        private sealed record Form(Formula Border) : IMatForm
        {
            public IReadOnlyList<Formula> Sizes => [Border];

            public BuiltMat Build(MatDefinition mat, Piece host, Evaluation values)
            {
                // What the faces are is the file's own; only how wide the border is may be the maker's.
                var panels = host.Panels.Where(panel => mat.On.Contains(panel.Kind, StringComparer.OrdinalIgnoreCase)).ToList();
                if (panels.Find(panel => panel.Holes.Count > 0) is { } holed)
                    throw Wrong($"the {holed.Kind} has a hole, which a mat in its shape would cover. Give the mat a shape and a size of its own.");
                var made = InsetMat.For(mat.Id, mat.Name, host, mat.On, mat.Side, Border.Evaluate(values).Length, values.Ruler);
                if (made.FirstOrDefault(one => one != made[0] && !one.IsMirror) is { } unlike)
                    throw Wrong($"the faces it is for are not all alike: the {host.Panel(made[0].Faces[0]).Kind} and the {host.Panel(unlike.Faces[0]).Kind} need mats of their own.");
                if (made.Count == 1 && mat.Hand != Hand.Either)
                    throw Wrong("the faces it is for are all alike, so it has no hand. Take “hand” out.");
                if (made.Count == 2 && mat.Hand == Hand.Either)
                    throw Wrong("the faces it is for come in pairs that mirror each other. Write hand: left, and a second mat with hand: right.");
                var own = made[mat.Hand == Hand.Right ? 1 : 0];
                return new BuiltMat(own.Piece, own.Faces.Count, own.Border);

                FormulaException Wrong(string why) => new(mat.Place, $"“{mat.Name}” cannot be made: {why}", false);
            }
        }
    }
}
