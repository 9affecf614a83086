using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>
/// The text beside or above figures as trials laid it out in one pass: it comes out the same whatever is tried with the
/// figures, so the trials share it. None of it is ever drawn.
/// </summary>
internal sealed class TextTrials
{
    // Stands for any element: what the text is a part of does not matter either.
    private readonly StructureElement _any = new(Role.Div);
    private readonly Dictionary<Key, TriedText> _known = [];

    /// <summary>Text in a column.</summary>
    /// <param name="text">The text.</param>
    /// <param name="column">The column; where it stands on the page does not matter.</param>
    public TriedText Get(IReadOnlyList<Block> text, Column column)
    {
        var session = column.Session;
        var key = new Key(text, column with { X = 0, Parent = _any, Source = null });
        if (_known.TryGetValue(key, out var known))
        {
            session.CountLabels(known.LabelsAskedFor);
            return known;
        }

        var (asked, problems) = (session.LabelsAskedFor, session.ProblemCount);
        var strips = new StripList();
        (column with { Parent = new StructureElement(Role.Div) }).LayOut(text, strips);
        var tried = new TriedText(strips, session.ProblemCount > problems, session.LabelsAskedFor - asked);
        return _known[key] = tried;
    }

    /// <summary>Forgets everything.</summary>
    public void Clear() => _known.Clear();

    // A text is itself alone: comparing all it says would take longer than the trial.
    private readonly record struct Key(IReadOnlyList<Block> Text, Column Column)
    {
        public bool Equals(Key other) => ReferenceEquals(Text, other.Text) && Column == other.Column;

        public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(Text), Column.Width);
    }
}

/// <summary>How a trial laid out text.</summary>
/// <param name="Strips">The strips, to be measured only.</param>
/// <param name="HasProblems">Whether something in it does not fit.</param>
/// <param name="LabelsAskedFor">How often the number of a page was asked for.</param>
internal sealed record TriedText(StripList Strips, bool HasProblems, int LabelsAskedFor);
