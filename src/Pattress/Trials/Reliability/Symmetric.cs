namespace Pattress.Trials.Reliability;

/// <summary>Eigenvalues and eigenvectors of a small symmetric matrix by Jacobi's rotations.</summary>
internal static class Symmetric
{
    /// <summary>Values, and vectors as rows in the same order.</summary>
    public static (double[] Values, double[][] Vectors) Eigen(double[,] matrix)
    {
        int n = matrix.GetLength(0);
        var a = (double[,])matrix.Clone();
        double[][] vectors = [.. Enumerable.Range(0, n).Select(i => Unit(n, i))];
        for (int sweep = 0; sweep < 60 && OffDiagonal(a) > 1e-15 * Diagonal(a); sweep++)
            for (int p = 0; p < n; p++)
                for (int q = p + 1; q < n; q++) Rotate(a, vectors, p, q);
        return ([.. Enumerable.Range(0, n).Select(i => a[i, i])], vectors);
    }

    private static double[] Unit(int n, int i)
    {
        var e = new double[n];
        e[i] = 1;
        return e;
    }

    private static void Rotate(double[,] a, double[][] vectors, int p, int q)
    {
        if (a[p, q] == 0) return;
        double theta = (a[q, q] - a[p, p]) / (2 * a[p, q]);
        double t = (theta < 0 ? -1 : 1) / (Math.Abs(theta) + Math.Sqrt(theta * theta + 1)), c = 1 / Math.Sqrt(t * t + 1), s = t * c;
        for (int k = 0; k < vectors.Length; k++) (a[k, p], a[k, q]) = (c * a[k, p] - s * a[k, q], s * a[k, p] + c * a[k, q]);
        for (int k = 0; k < vectors.Length; k++) (a[p, k], a[q, k]) = (c * a[p, k] - s * a[q, k], s * a[p, k] + c * a[q, k]);
        for (int k = 0; k < vectors.Length; k++)
            (vectors[p][k], vectors[q][k]) = (c * vectors[p][k] - s * vectors[q][k], s * vectors[p][k] + c * vectors[q][k]);
    }

    private static double OffDiagonal(double[,] a)
    {
        double sum = 0;
        for (int i = 0; i < a.GetLength(0); i++)
            for (int j = 0; j < i; j++) sum += Math.Abs(a[i, j]);
        return sum;
    }

    private static double Diagonal(double[,] a)
    {
        double sum = 1e-300;
        for (int i = 0; i < a.GetLength(0); i++) sum += Math.Abs(a[i, i]);
        return sum;
    }
}
