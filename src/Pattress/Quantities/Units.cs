namespace Pattress.Quantities;

/// <summary>A unit as it may be written, and what one of it is in the dimension's own unit.</summary>
internal readonly record struct Unit(string Text, double Factor);

/// <summary>
/// The units that text may carry, by dimension; the first spelling of each is the one shown to the user.
/// Factors: exact by the international yard and pound (1959) and standard gravity 9.80665 m/s² (NIST SP 811).
/// </summary>
internal static class Units
{
    internal const double Inch = 25.4, Foot = 304.8, Pound = 0.45359237, Gravity = 9.80665;
    internal const double PoundForce = Pound * Gravity;

    private static readonly Unit[] Length =
    [
        new("mm", 1), new("cm", 10), new("m", 1000), new("in", Inch), new("ft", Foot), new("yd", 3 * Foot),
        new("inch", Inch), new("inches", Inch), new("\"", Inch), new("″", Inch), new("feet", Foot), new("foot", Foot), new("'", Foot), new("′", Foot),
    ];

    private static readonly Unit[] Mass =
    [
        new("kg", 1), new("g", 1e-3), new("t", 1000), new("lb", Pound), new("oz", Pound / 16), new("st", 14 * Pound), new("lbs", Pound), new("lbm", Pound),
    ];

    private static readonly Unit[] Stress =
    [
        new("MPa", 1), new("N/mm2", 1), new("kPa", 1e-3), new("kN/m2", 1e-3), new("Pa", 1e-6), new("psi", PoundForce / (Inch * Inch)),
        new("ksi", 1000 * PoundForce / (Inch * Inch)), new("psf", PoundForce / (Foot * Foot)), new("N/mm²", 1), new("kN/m²", 1e-3),
    ];

    private static readonly Unit[] LineLoad =
    [
        new("N/mm", 1), new("N/m", 1e-3), new("kN/m", 1), new("plf", PoundForce / Foot), new("lbf/ft", PoundForce / Foot), new("lbf/in", PoundForce / Inch),
    ];

    private static readonly Unit[] Moment =
    [
        new("Nmm", 1), new("Nm", 1000), new("kNm", 1e6), new("lbf in", PoundForce * Inch), new("lbf ft", PoundForce * Foot), new("N mm", 1), new("N m", 1000),
    ];

    /// <summary>Units of the dimension; empty for a pure number.</summary>
    internal static ReadOnlySpan<Unit> Of(Dimension dimension) => dimension switch
    {
        Dimension.LengthMm => Length,
        Dimension.AreaMm2 => [new("mm2", 1), new("cm2", 100), new("m2", 1e6), new("in2", Inch * Inch), new("mm²", 1), new("m²", 1e6)],
        Dimension.MassKg => Mass,
        Dimension.ForceN => [new("N", 1), new("kN", 1000), new("lbf", PoundForce), new("kgf", Gravity), new("kip", 1000 * PoundForce)],
        Dimension.MomentNmm => Moment,
        Dimension.StressMpa => Stress,
        Dimension.LineLoadNPerMm => LineLoad,
        Dimension.LineMassKgPerM => [new("kg/m", 1), new("g/m", 1e-3), new("lb/ft", Pound / Foot * 1000)],
        Dimension.ArealMassGPerM2 => [new("g/m2", 1), new("gsm", 1), new("kg/m2", 1000), new("oz/yd2", Pound / 16 / (9 * Foot * Foot) * 1e9), new("g/m²", 1), new("kg/m²", 1000)],
        Dimension.DensityKgPerM3 => [new("kg/m3", 1), new("pcf", Pound / (Foot * Foot * Foot) * 1e9), new("g/cm3", 1000), new("kg/m³", 1), new("lb/ft3", Pound / (Foot * Foot * Foot) * 1e9)],
        Dimension.AngleDeg => [new("deg", 1), new("rad", 180 / Math.PI), new("°", 1)],
        Dimension.StiffnessNPerMm => LineLoad,
        Dimension.BedNPerMm3 => [new("N/mm3", 1), new("N/cm3", 1e-3), new("lbf/in3", PoundForce / (Inch * Inch * Inch)), new("N/mm³", 1)],
        Dimension.BendingStiffnessNmm2 => [new("Nmm2", 1), new("Nm2", 1e6), new("kNm2", 1e9), new("lbf in2", PoundForce * Inch * Inch), new("Nmm²", 1), new("Nm²", 1e6)],
        Dimension.VolumeL => [new("l", 1), new("ml", 1e-3), new("m3", 1000), new("L", 1), new("m³", 1000)],
        Dimension.DurationS => [new("s", 1), new("min", 60), new("h", 3600), new("d", 86400)],
        _ => [],
    };

    /// <summary>How many spellings of <see cref="Of"/> are shown to the user.</summary>
    internal static int Shown(Dimension dimension) => dimension switch
    {
        Dimension.LengthMm or Dimension.MassKg => 6,
        Dimension.StressMpa => 8,
        Dimension.MomentNmm or Dimension.ForceN => 5,
        Dimension.LineLoadNPerMm or Dimension.StiffnessNPerMm => 6,
        Dimension.AreaMm2 or Dimension.ArealMassGPerM2 or Dimension.BendingStiffnessNmm2 or Dimension.DurationS => 4,
        Dimension.LineMassKgPerM or Dimension.DensityKgPerM3 or Dimension.BedNPerMm3 or Dimension.VolumeL => 3,
        Dimension.AngleDeg => 2,
        _ => 0,
    };
}
