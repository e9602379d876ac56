using MathNet.Numerics.Distributions;
using Pattress.Strength;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Tests.Strength;

/// <summary>Numbers of the mechanisms by hand, or by a library for statistics; the assumed factors are taken from their table.</summary>
public class MechanismNumbersTests
{
    private static double F(string key) => Factors.Of(key);

    private static readonly BoardInput Board1 = new(12.7, 40, 5, 600, Duration.Long, Dampness.Damp, Edge: 40);

    /// <summary>The share of a mixture below its 5 % fractile is 5 %, by MathNet's normal distribution of the logarithm.</summary>
    [Theory]
    [InlineData(400, 150, 0.2, 0.3)]
    [InlineData(150, 400, 0.35, 0.3)]
    [InlineData(400, 390, 0.5, 0.2)]
    [InlineData(900, 100, 0.05, 0.25)]
    [InlineData(900, 100, 0.7, 0.25)]
    public void Fractile_of_a_mixture(double unit, double joint, double share, double v)
    {
        double x = Mixture.Fractile(unit, joint, share, v, null);
        double Below(double fractile) => Normal.CDF(0, 1, Math.Log(x / fractile) / v - 1.645);
        Assert.Equal(0.05, (1 - share) * Below(unit) + share * Below(joint), 2e-5);
        Assert.Equal((unit, joint), (Mixture.Fractile(unit, joint, 0, v, null), Mixture.Fractile(unit, joint, 1, v, null)));
        var trace = new Trace();
        Mixture.Fractile(unit, joint, share, v, trace);
        Assert.Equal(["N_unit", "N_joint", "p_joint", "N_0"], trace.Steps.Select(s => s.Symbol));
        trace = new Trace();
        Mixture.Fractile(unit, joint, 0, v, trace);
        Assert.Equal(["N_unit", "N_0"], trace.Steps.Select(s => s.Symbol));
    }

    /// <summary>By hand: 77 lbf = 342.513 N on the cone of the test's own head; a disc of 40 mm: 342.513 (40 + 12.7)/(6.35 + 12.7); edge 0.5 + 0.5 · 40/100.</summary>
    [Fact]
    public void Punching_by_hand()
    {
        double cone = 77 * 4.4482216152605 * (40 + 12.7) / (6.35 + 12.7), weak = F("damp_damp") * (F("board_edge_least") + (1 - F("board_edge_least")) * 40 / F("board_edge_full_mm"));
        var r = Board.Punching(Board1);
        Assert.Equal(cone * weak * F("duration_long") / F("board_gamma_m"), r.Design.Value, 1e-6);
        Assert.Equal(cone * weak * F("board_mean_over_minimum"), r.MeanN, 1e-6);
        // Three in a row at 30 mm: one perimeter, pi (D + t) + 2 · 2 · 30, shared by three.
        double round = Math.PI * (40 + 12.7);
        Assert.Equal(r.MeanN * (round + 120) / (3 * round), Board.Punching(Board1 with { Group = 3, Spacing = 30 }).MeanN, 1e-6);
        Assert.Equal(r.MeanN, Board.Punching(Board1 with { Group = 3, Spacing = 40 + 2 * 12.7 }).MeanN, 1e-9);
        Assert.True(Board.Punching(Board1 with { Group = 3, Spacing = 40 + 2 * 12.7 - 0.1 }).MeanN < r.MeanN);
    }

    /// <summary>Least nail-pull loads: as printed, straight between (9.525 and 12.7: half of 56 + 77 lbf), on the last line beyond, in proportion below.</summary>
    [Theory]
    [InlineData(9.525, 56)]
    [InlineData(12.7, 77)]
    [InlineData(15.875, 87)]
    [InlineData(11.1125, 66.5)]
    [InlineData(14.2875, 82)]
    [InlineData(19.05, 97)]
    [InlineData(4.7625, 28)]
    public void Nail_pull(double t, double pounds) => Assert.Equal(pounds * 4.4482216152605, BoardStrength.NailPull(t, null), 1e-9);

