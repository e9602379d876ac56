using Pattress.Strength.Standards.EN_1992_4_2018;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>
/// Shear that bends the fixing across board and gap: EN 1992-4 7.2.2.3.2. A sleeve that spans the gap keeps the board from being drawn
/// back; it does not remove the arm, which ends at the masonry plus what is crushed of it.
/// </summary>
public static class LeverArm
{
    /// <summary>
    /// Shear with lever arm, N. root: core diameter (mm); fUk (N/mm²); reach: bracket to masonry (mm); crushed: allowance for crushed
    /// masonry (mm); n: N_Ed/N_Rd,s of the steel. The fixture is taken to turn (alpha_M = 1).
    /// </summary>
    public static MechanismResult Shear(double root, double fUk, double reach, double crushed, double n = 0, Trace? trace = null, params IReadOnlyList<Reason> marks)
    {
        double A_s = trace.Step("A_s", PI / 4 * Pow(root, 2), "mm²", "geometry", [In.Of(root)]);
        double M0 = Section7_2_Steel.M0_Rk_s(A_s, fUk, trace);
        double e_1 = trace.Step("e_1", reach + crushed, "mm", "EN 1992-4:2018 6.2.2.3, with what is crushed of the masonry", [In.Of(reach), In.Of(crushed)]);
        double l_a = Section7_2_Steel.l_a(e_1, root, 0, trace);
        var R = Section7_2_Steel.ShearWithArm.Evaluate([M0, 1, l_a, n], trace);
        if (R.Why is { } why) return MechanismResult.None("shear_arm", why);
        double R_k = R.Value, f_yk = 0.8 * fUk, gamma_Ms = Section7_2_Steel.gamma_Ms_shear(f_yk, fUk, trace);
        double R_d = trace.Step("R_d", R_k / gamma_Ms, "N", Section7_2_Steel.ShearWithArm.Clause, [In.Of(R_k), In.Of(gamma_Ms)]);
        double V = Factors.Value("variation_steel", "V", "", trace);
        return new("shear_arm", R_d, Basis.Rule, Section7_2_Steel.ShearWithArm.Clause, R_k * Exp(1.645 * V), V, marks);
    }
}
