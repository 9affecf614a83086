using Pattern.Press.Measure;

namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// Finds a plan with few sheets: rectangles in several orders, each into the free part that suits it best, the rest of
/// that part cut in one of several ways; then, while the bound is not met, orders that are shuffled a little, keeping what
/// helps; then, if the rectangles are few, every way there is. Where all quantities have a common part, as they do for
/// several kits, the same is tried for that part over and over, because sheets that are all cut alike are less work. The
/// search is the same every time.
/// </summary>
internal static class SheetPlanner
{
    // Work is counted in looks at free parts, so that the effort is the same on any machine.
    private const int ShuffleWork = 20_000;
    private const long MostLooks = 400_000;

    // What goes on so many sheets is searched; more is filled sheet by sheet.
    private const int FewSheets = 5;

    // More rectangles than this are not tried one by one.
    private const int MostItems = 200;

    // How mixed sheets are that are cut over and over.
    private static readonly double[] Shares = [1.3, 4];

    public static SheetPlan Make(IReadOnlyList<WantedRectangle> wanted, Size sheet, SheetOptions options)
    {
        var room = Room(wanted, sheet, options);
        var fitting = wanted.Where(rectangle => Fits(rectangle.Size, room, options)).ToList();
        var (parts, least) = Fewest(fitting, room, options.MayTurn);
        return new SheetPlan
        {
            Sheet = sheet,
            Options = options,
            TooLarge = TooLarge(wanted, sheet, options),
            LeastSheets = least,
            Sheets = Planned(parts, sheet, options.Trim),
        };
    }

    // Sheets that are cut over and over are the same plan every time.
    private static PlannedSheet[] Planned(List<(Packing.Part Part, IReadOnlyList<WantedRectangle> Items)> parts, Size sheet, Length trim)
    {
        var planned = new Dictionary<Packing.Part, PlannedSheet>();
        foreach (var (part, items) in parts)
        {
            if (!planned.ContainsKey(part))
                planned[part] = new SheetTree(items, sheet, trim).Planned(part);
        }

        return [.. parts.OrderByDescending(part => Used(part.Part)).Select(part => planned[part.Part])];
    }

    /// <summary>Rectangles that no sheet is large enough for.</summary>
    public static IReadOnlyList<Misfit> TooLarge(IReadOnlyList<WantedRectangle> wanted, Size sheet, SheetOptions options)
    {
        var room = Room(wanted, sheet, options);
        return [.. wanted.Where(rectangle => !Fits(rectangle.Size, room, options)).Select(rectangle => Misfit(rectangle, room, options))];
    }

    private static Size Room(IReadOnlyList<WantedRectangle> wanted, Size sheet, SheetOptions options)
    {
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(options);
        var room = new Size(sheet.Width - (options.Trim * 2), sheet.Height - (options.Trim * 2));
        if (options.Trim.IsNegative || room.Shorter <= Length.Zero)
            throw new ArgumentException($"Nothing is left of a sheet of {sheet} when {options.Trim} is trimmed off all round.", nameof(options));
        foreach (var rectangle in wanted)
        {
            if (rectangle.Size.Shorter <= Length.Zero || rectangle.Quantity < 1)
                throw new ArgumentException($"“{rectangle.Name}” is {rectangle.Size}, quantity {rectangle.Quantity}; all three are above 0.", nameof(wanted));
        }

        return room;
    }

    private static (List<(Packing.Part Part, IReadOnlyList<WantedRectangle> Items)> Parts, int Least) Fewest(List<WantedRectangle> wanted, Size room, bool mayTurn)
    {
        if (wanted.Count == 0)
            return ([], 0);
        var (width, height) = (room.Width.Nanometres, room.Height.Nanometres);
        var bound = SheetBound.Of(Sides(Repeated(wanted, 1)), width, height, mayTurn);
        var common = wanted.Select(rectangle => rectangle.Quantity).Aggregate(CommonDivisor);
        (List<Packing.Part> Sheets, IReadOnlyList<WantedRectangle> Items, int Times)? best = null;
        var ways = Enumerable.Range(1, common).Where(times => common % times == 0).Reverse().ToList();
        foreach (var times in ways)
        {
            var items = Repeated(wanted, times);
            var sides = Sides(items);
            var part = times == 1 ? bound : SheetBound.Of(sides, width, height, mayTurn);
            if (best is { } found && (part * times >= found.Sheets.Count * found.Times || items.Count > MostItems))
                continue;
            var sheets = Search(sides, room, mayTurn, part, MostLooks / ways.Count, out var proven);
            if (best is null || sheets.Count * times < best.Value.Sheets.Count * best.Value.Times)
                best = (sheets, items, times);
            if (proven && times == 1)
                bound = sheets.Count;
            if (best.Value.Sheets.Count * best.Value.Times <= bound)
                break;
        }

        foreach (var share in Shares)
        {
            if (best!.Value.Sheets.Count * best.Value.Times <= Math.Max(bound, FewSheets))
                break;
            var sheets = Repeating(wanted, room, mayTurn, share);
            if (sheets.Count < best.Value.Sheets.Count * best.Value.Times)
                best = (sheets, wanted, 1);
        }

        var (chosen, named, repeats) = best!.Value;
        return ([.. chosen.SelectMany(part => Enumerable.Repeat((part, named), repeats))], bound);
    }

