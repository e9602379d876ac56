namespace Pattress.Quantities;

/// <summary>A mass. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Mass
{
    private Mass(double si) => Kilograms = si;

    public double Kilograms { get; }

    /// <summary>In g.</summary>
    public double Grams => Kilograms / 0.001;

    /// <summary>In lb.</summary>
    public double Pounds => Kilograms / 0.45359237;

    public static Mass FromKilograms(double value) => new(value);

    public static Mass FromGrams(double value) => new(value * 0.001);

    public static Mass FromPounds(double value) => new(value * 0.45359237);
}
