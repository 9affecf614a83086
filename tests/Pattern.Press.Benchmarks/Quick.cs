using System.Diagnostics;
using System.Globalization;

namespace Pattern.Press.Benchmarks;

/// <summary>A first look in half a minute, on a machine that is not idle: the best of some runs of each measurement.</summary>
internal static class Quick
{
    public static void Run(TextWriter output)
    {
        // First, while nothing else is in memory.
        var build = new WholeBuild();
        var builds = new List<double>();
        for (var i = 0; i < 200; i++)
            builds.Add(Best(1, () => build.Both_papers()));

        // The first half is for the compiler; it has made everything as good as it can after that.
        builds = [.. builds[100..].Order()];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"both papers, folder to bytes: {builds[builds.Count / 2]:0} ms half of the time, {builds[0]:0} ms at the least"));

        var setting = new Typesetting();
        setting.Prepare();
        Say("shaping 100 lines", 20, () => setting.Shaping());
        Say("breaking 72 paragraphs", 20, () => setting.Breaking_paragraphs());
        Say("24 pages, blocks to bytes", 40, () => setting.Blocks_to_bytes());
        Say("24 pages, pages to bytes", 20, () => setting.Pages_to_bytes());
        Say("one subset", 20, () => setting.Subsetting());
        // As many pages at every length, and the mean of them: whether a collection falls into the setting of one short book
        // is chance, how many of them fall into so many pages is not. A short book is set in memory that the one before it had;
        // for a long one there is none, so short ones that are all kept are what it is to be held against.
        const int Together = 84;
        foreach (var (lengths, kept) in new[] { (1, false), (4, false), (10, false), (21, false), (42, false), (84, false), (1, true) })
        {
            var book = LongBook.Make(lengths);
            var pages = Typesetting.LayOut(book).Pages.Count;
            var documents = new List<object>();
            var collecting = GC.GetTotalPauseDuration();
            var layout = TimeSpan.Zero;
            var watch = Stopwatch.StartNew();
            for (var i = 0; i < Together / lengths; i++)
            {
                var before = watch.Elapsed;
                var document = Typesetting.LayOut(book);
                layout += watch.Elapsed - before;
                Typesetting.Write(document);
                if (kept)
                    documents.Add(document);
            }

            var set = pages * (Together / lengths);
            var (each, laid, collected) = (watch.Elapsed / set, layout / set, (GC.GetTotalPauseDuration() - collecting) / set);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{pages} pages{(kept ? string.Create(CultureInfo.InvariantCulture, $", {Together} times and all kept") : "")}: {each.TotalMilliseconds:0.00} ms a page ({laid.TotalMilliseconds:0.00} of them layout, {collected.TotalMilliseconds:0.00} of both collecting)"));
            GC.KeepAlive(documents);
        }

        void Say(string what, int runs, Action run) =>
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {Best(runs, run):0.0} ms"));
    }

    private static double Best(int runs, Action run)
    {
        var best = double.PositiveInfinity;
        for (var i = 0; i < runs; i++)
        {
            var watch = Stopwatch.StartNew();
            run();
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        return best;
    }
}
