using CsCheck;
using Pattress.Strength;
using Pattress.Strength.Mechanisms;

namespace Pattress.Tests.Strength;

/// <summary>Strength never falls with diameter, penetration, density or thickness.</summary>
public class MonotoneTests
{
    public static TheoryData<string, string> Pairs => new()
    {
        { "en1995_1_1.8_7_2.withdrawal", "d" }, { "en1995_1_1.8_7_2.withdrawal", "l_ef" }, { "en1995_1_1.8_7_2.withdrawal", "rho_k" },
        { "pren1995_1_1.11_2_2_3.withdrawal", "d" }, { "pren1995_1_1.11_2_2_3.withdrawal", "l_w" }, { "pren1995_1_1.11_2_2_3.withdrawal", "rho_k" },
        { "en14592.declared.withdrawal", "d" }, { "en14592.declared.withdrawal", "l_ef" }, { "en14592.declared.withdrawal", "rho_k" },
        { "en1995_1_1.8_2_2.single_shear", "d" }, { "en1995_1_1.8_2_2.single_shear", "f_h_1" }, { "en1995_1_1.8_2_2.single_shear", "M_y" }, { "en1995_1_1.8_2_2.single_shear", "F_ax" },
        { "en1995_1_1.8_2_3.thin_plate", "t_1" }, { "en1995_1_1.8_2_3.thick_plate", "t_1" }, { "en1995_1_1.8_2_3.thick_plate", "d" },
        { "en1993_1_3.table_8_2.bearing", "d" }, { "en1993_1_3.table_8_2.bearing", "t" }, { "en1993_1_3.table_8_2.pull_out", "d" }, { "en1993_1_3.table_8_2.pull_out", "t_sup" },
        { "aisi_s100.j4_3_1.shear", "d" }, { "aisi_s100.j4_4_1.pull_out", "d" }, { "aisi_s100.j4_4_1.pull_out", "t_c" }, { "aisi_s100.j4_4_2.pull_over", "d_w" },
        { "nds.12_2.wood_screw", "D" }, { "nds.12_2.wood_screw", "G" }, { "nds.12_2.lag_screw", "D" }, { "nds.12_3.lateral", "F_em" },
        { "en1992_4.7_2_1_4.cone", "h_ef" }, { "en1992_4.7_2_1_4.cone", "c" }, { "en1992_4.7_2_2_5.edge_base", "c_1" }, { "en1992_4.7_2_2_3.bending", "A_s" },
        { "plates.punching_area", "D" }, { "plates.punching_area", "t" }, { "en520.table_4.breaking_load", "t" },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void A_rule_never_falls(string id, string symbol)
    {
        var rule = RuleBook.Find(id)!;
        int i = rule.Parameters.ToList().FindIndex(p => p.Symbol == symbol), compared = 0;
        var random = new Random(7);
        foreach (double[] x in Samples.Of(rule, 400))
        {
            double[] y = [.. x];
            y[i] = Samples.Draw(rule.Parameters[i], random);
            var (less, more) = x[i] <= y[i] ? (rule.Evaluate(x), rule.Evaluate(y)) : (rule.Evaluate(y), rule.Evaluate(x));
            if (!less.Covered || !more.Covered) continue;
            compared++;
            Assert.True(more.Value >= less.Value * (1 - 1e-12), $"{Math.Min(x[i], y[i]):R}: {less.Value:R}, {Math.Max(x[i], y[i]):R}: {more.Value:R}");
        }
        Assert.True(compared > 20);
    }

    private static void Rises(Func<double, IEnumerable<MechanismResult>> of, double from, double to) =>
        Gen.Select(Gen.Double[from, to], Gen.Double[from, to]).Sample(
            (a, b) => Least(of(Math.Max(a, b))) >= Least(of(Math.Min(a, b))) * (1 - 1e-12), iter: 400);

    // Not covered counts as nothing at all.
    private static double Least(IEnumerable<MechanismResult> results)
    {
        var all = results.ToList();
        return all.All(r => r.Design.Covered) ? all.Min(r => r.Design.Value) : 0;
    }

    [Fact]
    public void Wood_screws_in_tension()
    {
        var s = MechanismTests.Screw with { Edge = 60 };
        Rises(d => WoodScrew.InTension(s with { D = d, Root = 0.65 * d, Thread = 55 + d }), 2.2, 10);
        Rises(l => WoodScrew.InTension(s with { Thread = l }), 8, 120);
        Rises(l => WoodScrew.InTension(s with { D = 6, Root = 4, Thread = l }), 8, 120);
        Rises(rho => WoodScrew.InTension(s with { RhoK = rho }), 290, 600);
    }

    [Fact]
    public void Wood_screws_in_shear()
    {
        var s = MechanismTests.Screw with { Edge = 60 };
        foreach (double gap in new[] { 0, 12.5 })
        {
            Rises(d => WoodScrew.InShear(s with { Gap = gap, D = d, Root = 0.65 * d, Plate = 0, Thread = 55 + d }), 3, 8);
            Rises(l => WoodScrew.InShear(s with { Gap = gap, Thread = l }), 26, 120);
            Rises(rho => WoodScrew.InShear(s with { Gap = gap, RhoK = rho }), 290, 600);
        }
    }

    [Fact]
    public void Board()
    {
        var b = MechanismTests.Toggle;
        Rises(t => Pattress.Strength.Mechanisms.Board.InTension(b with { Thickness = t }), 9, 12.4);
        Rises(w => Pattress.Strength.Mechanisms.Board.InTension(b with { Bearing = w }), 5.1, 120);
        Rises(e => Pattress.Strength.Mechanisms.Board.InTension(b with { Edge = e }), 5, 300);
        Rises(d => Pattress.Strength.Mechanisms.Board.InShear(b with { Shank = d }), 3, 25);
    }

    [Fact]
    public void Plugs_and_thin_steel()
    {
        Rises(d => MasonryPlug.InTension(MechanismTests.Plug with { Depth = d }), 10, 80);
        Rises(d => MasonryPlug.InTension(MechanismTests.Plug with { D = d }), 5, 12);
        Rises(r => MasonryPlug.InShear(MechanismTests.Plug with { Root = r }), 2, 6);
        Rises(t => SteelStudScrew.InTension(MechanismTests.Stud with { TStud = t, Restrained = true }), 0.45, 0.89);
        Rises(t => SteelStudScrew.InShear(MechanismTests.Stud with { TStud = t }), 0.45, 1.5);
    }
}
