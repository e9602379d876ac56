using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning.Resisting;
using Pattress.Strength.Mechanisms;
using Pattress.Trials.Installations;
using Pattress.Working;
using static System.Math;

namespace Pattress.Planning;

/// <summary>What one fixing carries in one direction: design value, mean and scatter, N.</summary>
/// <param name="Mechanism">Code of the governing mechanism.</param>
/// <param name="Basis"><c>rule</c>, <c>trial</c>, <c>mechanics</c> or <c>assumed</c>.</param>
/// <param name="Marks">Departures from the rule and notes.</param>
public readonly record struct Carries(double DesignN, double MeanN, double Cov, string Mechanism, string Basis, IReadOnlyList<Reason> Marks);

/// <summary>What one fixing carries in pull and shear, and how the two go together: (T/Rt)^a + (V/Rv)^a at most 1.</summary>
/// <param name="ToeMpa">Pressure that the wall takes under the toe; infinite on bare masonry.</param>
/// <param name="BendingN">Net pull of the whole bracket at which the board bends or leaves its own supports; infinite where it need not bend.</param>
public sealed record FixingCarries(Carries Pull, Carries Shear, double Exponent, double ToeMpa, double BendingN, Reason? NotCovered);

/// <summary>How a size holds under every load case: the worst fixing, or the toe, of the worst case.</summary>
public static class Holds
{
    private const string Clause = "pattress: interaction, linear unless the rule names an exponent";

    /// <summary>The worst case; its working, where one is kept, is that of the worst case alone.</summary>
    public static Hold Worst(
        FixingSize size, Spot spot, IReadOnlyList<CaseForces> cases, IReadOnlyList<Point> holes, BracketPlate plate, Ask ask, Trace? trace) =>
        Worst(size, spot, cases, holes, plate, ask, trace, null);

    /// <param name="remembered">What is known of the spot already, or null.</param>
    internal static Hold Worst(
        FixingSize size, Spot spot, IReadOnlyList<CaseForces> cases, IReadOnlyList<Point> holes, BracketPlate plate, Ask ask, Trace? trace, KnownSpots? remembered)
    {
        var known = new FixingCarries?[(int)LoadDuration.Instantaneous + 1];
        (Used Used, int At) worst = (default, -1);
        for (int c = 0; c < cases.Count; c++)
        {
            var carries = known[(int)cases[c].Case.Duration] ??= remembered?.Carries(size, spot, cases[c].Case.Duration, holes)
                ?? Resistances.Of(size, spot, ask, cases[c].Case.Duration, holes, plate, null);
            if (Uncovered(carries, size) is { } why) return Nothing(cases[c], why);
            var used = InCase(carries, cases[c], null);
            if (worst.At < 0 || used.Most > worst.Used.Most) worst = (used, c);
        }
        var governing = cases[worst.At];
        // Permitted is what may hang there uncounted: the design value over the factor on actions.
        double onActions = ask.Settings.Standards == "us" ? 1 : ask.Settings.GammaVariable;
        if (trace is null) return Gathered(known[(int)governing.Case.Duration]!, governing, holes, worst.Used, onActions);
        var traced = Resistances.Of(size, spot, ask, governing.Case.Duration, holes, plate, trace);
        return Gathered(traced, governing, holes, InCase(traced, governing, trace), onActions);
    }

    /// <summary>Shares used of the worst fixing, the toe and the board's bending, and that fixing's forces.</summary>
    private readonly record struct Used(double Tension, double Shear, double Fixing, double Toe, double Bending)
    {
        public double Most => Math.Max(Fixing, Math.Max(Toe, Bending));
    }

    // A plate or face that eats the whole screw leaves no depth, and so no resistance to divide by.
    private static Reason? Uncovered(FixingCarries c, FixingSize size) => c.NotCovered
        ?? (c.Pull.DesignN > 0 && c.Shear.DesignN > 0 ? null : new Reason("screw_reaches_nothing", Said.Length(size.LengthMm)));

    private static Used InCase(FixingCarries carries, CaseForces forces, Trace? trace)
    {
        int worst = 0;
        double most = -1;
        for (int i = 0; i < forces.Tension.Count; i++)
        {
            double used = Shares(carries, forces.Tension[i] * forces.Prying, forces.Shear[i]);
            if (used > most) (worst, most) = (i, used);
        }
        double T_Ed = Pulled(forces.Tension[worst], forces.Prying, trace);
        double V_Ed = trace.LookUp("V_Ed", forces.Shear[worst], "N", "pattress: elastic vector method, worst fixing of the case");
        return new(T_Ed, V_Ed, Interact(carries, T_Ed, V_Ed, trace), Toe(forces, carries.ToeMpa, trace), Bending(forces.Case.Design.N, carries.BendingN, trace));
    }

