using System.Collections.Concurrent;

namespace Pattern.Press.Nets.Folding;

/// <summary>A way on which loops of panels stay closed, walked once from finished to where it begins.</summary>
internal sealed class LoopPath
{
    private readonly LoopSolver solver;
    private readonly double[] open;
    private readonly bool isOpenClosed;
    private readonly IReadOnlyList<double[]>? way;
    private readonly double[] finished;
    private readonly ConcurrentDictionary<double, double[]> found = new();

    /// <param name="solver">Closes the loops.</param>
    /// <param name="finished">The angles where the way ends, by the panel that turns.</param>
    /// <param name="open">The angles where it begins; for the hinges that follow a guess, unless the loops are known to close there.</param>
    /// <param name="isOpenClosed">Whether they are.</param>
    public LoopPath(LoopSolver solver, double[] finished, double[] open, bool isOpenClosed)
    {
        (this.solver, this.finished, this.open, this.isOpenClosed) = (solver, finished, open, isOpenClosed);
        way = solver.Walk(finished, open);
    }

    /// <summary>Whether the loops stay closed all the way.</summary>
    public bool Closes => way is not null;

    /// <summary>The angles part of the way, by the panel that turns: 0 where it begins, 1 finished.</summary>
    /// <remarks>Where the loops do not stay closed it is the even mean of both ends, whose gaps the pose then shows.</remarks>
    public double[] At(double part) => found.GetOrAdd(part, Find);

    private double[] Find(double part)
    {
        if (part is 1)
            return finished;
        var mean = Between(open, finished, part);
        if (way is null || (part is 0 && isOpenClosed))
            return mean;

        // Between the two steps on either side; what is driven is set outright.
        var at = (1 - part) * way.Count;
        var before = Math.Min((int)at, way.Count - 1);
        var guess = before + 1 < way.Count ? Between(way[before], way[before + 1], at - before) : Between(way[before], open, at - before);
        lock (solver)
            return solver.Settle(solver.Driven(mean, guess)) ?? guess;
    }

    private static double[] Between(double[] from, double[] to, double part)
    {
        var between = new double[from.Length];
        for (var i = 0; i < between.Length; i++)
            between[i] = from[i] + ((to[i] - from[i]) * part);
        return between;
    }
}
