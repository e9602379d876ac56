using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>Every configuration of small random walls written out one by one, against the kernels: to 1e-12.</summary>
public class LatticeBruteForceTests
{
    private sealed record Small(int N, double[] W, int[] Pitches, double[] Jitter, LatticeShape Shape)
    {
        /// <summary>Weights of extras, where they differ.</summary>
        public double[] Extras { get; init; } = [];

        public double Extra(int place) => Extras.Length > 0 ? Extras[place] : W[place];
    }

    [Fact]
    public void Two_hundred_random_walls_by_enumeration()
    {
        var random = new Random(20240607);
        for (int wall = 0; wall < 200; wall++) Check(Make(random));
    }

    [Fact]
    public void Extras_that_weigh_otherwise_by_enumeration()
    {
        var random = new Random(20240609);
        for (int wall = 0; wall < 60; wall++)
        {
            var s = Make(random);
            double[] x = [.. s.W.Select(_ => Math.Exp((random.NextDouble() * 4) - 2))];
            Check(s with { Extras = x });
        }
    }

    /// <summary>
    /// The chance that all of several windows are met: by leaving out configurations whose windows are empty, set by set, as the layout does it,
    /// against adding up the configurations that meet all of them.
    /// </summary>
    [Fact]
    public void Meeting_all_of_several_windows_by_enumeration()
    {
        var random = new Random(20260611);
        for (int wall = 0; wall < 100; wall++)
        {
            var s = Make(random);
            (int From, int To)[] windows = [.. Enumerable.Range(0, 2 + wall % 2).Select(i => (From: i * (s.N / 3) + random.Next(2), To: i * (s.N / 3) + 2))];
            bool Met(IReadOnlyList<int> places, (int From, int To) w) => places.Any(p => p >= w.From && p <= w.To);
            double Sum(Func<IReadOnlyList<int>, bool> counts) => s.Pitches.Sum(p => Enumerable.Range(0, p).Sum(phase => Enumerate(s, p, phase, new double[s.N + 1], counts) / p));
            double Evidence(double[] w)
            {
                var kernel = new LatticeKernel();
                kernel.Load(w, s.Shape, s.Jitter, s.Pitches.Max(), []);
                return s.Pitches.Select((p, i) => Math.Exp(kernel.LogEvidence(i, p, []))).Sum();
            }
            double chance = 0, all = Evidence(s.W);
            for (int set = 0; set < 1 << windows.Length; set++)
            {
                double[] empty = [.. s.W.Select((w, at) => windows.Where((_, i) => (set >> i & 1) == 1).Any(z => at >= z.From && at <= z.To) ? 0 : w)];
                chance += (System.Numerics.BitOperations.PopCount((uint)set) % 2 == 0 ? 1 : -1) * Evidence(empty) / all;
            }
            Assert.Equal(Sum(places => windows.All(w => Met(places, w))) / Sum(_ => true), chance, 1e-10);
        }
    }

    /// <summary>Gaps all alike; gaps of which some are likelier; with two that cannot be between them.</summary>
    [Theory]
    [InlineData("1 1 1 1 1 1 1")]
    [InlineData("1 1 2 7 3 1 1")]
    [InlineData("5 1 1 0.1 0.1 4 2")]
    [InlineData("1 0 3 0 2 2 1")]
    public void Renewal_on_random_walls_by_enumeration(string likelihoods)
    {
        double[] shares = [.. likelihoods.Split(' ').Select(s => double.Parse(s, System.Globalization.CultureInfo.InvariantCulture))];
        var random = new Random(11);
        for (int wall = 0; wall < 100; wall++)
        {
            double[] w = [.. Enumerable.Range(0, 60).Select(_ => Math.Exp(random.NextDouble() * 6 - 3))];
            double[] gaps = new double[24], first = [.. Enumerable.Repeat(1.0 / 20, 20)];
            for (int d = 17; d < 24; d++) gaps[d] = shares[d - 17] / shares.Sum();
            var kernel = new RenewalKernel();
            kernel.SetPrior(first, gaps);
            kernel.Run(w);
            double[] density = new double[60], expected = new double[60];
            kernel.AddDensity(density, 1);
            double z = Walk(w, first, gaps, expected, -1, 1, []);
            Assert.Equal(Math.Log(z), kernel.LogEvidence, 1e-12);
            for (int i = 0; i < 60; i++) Assert.Equal(expected[i] / z, density[i], 1e-12);
        }
    }

