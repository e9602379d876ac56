namespace Pattress.Working;

/// <summary>Whole powers by multiplying: <c>Pow(x, 2)</c> in a formula then costs one product, and is printed and read again as any power.</summary>
internal static class Powers
{
    /// <summary>x to a whole power of at least 0.</summary>
    internal static double Pow(double x, int n)
    {
        if (n == 2) return x * x;
        if (n == 3) return x * x * x;
        double product = 1;
        for (int i = 0; i < n; i++) product *= x;
        return product;
    }
}
