using Pattress.Jobs;
using static System.Math;

namespace Pattress.Tests.Planning;

/// <summary>
/// Two things from weight to utilisation by hand: each number is worked out here from the entries and compared with the plan. Of the
/// wall only the thickness of its face is taken from the plan; the forces under the plate are found by bisection on its equilibrium.
/// </summary>
public class WholeChainTests
{
    private const double G = 9.80665, Exact = 1e-6;

    /// <summary>Weights of EN 1991-1-1 Annex A as the data file has them: glass 2.5 kg/m² a mm, frame 5 kg/m², chipboard 8 kN/m³.</summary>
    private const double Glass = 2.5, Frame = 5, Chipboard = 8;

    private static ItemAnswer Item(Fixture fixture) => DemoHouse.Item(DemoHouse.Job with { Fixtures = [fixture] }, fixture.Id);

    private static double Value(BracketAnswer b, string symbol) => b.Working.Last(s => s.Symbol == symbol).Value;

    private static void Same(double expected, double actual) => Assert.Equal(expected, actual, Exact * Abs(expected));

    /// <summary>
    /// Statics of a rigid plate of width b from -h/2 to h/2 under a moment M alone, on springs k at heights y and a bed that only presses: pulls of the
    /// springs and the contact force. The gap is u0 + u2 y; contact lies below the line where it is 0.
    /// </summary>
    private static (double[] Pulls, double Contact) Plate(double b, double h, double[] y, double k, double bed, double M)
    {
        double low = -h / 2;
        // For a slope of 1 and the line of contact at c: springs pull k (y - c), the bed presses bed (c - low)² b / 2 at a third of its height.
        double Sum(double c) => y.Sum(at => k * Max(at - c, 0)) - bed * b * (c - low) * (c - low) / 2;
        double a = low, z = h / 2;
        for (int i = 0; i < 200; i++) (a, z) = Sum((a + z) / 2) > 0 ? ((a + z) / 2, z) : (a, (a + z) / 2);
        double line = (a + z) / 2, contact = bed * b * (line - low) * (line - low) / 2;
        double moment = y.Sum(at => k * Max(at - line, 0) * at) - contact * (low + (line - low) / 3);
        double slope = M / moment;
        return ([.. y.Select(at => slope * k * Max(at - line, 0))], slope * contact);
    }

    /// <summary>The worst of the interval's four corners, per spring.</summary>
    private static (double[] Pulls, double Contact) Worst(double b, double h, double[] y, (double Low, double High) k, (double Low, double High) bed, double M)
    {
        (double[] Pulls, double Contact)[] all = [Plate(b, h, y, k.Low, bed.Low, M), Plate(b, h, y, k.Low, bed.High, M), Plate(b, h, y, k.High, bed.Low, M), Plate(b, h, y, k.High, bed.High, M)];
        return ([.. y.Select((_, i) => all.Max(c => c.Pulls[i]))], all.Max(c => c.Contact));
    }

    /// <summary>A mirror of 900 by 700 mm on two hooks on the plastered brick of the demo house, nobody pulling.</summary>
    [Fact]
    public void A_mirror_on_brick()
    {
        var item = Item(new Fixture
        {
            Id = "m", Wall = "party", What = "mirror", At = new(900, 1600),
            Numbers = new Dictionary<string, double> { ["width_mm"] = 900, ["height_mm"] = 700, ["glass_mm"] = 4, ["projection_mm"] = 15, ["pull_n"] = 0 },
            Words = new Dictionary<string, string> { ["hang"] = "two_hooks" },
        });
        var b = item.Brackets[0];
        Assert.Equal(("knotting_plug.8x40", 1, "hangs"), (b.Fixing, b.Count, b.LoadCase));

        // Weight: 0.9 x 0.7 x (2.5 x 4 + 5) = 9.45 kg; half of it on each hook, times 1.35 (EN 1990 (6.10), Table A1.2(B)).
        Same(9.45, item.MassKg);
        double V = 1.35 * 9.45 * G / 2, M = V * 15;
        Same(V, Value(b, "V_Ed"));

        // Hook 30 x 50 x 2 mm with its hole 10 mm above the middle; plug 100 to 600 N/mm, brick 50 to 400 N/mm³; prying 1.2 at 2 mm of steel.
        double T = 1.2 * Worst(30, 50, [10], (100, 600), (50, 400), M).Pulls[0];
        Same(T, Value(b, "T_Ed"));

        // Pull-out: 5 % fractile of 1000 N in brick (0.8) and 500 N in mortar (0.2), V = 0.3, by size and depth, creep 0.7, factor 2 (all assumed).
        double face = b.Section.Layers.Where(l => l.Material == "plaster").Sum(l => l.ThicknessMm), depth = Min(40, 40 - 2 - face);
        double N_0 = Fractile(1000, 500, 0.2, 0.3), N_Rd = N_0 * (8.0 / 8) * (depth / 40) * 0.7 / 2;
        Assert.Equal(N_Rd, Value(b, "N_Rd"), 2e-6 * N_Rd);
        // The plug steadies the screw through 15 mm of plaster, so shear does not bend it: bearing 1.2 N_Rd, or the core in shear,
        // 0.6 x 500 x pi/4 (0.68 x 4.5)² / 1.25 = 1765.0 N (EN 1993-1-8 Table 3.4), which is more.
        Assert.True(face < 15 && 0.6 * 500 * PI / 4 * 3.06 * 3.06 / 1.25 > 1.2 * N_Rd);

        // Linear interaction.
        Assert.Equal(T / N_Rd + V / (1.2 * N_Rd), b.Utilisation, 2e-6);
    }

