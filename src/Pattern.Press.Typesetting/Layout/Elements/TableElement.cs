using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// A table: no vertical lines, a tinted header that is shown again on every page the table reaches, hairlines between
/// rows, and a stronger line and some room where a group of rows starts.
/// </summary>
internal sealed class TableElement : BlockElement<TableBlock>
{
    private const double PadSide = 2.2;
    private const double Pad = 0.9;
    private const double HeadPad = 1.1;
    private const double GroupRoom = 1.2;
    private const double CaptionGap = 1.6;
    private const double Hairline = 0.15;
    private const double GroupLine = 0.3;
    private const double HeadLine = 0.35;

    // So few rows are read at a glance, which a page turned in between would spoil.
    private const int MostRowsUndivided = 6;

    protected override void LayOut(TableBlock block, Column column, StripList strips)
    {
        if (block.Columns.Count == 0 || block.Header.Count + block.Rows.Count == 0)
            return;
        var spacing = column.Session.Styles.Spacing;
        var table = column.Parent.Add(Role.Table);
        // A sentence above a table says what it is about, as a title does.
        strips.KeepIntroduction(column.Parent);
        strips.Space(spacing.Block);
        var first = strips.Count;
        if (block.Caption.Count > 0)
        {
            (column with { MayJustify = false }).SetText(block.Caption, column.Session.Looks.TableCaption, table.Add(Role.Caption), strips);
            for (var i = first; i < strips.Count; i++)
                strips[i].Keep = Keep.Firm;
            strips.Space(CaptionGap);
        }

        new Setter(block, column, table).Set(strips);
        if (block.Rows.Count <= MostRowsUndivided)
            strips.KeepTogether(first, column.Session.TextHeight);
        strips.Space(spacing.Block);
    }

    private sealed class Setter
    {
        private readonly TableBlock _block;
        private readonly Column _column;
        private readonly StructureElement _table;
        private readonly Looks _looks;
        private readonly Palette _colours;
        private readonly double[] _widths;
        private readonly double[] _lefts;
        private readonly Dictionary<TableCell, Paragraph> _paragraphs;

        public Setter(TableBlock block, Column column, StructureElement table)
        {
            (_block, _column, _table) = (block, column, table);
            _paragraphs = new Dictionary<TableCell, Paragraph>(MostCells, ReferenceEqualityComparer.Instance);
            _looks = column.Session.Looks;
            var palette = column.Session.Styles.Palette;
            _colours = new Palette(palette.Rule, palette.Heading, palette.Tint);
            _widths = ColumnWidths.Share(block.Columns.Count, Wishes(), column.Width);
            _lefts = new double[_widths.Length];
            for (var i = 1; i < _widths.Length; i++)
                _lefts[i] = _lefts[i - 1] + _widths[i - 1];
        }

        private double Width => _lefts[^1] + _widths[^1];

        private int MostCells => (_block.Header.Count + _block.Rows.Count) * _block.Columns.Count;

        public void Set(StripList strips)
        {
            var heads = new List<Strip>();
            if (_block.Header.Count > 0)
            {
                var section = _table.Add(Role.THead);
                for (var i = 0; i < _block.Header.Count; i++)
                {
                    var strip = HeadRow(_block.Header[i], section, i == _block.Header.Count - 1);
                    heads.Add(strip);
                    strips.Add(strip);
                }
            }

            if (_block.Rows.Count == 0)
                return;
            var body = _table.Add(Role.TBody);
            for (var i = 0; i < _block.Rows.Count; i++)
                strips.Add(BodyRow(i, body, heads));
        }

        private RowStrip HeadRow(TableRow row, StructureElement section, bool last) =>
            new(Cells(row, section.Add(Role.TR), head: true), Width, _looks.TableHead, _column.Session.Painter, HeadPad, HeadPad)
            {
                X = _column.X,
                Frame = _column.Frame,
                Source = row.Source ?? _column.Source,
                Keep = _block.Rows.Count > 0 ? Keep.Always : Keep.Free,
                Ground = _colours.Tint,
                LineBelow = last ? new Stroke(_colours.Head, HeadLine) : null,
            };

