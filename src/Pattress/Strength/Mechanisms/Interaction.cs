using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>Tension and shear on one fixing.</summary>
public static class Interaction
{
    /// <summary>
    /// Utilisation (N_Ed/N_Rd)^p + (V_Ed/V_Rd)^p; the exponent is the rule's own, linear (p = 1) where none is given: withdrawal and
    /// lateral load of smooth nails and of anything in board, masonry or thin steel; 2 for screws in timber (EN 1995-1-1 (8.28)).
    /// </summary>
    public static double Utilisation(double N_Ed, double N_Rd, double V_Ed, double V_Rd, double p = 1, Trace? trace = null)
    {
        double beta_N = trace.Step("beta_N", Max(N_Ed, 0) / N_Rd, "", "share", [In.Of(N_Ed), In.Of(N_Rd)]);
        double beta_V = trace.Step("beta_V", Abs(V_Ed) / V_Rd, "", "share", [In.Of(V_Ed), In.Of(V_Rd)]);
        return trace.Step("utilisation", Pow(beta_N, p) + Pow(beta_V, p), "", p == 2 ? "EN 1995-1-1:2004+A1:2008 (8.28)" : "linear", [In.Of(beta_N), In.Of(beta_V), In.Of(p)]);
    }
}