    private static List<Packing.Part> Repeating(List<WantedRectangle> wanted, Size room, bool mayTurn, double share)
    {
        var kinds = Sides(wanted);
        var counts = wanted.Select(rectangle => rectangle.Quantity).ToArray();
        var sheets = RepeatedSheets.Fill(kinds, counts, room.Width.Nanometres, room.Height.Nanometres, mayTurn, share, FewSheets)
            .SelectMany(sheet => Enumerable.Repeat(sheet.Sheet, sheet.Times)).ToList();
        var rest = Enumerable.Range(0, kinds.Count).SelectMany(kind => Enumerable.Repeat(kind, counts[kind])).ToList();
        if (rest.Count == 0)
            return sheets;
        List<(long Width, long Height)> left = [.. rest.Select(kind => kinds[kind])];
        var bound = SheetBound.Of(left, room.Width.Nanometres, room.Height.Nanometres, mayTurn);
        foreach (var sheet in Search(left, room, mayTurn, bound, MostLooks / 4, out _))
        {
            Name(sheet);
            sheets.Add(sheet);
        }

        return sheets;

        void Name(Packing.Part part)
        {
            if (part.Item >= 0)
                part.Item = rest[part.Item];
            if (part.First is null)
                return;
            Name(part.First);
            Name(part.Second!);
        }
    }

    private static IReadOnlyList<WantedRectangle> Repeated(List<WantedRectangle> wanted, int times) =>
        [.. wanted.SelectMany(rectangle => Enumerable.Repeat(rectangle, rectangle.Quantity / times))];

    private static List<(long Width, long Height)> Sides(IReadOnlyList<WantedRectangle> items) =>
        [.. items.Select(rectangle => (rectangle.Size.Width.Nanometres, rectangle.Size.Height.Nanometres))];

    private static int CommonDivisor(int a, int b) => b == 0 ? a : CommonDivisor(b, a % b);

    private static bool Fits(Size size, Size room, SheetOptions options) =>
        (size.Width <= room.Width && size.Height <= room.Height)
        || (options.MayTurn && size.Height <= room.Width && size.Width <= room.Height);

    private static Misfit Misfit(WantedRectangle rectangle, Size room, SheetOptions options)
    {
        Misfit Laid(bool turned)
        {
            var size = turned ? rectangle.Size.Turned : rectangle.Size;
            return new Misfit(rectangle, turned, room, Over(size.Width, room.Width), Over(size.Height, room.Height));
        }

        var (drawn, other) = (Laid(false), Laid(true));
        return options.MayTurn && other.TooWide + other.TooHigh < drawn.TooWide + drawn.TooHigh ? other : drawn;
    }

    private static Length Over(Length side, Length room) => Length.Max(side - room, Length.Zero);

