using Pattress.Trials.Special;

namespace Pattress.Trials.Reliability;

/// <summary>What the shape of the limit state about a design point does to the first-order answer.</summary>
/// <param name="Curvatures">Main curvatures, above 0 where the surface bends away from the middle.</param>
/// <param name="Breitung">Phi(-beta) prod (1 + beta kappa)^(-1/2); null where a curvature makes it meaningless.</param>
/// <param name="Hohenbichler">The same with kappa phi(beta)/Phi(-beta) in place of beta kappa.</param>
/// <param name="Followed">
/// The surface followed along each main direction, not its curvature at the point alone: exact for two variables as
/// long as the surface lies above the tangent plane once. It sees a surface that is flat at the point and bends further out.
/// </param>
public sealed record SecondOrder(IReadOnlyList<double> Curvatures, double? Breitung, double? Hohenbichler, double Followed);

/// <summary>Second-order reliability at a design point.</summary>
public static class Sorm
{
    private const double Reach = 7, Step = 0.02;

    public static SecondOrder At(LimitState state, DesignPoint point)
    {
        double[][] across = Vectors.Across(point.Alpha);
        var (values, axes) = Symmetric.Eigen(Hessian(state, point, across));
        double slope = Vectors.Length(state.Gradient(point.U));
        double[] curvatures = [.. values.Select(v => v / slope)];
        double first = point.Probability, mills = Normal.Pdf(point.Beta) / first, followed = first;
        foreach (double[] axis in axes) followed *= Along(state, point, Combine(across, axis)) / first;
        return new(curvatures, Corrected(first, curvatures, point.Beta), Corrected(first, curvatures, mills), Math.Min(1, followed));
    }

    private static double? Corrected(double first, double[] curvatures, double factor)
    {
        double product = first;
        foreach (double k in curvatures)
        {
            if (1 + factor * k <= 0) return null;
            product /= Math.Sqrt(1 + factor * k);
        }
        return product;
    }

    private static double[] Combine(double[][] basis, double[] weights)
    {
        var sum = new double[basis[0].Length];
        for (int i = 0; i < basis.Length; i++) sum = Vectors.Along(sum, weights[i], basis[i]);
        return sum;
    }

    /// <summary>Second derivatives across alpha, central differences with a step of 1e-3 standard deviations.</summary>
    private static double[,] Hessian(LimitState state, DesignPoint point, double[][] across)
    {
        const double h = 1e-3;
        var hessian = new double[across.Length, across.Length];
        for (int i = 0; i < across.Length; i++)
            for (int j = 0; j <= i; j++)
            {
                double Mixed(int a, int b) => state.At(Vectors.Along(Vectors.Along(point.U, a * h, across[i]), b * h, across[j]));
                hessian[i, j] = hessian[j, i] = (Mixed(1, 1) - Mixed(1, -1) - Mixed(-1, 1) + Mixed(-1, -1)) / (4 * h * h);
            }
        return hessian;
    }

    /// <summary>Integral of phi(t) Phi(-b(t)) over t, where b(t) is the surface's height along alpha above t on the axis.</summary>
    private static double Along(LimitState state, DesignPoint point, double[] axis)
    {
        double sum = Normal.Pdf(0) * point.Probability;
        foreach (int side in (ReadOnlySpan<int>)[1, -1])
        {
            double height = point.Beta;
            for (int i = 1; i * Step <= Reach; i++)
            {
                height = Height(state, point.Alpha, Vectors.Scaled(axis, side * i * Step), height);
                sum += Normal.Pdf(i * Step) * Normal.UpperTail(height);
            }
        }
        return sum * Step;
    }

    /// <summary>The height nearest to the last one where the sign changes; 12 where the line stays safe, -12 where it fails throughout.</summary>
    private static double Height(LimitState state, double[] alpha, double[] foot, double near)
    {
        double Margin(double b) => state.At(Vectors.Along(foot, b, alpha));
        for (double span = 0.05; span < 24; span *= 2)
        {
            double low = Math.Max(near - span, -12), high = Math.Min(near + span, 12), gLow = Margin(low), gHigh = Margin(high);
            if (gLow >= 0 && gHigh < 0) return Root.Bisect(b => -Margin(b), low, high);
        }
        return Margin(0) < 0 ? -12 : 12;
    }
}
