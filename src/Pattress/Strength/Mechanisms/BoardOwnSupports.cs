using Pattress.Working;

namespace Pattress.Strength.Mechanisms;

/// <summary>The board leaving what holds it: heads of its screws, bond of its dabs, bond of its foam. Assumed numbers throughout.</summary>
public static class BoardOwnSupports
{
    /// <summary>Pull at which the board leaves its own supports near the fixing, N.</summary>
    public static MechanismResult Leaving(BoardInput b, Trace? trace = null)
    {
        double R_k = b.Support switch
        {
            BoardSupport.Dabs => Bond("dab_bond_mpa", Factors.Value("dab_area_mm2", "A", "mm²", trace), trace),
            BoardSupport.Foam => Bond("foam_bond_mpa", Foam(trace), trace),
            _ => Screws(b, trace),
        };
        double n = b.Group, R_1 = trace.Step("R_1", R_k / n, "N", "shared by the group", [In.Of(R_k), In.Of(n)]);
        return Board.Finish("board_supports", R_1, b, trace) with { Basis = Basis.Assumed, Clause = "assumed" };
    }

    private static double Foam(Trace? trace)
    {
        double s = Factors.Value("foam_spread_mm", "s", "mm", trace);
        return trace.Step("A", s * s, "mm²", "geometry", [In.Of(s)]);
    }

    private static double Screws(BoardInput b, Trace? trace)
    {
        double F = BoardStrength.NailPull(b.Thickness, trace);
        double n = Factors.Value("support_screws", "n", "", trace), k = Factors.Value("support_screw_share", "k", "", trace);
        return trace.Step("R_k", k * n * F, "N", "mechanics: heads of the board's own screws", [In.Of(k), In.Of(n), In.Of(F)]);
    }

    private static double Bond(string key, double A, Trace? trace)
    {
        double f_bond = Factors.Value(key, "f_bond", "N/mm²", trace);
        return trace.Step("R_k", f_bond * A, "N", "mechanics: bond", [In.Of(f_bond), In.Of(A)]);
    }
}
