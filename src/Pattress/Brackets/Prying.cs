namespace Pattress.Brackets;

/// <summary>
/// Allowance for a thin bracket plate that bends over its fixing and levers it out. The contact model takes the plate as
/// rigid; nobody has measured this factor for fitters' brackets, so it is assumed, and shown as assumed.
/// </summary>
public static class Prying
{
    /// <summary>Thickness from which a steel plate is taken as rigid, mm (assumed).</summary>
    public const double StiffThickness = 4;

    /// <summary>Factor on the tension of a plate of sheet 1 mm thick or thinner, or of unknown thickness (assumed).</summary>
    public const double ThinFactor = 1.3;

    /// <summary>Factor on each tension: 1.3 up to 1 mm or unknown, 1 from 4 mm, straight between.</summary>
    public static double Factor(double? thickness)
    {
        double t = Math.Clamp(thickness ?? 1, 1, StiffThickness);
        return ThinFactor - (ThinFactor - 1) * (t - 1) / (StiffThickness - 1);
    }
}
