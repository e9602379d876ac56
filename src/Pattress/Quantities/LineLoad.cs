namespace Pattress.Quantities;

/// <summary>A force per length; also the stiffness of a spring. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct LineLoad
{
    private LineLoad(double si) => NewtonsPerMetre = si;

    public double NewtonsPerMetre { get; }

    /// <summary>In N/mm, which is kN/m.</summary>
    public double NewtonsPerMillimetre => NewtonsPerMetre / 1000;

    /// <summary>In plf.</summary>
    public double PoundsForcePerFoot => NewtonsPerMetre / (Units.PoundForce / 0.3048);

    public static LineLoad FromNewtonsPerMetre(double value) => new(value);

    public static LineLoad FromNewtonsPerMillimetre(double value) => new(value * 1000);

    public static LineLoad FromPoundsForcePerFoot(double value) => new(value * (Units.PoundForce / 0.3048));
}
