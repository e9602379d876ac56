using Pattress.Strength;
using Pattress.Strength.Mechanisms;
using Pattress.Strength.Standards.EN_1993_1_3_2006;
using Pattress.Working;

namespace Pattress.Tests.Strength;

public class MechanismTests
{
    internal static readonly BoardInput Toggle = new(12.5, BoardInput.BarAsDisc(50, 12), 5, 600, Duration.Short);
    internal static readonly WoodScrewInput Screw = new(5, 3.2, 40, 0, 19, 310, Duration.Short, Plate: 2);
    internal static readonly SteelStudScrewInput Stud = new(4.2, 3.0, 1.4, 0.55, 12.5);
    internal static readonly MasonryPlugInput Plug = new(Masonry.Brick, 8, 40, 3.6, 32, Duration.Long);

    private static double Least(IEnumerable<MechanismResult> results) => Mechanism.Governing(results)!.Design.Value;

    // Common practice, no source: the trade takes the mean over 4 to 5, and such a toggle to 10 to 25 kg.
    [Theory]
    [InlineData(Duration.Short, 100, 250)]
    public void A_strap_toggle_in_single_board_carries_what_the_trade_gives_it(Duration duration, double least, double most)
    {
        var results = Board.InTension(Toggle with { Duration = duration });
        Assert.InRange(Least(results) / Factors.OnAction, least, most);
        Assert.All(results, r => Assert.InRange(r.MeanToPermitted, 4, 5));
        Assert.All(results, r => Assert.True(r.Basis is Basis.Mechanics or Basis.Assumed));
    }

    // Common practice, no source (facts of the trade): a support beats the board.
    [Fact]
    public void A_screw_with_35_mm_in_a_timber_stud_carries_more_than_any_single_board_fixing()
    {
        double timber = Least(WoodScrew.InTension(Screw with { Thread = 35, Gap = 12.5 }));
        foreach (double bearing in new[] { 10.0, 20, 40, 50, 80, 120 })
            Assert.True(timber > Least(Board.InTension(Toggle with { Bearing = bearing })), $"bearing {bearing}");
    }

    [Fact]
    public void The_basis_below_6_mm_is_named()
    {
        Assert.StartsWith("prEN 1995-1-1:2023", WoodScrew.Tension(Screw).Clause);
        Assert.StartsWith("EN 14592", WoodScrew.Tension(Screw with { DeclaredFax = 12 }).Clause);
        Assert.StartsWith("EN 1995-1-1:2004", WoodScrew.Tension(Screw with { D = 6, Root = 4.2, Thread = 60 }).Clause);
        Assert.StartsWith("NDS 2018", WoodScrew.Tension(Screw with { Set = RuleSet.UnitedStates }).Clause);
        Assert.StartsWith("NDS 2018", WoodScrew.Tension(Screw with { D = 2.9, Root = 2, Thread = 30 }).Clause);
    }

    [Fact]
    public void An_edge_nearer_than_4_d_is_marked()
    {
        var mark = Assert.Single(WoodScrew.Tension(Screw).Marks);
        Assert.Equal(("edge_distance_departure", 19.0, 20.0), (mark.Code, mark.Values[0].Number, mark.Values[1].Number));
        Assert.Empty(WoodScrew.Tension(Screw with { Edge = 20 }).Marks);
    }

    [Fact]
    public void A_gap_weakens_a_wood_screw_in_shear_and_says_so()
    {
        var flush = WoodScrewShear.Lateral(Screw);
        var gap = WoodScrewShear.Lateral(Screw with { Gap = 12.5 });
        Assert.True(gap.Design.Value < flush.Design.Value);
        Assert.Equal((Basis.Rule, Basis.Mechanics), (flush.Basis, gap.Basis));
        Assert.Contains(gap.Marks, m => m.Code == "board_as_gap");
    }

    // Without a gap the mechanics must be the yield theory of 8.2.3 without its factor 1.15: sqrt(2 M f d), and 0.414 f t d.
    [Fact]
    public void Over_no_gap_the_mechanics_is_the_yield_theory()
    {
        Assert.Equal(Math.Sqrt(2 * 4745.5 * 19.6752 * 3.52), WoodScrewShear.OverGap(0, 1000, 3.52, 19.6752, 4745.5, null), 1e-9);
        Assert.Equal((Math.Sqrt(2) - 1) * 19.6752 * 3.52 * 5, WoodScrewShear.OverGap(0, 5, 3.52, 19.6752, 1e9, null), 1e-9);
    }

    // Hand arithmetic, statics: board 12.5 mm at 6 N/mm², wood at 17, screw 4 mm, M_y 6000 Nmm. x = sqrt(12.5² (1 − 6/17) + 2·6000/(17·4)) − 12.5
    // = sqrt(101.102941 + 176.470588) − 12.5 = 4.160538; F = 6·4·12.5 + 17·4·x = 300 + 282.916604.
    [Fact]
    public void A_board_that_bears_adds_its_own_share_and_leaves_the_hinge_nearer()
    {
        double F = WoodScrewShear.OverBoard(12.5, 1000, 4, 6, 17, 6000, null);
        Assert.Equal(582.9166, F, 1e-4);
        // Moments about the hinge give M_y back.
        double x = (F - 6 * 4 * 12.5) / (17 * 4);
        Assert.Equal(6000, F * (12.5 + x) - 6 * 4 * 12.5 * (x + 12.5 / 2) - 17 * 4 * x * x / 2, 1e-6);
        // Board as hard as wood and thicker than the hinge is deep: the yield theory in one material.
        Assert.Equal(Math.Sqrt(2 * 6000 * 17 * 4), WoodScrewShear.OverBoard(50, 1000, 4, 17, 17, 6000, null), 1e-9);
    }