        private RowStrip BodyRow(int index, StructureElement body, List<Strip> heads)
        {
            var rows = _block.Rows;
            var row = rows[index];
            var last = index == rows.Count - 1;
            var startsGroup = row.StartsGroup && index > 0;
            var groupFollows = !last && rows[index + 1].StartsGroup;
            var nextEndsGroup = index + 2 >= rows.Count || rows[index + 2].StartsGroup;
            // No row alone at the foot of a page below its head, none alone at the top of the next; a group's first row
            // and its last have company too.
            var firm = !last && (index == 0 || row.StartsGroup || (nextEndsGroup && !groupFollows));
            var line = last || groupFollows ? new Stroke(_colours.Head, last ? HeadLine : GroupLine) : new Stroke(_colours.Rule, Hairline);
            return new RowStrip(
                Cells(row, body.Add(Role.TR), head: false),
                Width,
                _looks.Table,
                _column.Session.Painter,
                Pad + (startsGroup ? GroupRoom : 0),
                Pad)
            {
                X = _column.X,
                Frame = _column.Frame,
                Source = row.Source ?? _column.Source,
                Keep = firm ? Keep.Firm : Keep.Free,
                Repeated = heads,
                LineAbove = index == 0 && heads.Count == 0 ? new Stroke(_colours.Head, HeadLine) : null,
                LineBelow = line,
                LineBelowFrom = last || groupFollows ? 0 : FirstWords(rows[index + 1]),
            };
        }

        /// <summary>
        /// Where the first words of a row start: the hairline above leaves out empty cells at its left, for they mean
        /// that what stands above them holds for this row too.
        /// </summary>
        private double FirstWords(TableRow row)
        {
            var at = 0;
            foreach (var cell in row.Cells)
            {
                if (cell.Content.Count > 0 || at + cell.ColumnSpan >= _lefts.Length)
                    break;
                at += Math.Max(1, cell.ColumnSpan);
            }

            return _lefts[at];
        }

        private List<RowCell> Cells(TableRow row, StructureElement element, bool head)
        {
            var cells = new List<RowCell>(row.Cells.Count);
            var at = 0;
            foreach (var cell in row.Cells)
            {
                var span = SpanOf(cell, at);
                if (span == 0)
                {
                    _column.Session.Report(row.Source ?? _column.Source, $"A row of the table has more cells than the table’s {_block.Columns.Count} columns. Take cells away, or add a column.");
                    break;
                }

                var left = _lefts[at] + PadSide;
                var width = -2 * PadSide;
                for (var i = at; i < at + span; i++)
                    width += _widths[i];
                var paragraph = _paragraphs[cell];
                var tag = element.Add(head || (cell.IsHeader && !paragraph.IsEmpty) ? Role.TH : Role.TD);
                tag.ColumnSpan = span;
                if (tag.Role == Role.TH)
                    tag.Scope = head ? HeaderScope.Column : HeaderScope.Row;
                if (!paragraph.IsEmpty)
                    paragraph.AttachTo(tag);
                (row.Source is null ? _column : _column with { Source = row.Source }).Check(paragraph, width);
                var share = _block.Columns[at] switch
                {
                    ColumnAlignment.Right => 1.0,
                    ColumnAlignment.Centre => 0.5,
                    _ => 0.0,
                };
                cells.Add(new RowCell(left, width, share, paragraph.Break(width, justified: false), cell));
                at += span;
            }

            // Every row has a cell for every column, as readers of tables expect.
            for (; at < _widths.Length; at++)
                element.Add(head ? Role.TH : Role.TD).Scope = head ? HeaderScope.Column : null;
            return cells;
        }

        private int SpanOf(TableCell cell, int at) => Math.Min(Math.Max(1, cell.ColumnSpan), _block.Columns.Count - at);

        private List<CellWish> Wishes()
        {
            var wishes = new List<CellWish>(MostCells);
            foreach (var row in _block.Header)
                AddWishes(row, head: true, wishes);
            foreach (var row in _block.Rows)
                AddWishes(row, head: false, wishes);
            return wishes;
        }

        private void AddWishes(TableRow row, bool head, List<CellWish> wishes)
        {
            var at = 0;
            foreach (var cell in row.Cells)
            {
                var span = SpanOf(cell, at);
                if (span == 0)
                    break;
                var numbers = _block.Columns[at] == ColumnAlignment.Right;
                var look = (head, numbers) switch
                {
                    (true, true) => _looks.NumbersHead,
                    (true, false) => _looks.TableHead,
                    (false, true) => _looks.Numbers,
                    _ => _looks.Table,
                };
                var paragraph = _column.Session.Paragraph(cell.Content, look, row.Source ?? _column.Source);
                _paragraphs[cell] = paragraph;
                if (!paragraph.IsEmpty)
                {
                    // A hair more than the words need, lest rounding break a line that fits.
                    const double hair = 0.001;
                    wishes.Add(new CellWish(at, span, paragraph.Shaped.MinWidth + (2 * PadSide) + hair, paragraph.Shaped.MaxWidth + (2 * PadSide) + hair));
                }

                at += span;
            }
        }

        private readonly record struct Palette(Colour Rule, Colour Head, Colour Tint);
    }
}
