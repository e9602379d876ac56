using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Quantities;

namespace Pattress.Web.Desks;

/// <summary>Numbers as people type and read them in the job's units; the library's doors read the text.</summary>
internal static class Numbers
{
    private const double MmPerInch = 25.4, KgPerPound = 0.45359237, NewtonsPerPoundForce = 4.4482216152605;

    /// <summary>The unit a bare number is taken in.</summary>
    public static string Unit(Dimension dimension, Settings settings) => (dimension, settings.Units == "imperial") switch
    {
        (Dimension.LengthMm, false) => "mm",
        (Dimension.LengthMm, true) => "in",
        (Dimension.MassKg, false) => "kg",
        (Dimension.MassKg, true) => "lb",
        (Dimension.ForceN, false) => "N",
        (Dimension.ForceN, true) => "lbf",
        _ => "",
    };

    /// <summary>The number in mm, kg or N, or null when the text is none.</summary>
    public static double? Read(string text, Dimension dimension, Settings settings)
    {
        if (QuantityText.TryParse(text, dimension, out double value, out string code)) return value;
        bool bare = code == "quantity_without_unit" && QuantityText.TryParse(text + " " + Unit(dimension, settings), dimension, out value);
        return bare ? value : null;
    }

    /// <summary>How the entry shows it: without the unit that stands beside it.</summary>
    public static string Show(double value, Dimension dimension, Settings settings) => settings.Units != "imperial" ? Text(value) : dimension switch
    {
        Dimension.LengthMm => Inches.Text(value / MmPerInch).Replace(" in", "", StringComparison.Ordinal),
        Dimension.MassKg => Text(Math.Round(value / KgPerPound, 2)),
        Dimension.ForceN => Text(Math.Round(value / NewtonsPerPoundForce, 1)),
        _ => Text(value),
    };

    /// <summary>Invariant, for attributes.</summary>
    public static string Text(double value) => Math.Round(value, 6).ToString(CultureInfo.InvariantCulture);
}
