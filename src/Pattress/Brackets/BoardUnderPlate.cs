namespace Pattress.Brackets;

/// <summary>A board as far as it gives under a plate; N, mm, MPa.</summary>
/// <param name="Thickness">mm.</param>
/// <param name="Span">Distance of the supports behind it (studs, joists, dabs), mm.</param>
/// <param name="BendingLow">Least modulus of elasticity in bending, MPa.</param>
/// <param name="BendingHigh">Largest modulus of elasticity in bending, MPa.</param>
/// <param name="CrushLow">Least modulus through the thickness, MPa.</param>
/// <param name="CrushHigh">Largest modulus through the thickness, MPa.</param>
public readonly record struct BoardGive(
    double Thickness, double Span, double BendingLow, double BendingHigh, double CrushLow, double CrushHigh)
{
    /// <summary>
    /// Gypsum board: 2000 to 3000 MPa in bending (engineering value, from memory), 100 to 1000 MPa through the thickness (assumed: nobody has
    /// published it).
    /// </summary>
    public static BoardGive Gypsum(double thickness, double span) => new(thickness, span, 2000, 3000, 100, 1000);
}

/// <summary>
/// The bed under a bracket's plate from plate theory: the board bends as a strip between its supports and gives through its
/// thickness. What is left uncertain stays an interval.
/// </summary>
public static class BoardUnderPlate
{
    /// <summary>Poisson's ratio of gypsum board (engineering value, from memory).</summary>
    public const double Poisson = 0.2;

    private const int Terms = 400;

    /// <summary>
    /// Sinking of a strip simply supported along two sides under a force at a place, for D = span = force = 1 (Timoshenko and
    /// Woinowsky-Krieger, Theory of Plates and Shells, art. 36): 1/(2 pi³) sum sin²(m pi x) / m³; 0.01695 in the middle.
    /// </summary>
    /// <param name="place">Distance from one support over the span, 0 to 1.</param>
    public static double StripSinking(double place)
    {
        double sum = 0;
        for (int m = Terms; m >= 1; m--)
        {
            double s = Math.Sin(m * Math.PI * place);
            sum += s * s / ((double)m * m * m);
        }
        return sum / (2 * Math.PI * Math.PI * Math.PI);
    }

    /// <summary>
    /// Bed modulus range, N/mm³, under a plate of an area in mm² whose distance from the nearest support is known to
    /// lie between two values, mm (0 over a support, half the span in the middle).
    /// </summary>
    public static BedRange Modulus(BoardGive board, double plateArea, double fromSupport, double toSupport) => new(
        One(board, plateArea, Math.Max(fromSupport, toSupport), board.BendingLow, board.CrushLow),
        One(board, plateArea, Math.Min(fromSupport, toSupport), board.BendingHigh, board.CrushHigh));

    /// <summary>Pressure over sinking: 1 / (area x sinking per force + thickness / modulus through it).</summary>
    private static double One(BoardGive b, double area, double fromSupport, double bending, double crush)
    {
        double stiffness = bending * b.Thickness * b.Thickness * b.Thickness / (12 * (1 - Poisson * Poisson));
        double perForce = StripSinking(Math.Min(fromSupport / b.Span, 0.5)) * b.Span * b.Span / stiffness;
        return 1 / (area * perForce + b.Thickness / crush);
    }
}
