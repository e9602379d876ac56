namespace Pattress.Quantities;

/// <summary>An area. <c>default</c> is zero. Held in SI; text is read by <see cref="QuantityText"/>.</summary>
public readonly record struct Area
{
    private Area(double si) => SquareMetres = si;

    public double SquareMetres { get; }

    /// <summary>In mm².</summary>
    public double SquareMillimetres => SquareMetres / 1e-06;

    /// <summary>In in².</summary>
    public double SquareInches => SquareMetres / 0.00064516;

    public static Area FromSquareMetres(double value) => new(value);

    public static Area FromSquareMillimetres(double value) => new(value * 1e-06);

    public static Area FromSquareInches(double value) => new(value * 0.00064516);
}
