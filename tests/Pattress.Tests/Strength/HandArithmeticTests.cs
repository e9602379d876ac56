using Pattress.Strength;

namespace Pattress.Tests.Strength;

/// <summary>Rules of which no printed value was found: the clause's formula (from memory) worked by hand beside each.</summary>
public class HandArithmeticTests
{
    public static TheoryData<string, double[], double> Rows => new()
    {
        // 20 x 40 x 4 = 3200; 3200 (sqrt(2 + 4 x 5000/(20 x 4 x 1600)) - 1) = 1570.356...; 2.3 sqrt(5000 x 20 x 4) = 1454.648
        { "en1995_1_1.8_2_3.middle_plate", [40, 4, 20, 5000, 0, 0], 1454.6477 },
        // short: 20 x 8 x 4 = 640; 640 (sqrt(2 + 20000/(80 x 64)) - 1) = 640 (2.430278 - 1) = 915.3777; so f governs
        { "en1995_1_1.8_2_3.middle_plate", [8, 4, 20, 5000, 0, 0], 640 },
        // 0.5 x 20 x 40 x 4 = 1600; 1.15 sqrt(2 x 5000 x 80) = 1028.591, + min(400/4, 1028.6) = 1128.591
        { "en1995_1_1.8_2_3.thin_plates_outside", [40, 4, 20, 5000, 400, 0], 1128.5913 },
        { "en1995_1_1.8_2_3.thick_plates_outside", [40, 4, 20, 5000, 0, 0], 1454.6477 },
        { "en1995_1_1.8_2_3.thick_plates_outside", [30, 4, 20, 5000, 0, 0], 1200 },
        // 4 x 1.6 + 2 x (1 + 0.3 x 0.6) = 8.76
        { "en1995_1_1.2_2_3.final_deflection", [4, 2, 0.3, 0.6], 8.76 },
        { "en1995_1_1.3_2.k_def", [0, 2], 0.8 },
        { "en1995_1_1.3_1.k_mod_panels", [3, 1], 0.45 },
        // Table 8.2, 420 to 500 kg/m³: a_1 along the grain 15 d, a_2 7 d, a_3,t 20 d, a_4,t across from 5 mm 12 d
        { "en1995_1_1.8_3_1.spacing", [0, 0, 4, 0, 450, 0], 60 },
        { "en1995_1_1.8_3_1.spacing", [1, 0, 4, 0, 450, 0], 28 },
        { "en1995_1_1.8_3_1.spacing", [2, 0, 4, 0, 450, 0], 80 },
        { "en1995_1_1.8_3_1.spacing", [4, 0, 5, 90, 450, 0], 60 },
        { "en1995_1_1.8_3_1.spacing", [0, 0, 4, 0, 420, 0], 40 },
        { "en1993_1_3.table_8_2.distance", [2, 4.8], 7.2 },
        { "en1993_1_3.table_8_2.net_section", [20, 300], 6000 },
        // 100/min(400, 500) + 50/min(250, 900) = 0.45
        { "en1993_1_3.8_3.combined", [100, 400, 500, 50, 250, 900], 0.45 },
        // Table 3.3 (from memory): clay 1 and 2 in general purpose mortar, aerated in thin layer, hollow concrete 4, clay 1 in light mortar
        { "en1996_1_1.table_3_3.k", [0, 0], 0.55 },
        { "en1996_1_1.table_3_3.k", [1, 0], 0.45 },
        { "en1996_1_1.table_3_3.k", [10, 1], 0.8 },
        { "en1996_1_1.table_3_3.k", [9, 0], 0.35 },
        { "en1996_1_1.table_3_3.k", [0, 3], 0.4 },
        { "en1992_4.7_2_1_4.psi_re", [60], 0.8 },
        { "en1992_4.7_2_1_4.psi_ec", [30, 100], 1 / 1.2 },
        // c_1 = 60: (90 + 45) x min(80, 90)/(4.5 x 3600) = 0.6667; 0.7 + 0.3 x 45/90 = 0.85; sqrt(90/80) = 1.06066; 10000 x 0.601041
        { "en1992_4.7_2_2_5.edge", [10000, 60, 45, 80], 6010.4076 },
        { "en1992_4.7_2_2_5.edge", [10000, 60, 90, 90], 10000 },
        { "aisi_s100.j4_1.distance", [0, 4.8], 14.4 },
        { "aisi_s100.j4_1.distance", [1, 4.8], 7.2 },
        // 300/900 x 2.55/1.15 + 50/500 x 2.55/1.15 = 0.960870; 0.71: (1/3 + 0.071) x 2.35/1.1 = 0.863803
        { "aisi_s100.j4_5_2.combined", [300, 900, 50, 500, 0], 0.9608696 },
        { "aisi_s100.j4_5_1.combined", [300, 900, 50, 500, 0], 0.8638030 },
        // 107 lbf x 4.448222 x 14/(4 x 12)
        { "astm_c1396.bending_strength", [1, 0], 138.8215829 },
        // 100,000 psi up to 0.142 in (3.6068 mm), 80,000 psi at 5 mm
        { "nds.i_1.bending_yield", [3.6], 689.4757293 },
        { "nds.i_1.bending_yield", [5], 551.5805835 },
        // 90 x 0.9 x 0.7
        { "nds.11_3.lateral", [90, 0, 1, 1, 0, 0], 56.7 },
        // W = 500, Z = 300, 45 degrees: 150000/(250 + 150) = 375
        { "nds.12_4.combined", [500, 300, 45, 0], 375 },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Worked_by_hand(string id, double[] x, double expected) => Assert.Equal(expected, RuleBook.Find(id)!.Evaluate(x).Value, 1e-4 * Math.Max(1, Math.Abs(expected) * 1e-3));

    [Theory]
    [InlineData("en1995_1_1.3_2.k_def", new double[] { 5, 2 }, "no_entry")]
    [InlineData("en1995_1_1.3_1.k_mod_panels", new double[] { 13, 0 }, "no_entry")]
    [InlineData("en1996_1_1.table_3_3.k", new double[] { 12, 1 }, "no_entry")]
    [InlineData("en1996_1_1.table_3_3.k", new double[] { 4, 2 }, "no_entry")]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 0, 4, 0, 501, 0 }, "above_limit")]
    public void What_the_table_leaves_empty_is_not_covered(string id, double[] x, string code) => Assert.Equal(code, RuleBook.Find(id)!.Evaluate(x).Why!.Code);
}
