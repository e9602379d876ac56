using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>
/// Combination of actions: EN 1990:2002 equation (6.10) with the partial factors of the job; in the American set, which is held to allowable
/// stress design, every action once (D + L; ASCE 7-16 2.4.1, from memory).
/// </summary>
public static class Combination
{
    /// <summary>Factor on a permanent action that helps, EN 1990:2002 Table A1.2(A): 0.90, the lower of sets A (EQU) and B (STR, 1.00).</summary>
    public const double PermanentThatHelps = 0.9;

    /// <summary>The same in the American set: 0.6 D (ASCE 7-16 2.4.1, from memory).</summary>
    public const double AmericanPermanentThatHelps = 0.6;

    // The length at which moments are weighed against forces, when asking whether the permanent part helps.
    private const double LeverMm = 100;

    /// <summary>gamma_G G + gamma_Q Q. Where the permanent part works against the variable one it counts with <see cref="PermanentThatHelps"/>.</summary>
    public static Wrench Design(Wrench permanent, Wrench variable, Settings settings)
    {
        bool us = settings.Standards == "us", helps = Helps(permanent, variable);
        double gammaG = helps ? us ? AmericanPermanentThatHelps : PermanentThatHelps : us ? 1 : settings.GammaPermanent;
        return gammaG * permanent + (us ? 1 : settings.GammaVariable) * variable;
    }

    /// <summary>
    /// True where the two work against each other: their product is negative by more than rounding, so that the same load
    /// in other units never gets another factor. A variable part below a millionth of the permanent one is rounding itself.
    /// </summary>
    private static bool Helps(Wrench g, Wrench q)
    {
        double permanent = Together(g, g), variable = Together(q, q);
        return variable > Rounding * Rounding * permanent && Together(g, q) < -Rounding * Math.Sqrt(permanent * variable);
    }

    private static double Together(Wrench g, Wrench q) =>
        g.N * q.N + g.Vx * q.Vx + g.Vy * q.Vy + (g.Mx * q.Mx + g.My * q.My + g.Tz * q.Tz) / (LeverMm * LeverMm);

    // Thresholds act on values rounded to a millionth.
    private const double Rounding = 1e-6;
}
