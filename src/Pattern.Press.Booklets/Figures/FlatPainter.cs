using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>Draws one <see cref="FlatDrawing"/>.</summary>
internal sealed class FlatPainter
{
    public const double GlueSpacing = 1.8;
    private const double Least = 6.5;
    private const double LeastDimension = 7.5;
    private const double Edge = 1.2;
    private const double LeaderRoom = 5;
    private const double MostForLeaders = 0.25;
    private readonly FlatDrawing _drawing;
    private readonly Piece _piece;
    private readonly StyleSheet _styles;
    private readonly FigureShow _show;
    private RunningDimension[] _running = [];
    private readonly SpanDimension[] _spans;
    private readonly FlatLegend? _legend;
    private readonly HashSet<Panel> _emphasised = new(ReferenceEqualityComparer.Instance);
    private Box _bounds;
    private bool _leads = true;
    private int _kinds;
    private int _labelled;
    private readonly Dictionary<string, (string Name, Shape Shape)> _matted = new(StringComparer.Ordinal);

    public FlatPainter(FlatDrawing drawing, StyleSheet styles)
    {
        (_drawing, _piece, _styles, _show) = (drawing, drawing.Piece, styles, drawing.Show);
        foreach (var name in drawing.Emphasise)
            _emphasised.UnionWith(_piece.Panels.Where(panel => name.Equals(panel.Kind, StringComparison.OrdinalIgnoreCase) || name.Equals(panel.Name, StringComparison.OrdinalIgnoreCase)));
        var (face, size, language) = (styles.Text.Regular, DimensionSize, styles.Language);
        _spans = _show == FigureShow.Sheet
            ? [.. new[] { true, false }.Select(top => new SpanDimension(drawing.Side(top), top, face, size, language))]
            : [];
        if (_show is FigureShow.Folds or FigureShow.Glue)
            _legend = new FlatLegend(_piece, _show, drawing.Words, styles);
    }

    private double DimensionSize => Math.Max(LeastDimension, _styles.Scale.Drawing);

    // The sheet is still whole until its waste is cut away.
    // More lettered points than this, and letters of the usual size find no room.
    private const int ManyPoints = 16;

    private bool WithWaste => _show is FigureShow.Flat or FigureShow.Sheet or FigureShow.Scores or FigureShow.Diagonals or FigureShow.Waste;

    public DrawnFigure Draw(double maxWidth, double maxHeight)
    {
        // Lettering that finds no room inside the piece is led out to its right, which takes width and so may push out more.
        // Where that would shrink the drawing too far, its caption has to do.
        double leaders = 0;
        for (var pass = 0; pass < 3; pass++)
        {
            var figure = Draw(maxWidth, maxHeight, leaders, out var needed);
            if (needed <= leaders)
                return figure;
            leaders = needed;
            if (leaders > maxWidth * MostForLeaders)
                break;
        }

        _leads = false;
        return Draw(maxWidth, maxHeight, 0, out _);
    }

    private DrawnFigure Draw(double maxWidth, double maxHeight, double leaders, out double leadersNeeded)
    {
        var (width, height) = (_piece.Sheet.Width.Millimetres, _piece.Sheet.Height.Millimetres);
        _running = [.. new[] { true, false }.Select(across =>
            new RunningDimension(_drawing.Stations(across), across, _styles.Text.Regular, DimensionSize, _styles.Language))];
        var (top, left) = (_running[0], _running[1]);
        double scale = 1, marginLeft = 0, marginTop = 0, marginRight = 0, marginBottom = 0;
        for (var pass = 0; pass < 5; pass++)
        {
            marginLeft = Math.Max(Edge, Math.Max(left.Depth, _spans.Length > 0 ? _spans[1].Depth : 0));
            marginTop = Math.Max(Edge, Math.Max(top.Depth, _spans.Length > 0 ? _spans[0].Depth : 0));
            marginRight = Math.Max(Edge, Math.Max(top.PastEnd(width * scale), leaders));
            marginBottom = Math.Max(Edge, left.PastEnd(height * scale)) + (_legend?.Height ?? 0);
            scale = Math.Min(1, Math.Min((maxWidth - marginLeft - marginRight) / width, (maxHeight - marginTop - marginBottom) / height));
            scale = Math.Max(scale, 0.01);
            top.Choose(scale, -marginLeft, (width * scale) + marginRight);
            left.Choose(scale, -2, (height * scale) + marginBottom - (_legend?.Height ?? 0));
        }

        var placing = new Placing(scale, marginLeft, marginTop);
        var total = Math.Max(marginLeft + (width * scale) + marginRight, (_legend?.Width ?? 0) + marginLeft);
        var drawnHeight = marginTop + (height * scale) + marginBottom;
        _bounds = new Box(0, 0, total, drawnHeight);
        // Layout tries a figure in many places and draws it in one.
        var tried = new Lazy<(double Leaders, double Crowding)>(() => Board.Try(board => (Begin(board, placing), Crowding)));
        leadersNeeded = MayLeadOut ? tried.Value.Leaders : 0;
        return new DrawnFigure(total, drawnHeight, () => Finish(placing), () => tried.Value.Crowding);
    }

