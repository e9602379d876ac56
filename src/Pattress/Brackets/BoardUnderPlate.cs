namespace Pattress.Brackets;

/// <summary>A board as far as it gives under a plate; N, mm, MPa.</summary>
/// <param name="Thickness">mm.</param>
/// <param name="Span">Distance of the supports behind it (studs, joists, dabs), mm.</param>
/// <param name="BendingLow">Least modulus of elasticity in bending, MPa.</param>
/// <param name="BendingHigh">Largest modulus of elasticity in bending, MPa.</param>
/// <param name="CrushLow">Least modulus through the thickness, MPa.</param>
/// <param name="CrushHigh">Largest modulus through the thickness, MPa.</param>
/// <param name="Layers">Boards that the thickness is made of: at the soft end each bends for itself, at the stiff end they are one.</param>
public readonly record struct BoardGive(
    double Thickness, double Span, double BendingLow, double BendingHigh, double CrushLow, double CrushHigh, int Layers = 1)
{
    /// <summary>Bending stiffness of a strip of the board, Nmm: layers apart with the least modulus.</summary>
    internal double Soft => Stiffness(BendingLow) / ((double)Layers * Layers);

    /// <summary>The same of layers glued to one board, with the largest modulus.</summary>
    internal double Stiff => Stiffness(BendingHigh);

    private double Stiffness(double modulus) => modulus * Thickness * Thickness * Thickness / (12 * (1 - BoardUnderPlate.Poisson * BoardUnderPlate.Poisson));

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
    /// lie between two values, mm (0 over a support, half the span in the middle): for a fixing that holds in something behind the board.
    /// </summary>
    public static BedRange Modulus(BoardGive board, double plateArea, double fromSupport, double toSupport) => new(
        1 / (plateArea * Strip(board, Math.Max(fromSupport, toSupport), board.Soft) + board.Thickness / board.CrushLow),
        1 / (plateArea * Strip(board, Math.Min(fromSupport, toSupport), board.Stiff) + board.Thickness / board.CrushHigh));

    /// <summary>
    /// The same where the board is glued to foam all over (a laminate): an endless plate on an elastic foundation sinks by 1/(8 sqrt(k D)) under a
    /// unit force (Hertz; Timoshenko and Woinowsky-Krieger, art. 57).
    /// </summary>
    /// <param name="foamLow">Least modulus of the foam over its thickness, N/mm³.</param>
    /// <param name="foamHigh">Largest.</param>
    public static BedRange OnFoam(BoardGive board, double plateArea, double foamLow, double foamHigh) => new(
        1 / (plateArea / (8 * Math.Sqrt(foamLow * board.Soft)) + board.Thickness / board.CrushLow),
        1 / (plateArea / (8 * Math.Sqrt(foamHigh * board.Stiff)) + board.Thickness / board.CrushHigh));

    /// <summary>
    /// Bed modulus range, N/mm³, between a bracket's toe and a fixing that holds in the same board. Both ride on the board's own sinking between its
    /// supports; what counts is the dish from the toe to the fixing, a circular plate of that radius, its edge free to turn at the soft end and held at
    /// the stiff one (Roark Table 11.2: P r² (3 + nu)/(16 pi D (1 + nu)), P r²/(16 pi D)), and the give through the thickness.
    /// </summary>
    /// <param name="toeArea">What of the plate presses, mm².</param>
    /// <param name="reachLow">Least distance from toe to fixing, mm.</param>
    /// <param name="reachHigh">Largest.</param>
    public static BedRange BesideFixing(BoardGive board, double toeArea, double reachLow, double reachHigh) => new(
        1 / (toeArea * reachHigh * reachHigh * (3 + Poisson) / (16 * Math.PI * board.Soft * (1 + Poisson)) + board.Thickness / board.CrushLow),
        1 / (toeArea * reachLow * reachLow / (16 * Math.PI * board.Stiff) + board.Thickness / board.CrushHigh));

    // Sinking for each N in the middle of a patch, mm/N.
    private static double Strip(BoardGive b, double fromSupport, double stiffness) => StripSinking(Math.Min(fromSupport / b.Span, 0.5)) * b.Span * b.Span / stiffness;
}