    [Fact]
    public void A_board_that_bears_nothing_is_a_gap_and_the_more_it_bears_the_more_the_screw_carries()
    {
        foreach (var (depth, moment) in new[] { (1000.0, 6000.0), (20, 6000), (20, 1e9) })
        {
            Assert.Equal(WoodScrewShear.OverGap(12.5, depth, 4, 17, moment, null), WoodScrewShear.OverBoard(12.5, depth, 4, 0, 17, moment, null), 1e-9);
            double before = 0;
            for (double f_b = 0; f_b < 25; f_b += 0.5)
            {
                double now = WoodScrewShear.OverBoard(12.5, depth, 4, f_b, 17, moment, null);
                Assert.True(now >= before - 1e-9);
                before = now;
            }
        }
    }

    [Fact]
    public void Sound_board_bears_and_says_so_and_damp_board_bears_less()
    {
        var gap = WoodScrewShear.Lateral(Screw with { Gap = 12.5 });
        var bears = WoodScrewShear.Lateral(Screw with { Gap = 12.5, BoardBears = true });
        var damp = WoodScrewShear.Lateral(Screw with { Gap = 12.5, BoardBears = true, Damp = Dampness.Damp });
        Assert.Contains(bears.Marks, m => m.Code == "board_bears");
        Assert.True(bears.Design.Value > damp.Design.Value && damp.Design.Value >= gap.Design.Value);
        Assert.True(bears.Design.Value < WoodScrewShear.Lateral(Screw).Design.Value);
    }

    [Fact]
    public void A_thin_stud_is_outside_the_european_table_and_falls_back_by_name()
    {
        var thin = SteelStudScrew.Tension(Stud);
        Assert.StartsWith("AISI S100-16", thin.Clause);
        Assert.Equal(["en1993_1_3_not_covered", "flange_twists"], thin.Marks.Select(m => m.Code));
        Assert.Equal(Table8_2.PullOut.Clause, SteelStudScrew.Tension(Stud with { TStud = 1.2 }).Clause);
    }

    [Fact]
    public void A_sleeve_does_not_remove_the_lever_arm()
    {
        double without = Least(MasonryPlug.InShear(Plug)), with = Least(MasonryPlug.InShear(Plug with { Sleeve = true }));
        Assert.Equal(without, with);
        Assert.True(with < Least(MasonryPlug.InShear(Plug with { Reach = 0 })));
        Assert.Contains(MasonryPlug.InShear(Plug with { Sleeve = true }), r => r.Marks.Any(m => m.Code == "sleeve_keeps_arm"));
    }

    [Fact]
    public void A_plug_rests_on_tests_then_on_an_assessment_then_on_assumed_values()
    {
        Assert.Equal(Basis.Assumed, MasonryPlug.PullOut(Plug).Basis);
        Assert.Equal(Basis.Rule, MasonryPlug.PullOut(Plug with { AssessedRk = 900 }).Basis);
        Assert.Equal(Basis.Trial, MasonryPlug.PullOut(Plug with { AssessedRk = 900, SiteTestRk = 700 }).Basis);
    }

    [Fact]
    public void Not_knowing_the_joint_lies_between_joint_and_unit()
    {
        double unit = MasonryPlug.PullOut(Plug with { InJoint = false }).Design.Value, joint = MasonryPlug.PullOut(Plug with { InJoint = true }).Design.Value;
        var unknown = MasonryPlug.PullOut(Plug);
        Assert.InRange(unknown.Design.Value, joint, unit);
        Assert.Contains(unknown.Marks, m => m.Code == "mortar_joint_unknown");
    }

    [Fact]
    public void Fixings_far_apart_do_not_share_a_perimeter_and_near_ones_do()
    {
        double alone = Board.Punching(Toggle).Design.Value, reach = Toggle.Bearing + 2 * Toggle.Thickness;
        Assert.Equal(alone, Board.Punching(Toggle with { Group = 2, Spacing = reach }).Design.Value);
        Assert.True(Board.Punching(Toggle with { Group = 2, Spacing = 20 }).Design.Value < alone);
    }

    [Fact]
    public void Interaction_is_linear_by_default() => Assert.Equal(1.0, Interaction.Utilisation(50, 100, 25, 50), 1e-15);

    [Fact]
    public void Every_step_of_every_mechanism_can_be_done_again()
    {
        var trace = new Trace();
        foreach (var b in new[] { Toggle, Toggle with { Bearing = 0 }, Toggle with { Thickness = 25, Layers = 2, Group = 2, Spacing = 30, Edge = 30 }, Toggle with { Thickness = 9.5, Support = BoardSupport.Dabs }, Toggle with { Support = BoardSupport.Foam } })
            Assert.NotEmpty(Board.InTension(b, trace).Concat(Board.InShear(b, trace)));
        Board.Toe(Dampness.Damp, Duration.Long, trace);
        foreach (var set in Enum.GetValues<RuleSet>())
            Assert.NotEmpty(WoodScrew.InTension(Screw with { Set = set }, trace).Concat(WoodScrew.InShear(Screw with { Set = set }, trace)).Concat(WoodScrew.InShear(Screw with { Set = set, Gap = 12.5 }, trace)).Concat(WoodScrew.InShear(Screw with { Set = set, Gap = 12.5, BoardBears = true }, trace)));
        Assert.NotEmpty(SteelStudScrew.InTension(Stud, trace).Concat(SteelStudScrew.InShear(Stud, trace)));
        Assert.NotEmpty(MasonryPlug.InTension(Plug, trace).Concat(MasonryPlug.InShear(Plug, 0.2, trace)));
        Interaction.Utilisation(1, 2, 3, 4, 2, trace);
        Assert.True(trace.Steps.Count > 150);
        Assert.All(trace.Steps, WorkingGuardTests.Again);
    }
}
