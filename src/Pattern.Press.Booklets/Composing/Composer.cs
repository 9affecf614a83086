using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Composes a booklet for one paper: its parts, in their order.</summary>
internal sealed class Composer
{
    private readonly BookletContext _context;
    private readonly PaperSize _paper;
    private readonly ValueText _values;
    private readonly PhraseFigureWords _words;
    private readonly MarkdownOptions _options;
    private readonly ModelBindings _bindings;

    public Composer(BookletContext context, PaperSize paper)
    {
        _context = context;
        _paper = paper;
        _values = new ValueText(context.Primary.Kit.Ruler, context.Secondary.Kit.Ruler, context.Phrases);
        _words = new PhraseFigureWords(context.Phrases);
        _options = new MarkdownOptions
        {
            TipTitle = context.Phrases["callout.tip"],
            CautionTitle = context.Phrases["callout.caution"],
            Destinations = Destinations(),
            Files = new SortedDictionary<string, string>(
                context.Source.Steps.ToDictionary(step => step.File, StepsPart.Destination, StringComparer.Ordinal),
                StringComparer.Ordinal),
        };
        _bindings = new ModelBindings(context, _values, new FigureMaker(context, _values, _words, _options));
    }

    /// <summary>Composes the booklet.</summary>
    /// <param name="problems">Where what is wrong in the words goes.</param>
    public Book Compose(Problems problems)
    {
        var source = _context.Source;
        var words = new MakersWords(_context, _bindings, _options, problems);
        var parts = new List<BookPart>();
        void Add(BookletPart part, Func<BookPart?> compose)
        {
            if (!source.Without.Contains(part) && compose() is { } composed)
                parts.Add(composed);
        }

        Add(BookletPart.Cover, () => new CoverPage(_context, _values, _paper, problems).Compose(Width, Height));
        if (IntroductionPart.Compose(_context, _bindings, _options, problems) is { } introduction)
            parts.Add(introduction);
        Add(BookletPart.Before, () => BeforePart.Compose(_context, _values, words, _paper));
        Add(BookletPart.Materials, () => MaterialsPart.Compose(_context, _values, words));
        Add(BookletPart.Measurements, () => MeasurementsPart.Compose(_context, _values));
        Add(BookletPart.Scoring, () => ScoringPart.Compose(_context, _values, _words));
        if (!_context.IsForSeveral)
            Add(BookletPart.Sheets, () => SheetsPart.Compose(_context, _values));
        Add(BookletPart.Steps, () => StepsPart.Compose(_context, _bindings, words, _options, problems));
        Add(BookletPart.Templates, () => TemplatesPart.Compose(_context, _words, _paper, problems));
        Add(BookletPart.Key, () => KeyPart.Compose(_context, _words));
        Add(BookletPart.Licence, () => LicencePart.Compose(_context, words));
        Add(BookletPart.Proofs, () => ProofsPart.Compose(_context, _values));
        if (_context.IsForSeveral)
        {
            Add(BookletPart.Class, () => ClassPart.Compose(_context, _values, words));
            Add(BookletPart.Sheets, () => SheetsPart.Compose(_context, _values));
        }

        return new Book
        {
            Title = source.Title,
            Author = source.Maker,
            Subject = source.Subtitle,
            Language = source.Language,
            Date = source.Date,
            RunningTitle = source.Title,
            Paper = (Width, Height),
            Parts = Numbering.Apply(parts, _context.Phrases, source.Steps, problems),
        };
    }

    private double Width => _paper.Size.Width.Millimetres;

    private double Height => _paper.Size.Height.Millimetres;

    private List<string> Destinations() =>
    [
        "cover", "introduction", "before", "print", "check-square", "materials", "measurements", "checked",
        "scoring", "sheets", "steps", "key", "proofs", "licence", "class", .. _context.Source.Steps.Select(StepsPart.Destination),
    ];
}
