namespace Pattress.Brackets;

/// <summary>A sum of products rounded once: nothing is lost where large terms cancel (compensated by fused multiply-add).</summary>
internal static class Exact
{
    /// <summary>u0 + u1 x + u2 y + extra.</summary>
    internal static double At(in Triple u, double x, double y, double extra)
    {
        double sum = u.A, rest = 0;
        Add(u.B * x, Math.FusedMultiplyAdd(u.B, x, -(u.B * x)), ref sum, ref rest);
        Add(u.C * y, Math.FusedMultiplyAdd(u.C, y, -(u.C * y)), ref sum, ref rest);
        Add(extra, 0, ref sum, ref rest);
        return sum + rest;
    }

    private static void Add(double term, double lost, ref double sum, ref double rest)
    {
        double total = sum + term, part = total - sum;
        rest += sum - (total - part) + (term - part) + lost;
        sum = total;
    }
}
