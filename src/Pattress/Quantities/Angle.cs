namespace Pattress.Quantities;

/// <summary>A plane angle. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Angle
{
    private Angle(double si) => Radians = si;

    public double Radians { get; }

    /// <summary>In °.</summary>
    public double Degrees => Radians / (Math.PI / 180);

    public static Angle FromRadians(double value) => new(value);

    public static Angle FromDegrees(double value) => new(value * (Math.PI / 180));
}
