using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>Taps of a line against the two-state chain written out: every path of clear and patch, tap by tap.</summary>
public class TapWeightsTests
{
    private static readonly LineRates Rates = LineRates.Default;

    /// <summary>
    /// P(heard | support at c) / P(heard | none near), the sum over all 2^n paths of the chain: it starts clear or in a patch by
    /// their shares, stays what it is over a distance d with e^(-d rate) and else begins anew (hand arithmetic, docs/theory/supports.md).
    /// </summary>
    private static double ByPaths(double[] at, bool[] solid, double[] share, double halfWidth, double? centre)
    {
        double rate = Rates.PatchPerMm + (1 / Rates.PatchLengthMm), patchy = Rates.PatchPerMm / rate, sum = 0;
        for (int path = 0; path < 1 << at.Length; path++)
        {
            double p = 1;
            for (int k = 0; k < at.Length; k++)
            {
                bool patch = (path >> k & 1) == 1, before = k > 0 && (path >> (k - 1) & 1) == 1;
                double anew = patch ? patchy : 1 - patchy, stay = k == 0 ? 0 : Math.Exp(-(at[k] - at[k - 1]) * rate);
                p *= ((1 - stay) * anew) + (patch == before ? stay : 0);
                double near = centre is { } c ? TapWeights.Solid(Rates, Math.Abs(at[k] - c), halfWidth) : Rates.TapSolidOff, heard = patch ? Math.Max(near, Rates.PatchSolid) : near;
                p *= Math.Pow(solid[k] ? heard : 1 - heard, share[k]);
            }
            sum += p;
        }
        return sum;
    }

    [Theory]
    [InlineData(1, 19)]
    [InlineData(1, 38)]
    [InlineData(2, 19)]
    [InlineData(4, 19)]
    public void Weights_of_random_taps_by_every_path(double step, double halfWidth)
    {
        var random = new Random(3);
        for (int line = 0; line < 20; line++)
        {
            int n = random.Next(1, 9);
            // At whole mm the chance of sounding solid is the formula itself, not a straight line between two of its values.
            double[] at = [.. Enumerable.Range(0, n).Select(_ => (double)random.Next(0, 500)).Order()], share = [.. at.Select(_ => random.Next(3) == 0 ? 0.3 : 1.0)];
            bool[] solid = [.. at.Select(_ => random.Next(2) == 0)];
            var taps = new TapWeights();
            taps.Load(at, solid, share, Rates);
            double none = ByPaths(at, solid, share, halfWidth, null);
            Assert.Equal(Math.Log(none), taps.LogNone, 1e-12);
            double[] weights = [.. Enumerable.Repeat(2.0, (int)(600 / step) + 1)];
            taps.Multiply(weights, step, halfWidth);
            for (int i = 0; i < weights.Length; i++)
            {
                // A support that none of them reaches says nothing.
                bool reached = at.Any(a => Math.Abs(a - (i * step)) <= Rates.TapReachMm);
                double expected = reached ? 2 * ByPaths(at, solid, share, halfWidth, i * step) / none : 2;
                Assert.Equal(1, weights[i] / expected, 1e-12);
            }
        }
    }

    /// <summary>A coarser grid has every so-manyth weight of the finest, wherever the taps are.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void A_coarser_grid_has_the_same_weights(int step)
    {
        var random = new Random(8);
        var taps = new TapWeights();
        taps.Load([.. Enumerable.Range(0, 9).Select(_ => 500 * random.NextDouble()).Order()], [.. Enumerable.Range(0, 9).Select(i => i % 3 == 0)], [.. Enumerable.Repeat(1.0, 9)], Rates);
        double[] fine = [.. Enumerable.Repeat(1.0, 601)], coarse = [.. Enumerable.Repeat(1.0, (600 / step) + 1)];
        taps.Multiply(fine, 1, 19);
        taps.Multiply(coarse, step, 19);
        for (int i = 0; i < coarse.Length; i++) Assert.Equal(1, coarse[i] / fine[i * step], 1e-12);
    }

    /// <summary>Between whole mm the weight lies on the straight line between both: so a tap moved by half a mm has the mean, if it is alone.</summary>
    [Fact]
    public void A_tap_between_two_whole_mm_weighs_the_mean_of_both()
    {
        double[] Row(double at)
        {
            var taps = new TapWeights();
            taps.Load([at], [true], [1], Rates with { PatchPerMm = 0 });
            double[] weights = [.. Enumerable.Repeat(1.0, 400)];
            taps.Multiply(weights, 1, 19);
            return weights;
        }
        double[] left = Row(200), right = Row(201), middle = Row(200.5);
        for (int i = 127; i <= 274; i++) Assert.Equal((left[i] + right[i]) / 2, middle[i], 1e-12);
    }
}
