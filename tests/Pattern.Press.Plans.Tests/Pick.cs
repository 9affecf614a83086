using CsCheck;

namespace Pattern.Press.Plans.Tests;

/// <summary>One of a few given values.</summary>
internal static class Pick
{
    public static Gen<T> From<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}
