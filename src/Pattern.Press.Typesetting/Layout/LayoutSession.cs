using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Elements;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>What one pass of layout knows and finds out.</summary>
internal sealed class LayoutSession
{
    // As wide as the number of a page in most booklets, for the first pass.
    private const string AssumedLabel = "00";

    private readonly List<LayoutProblem> _problems = [];
    private readonly List<(string Target, BlockSource? Source)> _targets = [];
    private readonly IReadOnlyDictionary<string, string> _knownLabels;
    private readonly LayoutMemory _memory;
    private readonly Dictionary<string, string> _usedLabels = new(StringComparer.Ordinal);
    private int _trials;

    public LayoutSession(Book book, StyleSheet styles, BookOutline outline, LayoutMemory memory, IReadOnlyDictionary<string, string> knownLabels)
    {
        (Book, Styles, Outline, _memory, _knownLabels) = (book, styles, outline, memory, knownLabels);
        GroupHeights = new Remembered<GroupHeight>(memory.GroupHeights);
        Arrangements = new Remembered<int>(memory.Arrangements);
        Looks = new Looks(styles);
        Painter = new TextPainter(styles.Palette.Accent, styles.Palette.Tint);
        TextWidth = book.Paper.Width - styles.Spacing.Left - styles.Spacing.Right;
        TextHeight = book.Paper.Height - styles.Spacing.Top - styles.Spacing.Bottom;
    }

    public Book Book { get; }

    public StyleSheet Styles { get; }

    public BookOutline Outline { get; }

    public TextStyles Texts => _memory.Texts;

    public Drawings Drawings => _memory.Drawings;

    /// <summary>How high groups came out in trials.</summary>
    public Remembered<GroupHeight> GroupHeights { get; }

    /// <summary>Which arrangement of text and figures was best in trials, by its number.</summary>
    public Remembered<int> Arrangements { get; }

    /// <summary>Text that trials laid out.</summary>
    public TextTrials TextTrials { get; } = new();

    public Looks Looks { get; }

    public TextPainter Painter { get; }

    /// <summary>The width of the text area, in millimetres.</summary>
    public double TextWidth { get; }

    /// <summary>The height of the text area, in millimetres.</summary>
    public double TextHeight { get; }

    public IReadOnlyList<LayoutProblem> Problems => _problems;

    /// <summary>The page numbers that lines were broken with.</summary>
    public IReadOnlyDictionary<string, string> UsedLabels => _usedLabels;

    /// <summary>Notes something that does not fit.</summary>
    /// <param name="source">Where the block came from, if that is known.</param>
    /// <param name="message">What is wrong and what to do about it.</param>
    /// <param name="words">The words it is about; empty when it is not about words.</param>
    /// <param name="room">The room there is for them; 0 when it is not about room.</param>
    public void Report(BlockSource? source, string message, string words = "", double room = 0) =>
        _problems.Add(new LayoutProblem(source, message) { Words = words, Room = room });

    /// <summary>How many problems were reported so far.</summary>
    public int ProblemCount => _problems.Count;

    /// <summary>Tries something: if it does not come to be, what it found wrong does not count either.</summary>
    public bool Try(Func<bool> layout)
    {
        var (problems, targets) = (_problems.Count, _targets.Count);
        if (layout())
            return true;
        _problems.RemoveRange(problems, _problems.Count - problems);
        _targets.RemoveRange(targets, _targets.Count - targets);
        return false;
    }

    /// <summary>Lays out something to see how it would come out, and leaves no trace of it.</summary>
    public void Measure(Action layout)
    {
        _trials++;
        Try(() =>
        {
            layout();
            return false;
        });
        _trials--;
    }

    /// <summary>Whether what is laid out now is only measured.</summary>
    public bool IsMeasuring => _trials > 0;

    /// <inheritdoc cref="LayoutMemory.EndTrials"/>
    public void EndTrials(bool wordsToo)
    {
        TextTrials.Clear();
        GroupHeights.Clear();
        Arrangements.Clear();
        _memory.EndTrials(wordsToo);
    }

    /// <summary>The number of the page of a destination as far as it is known in this pass.</summary>
    public string LabelFor(string destination)
    {
        LabelsAskedFor++;
        return _usedLabels[destination] = _knownLabels.TryGetValue(destination, out var label) && label.Length > 0 ? label : AssumedLabel;
    }

    /// <summary>How often the number of a page was asked for: what was laid out without is the same in every pass.</summary>
    public int LabelsAskedFor { get; private set; }

    /// <summary>Counts numbers of pages that were asked for when something was laid out before.</summary>
    public void CountLabels(int asked) => LabelsAskedFor += asked;

    /// <summary>A paragraph of inlines.</summary>
    /// <param name="inlines">Its words.</param>
    /// <param name="look">How it is set.</param>
    /// <param name="source">Where it came from.</param>
    public Paragraph Paragraph(IReadOnlyList<Inline> inlines, TextLook look, BlockSource? source)
    {
        NoteTargets(inlines, source);
        return new Paragraph(_memory.Paragraphs.Get(inlines, look, this));
    }

    /// <summary>Notes every link to a place that does not exist.</summary>
    /// <param name="places">The names of all places.</param>
    public void CheckTargets(IReadOnlySet<string> places)
    {
        foreach (var (target, source) in _targets)
        {
            if (!places.Contains(target))
            {
                var message = $"Something leads to “{target}”, but nothing in the booklet has that name. Correct the name, or take the link away.";
                _problems.Add(new LayoutProblem(source, message) { MissingPlace = target });
            }
        }
    }

    private void NoteTargets(IReadOnlyList<Inline> inlines, BlockSource? source)
    {
        foreach (var inline in inlines)
        {
            if (inline is LinkInline link)
            {
                if (!link.IsAddress)
                    _targets.Add((link.Target, source));
                NoteTargets(link.Content, source);
            }
            else if (inline is PageNumberInline number)
            {
                _targets.Add((number.Destination, source));
            }
        }
    }
}