    // Of what was drawn last.
    private double Crowding => _running[0].IsTurned ? 1 : _kinds == 0 ? 0 : 1 - ((double)_labelled / _kinds);

    // Whether lettering may find no room inside the piece, so that the drawing's width depends on it.
    private bool MayLeadOut => _leads && _show != FigureShow.Sheet && _piece.Panels.Any(IsSubject);

    // What its size may depend on; the width that labels led out to the right would need beyond what they have.
    private double Begin(Board board, Placing placing)
    {
        DrawGrounds(board, placing);
        DrawLines(board, placing);
        foreach (var dimension in _running)
            dimension.Draw(board, placing.X, placing.Y, placing.Scale, _styles);
        foreach (var span in _spans)
            span.Draw(board, placing.X, placing.Y, placing.Scale, _styles);
        if (_show is FigureShow.Diagonals or FigureShow.Flat)
            DrawLetters(board, placing);
        return Labelled(board, placing, placing.X + (_piece.Sheet.Width.Millimetres * placing.Scale));
    }

    // What comes into the drawing without changing its size.
    private IReadOnlyList<PageItem> Finish(Placing placing)
    {
        var board = new Board();
        Begin(board, placing);
        if (_show == FigureShow.Folds)
            new FoldWords(_drawing.Words, _styles).DrawFlat(board, placing, _piece);
        DrawHatching(board, placing);
        _legend?.Draw(board, placing.X, placing.Y + (_piece.Sheet.Height.Millimetres * placing.Scale) + Edge);
        return board.Items;
    }

    private void DrawGrounds(Board board, Placing placing)
    {
        var lines = _styles.Lines;
        if (board.IsTrial && _show != FigureShow.Mats)
            return;
        var card = WithWaste && _show != FigureShow.Flat ? Sheet(placing) : Shape.Of(_piece.Outline, placing);
        board.Ground(card, lines.Card);
        foreach (var panel in _piece.Panels.Where(IsEmphasised))
            board.Ground(Shape.Of(panel.Outline, placing), lines.CardAway);
        if (_show != FigureShow.Mats)
            return;
        foreach (var mat in MatPlacing.On(_piece, _drawing.Parts).Where(mat => mat.Side == SheetSide.Facing))
        {
            var shape = new Shape([.. mat.Corners.Select(placing.Put)]);
            board.Ground(shape, lines.CardAway);
            foreach (var side in shape.Sides)
                board.Line(side, new Stroke(lines.Cut, lines.ThinWidth));
            _matted[mat.Panel.Name] = (mat.Part.Piece.Name, shape);
        }
    }

    private void DrawLines(Board board, Placing placing)
    {
        var lines = _styles.Lines;
        var outline = new Stroke(lines.Cut, lines.FoldWidth);
        var faded = new Stroke(lines.Faded, lines.ThinWidth);
        if (WithWaste)
        {
            // The cuts lie over the sheet's edge where they coincide.
            var sheet = Sheet(placing);
            board.Mark(sheet, _show == FigureShow.Sheet ? lines.CutStroke : _show == FigureShow.Flat ? faded : outline);
            board.Room.Add(sheet.Sides);
        }

        // Nothing is on it yet.
        if (_show == FigureShow.Sheet)
            return;
        foreach (var run in FoldRun.Of(_piece))
        {
            var full = run.Direction == FoldDirection.Valley ? lines.ValleyStroke : lines.MountainStroke;
            var line = placing.Put(run.From, run.To);
            if (board.IsTrial)
            {
                board.Room.Add(line);
                continue;
            }

            full = DrawingStrokes.ForLength(full, line.Length);
            board.Line(line, IsShown(run) ? full : full with { Colour = lines.Faded, Width = lines.ThinWidth });
        }

        foreach (var cut in _piece.Cuts)
        {
            var atSide = IsAtSide(cut);
            if (atSide && WithWaste && _show != FigureShow.Flat)
                continue;
            var stroke = _show switch
            {
                FigureShow.Flat or FigureShow.Waste => lines.CutStroke,
                _ when WithWaste => faded,
                _ => outline,
            };
            if (!cut.IsArc)
            {
                board.Line(placing.Put(cut.From, cut.To), stroke);
                continue;
            }

            var points = Shape.Line(cut);
            for (var i = 1; i < points.Count; i++)
                board.Line(placing.Put(points[i - 1], points[i]), stroke);
        }
    }

