using Pattress.Strength.Standards.ASTM_C1396_2017;
using Pattress.Strength.Standards.EN_520_2004;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>How far mechanics miss what was printed: lognormal, the printed load over the predicted one.</summary>
/// <param name="Bias">Median of printed over predicted.</param>
/// <param name="V">Standard deviation of its logarithm.</param>
/// <param name="Count">Printed loads it rests on.</param>
public readonly record struct ModelError(double Bias, double V, int Count);

/// <summary>
/// The error of the board's mechanics as a distribution, from the only published loads there are: the standards' least ones. They can say how well the laws
/// carry from one thickness, direction and country to another. They cannot say how punching grows from a head of 6.35 mm to a wide bearing (the cone of 45°
/// is taken, which gives less than a cylinder), what lasts, or how single boards scatter: for all of that the total variation stays assumed,
/// never below this, and trials go before it.
/// </summary>
public static class BoardModelError
{
    /// <summary>Nail-pull of ASTM C1396: each of three thicknesses predicted from the other two by the straight line that serves between them.</summary>
    public static ModelError Punching { get; } = Of([.. Enumerable.Range(0, 3).Select(LeftOut)]);

    /// <summary>Bending moments of ASTM C1396 over those of EN 520 at the same thickness: three thicknesses, both directions, by the same statics.</summary>
    public static ModelError Flexure { get; } = Of([.. Enumerable.Range(0, 6).Select(i => American(i) / European(i))]);

    private static double LeftOut(int i)
    {
        int a = i == 0 ? 1 : 0, b = i == 2 ? 1 : 2;
        double fa = Section5.NailPull(a, null), fb = Section5.NailPull(b, null);
        return Section5.NailPull(i, null) / (fa + (fb - fa) * (Thickness(i) - Thickness(a)) / (Thickness(b) - Thickness(a)));
    }

    private static double American(int i) => Section5.m(Section5.Flexure(i % 3, i / 3, null), null);

    private static double European(int i) => Table4.Mor(i / 3, Thickness(i), null) * Pow(Thickness(i), 2) / 6;

    // 3/8, 1/2 and 5/8 in.
    private static double Thickness(int i) => 9.525 + i % 3 * 3.175;

    private static ModelError Of(double[] ratios)
    {
        double mean = ratios.Average(Log), sum = ratios.Sum(r => Pow(Log(r) - mean, 2));
        return new(Exp(mean), Sqrt(sum / (ratios.Length - 1)), ratios.Length);
    }
}