    /// <summary>A shelf of 700 by 220 mm with 30 kg/m on two brackets on studs of the demo house, nobody leaning.</summary>
    [Fact]
    public void A_shelf_bracket_in_a_stud()
    {
        var item = Item(new Fixture
        {
            Id = "s", Wall = "bay", What = "shelf", At = new(3020, 1500), Brackets = [new(2820, 1500), new(3220, 1500)],
            Numbers = new Dictionary<string, double> { ["width_mm"] = 700, ["depth_mm"] = 220, ["load_kg_m"] = 30, ["pull_n"] = 0 },
        });
        var b = item.Brackets[0];
        Assert.Equal((1, "loaded"), (b.Count, b.LoadCase));

        // Own weight: board 8000/9.80665 x 0.7 x 0.22 x 0.018 kg, brackets 2 x 0.4 kg; half on each. Load 21 kg; left bracket at 150, right at 550 of 700 mm:
        // influence (550 - x)/400, on 0 to 550 alone 178.125 + 200 = 378.125 mm of 700 (loads on the spans that add).
        double own = (Chipboard * 1000 / G * 0.7 * 0.22 * 0.018 + 0.8) * G, load = 21 * G * 378.125 / 700;
        double F = 1.35 * own / 2 + 1.5 * load, V = F, M = F * 110;
        Same(V, Value(b, "V_Ed"));

        // Plate 30 x 150 x 3 mm, of its holes the one at 55 in use; screws 800 to 4000 N/mm, wall over timber 5 to 60 N/mm³; prying 1.1 at 3 mm.
        var (pulls, contact) = Worst(30, 150, [55], (800, 4000), (5, 60), M);
        double T = 1.1 * pulls[0];
        Same(T, Value(b, "T_Ed"));

        // Wood screw 5 x 70: thread in the wood less one diameter for the point.
        Assert.Equal("wood_screw.medium", b.Fixing);
        double face = b.Section.Layers.TakeWhile(l => l.Material != "timber").Sum(l => l.ThicknessMm), l = 70 - 3 - face - 5, rho = 310;
        // prEN 1995-1-1:2023 11.2.2.3, never more than EN 1995-1-1 (8.38) gives a screw of 6 mm; k_mod 0.7 (long term), gamma_M 1.3.
        double draft = 20 * Pow(rho / 350, 0.8) * Pow(5, -0.2) * 5 * l, cap = 0.52 * Pow(6, -0.5) * Pow(l, -0.1) * Pow(rho, 0.8) * 6 * l * 6 / 8;
        double T_Rd = 0.7 * Min(draft, cap) / 1.3;

        // Lateral: d_ef = 1.1 x 0.68 x 5 (8.7.1(2)), M_y (8.14) with 600 N/mm², f_h (8.15); across the board without and with its bearing of 6 N/mm² (assumed).
        double d = 1.1 * 0.68 * 5, M_y = 0.3 * 600 * Pow(d, 2.6), f_h = 0.082 * rho * Pow(d, -0.3), f_b = 6;
        double gap = Min(f_h * d * (2 * (Sqrt(face * face + l * l / 2 + face * l) - face) - l), f_h * d * (Sqrt(face * face + 2 * M_y / (f_h * d)) - face));
        double turn = Sqrt(face * face * (1 - f_b / f_h / 2) + l * l / 2 + face * l) - face, hinge = Sqrt(face * face * (1 - f_b / f_h) + 2 * M_y / (f_h * d)) - face;
        double board = Min(f_b * d * face + f_h * d * (2 * turn - l), hinge > 0 ? f_b * d * face + f_h * d * hinge : Sqrt(2 * M_y * f_b * d));
        // The board lasts with 0.75, the wood with 0.7: the geometric mean (2.6).
        double V_Rd = Max(0.7 * gap / 1.3, Sqrt(0.7 * 0.75) * board / 1.3);

        // (8.28), and the toe: a quarter of the plate, 4 N/mm² x 0.75 / 2.
        double screws = Sqrt(Pow(T / T_Rd, 2) + Pow(V / V_Rd, 2)), toe = contact / (0.25 * 30 * 150) / (4 * 0.75 / 2);
        Same(toe, b.ToeUtilisation);
        Same(Max(screws, toe), b.Utilisation);
    }

    /// <summary>5 % fractile of two lognormals of one variation whose own 5 % fractiles are given, by bisection on MathNet's normal distribution.</summary>
    private static double Fractile(double unit, double joint, double share, double V)
    {
        double low = joint, high = unit;
        for (int i = 0; i < 100; i++)
        {
            double x = (low + high) / 2;
            double below = (1 - share) * Below(x / unit, V) + share * Below(x / joint, V);
            (low, high) = below > 0.05 ? (low, x) : (x, high);
        }
        return low;
    }

    private static double Below(double ratio, double V) => MathNet.Numerics.Distributions.Normal.CDF(0, 1, Log(ratio) / V - 1.645);
}
