using Pattress.Strength;
using Pattress.Strength.Mechanisms;
using Pattress.Strength.Standards.AWC_TR12_2015;
using Pattress.Strength.Standards.NDS_2018;

namespace Pattress.Tests.Strength;

/// <summary>The American set: allowable stress design, against hand arithmetic in inches and pounds.</summary>
public class UnitedStatesTests
{
    private const double Lbf = 4.4482216152605;

    // D = 0.157480 in, root 0.107087 in, thread 29 mm = 1.141732 in in the wood, G = 310/840 = 0.369048, plate 2 mm.
    private static readonly WoodScrewInput Screw = new(4, 2.72, 33, 0, 19, 310, Duration.Instantaneous, Plate: 2, Set: RuleSet.UnitedStates);

    // 18 mil stud: t = 0.478 mm, F_u = 310 N/mm².
    private static readonly SteelStudScrewInput Stud = new(4.2, 2.856, 1.6, 0.478, 12.5, 310, 2, Set: RuleSet.UnitedStates);

    /// <summary>2850 x 0.369048² x 0.157480 = 61.1274 lb/in; x 1.141732 in x C_D 1.6 = 111.6658 lbf. C_D by NDS Table 2.3.2.</summary>
    [Theory]
    [InlineData(Duration.Instantaneous, 1, 1.6)]
    [InlineData(Duration.Short, 1, 1.25)]
    [InlineData(Duration.Medium, 1, 1.0)]
    [InlineData(Duration.Long, 1, 1.0)]
    [InlineData(Duration.Permanent, 1, 0.9)]
    [InlineData(Duration.Permanent, 3, 0.9 * 0.7)]
    public void Withdrawal_with_the_load_duration_factor(Duration duration, int serviceClass, double factors)
    {
        var r = WoodScrew.Tension(Screw with { Duration = duration, ServiceClass = serviceClass });
        Assert.Equal(Level.Allowable, r.Level);
        Assert.Equal(61.12740372 * 1.141732283 * factors * Lbf, r.Design.Value, 1e-6);
    }

    /// <summary>
    /// Flush: F_em = 16600 G^1.84 = 2650 psi, F_es = 61,850 psi, F_yb = 90,000 psi, R_d = 2.2; modes in lbf: Im 147.27, Is 237.05, II 63.27, IIIm
    /// 70.16, IIIs 52.63076, IV 64.36. Across 15 mm of board (TR12): II 36.63, IIIm 40.44, IIIs 18.53952, IV 24.31.
    /// </summary>
    [Theory]
    [InlineData(0, 52.63076361)]
    [InlineData(15, 18.53951519)]
    public void Lateral_flush_and_across_a_board(double gap, double lbf) =>
        Assert.Equal(lbf * 1.6 * Lbf, WoodScrewShear.Lateral(Screw with { Gap = gap }).Design.Value, 1e-5);

    /// <summary>Without a gap the general dowel equations are NDS's yield modes (stated in TR12).</summary>
    [Fact]
    public void Without_a_gap_the_general_equations_are_the_yield_modes()
    {
        var random = new Random(12);
        for (int i = 0; i < 500; i++)
        {
            double[] x = [1.6 + 4.5 * random.NextDouble(), 5 + 90 * random.NextDouble(), 0.5 + 40 * random.NextDouble(), 5 + 60 * random.NextDouble(), 5 + 500 * random.NextDouble(), 300 + 700 * random.NextDouble()];
            if (x[2] < 1) continue;
            double nds = Section12_3_Rules.Lateral.Evaluate([.. x, 0, 0]).Value, general = GeneralDowel.Lateral.Evaluate([.. x, 0]).Value;
            Assert.Equal(nds, general, 1e-9 * nds);
        }
    }

    /// <summary>NDS 2018 12.1.5.6 (from memory): at least 6 D in the wood for a lateral load.</summary>
    [Fact]
    public void A_short_screw_is_not_covered_in_shear()
    {
        Assert.Equal("too_short", WoodScrewShear.Lateral(Screw with { Thread = 27.9 }).Design.Why!.Code);
        Assert.True(WoodScrewShear.Lateral(Screw with { Thread = 28 }).Design.Covered);
    }