    private static List<Packing.Part> Search(List<(long Width, long Height)> items, Size room, bool mayTurn, int bound, long mostLooks, out bool proven)
    {
        var (width, height) = (room.Width.Nanometres, room.Height.Nanometres);
        List<Packing.Part>? best = null;
        var bestScore = (Sheets: int.MaxValue, Spread: double.MaxValue);
        (int[] Order, Packing.FitRule Fit, Packing.SplitRule Split) way = ([], default, default);
        var looks = 0L;
        var parts = new Packing.SpareParts();
        bool Try(int[] order, Packing.FitRule fit, Packing.SplitRule split)
        {
            if (looks > mostLooks)
                return false;
            var packing = new Packing(width, height, mayTurn, fit, split, parts);
            packing.Take(items, order, bestScore.Sheets);
            looks += packing.Looks;
            if (packing.Sheets.Count == 0 || !Keep(packing.Sheets))
            {
                parts.TakeBack();
                return false;
            }

            parts.Leave();
            way = (order, fit, split);
            return true;
        }

        // Once there can be no fewer sheets, the plan that is the least work to follow is the best.
        bool Keep(List<Packing.Part> sheets)
        {
            if (sheets.Count > bestScore.Sheets)
                return false;
            var score = (sheets.Count, sheets.Count == bound ? sheets.Sum(Settings) : Spread(sheets));
            if (score.CompareTo(bestScore) >= 0)
                return false;
            (best, bestScore) = (sheets, score);
            return true;
        }

        foreach (var order in Orders(items))
        {
            if (looks > mostLooks)
                break;
            foreach (var fit in Enum.GetValues<Packing.FitRule>())
            {
                foreach (var split in Enum.GetValues<Packing.SplitRule>())
                    Try(order, fit, split);
            }
        }

        foreach (var lie in mayTurn ? Enum.GetValues<ShelfPacking.Lie>() : [ShelfPacking.Lie.AsDrawn])
        {
            foreach (var (mixed, columns) in new[] { (false, false), (false, true), (true, false), (true, true) })
            {
                if (ShelfPacking.Fill(items, width, height, lie, mixed, columns, parts) is not { } rows)
                    continue;
                if (Keep(rows))
                    parts.Leave();
                else
                    parts.TakeBack();
            }
        }

        // Splitmix64: small, and the same everywhere.
        var state = 0x9E3779B97F4A7C15UL;
        int Next(int below)
        {
            state += 0x9E3779B97F4A7C15UL;
            var z = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return (int)((z ^ (z >> 31)) % (ulong)below);
        }

        var rounds = Math.Min(600, ShuffleWork / items.Count);
        for (var round = 0; round < rounds && bestScore.Sheets > bound; round++)
        {
            var order = way.Order.ToArray();
            for (var swaps = 1 + Next(3); swaps > 0; swaps--)
                Move(order, Next(order.Length), Next(order.Length));
            var fit = Next(4) == 0 ? (Packing.FitRule)Next(3) : way.Fit;
            var split = Next(4) == 0 ? (Packing.SplitRule)Next(6) : way.Split;
            Try(order, fit, split);
        }

        proven = bestScore.Sheets == bound;
        if (!proven && ExactPacking.Fewest(items, width, height, mayTurn) is { } exact)
        {
            proven = true;
            if (exact.Count < bestScore.Sheets)
                best = exact;
        }

        return best!;
    }

    private static void Move(int[] order, int from, int to)
    {
        var item = order[from];
        if (from < to)
            Array.Copy(order, from + 1, order, from, to - from);
        else
            Array.Copy(order, to, order, to + 1, from - to);
        order[to] = item;
    }

    // While fewer sheets may be possible: of two plans with as many sheets the one with an emptier sheet is nearer to doing without it, and its offcut is of
    // more use.
    private static double Spread(List<Packing.Part> sheets)
    {
        var sum = 0.0;
        foreach (var sheet in sheets)
        {
            var used = Used(sheet) / ((double)sheet.Width * sheet.Height);
            sum -= used * used;
        }

        return sum;
    }

    // How often the stop of the trimmer is set for a part: cuts in a row that part off the same count once.
    private static int Settings(Packing.Part part)
    {
        var settings = 0;
        Packing.Part? before = null;
        for (var rest = part; rest.First is { } first; rest = rest.Second!)
        {
            if (before is null || !Alike(before, first))
                settings += 1 + Settings(first);
            before = first;
        }

        return settings;

        static bool Alike(Packing.Part one, Packing.Part other) =>
            one.Width == other.Width && one.Height == other.Height && one.First is null == other.First is null
            && (one.First is null || (one.Down == other.Down && Alike(one.First, other.First!) && Alike(one.Second!, other.Second!)));
    }

    private static double Used(Packing.Part part) =>
        part.First is null
            ? part.Item < 0 ? 0 : (double)part.Width * part.Height
            : Used(part.First) + Used(part.Second!);

    /// <summary>The orders in which rectangles are tried.</summary>
    internal static IEnumerable<int[]> Orders(IReadOnlyList<(long Width, long Height)> items)
    {
        // Equal rectangles stay together, so that only runs of them have to be sorted.
        var runs = new List<(int From, int To)>();
        for (var i = 0; i < items.Count; i++)
        {
            if (i > 0 && items[i] == items[i - 1])
                runs[^1] = (runs[^1].From, i + 1);
            else
                runs.Add((i, i + 1));
        }

        int[] By(Func<(long Width, long Height), double> first, Func<(long Width, long Height), double> then) =>
            [.. runs.OrderByDescending(run => first(items[run.From])).ThenByDescending(run => then(items[run.From]))
                .SelectMany(run => Enumerable.Range(run.From, run.To - run.From))];
        yield return By(i => (double)i.Width * i.Height, i => Math.Max(i.Width, i.Height));
        yield return By(i => i.Height, i => i.Width);
        yield return By(i => i.Width, i => i.Height);
        yield return By(i => Math.Max(i.Width, i.Height), i => Math.Min(i.Width, i.Height));
        yield return By(i => Math.Min(i.Width, i.Height), i => Math.Max(i.Width, i.Height));
        yield return By(i => i.Width + (double)i.Height, i => Math.Max(i.Width, i.Height));
    }
}
