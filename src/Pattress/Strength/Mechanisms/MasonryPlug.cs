using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Mechanisms;

/// <summary>Masonry and its like, as the plugs' table has them.</summary>
public enum Masonry { Concrete, DenseBlock, Brick, HollowBrick, AeratedBlock, Dab }

/// <summary>A plug and screw in masonry; lengths in mm.</summary>
/// <param name="D">The plug's diameter, which is the hole's.</param>
/// <param name="Depth">Of the plug in the masonry.</param>
/// <param name="Root">Core diameter of the screw, or of the steel core of a sleeved fixing.</param>
/// <param name="Reach">From the bracket to the masonry: board, dab gap, skim.</param>
/// <param name="Edge">To the nearest edge of the masonry.</param>
/// <param name="InJoint">True: the hole is in mortar; false: it is in the unit; null: nobody knows.</param>
/// <param name="AssessedRk">Characteristic pull-out of the product's assessment in this masonry, N; null where there is none.</param>
/// <param name="SiteTestRk">Characteristic pull-out of tests on this wall, N; goes before everything else.</param>
/// <param name="Sleeve">A sleeve spans the gap: the board is not drawn back. The lever arm stays.</param>
public sealed record MasonryPlugInput(
    Masonry Base, double D, double Depth, double Root, double Reach, Duration Duration, double Edge = 1000, bool? InJoint = null,
    double? AssessedRk = null, double? SiteTestRk = null, bool Sleeve = false, double ScrewFu = 500);

/// <summary>
/// Plug and screw in masonry: rests on tests on the wall, else on the product's assessment, else on assumed values. Pull-out is never
/// derived from the masonry's compressive strength. Shear across board and gap bends the screw, sleeve or no sleeve.
/// </summary>
public static class MasonryPlug
{
    private static readonly CsvTable.Row[] Rows = [.. CsvTable.FromEmbedded("data/strength/plug_pull_out.csv").Rows];
    private static readonly double[] Units = [.. Rows.Select(r => r.Number("n_rk_n"))], Joints = [.. Rows.Select(r => r.Number("joint_n_rk_n"))], Shares = [.. Rows.Select(r => r.Number("joint_share"))];

    public static IReadOnlyList<MechanismResult> InTension(MasonryPlugInput p, Trace? trace = null) => [PullOut(p, trace), OwnSteel.ScrewTension(p.Root, p.ScrewFu, trace)];

    /// <summary>Pull-out, N.</summary>
    public static MechanismResult PullOut(MasonryPlugInput p, Trace? trace = null)
    {
        var (N_Rk, basis, clause, factor) = Characteristic(p, trace);
        double k_creep = Factors.OnCreep(p.Duration, trace), k_edge = Edge(p, trace), gamma_M = Factors.Value(factor, "gamma_M", "", trace);
        double N_Rd = trace.Step("N_Rd", N_Rk * k_creep * k_edge / gamma_M, "N", basis == Basis.Assumed ? "mechanics: pull-out over its factors" : clause, [In.Of(N_Rk), In.Of(k_creep), In.Of(k_edge), In.Of(gamma_M)]);
        double V = Factors.Value("variation_masonry", "V", "", trace);
        return new("pull_out_masonry", N_Rd, basis, clause, Factors.Mean(N_Rk * k_edge, V, trace), V, Marks(p));
    }

    /// <summary>Shear: the screw bends across the gap, and bears on the masonry, which assumed values give as a multiple of pull-out.</summary>
    public static IReadOnlyList<MechanismResult> InShear(MasonryPlugInput p, double shareOfTension = 0, Trace? trace = null)
    {
        var pull = PullOut(p, trace);
        double N_Rd = pull.Design.Value, k_V = Factors.Value("plug_shear_over_tension", "k_V", "", trace);
        double V_Rd = trace.Step("V_Rd", k_V * N_Rd, "N", "mechanics: shear over pull-out", [In.Of(k_V), In.Of(N_Rd)]);
        var bearing = pull with { Mechanism = "bearing_masonry", Design = V_Rd, MeanN = k_V * pull.MeanN, Basis = Basis.Assumed, Clause = "assumed" };
        if (p.Reach <= 0) return [bearing, OwnSteel.ScrewShear(p.Root, p.ScrewFu, trace)];
        double crushed = Crushed(p.Root, trace);
        return [bearing, LeverArm.Shear(p.Root, p.ScrewFu, p.Reach, crushed, Min(Max(shareOfTension, 0), 1), trace, p.Sleeve ? [new Reason("sleeve_keeps_arm", Said.Length(p.Reach))] : [])];
    }

    private static double Crushed(double root, Trace? trace)
    {
        double k = Factors.Value("crushed_masonry_diameters", "k", "", trace);
        return trace.Step("crushed", k * root, "mm", "mechanics: what is crushed of the masonry", [In.Of(k), In.Of(root)]);
    }

    private static (double N_Rk, Basis Basis, string Clause, string Factor) Characteristic(MasonryPlugInput p, Trace? trace)
    {
        if (p.SiteTestRk is { } tested) return (trace.LookUp("N_Rk", tested, "N", "tests on this wall"), Basis.Trial, "tests on this wall", "plug_site_tests_gamma_m");
        if (p.AssessedRk is { } assessed) return (trace.LookUp("N_Rk", assessed, "N", "assessment of the product"), Basis.Rule, "assessment of the product", "plug_assessed_gamma_m");
        double N_0 = Mixture.Fractile(Units[(int)p.Base], Joints[(int)p.Base], p.InJoint is { } known ? known ? 1 : 0 : Shares[(int)p.Base], Factors.Value("variation_masonry", "V", "", trace), trace);
        double d = p.D, h = p.Depth;
        return (trace.Step("N_Rk", N_0 * Min(d / 8, 1.25) * Min(h / 40, 1.5), "N", Factors.Assumed + "plug_by_size", [In.Of(N_0), In.Of(d), In.Of(h)]), Basis.Assumed, "assumed", "plug_gamma_m");
    }

    private static double Edge(MasonryPlugInput p, Trace? trace)
    {
        double c = p.Edge, c_full = Factors.Value("plug_edge_full_mm", "c_full", "mm", trace), k_least = Factors.Value("plug_edge_least", "k_least", "", trace);
        return trace.Step("k_edge", Min(k_least + (1 - k_least) * c / c_full, 1), "", "mechanics: edge of the masonry", [In.Of(c), In.Of(c_full), In.Of(k_least)]);
    }

    private static IReadOnlyList<Reason> Marks(MasonryPlugInput p) =>
        p.InJoint is null && p.SiteTestRk is null && Shares[(int)p.Base] > 0 ? [new Reason("mortar_joint_unknown", Said.Percent(Shares[(int)p.Base]))] : [];
}
