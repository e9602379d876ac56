using Pattress.Strength;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Tests.Strength;

/// <summary>Every mechanism over a wide net of inputs in which no factor is 1: each printed step done again from its printed inputs, and the answer the same with the working off.</summary>
public class MechanismGuardTests
{
    private static IEnumerable<BoardInput> Boards()
    {
        foreach (double t in new[] { 6.0, 9.5, 11, 12.5, 14, 15, 19 })
            foreach (var (bearing, shank) in new[] { (39.5, 5.0), (0, 9), (6, 5), (9, 4), (60, 5) })
                foreach (var set in Enum.GetValues<RuleSet>())
                    yield return new(t, bearing, shank, 450, Duration.Permanent, Dampness.Humid, FromSupport: 90, Edge: 30, Group: 3, Spacing: 25, Direction: (BendingDirection)(int)(t % 3), Support: (BoardSupport)((int)t % 3), Set: set);
    }

    [Fact]
    public void Boards_can_be_worked_again()
    {
        foreach (var b in Boards())
        {
            Same(t => Board.InTension(b, t));
            Same(t => Board.InShear(b, t));
            Same(t => [BoardBending.Flexure(b with { Thickness = 2 * b.Thickness, Layers = 2, Damp = Dampness.Damp, Duration = Duration.Medium }, t)]);
        }
        foreach (var damp in Enum.GetValues<Dampness>())
            foreach (var duration in Enum.GetValues<Duration>()) Same(t => [Board.Toe(damp, duration, t)]);
    }

    [Fact]
    public void Screws_in_wood_can_be_worked_again()
    {
        foreach (double d in new[] { 3.5, 5, 6, 8 })
            foreach (double thread in new[] { 8.0, 25, 40, 60 })
                foreach (double gap in new[] { 0, 12.5, 30 })
                    foreach (var set in Enum.GetValues<RuleSet>())
                        foreach (bool bears in new[] { false, true })
                        {
                            WoodScrewInput s = new(d, 0.64 * d, thread, gap, 15, 320, (Duration)((int)thread % 5), 1 + (int)gap % 3, Plate: 0.75 * d, Set: set, BoardBears: bears, Damp: Dampness.Humid);
                            Same(t => WoodScrew.InTension(s, t));
                            Same(t => WoodScrew.InShear(s, t));
                            Same(t => WoodScrew.InTension(s with { DeclaredFax = 11 }, t));
                            Same(t => WoodScrew.InTension(s with { StandIns = StandIns.Nds }, t));
                        }
    }

    [Fact]
    public void Thin_steel_and_masonry_can_be_worked_again()
    {
        foreach (double sheet in new[] { 0.478, 0.55, 0.9, 1.2 })
            foreach (double gap in new[] { 0, 12.5 })
                foreach (var set in Enum.GetValues<RuleSet>())
                {
                    SteelStudScrewInput s = new(4.2, 3, 1.4, sheet, gap, Plate: 0.8, Restrained: sheet > 1, Set: set);
                    Same(t => SteelStudScrew.InTension(s, t));
                    Same(t => AllowableStress.For(set, SteelStudScrew.InShear(s, t), t));
                }
        foreach (var masonry in Enum.GetValues<Masonry>())
            foreach (bool? joint in new bool?[] { null, false, true })
            {
                MasonryPlugInput p = new(masonry, 7, 45, 3.6, 32, Duration.Permanent, Edge: 40, InJoint: joint);
                Same(t => MasonryPlug.InTension(p, t));
                Same(t => MasonryPlug.InShear(p with { AssessedRk = 800 }, 0.3, t));
                Same(t => MasonryPlug.InShear(p with { SiteTestRk = 700, Reach = 0 }, 0.3, t));
            }
        var trace = new Trace();
        Interaction.Utilisation(20, 70, 30, 110, 2, trace);
        Interaction.Utilisation(20, 70, -30, 110, 1.5, trace);
        Assert.All(trace.Steps, WorkingGuardTests.Again);
    }

    private static void Same(Func<Trace?, IReadOnlyList<MechanismResult>> of)
    {
        var trace = new Trace();
        var (with, without) = (of(trace), of(null));
        Assert.All(trace.Steps, WorkingGuardTests.Again);
        Assert.Equal(with.Select(Told), without.Select(Told));
    }

    private static (string, double, double, double, Level) Told(MechanismResult r) => (r.Mechanism, r.Design.Covered ? r.Design.Value : double.NaN, r.MeanN, r.Variation, r.Level);
}
