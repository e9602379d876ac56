namespace Pattress.Quantities;

/// <summary>
/// What a piece of text measures. The name carries the unit in which <see cref="QuantityText"/> hands the number over.
/// </summary>
public enum Dimension
{
    /// <summary>A pure number; takes no unit.</summary>
    Number,
    LengthMm,
    AreaMm2,
    MassKg,
    ForceN,
    MomentNmm,
    StressMpa,
    LineLoadNPerMm,
    LineMassKgPerM,
    ArealMassGPerM2,
    DensityKgPerM3,
    AngleDeg,
    StiffnessNPerMm,
    BedNPerMm3,
    BendingStiffnessNmm2,
    VolumeL,
    DurationS,
}
