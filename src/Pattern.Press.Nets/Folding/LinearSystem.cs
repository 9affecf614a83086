namespace Pattern.Press.Nets.Folding;

/// <summary>Small dense systems of linear equations.</summary>
internal static class LinearSystem
{
    /// <summary>
    /// Solves a system with a symmetric positive definite matrix by Cholesky's factors. The matrix is overwritten by its
    /// factor, the right side by the answer.
    /// </summary>
    public static void Solve(double[,] matrix, double[] right)
    {
        var n = right.Length;
        for (var j = 0; j < n; j++)
        {
            for (var i = j; i < n; i++)
            {
                var sum = matrix[i, j];
                for (var k = 0; k < j; k++)
                    sum -= matrix[i, k] * matrix[j, k];
                matrix[i, j] = i == j ? Math.Sqrt(Math.Max(sum, double.Epsilon)) : sum / matrix[j, j];
            }
        }

        for (var i = 0; i < n; i++)
        {
            for (var k = 0; k < i; k++)
                right[i] -= matrix[i, k] * right[k];
            right[i] /= matrix[i, i];
        }

        for (var i = n - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < n; k++)
                right[i] -= matrix[k, i] * right[k];
            right[i] /= matrix[i, i];
        }
    }
}