    private void DrawHatching(Board board, Placing placing)
    {
        var lines = _styles.Lines;
        var spared = board.Room.Taken.Select(box => box.Grown(0.5)).ToArray();
        var origin = placing.Put(new Point(0, 0));
        if (_show is FigureShow.Flat or FigureShow.Waste)
        {
            var stroke = new Stroke(lines.Waste, lines.ThinWidth);
            foreach (var waste in _piece.Waste)
            {
                Shape[] loops = [Shape.Of(waste.Outline, placing), .. waste.Holes.Select(hole => Shape.Of(hole, placing))];
                Hatch(board, loops, 2.4, [true, false], spared, origin, stroke);
            }
        }

        if (_show is FigureShow.Flat or FigureShow.Glue)
        {
            foreach (var glue in _piece.GlueAreas)
                Hatch(board, [Shape.Of(glue.Outline, placing)], GlueSpacing, [true], spared, origin, DrawingStrokes.Glue(lines, glue.Side));
        }
    }

    private static void Hatch(Board board, IReadOnlyList<Shape> loops, double spacing, bool[] ways, IReadOnlyList<Box> spared, Point origin, Stroke stroke)
    {
        foreach (var way in ways)
        {
            if (Hatching.Fill(loops, spacing, way, spared, origin) is { } path)
                board.Mark(path, stroke);
        }
    }

    // The width that labels led out to the right would need beyond what they have.
    private double Labelled(Board board, Placing placing, double rightSide)
    {
        if (_show == FigureShow.Sheet)
        {
            TryInside(board, Sheet(placing), _piece.Name, _styles.Palette.Muted, false);
            return 0;
        }

        if (_show == FigureShow.Waste)
        {
            foreach (var waste in _piece.Waste.Where(waste => waste.Holes.Count == 0))
                TryInside(board, Shape.Of(waste.Outline, placing), _drawing.Words.Say("drawing.waste"), _styles.Palette.Text, false);
        }

        var done = new HashSet<string>(StringComparer.Ordinal);
        var crowded = new List<(Panel Panel, string Text)>();
        foreach (var panel in _piece.Panels)
        {
            var text = panel.Kind;
            var colour = IsSubject(panel) ? _styles.Palette.Text : _styles.Palette.Muted;
            var room = Shape.Of(panel.Outline, placing);
            if (_matted.TryGetValue(panel.Name, out var mat))
                (text, room, colour) = (mat.Name, mat.Shape, _styles.Palette.Text);
            if (TryInside(board, room, text, colour, IsEmphasised(panel)))
                done.Add(text);
            else
                crowded.Add((panel, text));
        }

        _labelled = done.Count;
        _kinds = crowded.Select(item => item.Text).Concat(done).Distinct(StringComparer.Ordinal).Count();
        return LeadOut(board, placing, rightSide, [.. crowded.Where(item => IsSubject(item.Panel) && !done.Contains(item.Text))]);
    }

    private bool TryInside(Board board, Shape shape, string text, Colour colour, bool bold)
    {
        if (PanelLabel.Find(board.Room, shape, text, _styles, bold) is not { } found)
            return false;
        board.Write(found.Label, found.At.X, found.At.Y, colour);
        return true;
    }

