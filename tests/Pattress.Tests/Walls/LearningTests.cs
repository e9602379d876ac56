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
}
