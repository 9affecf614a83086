using System.Runtime.ExceptionServices;

namespace Pattern.Press.Booklets;

/// <summary>Does independent things at the same time, where the machine has room for it.</summary>
internal static class AtOnce
{
    /// <summary>
    /// Makes something of each input. The order of the results is that of the inputs, whatever the machine does; where
    /// several go wrong, the first input's exception is thrown.
    /// </summary>
    public static TOut[] Select<TIn, TOut>(IReadOnlyList<TIn> inputs, Func<TIn, TOut> make)
    {
        var results = new TOut[inputs.Count];
        var wrong = new Exception?[inputs.Count];
        var last = -1;

        // Some inputs take nothing and some half of the whole time, so that nobody takes on more than one at a time.
        void Work()
        {
            for (var i = Interlocked.Increment(ref last); i < inputs.Count; i = Interlocked.Increment(ref last))
            {
                try
                {
                    results[i] = make(inputs[i]);
                }
                catch (Exception exception)
                {
                    wrong[i] = exception;
                }
            }
        }

        var helpers = new Task[Math.Max(0, Math.Min(Environment.ProcessorCount, inputs.Count) - 1)];
        for (var i = 0; i < helpers.Length; i++)
            helpers[i] = Task.Run(Work);
        Work();
        Task.WaitAll(helpers);
        if (Array.Find(wrong, exception => exception is not null) is { } first)
            ExceptionDispatchInfo.Throw(first);
        return results;
    }

    /// <summary>Does several things, each once.</summary>
    public static void Do(IReadOnlyList<Action> actions) => Select(actions, action =>
    {
        action();
        return true;
    });
}
