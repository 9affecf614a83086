using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Makes the figures that the content asks for, from the pieces of the two fits.</summary>
internal sealed class FigureMaker(BookletContext context, ValueText values, IFigureWords words, FinishedFigure solid, MarkdownOptions captions)
{
    /// <summary>A figure with its caption and its alternative text, or null after noting what is wrong.</summary>
    public Block? Make(FigureSource figure, Problems problems)
    {
        if (figure.Show == FigureShow.Finished)
        {
            var finished = solid.Finished();
            return Block(figure, finished, solid.Describe(finished), problems);
        }

        if (Whole(figure.Show) is { } shown)
        {
            var drawn = solid.Finished(shown);
            return Block(figure, drawn, solid.Describe(drawn), problems);
        }

        var part = Find(context.Primary.Kit, figure.Subject);
        if (figure.Show == FigureShow.Insert && (part is not null || figure.Subject == Assembly.Item))
            return Insert(figure, problems);
        if (part is null)
        {
            UnknownPiece.Refuse(figure.Subject, figure.Place, [.. context.Primary.Kit.Parts.Select(one => one.Piece.Id)], problems);
            return null;
        }

        var kinds = part.Piece.Panels.Select(panel => panel.Kind).Distinct(StringComparer.Ordinal).ToList();
        foreach (var kind in figure.Emphasise.Where(kind => !kinds.Contains(kind)))
            problems.Error(figure.Place, $"“{figure.Subject}” has no “{kind}”.", Spelling.Advice(kind, kinds));

        if (figure.Show == FigureShow.Folded)
        {
            var folded = solid.Folded(part.Piece, figure.Folded, figure.HasMats);
            return Block(figure, folded, solid.Describe(folded), problems);
        }

        // A step that glues shows its seams closing, where the model knows which; else where the glue goes.
        if (figure is { Show: FigureShow.Glue, IsByKind: true } && solid.Gluing(part.Piece, []) is { } closing)
            return Gluing(figure with { Show = FigureShow.Gluing }, closing, problems);

        if (figure.Show == FigureShow.Gluing)
            return Gluing(figure, part.Piece, problems);

        if (figure.Show == FigureShow.Mats && solid.WithOutsideMats(part.Piece) is { } matted)
            return Block(figure, matted, solid.Describe(matted, words), problems);

        var drawing = new FlatDrawing
        {
            Piece = part.Piece,
            Ruler = context.Primary.Kit.Ruler,
            Other = Find(context.Secondary.Kit, figure.Subject)?.Piece,
            OtherRuler = context.Secondary.Kit.Ruler,
            Show = figure.Show,
            Emphasise = figure.Emphasise,
            Parts = context.Primary.Kit.Parts,
            OtherParts = context.Secondary.Kit.Parts,
            Words = words,
        };
        return Block(figure, drawing, AlternativeText.Of(drawing), problems);
    }

    private static FinishedShow? Whole(FigureShow show) => show switch
    {
        FigureShow.Closed => FinishedShow.Closed,
        FigureShow.Open => FinishedShow.Opened,
        FigureShow.Exploded => FinishedShow.Apart,
        _ => null,
    };

    private FigureBlock? Insert(FigureSource figure, Problems problems)
    {
        if (solid.Inserting(figure.Subject) is { } drawing)
            return Block(figure, drawing, solid.DescribeInserting(figure.Subject), problems);
        problems.Error(
            figure.Place,
            figure.Subject == Assembly.Item && context.Source.Item is null
                ? "The figure shows the item going in, but the booklet names none."
                : $"“{figure.Subject}” stands by itself; it does not go on or into anything.",
            "Name a part that goes to another one, or leave the figure out.");
        return null;
    }

    private FigureBlock? Gluing(FigureSource figure, Piece piece, Problems problems)
    {
        if (solid.Gluing(piece, figure.Emphasise) is { } drawing)
            return Gluing(figure, drawing, problems);
        problems.Error(
            figure.Place,
            figure.Emphasise.Count > 0 ? $"Nothing of “{figure.Subject}” that is named here is glued to the same piece." : $"“{figure.Subject}” has no glue that is closed by itself, after the rest stands.",
            "Write “show: folded”, or “show: insert” for a piece that is glued into another one.");
        return null;
    }

    private FigureBlock Gluing(FigureSource figure, GluingDrawing drawing, Problems problems) =>
        Block(figure, drawing, solid.Describe(drawing), problems, drawing.HidesGlue ? "gluing_hidden" : null);

    private FigureBlock Block(FigureSource figure, IDrawing drawing, string alternative, Problems problems, string? said = null)
    {
        var caption = figure.Caption.Length > 0
            ? MarkdownReader.ToInlines(new MarkdownText(figure.Caption, figure.Place), context.Source.Folder, new ModelBindings(context, values, this), problems, captions)
            : context.Phrases.Inlines($"figure.{said ?? Name(figure.Show)}", Values(figure));
        return new FigureBlock(drawing, alternative, caption, FigureWidth.Medium)
        {
            Source = new BlockSource(figure.Place.File, figure.Place.Line),
            Destination = figure.Name.Length > 0 ? Numbering.FigurePrefix + figure.Name : null,
        };
    }

    private ReadOnlySpan<(string Name, IReadOnlyList<Inline> Value)> Values(FigureSource figure)
    {
        if (figure.Subject.Length == 0)
            return [];
        if (figure.Subject == Assembly.Item)
            return new (string, IReadOnlyList<Inline>)[] { ("piece", [new TextInline(context.Phrases.Format("piece.the", ("piece", context.Source.Item?.Name ?? "")))]) };
        var name = Find(context.Primary.Kit, figure.Subject)!.Piece.Name;
        return new (string, IReadOnlyList<Inline>)[] { ("piece", [new TextInline(context.Phrases.Format("piece.the", ("piece", name.ToLowerInvariant())))]) };
    }

    private static string Name(FigureShow show) => show.ToString().ToLowerInvariant();

    private static Part? Find(Kit kit, string id) => kit.Parts.FirstOrDefault(part => part.Piece.Id == id);
}
