namespace Pattress.Quantities;

/// <summary>A mass per volume. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Density
{
    private Density(double si) => KilogramsPerCubicMetre = si;

    public double KilogramsPerCubicMetre { get; }

    /// <summary>In pcf.</summary>
    public double PoundsPerCubicFoot => KilogramsPerCubicMetre / (0.45359237 / (0.3048 * 0.3048 * 0.3048));

    public static Density FromKilogramsPerCubicMetre(double value) => new(value);

    public static Density FromPoundsPerCubicFoot(double value) => new(value * (0.45359237 / (0.3048 * 0.3048 * 0.3048)));
}
