using System.Globalization;

namespace Pattress.Quantities;

// For the doors until the quantities are there: delete this file when Dimension and QuantityText land.

/// <summary>What a quantity measures.</summary>
public enum Dimension { Length, Mass, Force }

/// <summary>Reads a quantity from text such as "0.3 kN" or "1/2 in".</summary>
public static class QuantityText
{
    private static readonly (Dimension Dimension, string Unit, double Size)[] Units =
    [
        (Dimension.Length, "mm", 1), (Dimension.Length, "cm", 10), (Dimension.Length, "m", 1000), (Dimension.Length, "in", 25.4), (Dimension.Length, "ft", 304.8),
        (Dimension.Mass, "kg", 1), (Dimension.Mass, "g", 0.001), (Dimension.Mass, "lb", 0.45359237),
        (Dimension.Force, "N", 1), (Dimension.Force, "kN", 1000), (Dimension.Force, "lbf", 4.4482216152605),
    ];

    /// <summary>What may stand where a quantity is asked for.</summary>
    public static string Allowed(Dimension dimension) =>
        "a number, or text with a unit: " + string.Join(", ", Units.Where(u => u.Dimension == dimension).Select(u => u.Unit));

    /// <summary>The value in mm, kg or N.</summary>
    public static bool TryParse(string text, Dimension dimension, out double value)
    {
        string trimmed = text.Trim();
        int split = trimmed.AsSpan().LastIndexOfAny("0123456789.") + 1;
        double size = Units.FirstOrDefault(u => u.Dimension == dimension && u.Unit == trimmed[split..].Trim()).Size;
        bool ok = TryNumber(trimmed[..split], out double number) && size > 0;
        value = ok ? number * size : 0;
        return ok;
    }

    private static bool TryNumber(string text, out double number)
    {
        var parts = text.Split('/');
        double under = 1;
        return double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out number)
            && parts.Length <= 2
            && (parts.Length == 1 || double.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out under))
            && double.IsFinite(number /= under);
    }
}
