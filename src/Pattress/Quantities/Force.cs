namespace Pattress.Quantities;

/// <summary>A force. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Force
{
    private Force(double si) => Newtons = si;

    public double Newtons { get; }

    /// <summary>In kN.</summary>
    public double Kilonewtons => Newtons / 1000;

    /// <summary>In lbf.</summary>
    public double PoundsForce => Newtons / (Units.PoundForce);

    /// <summary>In kgf.</summary>
    public double KilogramsForce => Newtons / (Units.Gravity);

    public static Force FromNewtons(double value) => new(value);

    public static Force FromKilonewtons(double value) => new(value * 1000);

    public static Force FromPoundsForce(double value) => new(value * (Units.PoundForce));

    public static Force FromKilogramsForce(double value) => new(value * (Units.Gravity));
}
