using BenchmarkDotNet.Attributes;
using Pattress.Trials.Installations;

namespace Pattress.Bench;

/// <summary>Inner loops of trials: an installation of eight brackets over five walls.</summary>
[ShortRunJob, MemoryDiagnoser]
public class TrialsBench
{
    private readonly double[] _walls = [0.3, 0.25, 0.2, 0.15, 0.1];
    private readonly BracketOnWall[] _brackets = new BracketOnWall[40];

    public TrialsBench()
    {
        for (int i = 0; i < _brackets.Length; i++) _brackets[i] = new(320 + 23 * (i / 8), 0.15 + 0.01 * (i % 8), 70 + 5 * (i % 8), 0.1);
    }

    [Benchmark]
    public double Lognormal_load() => InstallationFailure.Probability(_walls, _brackets, new(LoadLaw.Lognormal, 0.3, 0.1));

    [Benchmark]
    public double Gumbel_load() => InstallationFailure.Probability(_walls, _brackets, new(LoadLaw.Gumbel, 0.35));
}
