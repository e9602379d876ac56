using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class LearningTests
{
    [Fact] // by hand: (0.8-1)^2 and (0.8-0)^2, mean 0.34; ln 0.8 and ln 0.2, mean -0.916290731874155
    public void Brier_and_log_score_by_hand()
    {
        var report = Learning.Report([new("a", 0.8, true), new("b", 0.8, false)]);
        Assert.Equal(0.34, report.Brier, 1e-12);
        Assert.Equal(-0.916290731874155, report.LogScore, 1e-12);
        Assert.Equal(0.3, report.CalibrationError, 1e-12);
    }

    [Fact] // conjugate counts: Beta(18, 2) and one miss make 18/21
    public void Counts_are_conjugate() => Assert.Equal(18.0 / 21, BetaCount.Prior(0.9, 20).Plus(false).Mean, 1e-12);

    [Fact]
    public void Walls_that_sound_duller_teach_a_lower_rate_and_the_prior_is_kept_without_scans()
    {
        var rates = LineRates.Default;
        var learned = LineLearning.From(rates);
        Assert.Equal(rates.TapSolidOn, learned.Apply(rates).TapSolidOn, 1e-12);
        for (int i = 0; i < 12; i++)
        {
            LineScan scan = new(2400, [new Tap("t", 600, TapSound.Hollow), new ThinHole("h", 600, HoleMet.Support), new MagnetSweep("m", 530, 670, [600])], []);
            learned = learned.Plus(scan, SupportModel.Infer(scan, learned.Apply(rates)), rates);
        }
        Assert.True(learned.Apply(rates).TapSolidOn < rates.TapSolidOn - 0.15);
        Assert.True(learned.Apply(rates).MagnetFinds > rates.MagnetFinds);
        Assert.Equal(12, learned.Holes);
    }
}
