using Pattress.Supports;

namespace Pattress.Tests.Supports;

public class LatticeCasesTests
{
    [Theory]
    [InlineData("S3")]
    [InlineData("S4")]
    public void Worked_lattice_cases(string name)
    {
        var c = StudCases.Case(name);
        double[] pitches = c.Numbers("pitches_steps"), prior = c.Numbers("pitch_prior"), expected = c.Numbers("marginal_centre_pmf");
        var kernel = Loaded(c);
        double[] logs = [.. pitches.Select((p, i) => kernel.LogEvidence(i, p, []) + Math.Log(prior[i]))];
        double z = logs.Sum(Math.Exp);
        StudCases.Printed(c.GetProperty("logZ").GetDouble(), Math.Log(z));
        var posterior = c.Numbers("pitch_posterior");
        for (int i = 0; i < pitches.Length; i++) StudCases.Printed(posterior[i], Math.Exp(logs[i]) / z);
        var density = Density(kernel, pitches, [.. logs.Select(l => Math.Exp(l) / z)], expected.Length);
        for (int i = 0; i < expected.Length; i++) StudCases.Printed(expected[i], density[i]);
    }

    [Fact]
    public void Worked_phase_posterior()
    {
        var c = StudCases.Case("S3");
        var kernel = Loaded(c);
        foreach (int pitch in new[] { 20, 30 })
        {
            kernel.LogEvidence(0, pitch, []);
            var expected = c.GetProperty("phase_posterior").Numbers(pitch.ToString(System.Globalization.CultureInfo.InvariantCulture));
            var share = expected.Sum();
            // Printed jointly with the pitch, nine digits each: a digit and a half once divided by their sum.
            for (int i = 0; i < pitch; i++) Assert.Equal(expected[i] / share, kernel.Phase(0, pitch)[i], 1.5e-8 * expected[i] / share);
        }
    }

    [Theory]
    [InlineData("S1")]
    [InlineData("S2")]
    public void Worked_renewal_cases(string name)
    {
        var c = StudCases.Case(name);
        double[] weights = c.Weights(), expected = c.Numbers("marginal_centre_pmf"), density = new double[weights.Length];
        var kernel = new RenewalKernel();
        // The first place is uniform over 30 steps; printed with nine digits, meant exactly.
        kernel.SetPrior([.. c.Numbers("first_pmf").Select(p => p > 0 ? 1.0 / 30 : 0)], c.Gaps());
        kernel.Run(weights);
        kernel.AddDensity(density, 1);
        StudCases.Printed(c.GetProperty("logZ").GetDouble(), kernel.LogEvidence);
        StudCases.Printed(c.GetProperty("expected_studs").GetDouble(), density.Sum());
        for (int i = 0; i < expected.Length; i++) StudCases.Printed(expected[i], density[i]);
        Assert.Equal(c.GetProperty("argmax_index").GetInt32(), Array.IndexOf(density, density.Max()));
    }

    private static LatticeKernel Loaded(System.Text.Json.JsonElement c)
    {
        var kernel = new LatticeKernel();
        LatticeShape shape = new(c.GetProperty("presence").GetDouble(), c.GetProperty("extra_prob_per_bay").GetDouble(), c.GetProperty("extra_exclusion_steps").GetInt32());
        kernel.Load(c.Weights(), shape, c.Numbers("jitter_pmf"), c.Numbers("pitches_steps").Max());
        return kernel;
    }

    private static double[] Density(LatticeKernel kernel, double[] pitches, double[] shares, int length)
    {
        kernel.Clear();
        for (int i = 0; i < pitches.Length; i++) kernel.Gather(i, pitches[i], shares[i]);
        double[] density = new double[length], scratch = new double[length];
        kernel.AddDensity(density, scratch);
        return density;
    }
}