    // One label for each kind, in a column right of the piece, each beside the highest free panel of its kind near that
    // side; the leaders run level and then down to a dot in the panel.
    private double LeadOut(Board board, Placing placing, double rightSide, IReadOnlyList<(Panel Panel, string Text)> crowded)
    {
        if (crowded.Count == 0 || !_leads)
            return 0;
        var lines = _styles.Lines;
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        var items = crowded
            .GroupBy(item => item.Text, StringComparer.Ordinal)
            .Select(group => (Text: group.Key, Panels: group.Select(item => Shape.Of(item.Panel.Outline, placing).Middle).OrderByDescending(p => p.X).ThenBy(p => p.Y).ToArray()))
            .OrderBy(item => item.Panels[0].Y)
            .ToArray();
        double needed = 0;
        var low = 0.0;
        foreach (var (text, panels) in items)
        {
            var label = Label.Of(text, null, _styles.Text.Regular, Math.Max(Least, _styles.Scale.Drawing), _styles.Language);
            var x = rightSide + LeaderRoom + (label.Width / 2);
            if (panels.Select(at => Leader(board, at, label, x, low)).FirstOrDefault(found => found is not null) is not { } leader)
                continue;
            needed = Math.Max(needed, label.Width + LeaderRoom + Edge);
            low = leader.To.Y + (label.Height / 2);
            board.Dot(leader.From, 0.45, lines.Dimension);
            board.Line(leader, thin);
            board.Write(label, x, leader.To.Y, _styles.Palette.Text, LabelSide.Left);
        }

        return needed;
    }

    // As level as other lettering lets it; null where there is no way through, or only below the figure.
    private Segment? Leader(Board board, Point at, Label label, double x, double low)
    {
        var y = Math.Max(at.Y, low + (label.Height / 2) + 0.8);
        for (var tries = 0; tries < 25 && y + (label.Height / 2) <= _bounds.Bottom; tries++, y++)
        {
            var leader = new Segment(at, new Point(x - (label.Width / 2) - 0.8, y));
            if (board.Room.IsClear(leader) && board.Room.IsFree(label.BoxAt(x, y)))
                return leader;
        }

        return null;
    }

    private void DrawLetters(Board board, Placing placing)
    {
        // Where there are many, they are small.
        var points = Diagonals.Points(_piece);
        var many = points.Count > ManyPoints;
        foreach (var (_, at, _) in points)
        {
            var point = placing.Put(at);
            var radius = many ? 0.45 : 0.7;
            board.Dot(point, radius, _styles.Lines.Cut);
            board.Room.Take(Box.Around(point.X, point.Y, 2 * radius, 2 * radius));
        }

        foreach (var (letter, at, beside) in points)
            WriteNear(board, placing.Put(at), placing.Put(beside), letter, _styles.Scale.Drawing + (many ? -1 : 1));
    }

    // Straight on from the line is best; then ever further round the point, then further away; always inside the figure.
    private void WriteNear(Board board, Point point, Point other, string letter, double size)
    {
        var label = Label.Of(letter, null, _styles.Text.Bold, size, _styles.Language);
        var away = Math.Atan2(point.Y - other.Y, point.X - other.X);
        foreach (var distance in new[] { 2.4, 3, 3.8, 5 })
        {
            for (var i = 0; i < 24; i++)
            {
                var angle = away + ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * Math.PI / 12);
                var at = point + new Point(distance * Math.Cos(angle), distance * Math.Sin(angle));
                var box = label.BoxAt(at.X, at.Y);
                if (!_bounds.Holds(box) || !board.Room.IsFree(box.Grown(0.25)))
                    continue;
                board.Write(label, at.X, at.Y, _styles.Palette.Text);
                return;
            }
        }
    }

    private Shape Sheet(Placing placing)
    {
        var (from, to) = (placing.Put(new Point(0, 0)), placing.Put(new Point(_piece.Sheet.Width, _piece.Sheet.Height)));
        return Shape.Of(new Box(from.X, from.Y, to.X, to.Y));
    }

    private bool IsAtSide(Edge cut) => !cut.IsArc && (
        (cut.From.X == cut.To.X && (cut.From.X < 1e-6 || cut.From.X > _piece.Sheet.Width.Millimetres - 1e-6)) ||
        (cut.From.Y == cut.To.Y && (cut.From.Y < 1e-6 || cut.From.Y > _piece.Sheet.Height.Millimetres - 1e-6)));

    private bool IsShown(FoldRun run) => _show switch
    {
        FigureShow.Flat or FigureShow.Folds => true,
        FigureShow.Scores => !run.IsDiagonal,
        FigureShow.Diagonals => run.IsDiagonal,
        _ => false,
    };

    private bool IsSubject(Panel panel) => IsEmphasised(panel) || _show switch
    {
        FigureShow.Flat or FigureShow.Folds => true,
        FigureShow.Glue => _piece.GlueAreas.Any(area => area.Panel == panel.Name),
        _ => false,
    };

    private bool IsEmphasised(Panel panel) => _emphasised.Contains(panel);
}
