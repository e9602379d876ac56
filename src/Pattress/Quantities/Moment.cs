namespace Pattress.Quantities;

/// <summary>A moment of force. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Moment
{
    private Moment(double si) => NewtonMetres = si;

    public double NewtonMetres { get; }

    /// <summary>In Nmm.</summary>
    public double NewtonMillimetres => NewtonMetres / 0.001;

    /// <summary>In lbf in.</summary>
    public double PoundForceInches => NewtonMetres / (Units.PoundForce * 0.0254);

    public static Moment FromNewtonMetres(double value) => new(value);

    public static Moment FromNewtonMillimetres(double value) => new(value * 0.001);

    public static Moment FromPoundForceInches(double value) => new(value * (Units.PoundForce * 0.0254));
}
