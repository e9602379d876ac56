namespace Pattress.Quantities;

/// <summary>A mass per area, as fabrics and boards have it. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct ArealMass
{
    private ArealMass(double si) => KilogramsPerSquareMetre = si;

    public double KilogramsPerSquareMetre { get; }

    /// <summary>In g/m².</summary>
    public double GramsPerSquareMetre => KilogramsPerSquareMetre / 0.001;

    /// <summary>In oz/yd².</summary>
    public double OuncesPerSquareYard => KilogramsPerSquareMetre / (0.45359237 / 16 / (0.9144 * 0.9144));

    public static ArealMass FromKilogramsPerSquareMetre(double value) => new(value);

    public static ArealMass FromGramsPerSquareMetre(double value) => new(value * 0.001);

    public static ArealMass FromOuncesPerSquareYard(double value) => new(value * (0.45359237 / 16 / (0.9144 * 0.9144)));
}