    private static double Pulled(double T, double k_prying, Trace? trace)
    {
        trace.LookUp("T", T, "N", "pattress: contact model, the worst of the stiffness intervals");
        trace.LookUp("k_prying", k_prying, "", Factors.Assumed + "prying");
        return trace.Step("T_Ed", T * k_prying, "N", "pattress: a thin plate pries", [In.Of(T), In.Of(k_prying)]);
    }

    private static Hold Gathered(FixingCarries carries, CaseForces forces, IReadOnlyList<Point> holes, Used used, double onActions)
    {
        bool pulled = used.Tension / carries.Pull.DesignN >= used.Shear / carries.Shear.DesignN;
        var main = pulled ? carries.Pull : carries.Shear;
        // Along the load's own direction the mean scales as the design value does.
        double mean = used.Fixing > 0 ? (pulled ? used.Tension : used.Shear) : 0, ratio = main.MeanN / main.DesignN;
        double resistance = used.Fixing > 0 ? mean / used.Fixing * ratio : main.MeanN, action = mean * forces.MeanShare;
        return new(
            used.Most, used.Bending > Math.Max(used.Fixing, used.Toe) ? "board_flexure" : used.Toe > used.Fixing ? "toe" : main.Mechanism,
            Weaker(carries.Pull.Basis, carries.Shear.Basis), forces.Case.Code,
            [.. holes.Select((h, i) => new FixingForce(h, forces.Tension[i] * forces.Prying, forces.Shear[i]))], forces.ToeMpa, used.Toe,
            resistance, main.Cov, action, forces.ActionCov,
            action > 0 ? BracketFailure.Probability(resistance, main.Cov, action, forces.ActionCov) : 0, ratio * onActions, null,
            [.. carries.Pull.Marks.Concat(carries.Shear.Marks).DistinctBy(m => m.Code)]);
    }

    private static readonly string[] Bases = ["rule", "trial", "mechanics", "assumed"];

    /// <summary>A fixing that is pulled and sheared rests on the weaker of the two bases.</summary>
    private static string Weaker(string a, string b) => Array.IndexOf(Bases, a) >= Array.IndexOf(Bases, b) ? a : b;

    private static Hold Nothing(CaseForces forces, Reason why) =>
        new(0, "not_covered", "none", forces.Case.Code, [], forces.ToeMpa, 0, 0, 0, 0, 0, 1, 0, why, []);

    private static double Shares(FixingCarries c, double tension, double shear) => c.Exponent == 1
        ? tension / c.Pull.DesignN + shear / c.Shear.DesignN
        : Pow(tension / c.Pull.DesignN, c.Exponent) + Pow(shear / c.Shear.DesignN, c.Exponent);

    private static double Interact(FixingCarries c, double T_Ed, double V_Ed, Trace? trace)
    {
        double T_Rd = c.Pull.DesignN, V_Rd = c.Shear.DesignN, a = c.Exponent;
        return trace.Step("u", Pow(Pow(T_Ed / T_Rd, a) + Pow(V_Ed / V_Rd, a), 1 / a), "", Clause,
            [In.Of(T_Ed), In.Of(T_Rd), In.Of(V_Ed), In.Of(V_Rd), In.Of(a)]);
    }

    /// <summary>Pull and toe of a bracket cancel as far as the board's bending goes; what is left bends it.</summary>
    private static double Bending(double N_Ed, double N_Rd, Trace? trace) => double.IsInfinity(N_Rd) || N_Ed <= 0 ? 0
        : trace.Step("u_board", N_Ed / N_Rd, "", "pattress: net pull against the board's bending and its own supports", [In.Of(N_Ed), In.Of(N_Rd)]);

    private static double Toe(CaseForces forces, double p_Rd, Trace? trace)
    {
        if (double.IsInfinity(p_Rd)) return 0;
        double C = trace.LookUp("C", forces.ContactN, "N", "pattress: contact model, the worst of the stiffness intervals"), A_toe = forces.Toe.Mm2(trace);
        double p_Ed = trace.Step("p_Ed", C / A_toe, "N/mm²", "pattress: pressure under the toe", [In.Of(C), In.Of(A_toe)]);
        return trace.Step("u_toe", p_Ed / p_Rd, "", "pattress: pressure under the toe", [In.Of(p_Ed), In.Of(p_Rd)]);
    }
}
