using System.Globalization;

namespace Pattress.Jobs.Text;

/// <summary>Lengths as a tape in inches shows them.</summary>
public static class Inches
{
    /// <summary>To the nearest sixteenth, in lowest terms, e.g. <c>55 5/8 in</c>.</summary>
    public static string Text(double inches)
    {
        long sixteenths = (long)Math.Round(Math.Abs(inches) * 16, MidpointRounding.AwayFromZero);
        string sign = inches < 0 && sixteenths > 0 ? "-" : "";
        return $"{sign}{Parts(sixteenths / 16, sixteenths % 16)} in";
    }

    private static string Parts(long whole, long sixteenths)
    {
        if (sixteenths == 0) return whole.ToString(CultureInfo.InvariantCulture);
        int under = 16;
        for (; sixteenths % 2 == 0; sixteenths /= 2) under /= 2;
        string fraction = string.Create(CultureInfo.InvariantCulture, $"{sixteenths}/{under}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}");
    }
}
