namespace Pattress.Supports;

/// <summary>Where a lattice starts: set out from the left end, from the right one, or from anywhere.</summary>
internal static class PhasePrior
{
    /// <summary>Prior of phases 0..ceil(pitch)-1 in steps, summing to 1.</summary>
    public static double[] Of(double pitchMm, double lengthMm, double stepMm, LinePriors p)
    {
        int n = LatticeKernel.Phases(pitchMm / stepMm);
        var prior = new double[n];
        Array.Fill(prior, (1 - p.DatumLeft - p.DatumRight) / n);
        Add(prior, 0, p.DatumLeft, pitchMm, stepMm, p);
        Add(prior, lengthMm % pitchMm, p.DatumRight, pitchMm, stepMm, p);
        double sum = prior.Sum();
        for (int i = 0; i < n; i++) prior[i] /= sum;
        return prior;
    }

    private static void Add(double[] prior, double at, double share, double pitch, double step, LinePriors p)
    {
        for (int i = 0; i < prior.Length; i++)
        {
            double d = Math.Abs((i * step) - at);
            d = Math.Min(d, pitch - d);
            prior[i] += share * step * (((1 - p.DatumWideShare) * Normal.Density(d, p.DatumSdMm)) + (p.DatumWideShare * Normal.Density(d, p.DatumWideSdMm)));
        }
    }
}
