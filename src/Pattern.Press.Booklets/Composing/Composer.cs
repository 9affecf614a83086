using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Composes a booklet: its parts, in their order. Parts that do not depend on the paper are composed once for all papers.</summary>
internal sealed class Composer
{
    private readonly BookletContext _context;
    private readonly ValueText _values;
    private readonly PhraseFigureWords _words;
    private readonly MarkdownOptions _options;
    private readonly FinishedFigure _solid;
    private readonly ModelBindings _bindings;

    private Composer(BookletContext context)
    {
        _context = context;
        _values = new ValueText(context.Primary.Kit.Ruler, context.Secondary.Kit.Ruler, context.Phrases);
        _words = new PhraseFigureWords(context.Phrases);
        _options = BookletLinks.Options(context.Source, context.Phrases);
        _solid = new FinishedFigure(context, _values);
        _bindings = new ModelBindings(context, _values, new FigureMaker(context, _values, _words, _solid, _options));
    }

    /// <summary>Composes the booklet for each of its papers.</summary>
    /// <param name="context">What it is composed from.</param>
    /// <param name="problems">Where what is wrong in the words goes.</param>
    public static IReadOnlyList<ComposedBook> Compose(BookletContext context, Problems problems) => new Composer(context).Compose(problems);

    private List<ComposedBook> Compose(Problems problems)
    {
        var papers = _context.Source.Papers;
        var tasks = Parts()
            .Where(part => part.Part is not { } named || !_context.Source.Without.Contains(named))
            .SelectMany(part => part.OnPaper is null ? [(Part: part, Paper: null)] : papers.Distinct().Select(paper => (Part: part, Paper: (PaperSize?)paper)))
            .ToList();
        var made = AtOnce.Select(tasks, task =>
        {
            var found = new Problems();
            var words = new MakersWords(_context.Source, _bindings, _options, found);
            return (task.Paper, Part: task.Paper is { } paper ? task.Part.OnPaper!(paper, words, found) : task.Part.OnAny!(words, found), Found: found);
        });
        problems.AddRange(made.SelectMany(one => one.Found.All));
        return
        [
            .. papers.Select(paper => new ComposedBook(
                paper,
                PaperFit.On(_context.Styles, paper),
                Book(paper, [.. made.Where(one => one.Paper is null || one.Paper == paper).Select(one => one.Part).OfType<BookPart>()], problems))),
        ];
    }

    // Without a name are parts that cannot be left out.
    private IEnumerable<(BookletPart? Part, Func<MakersWords, Problems, BookPart?>? OnAny, Func<PaperSize, MakersWords, Problems, BookPart?>? OnPaper)> Parts()
    {
        yield return (BookletPart.Cover, null, (paper, _, problems) => new CoverPage(On(paper), _values, _solid, paper, problems).Compose(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres));
        yield return (null, (_, problems) => IntroductionPart.Compose(_context, _bindings, _options, problems), null);
        yield return (BookletPart.Before, null, (paper, words, _) => BeforePart.Compose(_context, _values, words, paper));
        yield return (BookletPart.Materials, (words, _) => MaterialsPart.Compose(_context, _values, words), null);
        yield return (BookletPart.Measurements, (_, _) => MeasurementsPart.Compose(_context, _values), null);
        yield return (BookletPart.Scoring, (_, _) => ScoringPart.Compose(_context, _values, _words), null);
        if (!_context.IsForSeveral)
            yield return (BookletPart.Sheets, (_, _) => SheetsPart.Compose(_context, _values), null);
        yield return (BookletPart.Steps, (words, problems) => StepsPart.Compose(_context, _bindings, words, _options, problems), null);
        yield return (BookletPart.Templates, null, (paper, _, problems) => TemplatesPart.Compose(On(paper), _words, paper, problems));
        yield return (BookletPart.Key, (_, _) => KeyPart.Compose(_context, _words), null);
        yield return (BookletPart.Licence, (words, _) => LicencePart.Compose(_context, words), null);
        yield return (BookletPart.Proofs, (_, _) => ProofsPart.Compose(_context, _values), null);
        if (_context.IsForSeveral)
        {
            yield return (BookletPart.Class, (words, _) => ClassPart.Compose(_context, _values, words), null);
            yield return (BookletPart.Sheets, (_, _) => SheetsPart.Compose(_context, _values), null);
        }
    }

    private BookletContext On(PaperSize paper) => _context with { Styles = PaperFit.On(_context.Styles, paper) };

    private Book Book(PaperSize paper, IReadOnlyList<BookPart> parts, Problems problems)
    {
        var source = _context.Source;
        var written = Whereabouts.In(source);

        // Figures that links lead to may stand in a step that could not be read.
        return new Book
        {
            Title = source.Title,
            Author = source.Maker,
            Subject = source.Subtitle,
            Language = source.Language,
            Date = source.Date,
            RunningTitle = source.Title,
            Paper = (paper.Size.Width.Millimetres, paper.Size.Height.Millimetres),
            Parts = Numbering.Apply(parts, _context.Phrases, source.Steps, source.UnreadSteps.Count > 0 ? new Problems() : problems, link => written.Find(link)),
        };
    }
}

/// <summary>A booklet composed for one paper.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Styles">The look, fitted to it.</param>
/// <param name="Book">What is to be laid out.</param>
internal sealed record ComposedBook(PaperSize Paper, StyleSheet Styles, Book Book);
