using Pattress.Strength.Standards.AISI_S100_2016;
using Pattress.Strength.Standards.EN_1993_1_3_2006;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>A self-drilling screw in a steel stud of thickness TStud (mm), through a board of Gap mm; Fu of the stud, N/mm².</summary>
/// <param name="Restrained">True where the flange cannot twist (a web beside the screw, or a board on both sides).</param>
public sealed record SteelStudScrewInput(
    double D, double Root, double Pitch, double TStud, double Gap, double Fu = 300, double Plate = 1.5, double ScrewFu = 800, bool Restrained = false,
    RuleSet Set = RuleSet.Eurocode, StandIns StandIns = StandIns.All);

/// <summary>
/// Thin steel. Eurocode: EN 1993-1-3 Table 8.2 inside its limits; a stud of 0.5 to 0.6 mm lies outside them in tension: then AISI S100 J4 is
/// the named fallback (phi = 0.50). American set: AISI S100 J4 alone, allowable by Omega = 3.0. A flange that can twist takes an assumed factor.
/// </summary>
public static class SteelStudScrew
{
    /// <summary>Pull-out from the flange, N.</summary>
    public static MechanismResult Tension(SteelStudScrewInput s, Trace? trace = null)
    {
        var en = s.Set == RuleSet.Eurocode ? Table8_2.PullOut.Evaluate([s.D, s.TStud, s.Pitch, s.Fu], trace) : default;
        if (en.Covered) return Result("pull_out", en.Value, 1.25, Table8_2.PullOut.Clause, s, trace);
        if (Refused(s)) return MechanismResult.None("pull_out", en.Why!);
        var aisi = SectionJ4.PullOut.Evaluate([s.TStud, s.D, s.Fu], trace);
        Reason[] marks = s.Set == RuleSet.Eurocode ? [new Reason("en1993_1_3_not_covered", Said.Length(s.TStud))] : [];
        return aisi.Covered ? Result("pull_out", aisi.Value, Margin(s), SectionJ4.PullOut.Clause, s, trace, marks) : MechanismResult.None("pull_out", aisi.Why!);
    }

    /// <summary>Bearing and tilting in the flange, and the screw's bending across the board, N.</summary>
    public static IReadOnlyList<MechanismResult> InShear(SteelStudScrewInput s, Trace? trace = null)
    {
        var results = new List<MechanismResult> { Bearing(s, trace), OwnSteel.ScrewShear(s.Root, s.ScrewFu, trace) };
        if (s.Gap > 0) results.Add(LeverArm.Shear(s.Root, s.ScrewFu, s.Gap, 0, 0, trace));
        return results;
    }

    public static IReadOnlyList<MechanismResult> InTension(SteelStudScrewInput s, Trace? trace = null) => [Tension(s, trace), OwnSteel.ScrewTension(s.Root, s.ScrewFu, trace)];

    private static MechanismResult Bearing(SteelStudScrewInput s, Trace? trace)
    {
        var en = s.Set == RuleSet.Eurocode ? Table8_2.Bearing.Evaluate([s.TStud, Max(s.Plate, s.TStud), s.D, s.Fu], trace) : default;
        if (en.Covered) return Result("bearing_steel", en.Value, 1.25, Table8_2.Bearing.Clause, s with { Restrained = true }, trace);
        if (Refused(s)) return MechanismResult.None("bearing_steel", en.Why!);
        var aisi = SectionJ4.Shear.Evaluate([s.Plate, s.TStud, s.D, s.Fu, s.Fu], trace);
        return aisi.Covered ? Result("bearing_steel", aisi.Value, Margin(s), SectionJ4.Shear.Clause, s with { Restrained = true }, trace) : MechanismResult.None("bearing_steel", aisi.Why!);
    }

    private static bool Refused(SteelStudScrewInput s) => s.Set == RuleSet.Eurocode && !s.StandIns.HasFlag(StandIns.Aisi);

    // AISI: 1/phi against factored actions, Omega against actions counted once.
    private static double Margin(SteelStudScrewInput s) => s.Set == RuleSet.UnitedStates ? AllowableStress.Omega : 2;

    private static MechanismResult Result(string mechanism, double R_k, double gamma_M, string clause, SteelStudScrewInput s, Trace? trace, params Reason[] marks)
    {
        double k_twist = s.Restrained ? trace.LookUp("k_twist", 1, "", "flange held") : Factors.Value("flange_twist", "k_twist", "", trace);
        double design = s.Set == RuleSet.UnitedStates ? Allowable(k_twist, R_k, gamma_M, trace)
            : trace.Step("R_d", k_twist * R_k / gamma_M, "N", clause, [In.Of(k_twist), In.Of(R_k), In.Of(gamma_M)]);
        double V = Factors.Value("variation_thin_steel", "V", "", trace), mean = k_twist * Factors.Mean(R_k, V, trace);
        return new(mechanism, design, Basis.Rule, clause, mean, V, s.Restrained ? marks : [.. marks, new Reason("flange_twists")])
        {
            Level = s.Set == RuleSet.UnitedStates ? Level.Allowable : Level.Design,
        };
    }

    private static double Allowable(double k_twist, double P_n, double Omega, Trace? trace) =>
        trace.Step("P_a", k_twist * P_n / Omega, "N", SectionJ4.Allowable.Clause, [In.Of(k_twist), In.Of(P_n), In.Of(Omega)]);
}
