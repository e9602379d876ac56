using System.Globalization;
using static System.Math;

namespace Pattress.Tests.Published;

/// <summary>
/// Simply supported rectangular plates by series, the reference for the closed forms: Timoshenko and Woinowsky-Krieger,
/// Theory of Plates and Shells, art. 30 (uniform load) and 34 (point load); first checked against its printed tables.
/// </summary>
internal static class PlateSeries
{
    private const double Nu = 0.3;

    internal static double Of(string what, string ratio)
    {
        double b = double.Parse(ratio, CultureInfo.InvariantCulture);
        return what switch { "point" => Point(b), "uniform_w" => Deflection(b), "uniform_mx" => MomentX(b), "uniform_my" => MomentY(b), _ => throw new FormatException(what) };
    }

    // w = alpha P a²/D at the middle under a load at the middle; span a, length b (here as b/a).
    private static double Point(double b) => Odd(2000, m =>
    {
        double k = m * PI * b / 2;
        return (Tanh(k) - k / Pow(Cosh(Min(k, 300)), 2)) / (2 * Pow(PI, 3) * Pow(m, 3));
    });

    private static double Deflection(double b) => 5.0 / 384 - Odd(60, m =>
    {
        double k = m * PI * b / 2;
        return Sign(m) * 4 / Pow(PI * m, 5) * (k * Tanh(k) + 2) / (2 * Cosh(k));
    });

    private static double MomentX(double b) => 1.0 / 8 + PI * PI * Odd(60, m => Sign(m) * m * m * (2 * Nu * B(m, b) - (1 - Nu) * A(m, b))) * -1;

    private static double MomentY(double b) => Nu / 8 - PI * PI * Odd(60, m => Sign(m) * m * m * (2 * B(m, b) + (1 - Nu) * A(m, b)));

    private static double A(int m, double b) => -2 * (m * PI * b / 2 * Tanh(m * PI * b / 2) + 2) / (Pow(PI * m, 5) * Cosh(m * PI * b / 2));

    private static double B(int m, double b) => 2 / (Pow(PI * m, 5) * Cosh(m * PI * b / 2));

    private static double Sign(int m) => m % 4 == 1 ? 1 : -1;

    private static double Odd(int terms, Func<int, double> term) => Enumerable.Range(0, terms).Select(i => term(2 * i + 1)).Sum();
}
