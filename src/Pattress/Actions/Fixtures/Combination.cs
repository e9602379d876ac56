using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>Combination of actions, EN 1990:2002 equation (6.10) with the partial factors of the job.</summary>
public static class Combination
{
    /// <summary>Factor on a permanent action that helps, EN 1990:2002 Table A1.2(A): 0.90, the lower of sets A (EQU) and B (STR, 1.00).</summary>
    public const double PermanentThatHelps = 0.9;

    // The length at which moments are weighed against forces, when asking whether the permanent part helps.
    private const double LeverMm = 100;

    /// <summary>gamma_G G + gamma_Q Q. Where the permanent part works against the variable one it counts with <see cref="PermanentThatHelps"/>.</summary>
    public static Wrench Design(Wrench permanent, Wrench variable, Settings settings)
    {
        double gammaG = Together(permanent, variable) < 0 ? PermanentThatHelps : settings.GammaPermanent;
        return gammaG * permanent + settings.GammaVariable * variable;
    }

    private static double Together(Wrench g, Wrench q) =>
        g.N * q.N + g.Vx * q.Vx + g.Vy * q.Vy + (g.Mx * q.Mx + g.My * q.My + g.Tz * q.Tz) / (LeverMm * LeverMm);
}