    /// <summary>Pull-out 0.85 x 0.478 x 4.2 x 310 = 529.0026 N over 3.0 = 176.3342 N; tilting 4.2 sqrt(0.478³ x 4.2) x 310 = 881.815 N over 3.0; twisting flange 0.8 (assumed).</summary>
    [Fact]
    public void Steel_studs_by_AISI_with_omega()
    {
        var pull = SteelStudScrew.Tension(Stud with { Restrained = true });
        Assert.Equal((Level.Allowable, 176.3342), (pull.Level, Math.Round(pull.Design.Value, 4)));
        Assert.Equal(0.8 * 176.3342, SteelStudScrew.Tension(Stud).Design.Value, 1e-6);
        Assert.Equal(881.8149843 / 3, SteelStudScrew.InShear(Stud)[0].Design.Value, 1e-6);
        Assert.DoesNotContain(pull.Marks, m => m.Code == "en1993_1_3_not_covered");
        Assert.StartsWith("AISI S100-16", SteelStudScrew.Tension(Stud with { TStud = 1.2 }).Clause);
    }

    /// <summary>ASTM C473 method B: 107 lbf x 14 in / (4 x 12 in) = 31.2083 lbf (749 psi) strong, 36 lbf: 10.5 lbf (252 psi) weak.</summary>
    [Fact]
    public void Board_bends_by_ASTM_C1396()
    {
        var trace = new Pattress.Working.Trace();
        BoardBending.Flexure(new BoardInput(12.7, 30, 5, 406.4, Duration.Short, Set: RuleSet.UnitedStates), trace);
        Assert.Equal(10.5 * Lbf, trace.Steps.Single(s => s.Symbol == "m_across").Value, 1e-9);
        Assert.Equal(31.208333333 * Lbf, trace.Steps.Single(s => s.Symbol == "m_along").Value, 1e-7);
    }

    /// <summary>What has no American rule is permitted the same load as in the European set under one variable action: R_d / 1.5.</summary>
    [Fact]
    public void Masonry_and_steel_are_brought_to_allowable_by_the_factor_on_actions()
    {
        var design = MasonryPlug.InTension(MechanismTests.Plug);
        var allowable = AllowableStress.For(RuleSet.UnitedStates, design);
        foreach (var (d, a) in design.Zip(allowable))
        {
            Assert.Equal(d.Design.Value / 1.5, a.Design.Value, 1e-12 * d.Design.Value);
            Assert.Equal(d.MeanToPermitted, a.MeanToPermitted, 1e-12 * d.MeanToPermitted);
        }
        Assert.Same(design, AllowableStress.For(RuleSet.Eurocode, design));
        Assert.Equal(allowable, AllowableStress.For(RuleSet.UnitedStates, allowable));
    }

    /// <summary>The quadratic interaction used in plans is never more than (12.4-1) allows (Cauchy and Schwarz).</summary>
    [Fact]
    public void Quadratic_interaction_is_on_the_safe_side_of_12_4()
    {
        var random = new Random(4);
        for (int i = 0; i < 300; i++)
        {
            double w = 100 + 900 * random.NextDouble(), z = 50 + 500 * random.NextDouble(), alpha = 90 * random.NextDouble(), a = alpha * Math.PI / 180;
            double load = Section12_4.Combined.Evaluate([w, z, alpha, 0]).Value;
            Assert.True(Interaction.Utilisation(load * Math.Sin(a), w, load * Math.Cos(a), z, 2) >= 1 - 1e-12);
        }
    }

    /// <summary>Linear interaction at Omega = 3.0 is never more than J4.5.1 and J4.5.2 allow: 1/3 against 1.10/2.35 and 1.15/2.55.</summary>
    [Fact]
    public void Linear_interaction_is_on_the_safe_side_of_J4_5()
    {
        for (double share = 0; share <= 1; share += 0.05)
        {
            double[] x = [share * 900 / 3, 900, (1 - share) * 500 / 3, 500, 0];
            Assert.True(RuleBook.Find("aisi_s100.j4_5_2.combined")!.Evaluate(x).Value <= 1);
            Assert.True(RuleBook.Find("aisi_s100.j4_5_1.combined")!.Evaluate(x).Value <= 1);
        }
    }

    /// <summary>A document that the job does not let stand in leaves the case not covered, and says whose limit was met.</summary>
    [Fact]
    public void Stand_ins_are_the_jobs_choice()
    {
        var thin = MechanismTests.Screw;
        Assert.StartsWith("NDS 2018", WoodScrew.Tension(thin with { StandIns = StandIns.Nds | StandIns.Aisi }).Clause);
        var none = WoodScrew.Tension(thin with { StandIns = StandIns.None });
        Assert.False(none.Design.Covered);
        Assert.StartsWith("EN 1995-1-1:2004", none.Clause);
        Assert.False(SteelStudScrew.Tension(MechanismTests.Stud with { StandIns = StandIns.None }).Design.Covered);
    }
}
