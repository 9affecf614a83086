using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>What trials found out about blocks in columns of a width, with figures of a scale.</summary>
/// <typeparam name="T">What they found.</typeparam>
/// <param name="everyPass">What is the same in every pass over the book, if not all is; shared by the passes.</param>
internal sealed class Remembered<T>(Remembered<T>? everyPass = null)
{
    private readonly Dictionary<Key, T> _known = [];

    /// <summary>What is known of a block, or what a trial finds.</summary>
    /// <param name="block">The block.</param>
    /// <param name="column">The column it would stand in.</param>
    /// <param name="find">The trial.</param>
    public T Get(Block block, Column column, Func<T> find)
    {
        var key = new Key(block, column.FigureScale, column.Width, column.MostFigureHeight);
        if (_known.TryGetValue(key, out var known) || (everyPass is not null && everyPass._known.TryGetValue(key, out known)))
            return known;
        var asked = column.Session.LabelsAskedFor;
        var found = find();

        // Numbers of pages change from pass to pass, and with them lines and heights.
        var isTheSame = everyPass is not null && column.Session.LabelsAskedFor == asked;
        (isTheSame ? everyPass!._known : _known)[key] = found;
        return found;
    }

    /// <summary>Forgets everything.</summary>
    public void Clear() => _known.Clear();

    // A block is itself alone: comparing all it holds would take longer than the trial.
    private readonly record struct Key(Block Block, FigureScale Scale, double Width, double? MostFigureHeight)
    {
        public bool Equals(Key other) =>
            ReferenceEquals(Block, other.Block) && Scale == other.Scale && Width.Equals(other.Width) && MostFigureHeight.Equals(other.MostFigureHeight);

        public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Block), Scale, Width);
    }
}
