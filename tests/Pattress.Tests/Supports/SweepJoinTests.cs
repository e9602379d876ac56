using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>A screw is there once: a stretch that was swept twice has been swept once.</summary>
public class SweepJoinTests
{
    private static SupportBelief Read(params MagnetSweep[] sweeps) => SupportModel.Infer(new(4200, [new Tap("t", 600, TapSound.Solid), .. sweeps], []));

    [Fact]
    public void The_same_sweep_again_is_no_second_opinion()
    {
        var once = Read(new MagnetSweep("a", 530, 670, [602]));
        var twice = Read(new MagnetSweep("a", 530, 670, [602]), new MagnetSweep("b", 670, 530, [602]));
        Assert.Equal(once.Hit, twice.Hit);
        Assert.Equal(once.LogEvidence, twice.LogEvidence);
    }

    [Fact]
    public void Two_that_overlap_are_the_one_over_both_stretches()
    {
        var both = Read(new MagnetSweep("a", 530, 670, [602]), new MagnetSweep("b", 590, 730, [602, 715]));
        Assert.Equal(Read(new MagnetSweep("c", 530, 730, [602, 715])).Hit, both.Hit);
    }

    [Fact]
    public void Hits_of_two_sweeps_nearer_than_a_screw_are_one_and_of_one_sweep_are_two()
    {
        var joined = SweepJoin.Of([new("a", 0, 100, [50]), new("b", 20, 140, [54, 90])], LineRates.Default);
        Assert.Equal([52, 90], Assert.Single(joined).HitsMm);
        Assert.Equal([50, 54], Assert.Single(SweepJoin.Of([new("a", 0, 100, [50, 54])], LineRates.Default)).HitsMm);
    }

    [Fact]
    public void At_another_height_there_are_other_screws() =>
        Assert.Equal(2, SweepJoin.Of([new("a", 0, 100, [50]), new("b", 0, 100, [50], 900)], LineRates.Default).Count);

    [Fact]
    public void What_was_swept_is_not_proposed_again()
    {
        var scan = new LineScan(4200, [new MagnetSweep("a", 330, 670, [])], [new(400, 600)]);
        var best = SweepSearch.Best(new LineReader(), scan, 400, 600, LineRates.Default, LinePriors.Default);
        Assert.True(best.After < best.Before + 0.01 || best.FromMm < 330 || best.ToMm > 670);
    }
}
