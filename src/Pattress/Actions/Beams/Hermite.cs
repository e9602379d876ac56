namespace Pattress.Actions.Beams;

/// <summary>The cubic beam element on deflection and slope at both ends.</summary>
internal static class Hermite
{
    /// <summary>Entry (i, j) of the element's stiffness for EI = 1.</summary>
    internal static double Stiffness(int i, int j, double h)
    {
        double signs = (i == 2 ? -1 : 1) * (j == 2 ? -1 : 1);
        bool slopeI = i % 2 == 1, slopeJ = j % 2 == 1;
        if (slopeI && slopeJ) return (i == j ? 4 : 2) / h;
        return slopeI || slopeJ ? signs * 6 / (h * h) : signs * 12 / (h * h * h);
    }

    /// <summary>The element's shape as a cubic in mm from its left end; slopes per mm.</summary>
    internal static Cubic Shape(double w0, double slope0, double w1, double slope1, double h)
    {
        double rise = (w1 - w0) / h;
        return new Cubic(w0, slope0, (3 * rise - 2 * slope0 - slope1) / h, (slope0 + slope1 - 2 * rise) / (h * h));
    }
}
