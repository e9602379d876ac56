namespace Pattress.Strength.Standards.EN_1992_4_2018;

/// <summary>The rules of concrete and of interaction.</summary>
public static class Section7_2_ConcreteRules
{
    private const string Head = "EN 1992-4:2018 ";
    private static readonly Parameter Fck = Input.Stress("f_ck", 12, 90), Hef = Input.Length("h_ef", 40, 500), Cracked = Parameter.Choice("cracked", "no", "yes") with { Default = 1 },
        BetaN = Input.Number("beta_N", 0, 10), BetaV = Input.Number("beta_V", 0, 10);

    private static Rule Of(string id, string clause, string title, string unit, RuleFunction function, params Parameter[] inputs) =>
        new("en1992_4." + id, "EN 1992-4", "2018", Head + clause, title, unit, function, inputs);

    public static readonly Rule ConeBase = Of("7_2_1_4.cone_base", "7.2.1.4 (7.2)", "Concrete cone of one fixing", "N",
        (x, t) => Section7_2_Concrete.N0_Rk_c(x[0], x[1], x[2], t), Fck, Hef, Cracked);

    public static readonly Rule Cone = Of("7_2_1_4.cone", "7.2.1.4 (7.1)", "Concrete cone with a neighbour and an edge", "N",
        (x, t) => Section7_2_Concrete.N_Rk_c(x[0], x[1], x[2], x[3], x[4], t), Fck, Hef, Cracked, Input.Length("s", 0, 5000, 0), Input.Length("c", 15, 10000, 10000));

    public static readonly Rule AreaRatio = Of("7_2_1_4.area_ratio", "7.2.1.4 (7.3)", "Share of the cone's base", "",
        (x, t) => Section7_2_Concrete.AreaRatio(x[0], x[1], x[2], t), Hef, Input.Length("s", 0, 5000, 0), Input.Length("c", 15, 10000, 10000));

    public static readonly Rule EdgeFactor = Of("7_2_1_4.psi_s", "7.2.1.4(4)", "Disturbance by an edge", "",
        (x, t) => Section7_2_Concrete.psi_s_N(x[0], x[1], t), Hef, Input.Length("c", 15, 10000));

    public static readonly Rule PryOut = Of("7_2_2_4.pry_out", "7.2.2.4 (7.39)", "Pry-out", "N",
        (x, t) => Section7_2_Concrete.V_Rk_cp(x[0], x[1], t), Input.Force("N_Rk_c"), Hef);

    public static readonly Rule Edge = Of("7_2_2_5.edge_base", "7.2.2.5 (7.41)", "Edge break-out of one fixing", "N",
        (x, t) => Section7_2_Concrete.V0_Rk_c(x[0], x[1], x[2], x[3], x[4], t),
        Fck, Input.Length("d_nom", 4, 24), Input.Length("l_f", 20, 300), Input.Length("c_1", 15, 2000), Cracked);

    public static readonly Rule SteelInteraction = Of("7_2_3.steel", "7.2.3.1 (7.54)", "Tension and shear, steel", "", (x, t) => Section7_2_Concrete.SteelTogether(x[0], x[1], t), BetaN, BetaV);

    public static readonly Rule ConcreteInteraction = Of("7_2_3.concrete", "7.2.3.1 (7.55)", "Tension and shear, other than steel", "",
        (x, t) => Section7_2_Concrete.ConcreteTogether(x[0], x[1], t), BetaN, BetaV);

    public static readonly Rule LinearInteraction = Of("7_2_3.linear", "7.2.3.1 (7.56)", "Tension and shear, linear, as a share of 1.2", "",
        (x, t) => Section7_2_Concrete.LinearTogether(x[0], x[1], t), BetaN, BetaV);

    internal static readonly Rule[] All = [ConeBase, Cone, AreaRatio, EdgeFactor, PryOut, Edge, SteelInteraction, ConcreteInteraction, LinearInteraction];
}
