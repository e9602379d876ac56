namespace Pattress.Trials.Reliability;

/// <summary>Plain arithmetic on points of standard normal space.</summary>
internal static class Vectors
{
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    public static double Length(ReadOnlySpan<double> a) => Math.Sqrt(Dot(a, a));

    /// <summary>a + t b.</summary>
    public static double[] Along(ReadOnlySpan<double> a, double t, ReadOnlySpan<double> b)
    {
        var sum = new double[a.Length];
        for (int i = 0; i < sum.Length; i++) sum[i] = a[i] + t * b[i];
        return sum;
    }

    public static double[] Scaled(ReadOnlySpan<double> a, double t) => Along(new double[a.Length], t, a);

    public static double Distance(ReadOnlySpan<double> a, ReadOnlySpan<double> b) => Length(Along(a, -1, b));

    /// <summary>An orthonormal basis of the plane across a unit vector (Gram and Schmidt).</summary>
    public static double[][] Across(double[] unit)
    {
        var basis = new List<double[]> { unit };
        for (int i = 0; i < unit.Length && basis.Count < unit.Length; i++)
        {
            var e = new double[unit.Length];
            e[i] = 1;
            for (int pass = 0; pass < 2; pass++)
                foreach (var b in basis) e = Along(e, -Dot(e, b), b);
            double length = Length(e);
            if (length > 0.1 / Math.Sqrt(unit.Length)) basis.Add(Scaled(e, 1 / length));
        }
        return [.. basis.Skip(1)];
    }
}