    /// <summary>ASTM C1396 along: 77, 107 and 147 lbf, moment F · 14/(4 · 12); straight between, by the square beyond; twice for two boards.</summary>
    [Theory]
    [InlineData(9.525, true, 1, 77)]
    [InlineData(12.7, true, 1, 107)]
    [InlineData(15.875, true, 1, 147)]
    [InlineData(12.7, false, 1, 36)]
    [InlineData(11.1125, true, 1, 92)]
    [InlineData(14.2875, false, 2, 82)]
    [InlineData(4.7625, true, 1, 19.25)]
    [InlineData(31.75, true, 2, 1176)]
    public void American_moments(double t, bool along, int layers, double pounds) =>
        Assert.Equal(pounds * 4.4482216152605 * 14 / 48, BoardStrength.Moment(RuleSet.UnitedStates, along, t, layers, null), 1e-6);

    /// <summary>EN 520 Table 4: 550 and 210 N over 350 mm on 300 mm: F · 350/(4 · 300); 43 t and 16.8 t between; thinner than 6 mm counts as 6 mm's stress on its own thickness.</summary>
    [Theory]
    [InlineData(12.5, true, 1, 550 * 350 / 1200.0)]
    [InlineData(12.5, false, 2, 2 * 210 * 350 / 1200.0)]
    [InlineData(10, true, 1, 430 * 350 / 1200.0)]
    [InlineData(3, true, 1, 43 * 6 * 350 / 1200.0 / 4)]
    public void European_moments(double t, bool along, int layers, double expected) => Assert.Equal(expected, BoardStrength.Moment(RuleSet.Eurocode, along, t, layers, null), 1e-9);

    /// <summary>
    /// First crack by hand: M_x of the strip under a unit load, (1 + nu) ln(2a sin(pi xi/a)/(pi c)) + 1 over 4 pi (Timoshenko, art. 37), with Westergaard's radius for a small patch.
    /// </summary>
    [Theory]
    [InlineData(40, 300, 20)]
    [InlineData(40, 90, 20)]
    [InlineData(40, 510, 20)]
    [InlineData(8, 300, 5.047677)]
    [InlineData(12.6, 300, 6.3527)]
    public void First_crack_by_hand(double bearing, double from, double radius)
    {
        var b = new BoardInput(12.5, bearing, 5, 600, Duration.Short, FromSupport: from);
        double nu = F("board_nu"), m1 = ((1 + nu) * Math.Log(2 * 600 * Math.Sin(Math.PI * from / 600) / (Math.PI * radius)) + 1) / (4 * Math.PI);
        Assert.Equal(61.25 / m1, BoardBending.FirstCrack(b, 61.25, null), 0.005);
        // Twice as far along is the same as from the other stud; the place unknown is the middle.
        Assert.Equal(BoardBending.FirstCrack(b with { FromSupport = 300 }, 61.25, null), BoardBending.FirstCrack(b with { FromSupport = null }, 61.25, null), 1e-12);
        // Nearer to the stud than the patch is wide it counts as a patch's width away.
        Assert.Equal(BoardBending.FirstCrack(b with { FromSupport = 0 }, 61.25, null), BoardBending.FirstCrack(b with { FromSupport = Math.Min(radius, 3) }, 61.25, null), 1e-9);
    }

