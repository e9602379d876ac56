namespace Pattress.Quantities;

/// <summary>A length. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Length
{
    private Length(double si) => Metres = si;

    public double Metres { get; }

    /// <summary>In mm.</summary>
    public double Millimetres => Metres / 0.001;

    /// <summary>In in.</summary>
    public double Inches => Metres / 0.0254;

    /// <summary>In ft.</summary>
    public double Feet => Metres / 0.3048;

    public static Length FromMetres(double value) => new(value);

    public static Length FromMillimetres(double value) => new(value * 0.001);

    public static Length FromInches(double value) => new(value * 0.0254);

    public static Length FromFeet(double value) => new(value * 0.3048);
}
