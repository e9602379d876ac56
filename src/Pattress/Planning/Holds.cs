using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning.Resisting;
using Pattress.Trials.Installations;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning;

/// <summary>What one fixing carries in one direction: design value, mean and scatter, N.</summary>
/// <param name="Mechanism">Code of the governing mechanism.</param>
/// <param name="Basis"><c>rule</c>, <c>trial</c>, <c>mechanics</c> or <c>assumed</c>.</param>
public readonly record struct Carries(double DesignN, double MeanN, double Cov, string Mechanism, string Basis);

/// <summary>What one fixing carries in pull and shear, and how the two go together: (T/Rt)^a + (V/Rv)^a at most 1.</summary>
/// <param name="ToeMpa">Pressure that the wall takes under the toe; infinite on bare masonry.</param>
/// <param name="BendingN">Net pull of the whole bracket at which the board bends or leaves its own supports; infinite where it need not bend.</param>
public sealed record FixingCarries(Carries Pull, Carries Shear, double Exponent, double ToeMpa, double BendingN, Reason? NotCovered);

/// <summary>How a size holds under every load case: the worst fixing, or the toe, of the worst case.</summary>
public static class Holds
{
    private const string Clause = "pattress: interaction, linear unless the rule names an exponent";

    public static Hold Worst(
        FixingSize size, Spot spot, IReadOnlyList<CaseForces> cases, IReadOnlyList<Point> holes, BracketPlate plate, Ask ask, Trace? trace)
    {
        var known = new FixingCarries?[Durations];
        double most = double.NegativeInfinity;
        int at = 0;
        for (int c = 0; c < cases.Count; c++)
        {
            // What a fixing carries depends on the case only through the duration of its load.
            var carries = known[(int)cases[c].Case.Duration] ??= Resistances.Of(size, spot, ask, cases[c].Case.Duration, holes, plate, null);
            if (Reaching(size, carries) is { } why) return Nothing(cases[c], why);
            double used = MostUsed(carries, cases[c]);
            if (used > most) (most, at) = (used, c);
        }
        var worst = cases[at];
        return Gathered(trace is null ? known[(int)worst.Case.Duration]! : Resistances.Of(size, spot, ask, worst.Case.Duration, holes, plate, trace), worst, holes, ask, trace);
    }

    private static readonly int Durations = Enum.GetValues<LoadDuration>().Length;

    /// <summary>Why it carries nothing; a plate or face that eats the whole screw leaves no depth, and so no resistance to divide by.</summary>
    private static Reason? Reaching(FixingSize size, FixingCarries carries) =>
        carries.NotCovered ?? (carries.Pull.DesignN > 0 && carries.Shear.DesignN > 0 ? null : new Reason("screw_reaches_nothing", Said.Length(size.LengthMm)));

    private static double MostUsed(FixingCarries carries, CaseForces forces)
    {
        int worst = WorstOf(carries, forces);
        double fixing = Interact(carries, forces.Tension[worst], forces.Shear[worst], null);
        return Math.Max(fixing, Math.Max(Toe(forces.ToeMpa, carries.ToeMpa, null), Bending(forces.Case.Design.N, carries.BendingN, null)));
    }

    private static int WorstOf(FixingCarries carries, CaseForces forces)
    {
        int worst = 0;
        double most = Used(carries, forces.Tension[0], forces.Shear[0]);
        for (int i = 1; i < forces.Tension.Count; i++)
        {
            double used = Used(carries, forces.Tension[i], forces.Shear[i]);
            if (used > most) (worst, most) = (i, used);
        }
        return worst;
    }

    private static Hold Gathered(FixingCarries carries, CaseForces forces, IReadOnlyList<Point> holes, Ask ask, Trace? trace)
    {
        int worst = WorstOf(carries, forces);
        double tension = forces.Tension[worst], shear = forces.Shear[worst];
        double fixing = Interact(carries, tension, shear, trace), toe = Toe(forces.ToeMpa, carries.ToeMpa, trace);
        double bending = Bending(forces.Case.Design.N, carries.BendingN, trace);
        // Permitted is what may hang there uncounted: the design value over the factor on actions.
        double onActions = ask.Settings.Standards == "us" ? 1 : ask.Settings.GammaVariable;
        bool pulled = tension / carries.Pull.DesignN >= shear / carries.Shear.DesignN;
        var main = pulled ? carries.Pull : carries.Shear;
        // Along the load's own direction the mean scales as the design value does.
        double mean = fixing > 0 ? (pulled ? tension : shear) : 0, ratio = main.MeanN / main.DesignN;
        double resistance = fixing > 0 ? mean / fixing * ratio : main.MeanN, action = mean * forces.MeanShare;
        return new(
            Math.Max(fixing, Math.Max(toe, bending)), bending > Math.Max(fixing, toe) ? "board_flexure" : toe > fixing ? "toe" : main.Mechanism, Weaker(carries.Pull.Basis, carries.Shear.Basis), forces.Case.Code,
            [.. holes.Select((h, i) => new FixingForce(h, forces.Tension[i], forces.Shear[i]))], forces.ToeMpa, toe,
            resistance, main.Cov, action, forces.ActionCov,
            action > 0 ? BracketFailure.Probability(resistance, main.Cov, action, forces.ActionCov) : 0, ratio * onActions, null);
    }

    private static readonly string[] Bases = ["rule", "trial", "mechanics", "assumed"];

    /// <summary>A fixing that is pulled and sheared rests on the weaker of the two bases.</summary>
    private static string Weaker(string a, string b) => Array.IndexOf(Bases, a) >= Array.IndexOf(Bases, b) ? a : b;

    private static Hold Nothing(CaseForces forces, Reason why) =>
        new(0, "not_covered", "none", forces.Case.Code, [], forces.ToeMpa, 0, 0, 0, 0, 0, 1, 0, why);

    private static double Used(FixingCarries c, double tension, double shear) =>
        Math.Pow(tension / c.Pull.DesignN, c.Exponent) + Math.Pow(shear / c.Shear.DesignN, c.Exponent);

    private static double Interact(FixingCarries c, double T_Ed, double V_Ed, Trace? trace)
    {
        double T_Rd = c.Pull.DesignN, V_Rd = c.Shear.DesignN, a = c.Exponent;
        return trace.Step("u", Pow(Pow(T_Ed / T_Rd, a) + Pow(V_Ed / V_Rd, a), 1 / a), "", Clause,
            [In.Of(T_Ed), In.Of(T_Rd), In.Of(V_Ed), In.Of(V_Rd), In.Of(a)]);
    }

    /// <summary>Pull and toe of a bracket cancel as far as the board's bending goes; what is left bends it.</summary>
    private static double Bending(double N_Ed, double N_Rd, Trace? trace) => double.IsInfinity(N_Rd) || N_Ed <= 0 ? 0
        : trace.Step("u_board", N_Ed / N_Rd, "", "pattress: net pull against the board's bending and its own supports", [In.Of(N_Ed), In.Of(N_Rd)]);

    private static double Toe(double p_Ed, double p_Rd, Trace? trace) => double.IsInfinity(p_Rd) ? 0
        : trace.Step("u_toe", p_Ed / p_Rd, "", "pattress: pressure under the toe", [In.Of(p_Ed), In.Of(p_Rd)]);
}
