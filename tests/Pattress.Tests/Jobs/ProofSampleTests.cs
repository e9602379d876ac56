using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Jobs.Proofs;
using Pattress.Tests.Planning;

namespace Pattress.Tests.Jobs;

/// <summary>A sample in place of every pull: BS 8539 (from memory) takes 2.5 % at 1.5 times the action or 5 % at 1.25 times, at least three.</summary>
public class ProofSampleTests
{
    private static IReadOnlyList<ItemProof> Proofs(string sample)
    {
        var job = DemoHouse.Read(sample);
        return ProofOf.All(Planner.Plan(job, PlanData.Embedded), job);
    }

    [Theory]
    [InlineData("demo-house"), InlineData("masonry-house"), InlineData("rented-flat"), InlineData("dab-radiator")]
    public void It_spares_pulls_and_never_pulls_too_hard(string sample)
    {
        foreach (var proof in Proofs(sample))
        {
            Assert.All(proof.Samples, s => Assert.InRange(s.Count, 3, proof.Count - 1));
            Assert.All(proof.Samples, s => Assert.All(proof.Pulls, p => Assert.True(s.LoadN <= p.DamageCapN, proof.Item)));
            Assert.Equal(proof.Samples.Count, proof.Samples.DistinctBy(s => s.Count).Count());
        }
    }

    /// <summary>Two plugs of a mirror are both pulled; of four a sample of three spares one, and the gentler rate is enough: 1.25 times the action.</summary>
    [Fact]
    public void Of_four_fixings_in_masonry_three_are_a_sample_and_of_two_there_is_none()
    {
        var proofs = Proofs("demo-house").Where(p => p.Item is "breast-mirror" or "breast-screen").ToDictionary(p => p.Item);
        Assert.Equal((2, 0), (proofs["breast-mirror"].Count, proofs["breast-mirror"].Samples.Count));
        var four = proofs["breast-screen"];
        Assert.Equal(4, four.Count);
        var sample = Assert.Single(four.Samples);
        Assert.Equal(("more_gentle", 3), (sample.Rate, sample.Count));
        Assert.Equal(1.25 * four.Pulls.Max(p => p.ActionN), sample.LoadN, 1e-9);
    }
}
