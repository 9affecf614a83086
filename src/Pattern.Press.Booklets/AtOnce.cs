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
            Unwrapped(() => Parallel.For(0, inputs.Count, i => results[i] = make(inputs[i])));
        return results;
    }

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
