using Pattress.Quantities;

namespace Pattress.Strength;

/// <summary>Short names for the inputs of rules. A bound that is ours and not the standard's only keeps the arithmetic finite.</summary>
internal static class Input
{
    internal const double Most = 1e9, Least = 1e-6;

    internal static Parameter Length(string symbol, double min = Least, double max = 1e5, double? or = null) => new(symbol, Dimension.LengthMm, min, max, or);

    internal static Parameter Area(string symbol, double min = Least, double max = Most) => new(symbol, Dimension.AreaMm2, min, max);

    internal static Parameter Force(string symbol, double min = 0, double max = Most, double? or = null) => new(symbol, Dimension.ForceN, min, max, or);

    internal static Parameter Moment(string symbol, double min = Least, double max = 1e12) => new(symbol, Dimension.MomentNmm, min, max);

    internal static Parameter Stress(string symbol, double min = Least, double max = 1e5, double? or = null) => new(symbol, Dimension.StressMpa, min, max, or);

    internal static Parameter Density(string symbol, double min = 100, double max = 1200, double? or = null) => new(symbol, Dimension.DensityKgPerM3, min, max, or);

    internal static Parameter Angle(string symbol, double min, double max, double? or = null) => new(symbol, Dimension.AngleDeg, min, max, or);

    internal static Parameter Number(string symbol, double min = 0, double max = Most, double? or = null) => new(symbol, Dimension.Number, min, max, or);

    internal static Parameter Whole(string symbol, double min, double max, double? or = null) => new(symbol, Dimension.Number, min, max, or) { Whole = true };

    internal static Parameter Count(string symbol, double max = 1e6, double? or = null) => Whole(symbol, 1, max, or);
}
