using Pattress.Actions.Beams;
using Pattress.Working;

namespace Pattress.Strength.Standards.EN_1995_1_1_2004;

/// <summary>EN 1995-1-1:2004+A1:2008, Tables 3.1 and 3.2 for boards of wood, and 2.2.3: lasting deflection. From memory: no document seen.</summary>
public static class Section3_Panels
{
    private const string Document = "EN 1995-1-1", Edition = "2004+A1:2008", Head = "EN 1995-1-1:2004+A1:2008 ";
    private static readonly StandardTable Panels = StandardTable.Read("en1995_1_1_k_mod_panels");
    private static readonly double?[][] KMod = [.. new[] { "permanent", "long", "medium", "short", "instantaneous" }.Select(Panels.MaybeColumn)];

    private static readonly string[] Boards = [.. Panels.Words], KModClauses = [.. Panels.Words.Select(w => Head + "Table 3.1, " + w)];
    private static readonly string[] KDefClauses = [.. Creep.Materials.Select(m => Head + "Table 3.2, " + m)];

    private static RuleResult Modification(double material, double duration, Trace? trace) => KMod[(int)duration][(int)material] is { } k
        ? trace.LookUp("k_mod", k, "", KModClauses[(int)material])
        : new NotCovered(Head + "Table 3.1", "no_entry", Said.Words(Boards[(int)material]));

    private static RuleResult Deformation(double material, double service_class, Trace? trace)
    {
        string word = Creep.Materials[(int)material];
        return Creep.Factor(word, (int)service_class) is { } k
            ? trace.LookUp("k_def", k, "", KDefClauses[(int)material]) : new NotCovered(Head + "Table 3.2", "no_entry", Said.Words(word));
    }

    /// <summary>(2.3), (2.4): final deflection from what permanent and variable actions give at once, mm.</summary>
    internal static double u_fin(double u_inst_G, double u_inst_Q, double psi_2, double k_def, Trace? trace)
    {
        double u_fin_G = trace.Step("u_fin_G", u_inst_G * (1 + k_def), "mm", Head + "(2.3)", [In.Of(u_inst_G), In.Of(k_def)]);
        double u_fin_Q = trace.Step("u_fin_Q", u_inst_Q * (1 + psi_2 * k_def), "mm", Head + "(2.4)", [In.Of(u_inst_Q), In.Of(psi_2), In.Of(k_def)]);
        return trace.Step("u_fin", u_fin_G + u_fin_Q, "mm", Head + "(2.2)", [In.Of(u_fin_G), In.Of(u_fin_Q)]);
    }

    public static readonly Rule KModPanels = new("en1995_1_1.3_1.k_mod_panels", Document, Edition, Head + "3.1.3 Table 3.1", "Modification for duration, boards of wood by service class", "",
        (x, t) => Modification(x[0], x[1], t), Parameter.Choice("board", [.. Panels.Words]), Parameter.Choice("duration", "permanent", "long", "medium", "short", "instantaneous"));

    public static readonly Rule KDef = new("en1995_1_1.3_2.k_def", Document, Edition, Head + "3.1.4 Table 3.2", "Deformation factor for creep", "",
        (x, t) => Deformation(x[0], x[1], t), Parameter.Choice("material", [.. Creep.Materials]), Input.Whole("service_class", 1, 3));

    public static readonly Rule FinalDeflection = new("en1995_1_1.2_2_3.final_deflection", Document, Edition, Head + "2.2.3 (2.2) to (2.4)", "Final deflection with creep", "mm",
        (x, t) => u_fin(x[0], x[1], x[2], x[3], t), Input.Length("u_inst_G", 0, 1e4), Input.Length("u_inst_Q", 0, 1e4, 0), Input.Number("psi_2", 0, 1, 0.3), Input.Number("k_def", 0, 10));

    public static IReadOnlyList<Rule> Rules => [KModPanels, KDef, FinalDeflection];
}