    /// <summary>Walks every configuration of a renewal wall; adds its weight at each of its places.</summary>
    private static double Walk(double[] w, double[] first, double[] gaps, double[] at, int last, double weight, List<int> places)
    {
        double z = 0;
        for (int next = 0; next <= last + gaps.Length || (last < 0 && next < first.Length); next++)
        {
            double p = last < 0 ? (next < first.Length ? first[next] : 0) : next > last && next - last < gaps.Length ? gaps[next - last] : 0;
            if (p == 0) continue;
            if (next >= w.Length) { z += p * weight; foreach (int i in places) at[i] += p * weight; continue; }
            places.Add(next);
            z += Walk(w, first, gaps, at, next, weight * p * w[next], places);
            places.RemoveAt(places.Count - 1);
        }
        return z;
    }

    private static Small Make(Random random)
    {
        int n = random.Next(8, 14);
        double a = random.NextDouble(), b = random.NextDouble(), c = random.NextDouble();
        return new(n, [.. Enumerable.Range(0, n + 1).Select(_ => Math.Exp((random.NextDouble() * 8) - 4))], [random.Next(5, 7), random.Next(7, 9)],
            [a / (a + b + c), b / (a + b + c), c / (a + b + c)], new(0.5 + (random.NextDouble() / 2), random.NextDouble() / 2, 2));
    }

    private static void Check(Small s)
    {
        var kernel = new LatticeKernel();
        kernel.Load(s.W, s.Shape, s.Jitter, s.Pitches.Max(), s.Extras);
        double[][] expected = [.. s.Pitches.Select(_ => new double[s.N + 1])];
        double[] z = [.. s.Pitches.Select((p, i) => Enumerable.Range(0, p).Sum(phase => Enumerate(s, p, phase, expected[i]) / p))];
        double[] density = new double[s.N + 1], scratch = new double[s.N + 1];
        kernel.Clear();
        for (int i = 0; i < z.Length; i++)
        {
            Assert.Equal(Math.Log(z[i]), kernel.LogEvidence(i, s.Pitches[i], []), 1e-12);
            kernel.Gather(i, s.Pitches[i], z[i] / z.Sum());
        }
        double[] extras = new double[s.Extras.Length];
        kernel.AddDensity(density, scratch, extras);
        for (int c = 0; c < extras.Length; c++) density[c] += extras[c] * s.Extras[c];
        for (int c = 0; c <= s.N; c++) Assert.Equal(z.Select((_, i) => expected[i][c] / s.Pitches[i]).Sum() / z.Sum(), density[c], 1e-12);
    }

    /// <summary>All placings of one phase: each lattice place empty or jittered, each bay empty or with one extra.</summary>
    private static double Enumerate(Small s, int pitch, int phase, double[] at, Func<IReadOnlyList<int>, bool>? counts = null)
    {
        List<List<(double P, int Place)>> choices = [];
        for (int place = phase; place <= s.N; place += pitch)
            choices.Add([(1 - s.Shape.Presence, -1), .. s.Jitter.Select((j, t) => (s.Shape.Presence * j, place + t - 1))]);
        int lattice = choices.Count;
        for (int from = phase - pitch; from <= s.N; from += pitch)
        {
            int count = pitch - (2 * s.Shape.ClearSteps) + 1;
            choices.Add([(1 - s.Shape.ExtraPerBay, -1), .. Enumerable.Range(0, count).Select(i => (s.Shape.ExtraPerBay / count, from + s.Shape.ClearSteps + i))]);
        }
        return Walk(s, choices, 0, 1, at, [], lattice, counts);
    }

    private static double Walk(Small s, List<List<(double P, int Place)>> choices, int i, double weight, double[] at, List<int> places, int lattice, Func<IReadOnlyList<int>, bool>? counts)
    {
        if (i == choices.Count)
        {
            if (counts?.Invoke(places) == false) return 0;
            foreach (int p in places) at[p] += weight;
            return weight;
        }
        double z = 0;
        foreach (var (p, place) in choices[i])
        {
            bool inside = place >= 0 && place <= s.N;
            if (inside) places.Add(place);
            z += Walk(s, choices, i + 1, weight * p * (inside ? i < lattice ? s.W[place] : s.Extra(place) : 1), at, places, lattice, counts);
            if (inside) places.RemoveAt(places.Count - 1);
        }
        return z;
    }
}
