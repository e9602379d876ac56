namespace Pattress.Actions.Beams;

/// <summary>A cubic c0 + c1 x + c2 x² + c3 x³ on an interval from 0.</summary>
internal readonly record struct Cubic(double C0, double C1, double C2, double C3)
{
    internal double At(double x) => C0 + x * (C1 + x * (C2 + x * C3));

    private double SlopeAt(double x) => Derivative.At(x);

    /// <summary>Integral from 0 to x.</summary>
    internal double Integral(double x) => x * (C0 + x * (C1 / 2 + x * (C2 / 3 + x * C3 / 4)));

    internal Cubic Derivative => new(C1, 2 * C2, 3 * C3, 0);

    /// <summary>The same curve about another origin.</summary>
    internal Cubic Shifted(double x) => new(At(x), SlopeAt(x), C2 + 3 * C3 * x, C3);

    internal Cubic Plus(double t, in Cubic o) => new(C0 + t * o.C0, C1 + t * o.C1, C2 + t * o.C2, C3 + t * o.C3);

    internal Cubic Less(in Cubic o) => new(C0 - o.C0, C1 - o.C1, C2 - o.C2, C3 - o.C3);

    /// <summary>
    /// The sign changes within [0, length], exact to rounding: between the turning points the cubic is monotone, and there
    /// each root is closed in by Newton's method kept inside a bracket. Returns how many were written (at most 3).
    /// </summary>
    internal int Roots(double length, Span<double> roots)
    {
        var (least, most) = Hull(length);
        if (least > 0 || most < 0) return 0;
        Span<double> cuts = stackalloc double[4];
        int pieces = Turns(length, cuts), found = 0;
        for (int i = 0; i < pieces; i++)
        {
            double low = cuts[i], high = cuts[i + 1], atLow = At(low), atHigh = At(high);
            if (atLow < 0 != atHigh < 0) roots[found++] = Close(low, high, atLow);
        }
        return found;
    }

    /// <summary>The least and most of the four Bernstein coefficients on [0, length], between which the curve stays.</summary>
    internal (double Least, double Most) Hull(double length)
    {
        double b1 = C0 + C1 * length / 3, b2 = C0 + length * (2 * C1 + C2 * length) / 3, b3 = At(length);
        return (Math.Min(Math.Min(C0, b1), Math.Min(b2, b3)), Math.Max(Math.Max(C0, b1), Math.Max(b2, b3)));
    }

    private int Turns(double length, Span<double> cuts)
    {
        int n = 1;
        double a = 3 * C3, b = C2, disc = b * b - a * C1;
        if (disc > 0)
        {
            double q = -(b + (b < 0 ? -1 : 1) * Math.Sqrt(disc));
            double one = q / a, two = C1 / q;
            if (one > two) (one, two) = (two, one);
            if (one > 0 && one < length) cuts[n++] = one;
            if (two > 0 && two < length && n < 3) cuts[n++] = two;
        }
        cuts[n] = length;
        return n;
    }

    private double Close(double low, double high, double atLow)
    {
        double x = (low + high) / 2;
        for (int i = 0; i < 200; i++)
        {
            double f = At(x);
            if (f == 0) return x;
            if (f < 0 == atLow < 0) low = x;
            else high = x;
            double next = x - f / SlopeAt(x);
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (!(next > low && next < high) || next == x) return next;
            x = next;
        }
        return x;
    }
}