    /// <summary>Flexure by hand: crack, and yield lines 2 pi sqrt(m_across m_along); the crack and a share of what lies between.</summary>
    [Fact]
    public void Flexure_by_hand()
    {
        var b = Board1 with { Thickness = 12.5, Damp = Dampness.Dry, Edge = 1000 };
        double across = 61.25, along = 550 * 350 / 1200.0, yield = 2 * Math.PI * Math.Sqrt(across * along), reserve = F("board_reserve"), mean = F("board_mean_over_minimum");
        double crack = BoardBending.FirstCrack(b, across, null), strong = BoardBending.FirstCrack(b, along, null);
        Assert.Equal(mean * (crack + reserve * (yield - crack)), BoardBending.Flexure(b).MeanN, 1e-6);
        Assert.Equal(mean * (crack + reserve * (yield - crack)), BoardBending.Flexure(b with { Direction = BendingDirection.Across }).MeanN, 1e-6);
        Assert.Equal(mean * Math.Min(yield, strong + reserve * (yield - strong)), BoardBending.Flexure(b with { Direction = BendingDirection.Along }).MeanN, 1e-6);
        double one = BoardBending.Flexure(b).MeanN;
        Assert.Equal(one / 3, BoardBending.Flexure(b with { Group = 3, Spacing = 599 }).MeanN, 1e-9);
        Assert.Equal(one, BoardBending.Flexure(b with { Group = 3, Spacing = 600 }).MeanN, 1e-9);
        Assert.Equal(one, BoardBending.Flexure(b with { Group = 1, Spacing = 10 }).MeanN, 1e-9);
        // Two boards, each bending for itself, with the patch spread under both.
        var two = b with { Thickness = 25, Layers = 2 };
        double crack2 = BoardBending.FirstCrack(two, 2 * across, null);
        Assert.Equal(mean * (crack2 + reserve * (2 * yield - crack2)), BoardBending.Flexure(two).MeanN, 1e-6);
        Assert.Equal(["board_punching", "board_flexure", "board_supports"], Board.InTension(b).Select(r => r.Mechanism));
        Assert.Equal(["board_thread", "board_supports"], Board.InTension(b with { Span = 0, Bearing = 5 }).Select(r => r.Mechanism));
        Assert.Equal(["board_punching", "board_flexure", "board_supports"], Board.InTension(b with { Span = 1, Bearing = 5.1 }).Select(r => r.Mechanism));
        Assert.Equal((50.0 + 12) * 2 / Math.PI, BoardInput.BarAsDisc(50, 12), 1e-12);
    }

    /// <summary>By hand: thread shear tau pi d t; bearing f d t; the toe's pressure; bonds and screws.</summary>
    [Fact]
    public void Other_ways_of_the_board_by_hand()
    {
        double weak = F("damp_damp") * (F("board_edge_least") + (1 - F("board_edge_least")) * 0.4), mean = F("board_mean_over_minimum");
        Assert.Equal(mean * weak * F("self_drive_thread_mpa") * Math.PI * 5 * 12.7, Board.ThreadShear(Board1).MeanN, 1e-9);
        Assert.Equal(mean * weak * F("board_embedment_mpa") * 5 * 12.7, Board.Bearing(Board1).MeanN, 1e-9);
        var toe = Board.Toe(Dampness.Humid, Duration.Long);
        Assert.Equal(F("board_toe_mpa") * F("damp_humid") * F("duration_long") / F("toe_gamma_m"), toe.Design.Value, 1e-12);
        Assert.Equal(F("board_toe_mpa") * F("damp_humid") * Math.Exp(1.645 * F("variation_toe")), toe.MeanN, 1e-12);
        Assert.Equal(mean * weak * F("dab_bond_mpa") * F("dab_area_mm2") / 2, BoardOwnSupports.Leaving(Board1 with { Support = BoardSupport.Dabs, Group = 2 }).MeanN, 1e-9);
        Assert.Equal(mean * weak * F("foam_bond_mpa") * F("foam_spread_mm") * F("foam_spread_mm"), BoardOwnSupports.Leaving(Board1 with { Support = BoardSupport.Foam }).MeanN, 1e-9);
        Assert.Equal(mean * weak * F("support_screw_share") * F("support_screws") * 77 * 4.4482216152605, BoardOwnSupports.Leaving(Board1).MeanN, 1e-6);
    }

    /// <summary>By hand, M 3 mm core of 800 N/mm²: W = pi 27/32, M0 = 1.2 W f; the arm is the reach, what is crushed, and half a diameter; gamma 1.25 at f_yk = 0.8 f_uk.</summary>
    [Fact]
    public void Lever_arm_by_hand()
    {
        double m0 = 1.2 * Math.PI * 27 / 32 * 800, arm = 12.5 + 2 + 1.5, rk = m0 * (1 - 0.3) / arm;
        var r = LeverArm.Shear(3, 800, 12.5, 2, 0.3);
        Assert.Equal(rk / 1.25, r.Design.Value, 1e-9);
        Assert.Equal(rk * Math.Exp(1.645 * F("variation_steel")), r.MeanN, 1e-9);
        Assert.Equal("shear_arm", r.Mechanism);
    }

