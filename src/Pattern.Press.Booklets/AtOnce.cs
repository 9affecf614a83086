using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;

namespace Pattern.Press.Booklets;

/// <summary>Does independent things at the same time, where the machine has room for it.</summary>
internal static class AtOnce
{
    /// <summary>Makes something of each input. The order of the results is that of the inputs, whatever the machine does.</summary>
    public static TOut[] Select<TIn, TOut>(IReadOnlyList<TIn> inputs, Func<TIn, TOut> make)
    {
        var results = new TOut[inputs.Count];
        if (inputs.Count == 1)
            results[0] = make(inputs[0]);
        else
            Unwrapped(() => Parallel.ForEach(OneByOne(inputs.Count), i => results[i] = make(inputs[i])));
        return results;
    }

    /// <summary>Does several things, each once.</summary>
    public static void Do(IReadOnlyList<Action> actions) => Select(actions, action =>
    {
        action();
        return true;
    });

    // What is to be done takes anything from nothing to half of the whole time, so nobody takes on more than one at a time.
    private static OrderablePartitioner<int> OneByOne(int count) =>
        Partitioner.Create(Enumerable.Range(0, count), EnumerablePartitionerOptions.NoBuffering);

    // What goes wrong in one of them reads as if it had gone wrong alone.
    private static void Unwrapped(Action work)
    {
        try
        {
            work();
        }
        catch (AggregateException several) when (several.InnerException is { } first)
        {
            ExceptionDispatchInfo.Throw(first);
        }
    }
}
