namespace Pattress.Trials.Installations;

/// <summary>A smooth function that dies away at both ends of its range.</summary>
internal interface IIntegrand
{
    double At(double x);
}

/// <summary>
/// The trapezoidal rule, whose error for analytic integrands that vanish at both ends falls like exp(-C/h²): halving the
/// step raises the error to its fourth power, so two levels that agree to 1e-5 leave the finer one good to 1e-10 and better.
/// </summary>
internal static class Trapezoid
{
    private const double Agreement = 1e-5;
    private const int MostLevels = 12;

    public static double Integrate<T>(ref T f, double low, double high, double step) where T : struct, IIntegrand, allows ref struct
    {
        int count = (int)Math.Ceiling((high - low) / step);
        double h = (high - low) / count, sum = Sum(ref f, low, h, count + 1), coarse = h * sum;
        for (int level = 0; ; level++)
        {
            sum += Sum(ref f, low + h / 2, h, count);
            (h, count) = (h / 2, 2 * count);
            double fine = h * sum;
            if (Math.Abs(fine - coarse) <= Agreement * fine || level == MostLevels) return fine;
            coarse = fine;
        }
    }

    private static double Sum<T>(ref T f, double from, double h, int count) where T : struct, IIntegrand, allows ref struct
    {
        double sum = 0;
        for (int i = 0; i < count; i++) sum += f.At(from + i * h);
        return sum;
    }
}
