namespace Pattress.Quantities;

/// <summary>A stress or pressure. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Stress
{
    private Stress(double si) => Pascals = si;

    public double Pascals { get; }

    /// <summary>In N/mm².</summary>
    public double Megapascals => Pascals / 1000000;

    /// <summary>In lbf/in².</summary>
    public double Psi => Pascals / (Units.PoundForce / (0.0254 * 0.0254));

    /// <summary>In kN/m².</summary>
    public double KilonewtonsPerSquareMetre => Pascals / 1000;

    public static Stress FromPascals(double value) => new(value);

    public static Stress FromMegapascals(double value) => new(value * 1000000);

    public static Stress FromPsi(double value) => new(value * (Units.PoundForce / (0.0254 * 0.0254)));

    public static Stress FromKilonewtonsPerSquareMetre(double value) => new(value * 1000);
}
