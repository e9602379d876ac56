using Pattress.Trials.Installations;
using Pattress.Trials.Proof;

namespace Pattress.Tests.Trials;

public sealed class ProofTests
{
    /// <summary>BS 8539, borrowed: 1.5 times at 2.5 %, 1.25 times at 5 %, at least 3 in an area.</summary>
    [Theory]
    [InlineData(200, ProofRate.FewHard, 5, 150)]
    [InlineData(200, ProofRate.MoreGentle, 10, 125)]
    [InlineData(8, ProofRate.FewHard, 3, 150)]
    [InlineData(2, ProofRate.MoreGentle, 2, 125)]
    [InlineData(121, ProofRate.FewHard, 4, 150)]
    public void The_borrowed_rates(int fixings, ProofRate rate, int count, double load)
    {
        var plan = ProofPlan.Sample(fixings, 100, rate).Value!;
        Assert.Equal((count, load), (plan.Count, plan.LoadN));
        Assert.Contains(plan.Reasons, r => r.Code == "proof_borrowed");
        Assert.Contains(plan.Reasons, r => r.Code == "proof_says_nothing_of_creep");
    }

    [Fact]
    public void A_pull_in_service_never_exceeds_the_damage_cap()
    {
        Assert.Equal(125, ProofPlan.InService(4, 100, 300).Value!.LoadN);
        var capped = ProofPlan.InService(4, 100, 110).Value!;
        Assert.Equal(110, capped.LoadN);
        Assert.Contains(capped.Reasons, r => r.Code == "proof_capped");
        Assert.Equal("proof_cap_below_action", Assert.Single(ProofPlan.InService(4, 100, 90).Problems).Code);
    }

    [Theory]
    [InlineData(0, 100, "fixings")]
    [InlineData(3, 0, "action_n")]
    [InlineData(3, double.NaN, "action_n")]
    public void Nonsense_is_refused(int fixings, double action, string path) =>
        Assert.Equal(path, Assert.Single(ProofPlan.Sample(fixings, action, ProofRate.FewHard).Problems).Path);

    [Theory]
    [InlineData(0, 3, "proof_passed")]
    [InlineData(1, 3, "proof_test_more")]
    [InlineData(2, 5, "proof_stop")]
    [InlineData(1, 2, "proof_stop")]
    public void What_a_result_demands(int failed, int tested, string code) => Assert.Equal(code, ProofPlan.After(failed, tested).Code);

    /// <summary>A pull of next to nothing teaches nothing: the closed form of two lognormals. A hard pull helps, and more the harder.</summary>
    [Fact]
    public void Surviving_a_pull_helps()
    {
        LognormalLaw r = LognormalLaw.FromMean(300, 0.3), s = LognormalLaw.FromMean(120, 0.3);
        double before = BracketFailure.Probability(300, 0.3, 120, 0.3), gentle = ProofLearning.FailureAfterSurvival(r, s, 100), hard = ProofLearning.FailureAfterSurvival(r, s, 150);
        Assert.Equal(before, ProofLearning.FailureAfterSurvival(r, s, 1e-3), 1e-10);
        Assert.True(hard < gentle && gentle < before);
    }

    /// <summary>Against plain simulation of pull and service, within four standard errors.</summary>
    [Fact]
    public void Surviving_a_pull_agrees_with_simulation()
    {
        LognormalLaw r = LognormalLaw.FromMean(220, 0.35), s = LognormalLaw.FromMean(120, 0.3);
        var random = new Random(8);
        int survived = 0, failed = 0;
        for (int i = 0; i < 200_000; i++)
        {
            double strength = Math.Exp(r.LogMedian + r.LogSd * Bell(random));
            if (strength <= 120) continue;
            survived++;
            if (strength < Math.Exp(s.LogMedian + s.LogSd * Bell(random))) failed++;
        }
        double p = ProofLearning.FailureAfterSurvival(r, s, 120);
        Assert.True(Math.Abs(failed / (double)survived - p) < 4 * Math.Sqrt(p * (1 - p) / survived), $"{failed} of {survived}, expected {p}");
    }

    private static double Bell(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>
    /// No pull leaves the belief as it was (the next fixing then follows a lognormal law with both scatters); passes raise
    /// it, failures lower it.
    /// </summary>
    [Fact]
    public void A_batch_is_learnt_about()
    {
        var before = new BatchBelief(300, 0.3, 0.2);
        var none = ProofLearning.Batch(before, 0, 0, 200, 150);
        Assert.Equal(300, none.MedianN, 1e-9);
        Assert.Equal(0.3, none.MedianLogSd, 1e-9);
        Assert.Equal(Pattress.Trials.Special.Normal.Cdf(Math.Log(150 / 300.0) / Math.Sqrt(0.13)), none.NextBelow, 1e-10);
        AfterProof passes = ProofLearning.Batch(before, 5, 0, 250, 150), failures = ProofLearning.Batch(before, 0, 2, 250, 150);
        Assert.True(passes.MedianN > 300 && passes.NextBelow < none.NextBelow && passes.MedianLogSd < 0.3);
        Assert.True(failures.MedianN < 300 && failures.NextBelow > none.NextBelow);
    }
}
