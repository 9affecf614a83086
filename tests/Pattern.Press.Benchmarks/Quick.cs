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
        var builds = Enumerable.Range(0, 200).Select(_ => Best(1, () => build.Both_papers())).Skip(100).Order().ToArray();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"both papers, folder to bytes: {builds[builds.Length / 2]:0} ms half of the time, {builds[0]:0} ms at the least"));

        var setting = new Typesetting();
        setting.Prepare();
        Say("shaping 100 lines", 20, () => setting.Shaping());
        Say("breaking 72 paragraphs", 20, () => setting.Breaking_paragraphs());
        Say("24 pages, blocks to bytes", 40, () => setting.Blocks_to_bytes());
        Say("24 pages, pages to bytes", 20, () => setting.Pages_to_bytes());
        Say("one subset", 20, () => setting.Subsetting());
        foreach (var lengths in new[] { 1, 2, 4, 10, 42 })
        {
            var book = LongBook.Make(lengths);
            var pages = Typesetting.LayOut(book).Pages.Count;
            var layout = Best(3, () => Typesetting.LayOut(book));
            var whole = Best(3, () => Typesetting.Write(Typesetting.LayOut(book)));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{pages} pages: {whole:0} ms, {whole / pages:0.00} ms a page ({layout / pages:0.00} of them layout)"));
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
