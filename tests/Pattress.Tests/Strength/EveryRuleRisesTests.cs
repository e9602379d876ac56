using Pattress.Strength;

namespace Pattress.Tests.Strength;

/// <summary>Every rule whose result is a force or a strength rises with diameter, depth, thickness, density and strength, or stands in the list below with its reason.</summary>
public class EveryRuleRisesTests
{
    private static readonly HashSet<string> Sizes =
        ["d", "D", "d_w", "d_h", "d_nom", "t", "t_1", "t_2", "t_sup", "t_c", "l_ef", "l_w", "l_m", "l_s", "p", "h_ef", "c", "c_1", "A_s", "rho_k", "G", "f_u", "f_ub", "f_uk", "F_u1", "F_u2", "f_h", "f_h_1", "M_y", "F_em", "F_es", "F_yb", "f_ck", "f_b", "f_m", "K", "R_k", "P_n", "F_Rk", "W"];

    private const string QuarterInch = "Table 12.3.1B: R_d steps up at 1/4 in and with the angle", LessOfIt = "8.3.2(7): the same penetration is fewer diameters of a thicker nail";

    private const string OneMode = "a yield mode alone may fall where it does not govern; the least of all modes does not";

    /// <summary>Where it must fall, or may, and why.</summary>
    private static readonly Dictionary<string, string> Falls = new()
    {
        ["en1995_1_1.8_3_1.embedment d"] = "(8.15): a thicker fastener has a lower stress under it",
        ["en1995_1_1.8_3_1.embedment_drilled d"] = "(8.16): the same",
        ["en1995_1_1.8_7_2.withdrawal_strength d"] = "(8.39): a strength per area",
        ["en1995_1_1.8_7_2.withdrawal_strength l_ef"] = "(8.39): a strength per area",
        ["en1995_1_1.8_2_3.between t"] = "between two given values, whichever is larger",
        ["en1995_1_1.8_2_3.between d"] = "between two given values, whichever is larger",
        ["en1992_4.7_2_2_5.edge c_1"] = "a share of a given value",
        ["aisi_s100.j4_3_1.shear t_1"] = "J4.3.1: beside a thicker head sheet the thin one behind tilts the screw",
        ["plates.circle.moment_simple t"] = "moment of a given load: Westergaard's radius grows",
        ["plates.circle.moment_clamped t"] = "moment of a given load: Westergaard's radius grows",
        ["pren1995_1_1.11_2_2_3.withdrawal_strength d"] = "a strength per area",
        ["mechanics.nominal_shear D"] = "stress of a given force",
        ["mechanics.nominal_shear t"] = "stress of a given force",
        ["plates.strip.stress t"] = "stress of a given moment",
        ["plates.strip.moment_x c"] = "moment of a given load: a wider patch bends less",
        ["plates.strip.moment_y c"] = "moment of a given load: a wider patch bends less",
        ["en520.table_4.modulus_of_rupture t"] = "stress from a load that rises less than the square",
        ["en1992_4.7_2_2_3.steel_shear f_uk"] = "7.2.2.3.1: k_6 steps from 0.6 to 0.5 above 500 N/mm²",
        ["en1995_1_1.8_2_2.mode_c t_1"] = OneMode,
        ["en1995_1_1.8_2_2.mode_c t_2"] = OneMode,
        ["en1995_1_1.8_2_2.mode_d t_1"] = OneMode,
        ["en1995_1_1.8_2_2.mode_e t_2"] = OneMode,
        ["en1995_1_1.8_2_3.thick_mode_d t_1"] = OneMode,
        ["nds.12_3.mode_ii l_m"] = OneMode,
        ["nds.12_3.mode_ii l_s"] = OneMode,
        ["nds.12_3.mode_iii_m l_m"] = OneMode,
        ["nds.12_3.mode_iii_s l_s"] = OneMode,
        ["nds.12_3.lateral D"] = QuarterInch,
        ["nds.12_3.mode_i_m D"] = QuarterInch,
        ["nds.12_3.mode_i_s D"] = QuarterInch,
        ["nds.12_3.mode_ii D"] = QuarterInch,
        ["nds.12_3.dowel_bearing_large D"] = "Table 12.3.3: across the grain a thicker dowel has a lower stress under it",
        ["en1995_1_1.8_5_1.embedment d"] = "(8.32), (8.33): the same",
        ["en1995_1_1.8_3_2.nail_withdrawal d"] = LessOfIt,
        ["en1995_1_1.8_3_2.threaded_nail_withdrawal d"] = LessOfIt,
        ["nds.i_1.bending_yield D"] = "Table I1: thicker wire is softer",
    };

    public static TheoryData<string> Pairs => [.. RuleBook.All.Where(r => r.Unit is "N" or "N/mm" or "N/mm²" && !r.Id.StartsWith("bs8539", StringComparison.Ordinal))
        .SelectMany(r => r.Parameters.Where(p => Sizes.Contains(p.Symbol) && p.Words.Count == 0).Select(p => r.Id + " " + p.Symbol))];

    [Theory]
    [MemberData(nameof(Pairs))]
    public void Rises_or_says_why(string pair)
    {
        string[] p = pair.Split(' ');
        var rule = RuleBook.Find(p[0])!;
        int i = rule.Parameters.ToList().FindIndex(q => q.Symbol == p[1]), compared = 0, fell = 0;
        var random = new Random(11);
        foreach (double[] x in Samples.Of(rule, 500))
        {
            double[] y = [.. x];
            y[i] = Samples.Draw(rule.Parameters[i], random);
            var (less, more) = x[i] <= y[i] ? (rule.Evaluate(x), rule.Evaluate(y)) : (rule.Evaluate(y), rule.Evaluate(x));
            if (!less.Covered || !more.Covered) continue;
            compared++;
            if (more.Value < less.Value * (1 - 1e-12)) fell++;
        }
        Assert.True(compared > 10, "nothing to compare");
        if (Falls.ContainsKey(pair)) Assert.True(fell > 0, "never falls: take it out of the list");
        else Assert.True(fell == 0, $"fell in {fell} of {compared}");
    }

    [Fact]
    public void The_list_names_rules_that_are_there() => Assert.All(Falls, f => Assert.Contains(f.Key, Pairs.Select(r => r.Data)));
}