    /// <summary>By hand: 400 N of an assessment, for ever, 30 mm from an edge; the mean above a 5 % fractile of a lognormal.</summary>
    [Fact]
    public void Plugs_by_hand()
    {
        var p = new MasonryPlugInput(Masonry.Brick, 8, 40, 3.6, 20, Duration.Permanent, Edge: 30, AssessedRk: 400);
        double edge = F("plug_edge_least") + (1 - F("plug_edge_least")) * 30 / F("plug_edge_full_mm"), mean = 400 * edge * Math.Exp(1.645 * F("variation_masonry"));
        var pull = MasonryPlug.PullOut(p);
        Assert.Equal(400 * F("creep_permanent") * edge / F("plug_assessed_gamma_m"), pull.Design.Value, 1e-9);
        Assert.Equal(mean, pull.MeanN, 1e-9);
        var shear = MasonryPlug.InShear(p);
        Assert.Equal((F("plug_shear_over_tension") * pull.Design.Value, F("plug_shear_over_tension") * mean), (shear[0].Design.Value, shear[0].MeanN));
        Assert.Equal(["bearing_masonry", "shear_arm"], shear.Select(r => r.Mechanism));
        Assert.Equal(["bearing_masonry", "steel_shear"], MasonryPlug.InShear(p with { Reach = 0 }).Select(r => r.Mechanism));
        Assert.Equal(["bearing_masonry", "shear_arm"], MasonryPlug.InShear(p with { Reach = 0.5 }).Select(r => r.Mechanism));
        double arm = 20 + F("crushed_masonry_diameters") * 3.6 + 1.8, m0 = 1.2 * Math.PI * Math.Pow(3.6, 3) / 32 * 500;
        Assert.Equal(m0 / arm / 1.25, shear[1].Design.Value, 1e-9);
        Assert.Equal(m0 * 0.75 / arm / 1.25, MasonryPlug.InShear(p, 0.25)[1].Design.Value, 1e-9);
        Assert.Equal(m0 / arm / 1.25, MasonryPlug.InShear(p, -0.25)[1].Design.Value, 1e-9);
        // Steel that tension has used up altogether bends no more.
        Assert.Equal(0, MasonryPlug.InShear(p, 1.7)[1] is var none && none.Design.Covered ? none.Design.Value : 0, 1e-9);
        // An assumed plug by its size: 8 by 40 as it stands, twice as thick 1.25 at most, twice as deep 1.5 at most.
        var assumed = p with { AssessedRk = null, InJoint = false, Edge = 1000 };
        double at(double d, double h) => MasonryPlug.PullOut(assumed with { D = d, Depth = h }).Design.Value / MasonryPlug.PullOut(assumed).Design.Value;
        Assert.Equal(new[] { 0.75, 1.25, 0.5, 1.5, 1.2 }, new[] { at(6, 40), at(16, 40), at(8, 20), at(8, 80), at(8, 48) }, (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Contains(MasonryPlug.PullOut(assumed with { InJoint = null }).Marks, m => m.Code == "mortar_joint_unknown");
        Assert.Empty(MasonryPlug.PullOut(assumed).Marks);
        Assert.Empty(MasonryPlug.PullOut(assumed with { InJoint = null, SiteTestRk = 700 }).Marks);
        Assert.Empty(MasonryPlug.PullOut(assumed with { Base = Masonry.Concrete, InJoint = null }).Marks);
    }

    /// <summary>By hand: AISI pull-out 0.85 t d F_u, phi 0.5 against Omega 3; a flange that twists takes its factor, one that is held does not.</summary>
    [Fact]
    public void Thin_steel_by_hand()
    {
        var s = new SteelStudScrewInput(4.2, 3, 1.4, 0.55, 12.5);
        double pull = 0.85 * 0.55 * 4.2 * 300, twist = F("flange_twist");
        var r = SteelStudScrew.Tension(s);
        Assert.Equal((twist * pull / 2, Level.Design), (r.Design.Value, r.Level));
        Assert.Equal(twist * pull * Math.Exp(1.645 * F("variation_thin_steel")), r.MeanN, 1e-9);
        var american = SteelStudScrew.Tension(s with { Set = RuleSet.UnitedStates, Restrained = true });
        Assert.Equal(pull / 3, american.Design.Value, 1e-9);
        Assert.Equal(Level.Allowable, american.Level);
        // EN 1993-1-3: 0.45 d t f_u below one pitch (0.9 mm on 1.4 mm), over 1.25.
        Assert.Equal(twist * 0.45 * 4.2 * 0.9 * 300 / 1.25, SteelStudScrew.Tension(s with { TStud = 0.9 }).Design.Value, 1e-9);
        Assert.Equal(["bearing_steel", "steel_shear", "shear_arm"], SteelStudScrew.InShear(s).Select(x => x.Mechanism));
        Assert.Equal(["bearing_steel", "steel_shear"], SteelStudScrew.InShear(s with { Gap = 0 }).Select(x => x.Mechanism));
        Assert.Equal(["bearing_steel", "steel_shear", "shear_arm"], SteelStudScrew.InShear(s with { Gap = 0.5 }).Select(x => x.Mechanism));
        double m0 = 1.2 * Math.PI * 27 / 32 * 800;
        Assert.Equal(m0 / (12.5 + 1.5) / 1.25, SteelStudScrew.InShear(s)[2].Design.Value, 1e-9);
        // Bearing: alpha 3.2 sqrt(t/d) where both sheets are alike (a thinner bracket counts as the stud), at most 2.1, over 1.25; the flange is held by its plane.
        double alpha = 3.2 * Math.Sqrt(0.9 / 4.2);
        Assert.Equal(alpha * 300 * 4.2 * 0.9 / 1.25, SteelStudScrew.InShear(s with { TStud = 0.9, Plate = 0.5 })[0].Design.Value, 1e-9);
        Assert.Empty(SteelStudScrew.InShear(s with { TStud = 0.9, Plate = 0.5 })[0].Marks);
    }

    /// <summary>By hand: NDS standing in, W p K_F phi lambda; the American set, W p C_D; 5.5 times that is the mean.</summary>
    [Fact]
    public void Nds_by_hand()
    {
        // G = 0.42 from 352.8 kg/m³ by 0.84; No. 8's 4.1656 mm: W = 2850 · 0.42² · 0.164 lb/in; p = 24 - 4.1656 mm.
        WoodScrewInput s = new(4.1656, 3.3, 24, 0, 30, 352.8, Duration.Short, StandIns: StandIns.Nds);
        double w = 2850 * 0.42 * 0.42 * 0.164 * 4.4482216152605 / 25.4, p = 24 - 4.1656;
        var r = WoodScrew.Tension(s);
        Assert.Equal(w * p * 3.32 * 0.65 * 0.8, r.Design.Value, 1e-6);
        Assert.Equal(F("nds_withdrawal_mean") * w * p, r.MeanN, 1e-6);
        var american = WoodScrew.Tension(s with { Set = RuleSet.UnitedStates });
        Assert.Equal(w * p * 1.25, american.Design.Value, 1e-6);
        Assert.Equal(F("nds_withdrawal_mean") * w * p, american.MeanN, 1e-6);
        Assert.Equal("too_short", WoodScrew.Tension(s with { Thread = 4.1656, Set = RuleSet.UnitedStates }).Design.Why!.Code);
        // 6 D of thread for a lateral load (NDS 12.1.5.6), 4 D beyond the point in EN 1995-1-1 8.3.1.2.
        var us = s with { Set = RuleSet.UnitedStates, Thread = 7 * 4.1656 };
        Assert.True(WoodScrew.InShear(us)[0].Design.Covered);
        var why = WoodScrew.InShear(us with { Thread = 6.9 * 4.1656 })[0].Design.Why!;
        Assert.Equal(("too_short", 5.9 * 4.1656, 6 * 4.1656), (why.Code, why.Values[0].Number, why.Values[1].Number));
        Assert.Contains(WoodScrew.InShear(us with { Gap = 0.5 })[0].Marks, m => m.Code == "board_as_gap");
        Assert.DoesNotContain(WoodScrew.InShear(us)[0].Marks, m => m.Code == "board_as_gap");
        WoodScrewInput en = new(4, 3.2, 20, 0, 30, 350, Duration.Short);
        Assert.True(WoodScrew.InShear(en)[0].Design.Covered);
        why = WoodScrew.InShear(en with { Thread = 19.5 })[0].Design.Why!;
        Assert.Equal(("too_short", 15.5, 16.0), (why.Code, why.Values[0].Number, why.Values[1].Number));
        // F_ax of EN 14592: 11 N/mm² at 350, on 300 kg/m³, 24 mm less the point of 4.
        double declared = 11 * 4 * 20 * Math.Pow(300 / 350.0, 0.8);
        Assert.Equal(declared * 0.9 / 1.3, WoodScrew.Tension(en with { Thread = 24, DeclaredFax = 11, RhoK = 300 }).Design.Value, 1e-9);
        Assert.Equal(declared * Math.Exp(1.645 * F("variation_timber")), WoodScrew.Tension(en with { Thread = 24, DeclaredFax = 11, RhoK = 300 }).MeanN, 1e-9);
        Assert.Empty(WoodScrew.Marks(en with { Edge = 16 }));
        Assert.Single(WoodScrew.Marks(en with { Edge = 15.9 }));
    }

    /// <summary>By hand: 3 over 4 and |-5| over 10; squares for screws in timber; what presses on counts nothing.</summary>
    [Fact]
    public void Interaction_by_hand()
    {
        Assert.Equal(1.25, Interaction.Utilisation(3, 4, -5, 10), 1e-12);
        Assert.Equal(0.8125, Interaction.Utilisation(3, 4, -5, 10, 2), 1e-12);
        Assert.Equal(0.5, Interaction.Utilisation(-3, 4, 5, 10), 1e-12);
        var trace = new Trace();
        Interaction.Utilisation(3, 4, 5, 10, 2, trace);
        Assert.EndsWith("(8.28)", trace.Steps[^1].Clause);
        trace = new Trace();
        Interaction.Utilisation(3, 4, 5, 10, 1, trace);
        Assert.Equal("linear", trace.Steps[^1].Clause);
        var toe = AllowableStress.Allowable(Board.Toe(Dampness.Dry, Duration.Short), trace);
        Assert.Equal("N/mm²", trace.Steps[^1].Unit);
        Assert.Equal(Board.Toe(Dampness.Dry, Duration.Short).Design.Value / 1.5, toe.Design.Value, 1e-12);
        AllowableStress.Allowable(Board.Bearing(Board1), trace);
        Assert.Equal("N", trace.Steps[^1].Unit);
        var none = MechanismResult.None("withdrawal", new NotCovered("x", "too_short"));
        Assert.Equal((0, 0, "x", false), (none.MeanN, none.Variation, none.Clause, none.Design.Covered));
    }

    /// <summary>
    /// Model error by hand. Nail-pull 56, 77, 87 lbf, each from the line through the others: 56/67, 77/71.5, 87/98, logarithms -0.17930, 0.07411, -0.11905. Flexure of ASTM C1396 (1.297398 N for each lbf) over
    /// EN 520 (350/1200 of 43 t and 16.8 t): 0.83627, 0.87156, 0.95790, 0.72275, 0.75055, 0.76722.
    /// </summary>
    [Fact]
    public void Model_error_by_hand()
    {
        var (punching, flexure) = (BoardModelError.Punching, BoardModelError.Flexure);
        Assert.Equal((3, 6), (punching.Count, flexure.Count));
        Assert.Equal(Math.Exp(-0.07475), punching.Bias, 2e-5);
        Assert.Equal(0.13239, punching.V, 2e-5);
        Assert.Equal(Math.Exp(-0.20598), flexure.Bias, 2e-5);
        Assert.Equal(0.10595, flexure.V, 2e-5);
        // Never below what is known of the model alone; the assumed total is above both.
        Assert.All(Board.InTension(Board1), r => Assert.True(r.Variation >= F("variation_board") && r.Variation >= Math.Max(punching.V, flexure.V)));
        var trace = new Trace();
        var two = BoardBending.Flexure(Board1 with { Thickness = 25, Layers = 2 }, trace);
        double counted = trace.Steps.Last(s => s.Symbol == "R_k").Value;
        Assert.Equal(2 * counted, trace.Steps.Single(s => s.Symbol == "R_k_glued").Value, 1e-9);
        Assert.Equal(0.10595, trace.Steps.Single(s => s.Symbol == "V_theta").Value, 2e-5);
        Assert.Equal(F("variation_board"), two.Variation);
    }
}
