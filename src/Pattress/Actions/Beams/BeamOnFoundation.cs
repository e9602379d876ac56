namespace Pattress.Actions.Beams;

/// <summary>
/// A long beam that lies on an elastic foundation all along, as a batten on a board, under one force (Hetényi, Beams on
/// Elastic Foundation). Long means at least pi / lambda to either side of the force.
/// </summary>
/// <param name="Ei">Bending stiffness, Nmm².</param>
/// <param name="Foundation">N/mm of length per mm of sinking.</param>
public readonly record struct BeamOnFoundation(double Ei, double Foundation)
{
    /// <summary>lambda = (k / 4EI)^(1/4), 1/mm.</summary>
    public double Lambda => Math.Sqrt(Math.Sqrt(Foundation / (4 * Ei)));

    /// <summary>Sinking at a distance from the force, mm.</summary>
    public double Deflection(double force, double distance) =>
        force * Lambda / (2 * Foundation) * Fading(distance, 1);

    /// <summary>Bending moment at a distance from the force, Nmm.</summary>
    public double Moment(double force, double distance) => force / (4 * Lambda) * Fading(distance, -1);

    private double Fading(double distance, double sign)
    {
        double x = Lambda * Math.Abs(distance);
        return Math.Exp(-x) * (Math.Cos(x) + sign * Math.Sin(x));
    }
}
