using BenchmarkDotNet.Attributes;
using Pattress.Trials.Installations;
using Pattress.Trials.Shrinkage;
using Pattress.Trials.Statistics;

namespace Pattress.Bench;

/// <summary>Inner loops of trials: tolerance factor, shrinkage of twelve kinds, an installation of eight brackets over five walls, its simulation.</summary>
[ShortRunJob, MemoryDiagnoser]
public class TrialsBench
{
    private const int Systems = 100_000;
    private readonly double[] _walls = [0.3, 0.25, 0.2, 0.15, 0.1];
    private readonly BracketOnWall[] _brackets = new BracketOnWall[40];
    private readonly KindSeries[] _kinds;

    public TrialsBench()
    {
        for (int i = 0; i < _brackets.Length; i++) _brackets[i] = new(320 + 23 * (i / 8), 0.15 + 0.01 * (i % 8), 70 + 5 * (i % 8), 0.1);
        _kinds = [.. Enumerable.Range(0, 12).Select(k => new KindSeries($"{k}", [.. Enumerable.Range(0, 1 + k % 5).Select(j => 6 + 0.3 * Math.Sin(k) + 0.15 * Math.Cos(7 * j + k))]))];
    }

    [Benchmark]
    public double Lognormal_load() => InstallationFailure.Probability(_walls, _brackets, new(LoadLaw.Lognormal, 0.3, 0.1));

    [Benchmark]
    public double Gumbel_load() => InstallationFailure.Probability(_walls, _brackets, new(LoadLaw.Gumbel, 0.35));

    [Benchmark]
    public double Tolerance_factor() => ToleranceFactor.ScatterUnknown(5, 0.95, 0.90);

    [Benchmark]
    public ShrunkKinds Shrinkage_of_twelve() => ShrunkKinds.Fit(_kinds);

    [Benchmark]
    public double Shrinkage_of_twelve_and_a_fractile() => ShrunkKinds.Fit(_kinds).NextOf(3).Quantile(0.05);

    [Benchmark(OperationsPerInvoke = Systems)]
    public double Simulated_system() => InstallationSampling.Estimate(_walls, _brackets, new(LoadLaw.Lognormal, 0.3, 0.1), Systems, 1).Share;
}
