using Pattress.Strength;
using Pattress.Strength.Standards.BS_7671_2018;

namespace Pattress.Tests.Strength;

/// <summary>What a clause refuses is refused with the value and the limit, at the limit itself not; and rules on inputs of which no two are alike.</summary>
public class RefusalTests
{
    /// <summary>Limits of the clauses, with what is said: the value given and the limit by hand.</summary>
    [Theory]
    [InlineData("en1995_1_1.8_3_1.effective_number", new double[] { 3, 27, 4, 0 }, "too_close", 27, 28)]
    [InlineData("en1995_1_1.8_7_2.withdrawal", new double[] { 6, 35, 350, 90, 1, 0.7 }, "too_short", 35, 36)]
    [InlineData("pren1995_1_1.11_2_2_3.withdrawal", new double[] { 5, 19, 350 }, "too_short", 19, 20)]
    [InlineData("en1996_1_1.3_6_1_2.f_k", new double[] { 0.5, 5, 11 }, "above_limit", 11, 10)]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 0, 4, 0, 501, 0 }, "above_limit", 501, 500)]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 0, 6.5, 0, 350, 0 }, "above_limit", 6.5, 6)]
    [InlineData("en1995_1_1.8_3_1.effective_number", new double[] { 3, 15, 4, 1 }, "too_close", 15, 16)]
    [InlineData("en1995_1_1.8_3_2.nail_withdrawal", new double[] { 3, 23, 20, 7, 350, 0 }, "too_short", 23, 24)]
    [InlineData("en1995_1_1.8_3_2.threaded_nail_withdrawal", new double[] { 6, 18, 4, 23, 8 }, "too_short", 23, 24)]
    [InlineData("en1995_1_1.8_5_1.effective_number", new double[] { 3, 49, 10 }, "too_close", 49, 50)]
    [InlineData("en1993_1_3.table_8_1.bearing", new double[] { 1.2, 1.1, 4, 20, 300 }, "thinner_behind", 1.1, 1.2)]
    [InlineData("en1993_1_3.table_8_1.bearing", new double[] { 1, 1, 4, 5, 300 }, "too_close", 5, 6)]
    [InlineData("vicroads_680.load_drop", new double[] { 500, 510 }, "above_limit", 510, 500)]
    [InlineData("en1993_1_3.table_8_2.bearing", new double[] { 1.2, 1.1, 5, 300 }, "thinner_behind", 1.1, 1.2)]
    [InlineData("plates.strip.moment_x", new double[] { 100, 600, 20, 19, 0.2, 0 }, "patch_over_support", 19, 20)]
    [InlineData("plates.strip.moment_y", new double[] { 100, 600, 20, 581, 0.2, 0 }, "patch_over_support", 19, 20)]
    [InlineData("plates.circle.moment_simple", new double[] { 100, 15, 20, 12, 0.2 }, "patch_over_support", 15, 20)]
    public void A_refusal_says_what_was_given_and_what_is_allowed(string id, double[] x, string code, double given, double limit)
    {
        var why = RuleBook.Find(id)!.Evaluate(x).Why!;
        Assert.Equal(code, why.Code);
        double[] numbers = [.. why.Values.Where(v => v.Number != 0).Select(v => v.Number)];
        Assert.Equal((given, limit), (numbers[^2], numbers[^1]));
    }

    [Theory]
    [InlineData("en1995_1_1.8_3_1.effective_number", new double[] { 3, 28, 4, 0 })]
    [InlineData("en1995_1_1.8_7_2.withdrawal", new double[] { 6, 36, 350, 90, 1, 0.7 })]
    [InlineData("pren1995_1_1.11_2_2_3.withdrawal", new double[] { 5, 20, 350 })]
    [InlineData("en1996_1_1.3_6_1_2.f_k", new double[] { 0.5, 5, 10 })]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 0, 4, 0, 500, 0 })]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 1, 4, 0, 501, 0 })]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 0, 6, 0, 350, 0 })]
    [InlineData("en1995_1_1.8_3_1.spacing", new double[] { 0, 1, 6.5, 0, 350, 0 })]
    [InlineData("en1995_1_1.8_3_1.effective_number", new double[] { 3, 16, 4, 1 })]
    [InlineData("en1995_1_1.8_3_2.nail_withdrawal", new double[] { 3, 24.1, 20, 7, 350, 0 })]
    [InlineData("en1995_1_1.8_3_2.threaded_nail_withdrawal", new double[] { 6, 18, 4, 24.1, 8 })]
    [InlineData("en1995_1_1.8_5_1.effective_number", new double[] { 3, 50, 10 })]
    [InlineData("en1993_1_3.table_8_1.bearing", new double[] { 1, 1, 4, 6, 300 })]
    [InlineData("vicroads_680.load_drop", new double[] { 500, 500 })]
    [InlineData("en1993_1_3.table_8_2.bearing", new double[] { 1.2, 1.2, 5, 300 })]
    [InlineData("plates.strip.moment_x", new double[] { 100, 600, 20, 20, 0.2, 0 })]
    [InlineData("plates.strip.moment_y", new double[] { 100, 600, 20, 580, 0.2, 0 })]
    public void At_the_limit_itself_a_rule_answers(string id, double[] x) => Assert.True(RuleBook.Find(id)!.Evaluate(x).Covered);

    /// <summary>Table 8.2 of EN 1995-1-1 (from memory), factors by hand at 60 degrees (cos 0.5, sin 0.8660254) and either side of 5 mm and of 420 kg/m³.</summary>
    [Theory]
    [InlineData(0, 0, 4, 350, 5 + 5 * 0.5)]
    [InlineData(0, 0, 5, 350, 5 + 7 * 0.5)]
    [InlineData(0, 0, 6, 420, 5 + 7 * 0.5)]
    [InlineData(1, 0, 4, 350, 5)]
    [InlineData(2, 0, 4, 350, 10 + 5 * 0.5)]
    [InlineData(3, 0, 4, 350, 10)]
    [InlineData(4, 0, 4, 350, 5 + 2 * 0.8660254037844386)]
    [InlineData(4, 0, 5, 350, 5 + 5 * 0.8660254037844386)]
    [InlineData(5, 0, 4, 350, 5)]
    [InlineData(0, 0, 4, 420.5, 7 + 8 * 0.5)]
    [InlineData(1, 0, 4, 450, 7)]
    [InlineData(2, 0, 4, 450, 15 + 5 * 0.5)]
    [InlineData(3, 0, 4, 450, 15)]
    [InlineData(4, 0, 4, 450, 7 + 2 * 0.8660254037844386)]
    [InlineData(4, 0, 5, 450, 7 + 5 * 0.8660254037844386)]
    [InlineData(5, 0, 4, 450, 7)]
    [InlineData(0, 1, 4, 450, 4 + 0.5)]
    [InlineData(1, 1, 4, 450, 3 + 0.8660254037844386)]
    [InlineData(2, 1, 4, 450, 7 + 5 * 0.5)]
    [InlineData(3, 1, 4, 450, 7)]
    [InlineData(4, 1, 4, 450, 3 + 2 * 0.8660254037844386)]
    [InlineData(4, 1, 5, 450, 3 + 4 * 0.8660254037844386)]
    [InlineData(5, 1, 4, 450, 3)]
    public void Spacings(int which, int drilled, double d, double rho, double factor) =>
        Assert.Equal(factor * d, RuleBook.Find("en1995_1_1.8_3_1.spacing")!.Evaluate([which, drilled, d, 60, rho, 0]).Value, 1e-9);

    /// <summary>Rules of which no printed case has all its inputs apart, by hand.</summary>
    [Theory]
    // 11 sqrt(25) 50^1.5 = 19445.4365; two 90 apart at 60: (75 + 90 + 60)/150 = 1.5; 0.7 + 0.3 · 60/75 = 0.94
    [InlineData("en1992_4.7_2_1_4.cone", new double[] { 25, 50, 0, 90, 60 }, 27418.065)]
    [InlineData("en1992_4.7_2_1_4.cone", new double[] { 25, 50, 1, 90, 60 }, 19192.646)]
    [InlineData("en1992_4.7_2_2_4.pry_out", new double[] { 9000, 59.9 }, 9000)]
    [InlineData("en1992_4.7_2_2_4.pry_out", new double[] { 9000, 60 }, 18000)]
    // alpha = 0.1 sqrt(48/75) = 0.08, beta = 0.1 (8/75)^0.2 = 0.0639154; 2.4 · 8^0.08 · 48^0.0639154 · 5 · 75^1.5
    [InlineData("en1992_4.7_2_2_5.edge_base", new double[] { 25, 8, 48, 75, 0 }, 11789.0173)]
    // 11 · 5 · 40 /(1.2 · 0.25 + 0.75) · (310/360)^0.8
    [InlineData("en14592.declared.withdrawal", new double[] { 11, 5, 40, 310, 360, 60 }, 1859.0058)]
    // 300/500 + 200/(1.4 · 800)
    [InlineData("en1993_1_8.table_3_4.combined", new double[] { 300, 500, 200, 800 }, 0.7785714)]
    // 3^0.9 · 12 · 64 · (310/350)^0.8
    [InlineData("en1995_1_1.8_7_2.head_pull_through", new double[] { 12, 8, 310, 350, 3 }, 1873.2911)]
    // screw all of it, round nail 15 %, bolt 25 % of 1000 N, or a quarter of 3000 N
    [InlineData("en1995_1_1.8_2_2.rope", new double[] { 1000, 3000, 0 }, 1750)]
    [InlineData("en1995_1_1.8_2_2.rope", new double[] { 1000, 3000, 1 }, 1150)]
    [InlineData("en1995_1_1.8_2_2.rope", new double[] { 1000, 3000, 2 }, 1250)]
    [InlineData("aisi_s100.j4.design", new double[] { 900, 0.4 }, 360)]
    // Steel in the middle, 2.3 sqrt(5000 · 20 · 4) = 1454.6477 and the rope: 4000/4 but no more than all, 15 %, 25 % of it
    [InlineData("en1995_1_1.8_2_3.middle_plate", new double[] { 90, 4, 20, 5000, 8000, 0 }, 2909.2954)]
    [InlineData("en1995_1_1.8_2_3.middle_plate", new double[] { 90, 4, 20, 5000, 8000, 1 }, 1672.8449)]
    [InlineData("en1995_1_1.8_2_3.middle_plate", new double[] { 90, 4, 20, 5000, 8000, 2 }, 1818.3096)]
    // Thin plate, 1.15 sqrt(2 · 5000 · 80) = 1028.5913
    [InlineData("en1995_1_1.8_2_3.thin_plate", new double[] { 90, 4, 20, 5000, 8000, 1 }, 1182.8800)]
    [InlineData("en1995_1_1.8_2_3.thin_plate", new double[] { 90, 4, 20, 5000, 8000, 2 }, 1285.7391)]
    [InlineData("en1995_1_1.8_7_2.spacing", new double[] { 0, 5 }, 35)]
    [InlineData("en1995_1_1.8_7_2.spacing", new double[] { 1, 5 }, 25)]
    [InlineData("en1995_1_1.8_7_2.spacing", new double[] { 2, 5 }, 50)]
    [InlineData("en1995_1_1.8_7_2.spacing", new double[] { 3, 5 }, 20)]
    public void By_hand(string id, double[] x, double expected) => Assert.Equal(expected, RuleBook.Find(id)!.Evaluate(x).Value, 1e-6 * Math.Abs(expected) + 1e-3);

    /// <summary>BS 7671 522.6.202 by hand: a wall of 3000 by 2400 with an angle at its left end and a socket of 146 by 86 at (1500, 450).</summary>
    [Fact]
    public void Strips_of_a_wall()
    {
        var face = new WallFace(3000, 2400, [new("socket", 1500, 450, 146, 86)], [0, 3000]);
        var strips = CableZones.Strips(face);
        Assert.Equal(["top", "corner_1", "corner_2", "socket.vertical", "socket.horizontal"], strips.Select(s => s.Id));
        Assert.Equal([(0, 2250, 3000, 2400), (-150, 0, 150, 2400), (2850, 0, 3150, 2400), (1427, 0, 1573, 2400), (0, 407, 3000, 493)], strips.Select(s => (s.X0, s.Y0, s.X1, s.Y1)));
        // A hole of 8 mm touches from 4 mm outside, one of no width from the edge itself.
        var socket = strips[3];
        Assert.True(socket.Touches(1423, 1000, 8) && socket.Touches(1577, 1000, 8) && socket.Touches(1427, 1000) && socket.Touches(1573, 1000));
        Assert.False(socket.Touches(1422.9, 1000, 8) || socket.Touches(1577.1, 1000, 8) || socket.Touches(1426.9, 1000) || socket.Touches(1573.1, 1000));
        var along = strips[4];
        Assert.True(along.Touches(10, 403, 8) && along.Touches(10, 497, 8) && along.Touches(10, 407) && along.Touches(10, 493));
        Assert.False(along.Touches(10, 402.9, 8) || along.Touches(10, 497.1, 8) || along.Touches(10, 406.9) || along.Touches(10, 493.1));
        var other = CableZones.Mirrored(face with { Corners = [200] });
        Assert.Equal((1500.0, 2800.0), (other.Accessories[0].X, other.Corners[0]));
        Assert.Equal(2000, CableZones.Mirrored(face with { Accessories = [new("a", 1000, 5, 6, 7)] }).Accessories[0].X);
        Assert.Equal((true, true, false, true, false), (CableZones.OtherFaceCounts(null), CableZones.OtherFaceCounts(100), CableZones.OtherFaceCounts(101), CableZones.NeedsZone(49), CableZones.NeedsZone(50)));
    }

    /// <summary>Half a screw, half a class and half a failure are no answer, whatever else is asked.</summary>
    [Theory]
    [InlineData("en1995_1_1.8_7_2.effective_number", new double[] { 2.5 }, 2.5)]
    [InlineData("en1995_1_1.8_3_1.effective_number", new double[] { 3.5, 60, 4, 0 }, 3.5)]
    [InlineData("en1995_1_1.3_1.k_mod", new double[] { 0, 1.5 }, 1.5)]
    [InlineData("en1995_1_1.3_2.k_def", new double[] { 0, 2.5 }, 2.5)]
    [InlineData("bs8539.b_3.samples", new double[] { 10.5, 0 }, 10.5)]
    [InlineData("bs8539.b_3.after_failures", new double[] { 60, 1.5 }, 1.5)]
    [InlineData("asme_b18_6_1.diameter", new double[] { 7.5 }, 7.5)]
    [InlineData("en1990.d.k_n", new double[] { 4.5, 0, 0 }, 4.5)]
    [InlineData("iso16269_6.k", new double[] { 4.5, 0.95, 0.75, 0 }, 4.5)]
    [InlineData("binomial.upper_failure_share", new double[] { 0.5, 5, 0.95 }, 0.5)]
    public void A_fraction_of_a_count_is_not_covered(string id, double[] x, double given)
    {
        var why = RuleBook.Find(id)!.Evaluate(x).Why!;
        Assert.Equal(("whole_number", given), (why.Code, why.Values[0].Number));
    }

    [Fact]
    public void Words_of_inputs()
    {
        Assert.Equal("from 1 to 2", new Parameter("a", Pattress.Quantities.Dimension.Number, 1, 2).Allowed[^11..]);
        var choice = Parameter.Choice("head", "hexagon", "countersunk");
        Assert.Equal((0, 1, "one of hexagon, countersunk"), (choice.Min, choice.Max, choice.Allowed));
    }
}
