using System.Diagnostics;
using System.Globalization;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using Pattress.Trials.Installations;
using Pattress.Trials.Shrinkage;
using Pattress.Trials.Statistics;

namespace Pattress.Bench;

/// <summary>Times of trials beside general libraries in the same run, and how calibration degrades. On demand: <c>trials</c>.</summary>
internal static class TrialsReport
{
    private const int Benches = 10_000;
    private static readonly double[] Walls = [0.3, 0.25, 0.2, 0.15, 0.1];
    private static readonly BracketOnWall[] Brackets = [.. Enumerable.Range(0, 40).Select(i => new BracketOnWall(320 + 23 * (i / 8), 0.15 + 0.01 * (i % 8), 70 + 5 * (i % 8), 0.1))];
    private static readonly SharedCauses Shared = new(LoadLaw.Lognormal, 0.3, 0.1);

    public static void Run()
    {
        Factor();
        Kinds();
        Installation();
        Simulation();
        Coverage();
        Shrinkage();
    }

    private static void Factor()
    {
        double ours = Micro(() => ToleranceFactor.ScatterUnknown(5, 0.95, 0.90), 2000);
        double scipy = Python("import timeit,numpy as np;from scipy.stats import nct,norm;f=lambda:nct.ppf(.9,4,norm.ppf(.95)*5**.5)/5**.5;f();print(min(timeit.repeat(f,number=20,repeat=5))/20*1e6)");
        Say($"k-factor: {ours:0.0} us (target 20); scipy nct.ppf {scipy:0} us, ratio {scipy / ours:0}");
    }

    private static void Kinds()
    {
        KindSeries[] kinds = [.. Enumerable.Range(0, 12).Select(k => new KindSeries($"{k}", [.. Enumerable.Range(0, 1 + k % 5).Select(j => 6 + 0.3 * Math.Sin(k) + 0.15 * Math.Cos(7 * j + k))]))];
        Say($"shrinkage of 12 kinds: {Micro(() => ShrunkKinds.Fit(kinds).Kinds.Count, 200) / 1000:0.00} ms; with a fractile {Micro(() => ShrunkKinds.Fit(kinds).NextOf(3).Quantile(0.05), 200) / 1000:0.00} ms (target 1)");
    }

    private static void Installation()
    {
        double ours = Micro(() => InstallationFailure.Probability(Walls, Brackets, Shared), 2000), gumbel = Micro(() => InstallationFailure.Probability(Walls, Brackets, new(LoadLaw.Gumbel, 0.35)), 2000);
        double theirs = Micro(MathNetInstallation, 50), difference = InstallationFailure.Probability(Walls, Brackets, Shared) - MathNetInstallation();
        Say($"8 brackets over 5 walls: {ours:0.0} us lognormal, {gumbel:0.0} us Gumbel (target 20); double exponential of MathNet {theirs:0} us, ratio {theirs / ours:0}, difference {difference:0.0e0}");
    }

    private static double MathNetInstallation()
    {
        double V(double cov) => Math.Log(1 + cov * cov);
        double spread = Math.Sqrt(V(0.3) + V(0.1)), centre = (V(0.1) - V(0.3)) / 2;
        return DoubleExponentialTransformation.Integrate(z =>
        {
            double total = 0;
            for (int w = 0; w < 5; w++)
            {
                double stands = 1;
                for (int b = 0; b < 8; b++)
                {
                    var c = Brackets[8 * w + b];
                    double vr = V(c.CovResistance), vs = V(c.CovAction);
                    stands *= 1 - Normal.CDF(0, 1, (centre + spread * z + Math.Log(c.MeanAction) - vs / 2 - Math.Log(c.MeanResistance) + vr / 2) / Math.Sqrt(vr + vs));
                }
                total += Walls[w] * (1 - stands);
            }
            return total * Normal.PDF(0, 1, z);
        }, -8.2, 8.2, 1e-10);
    }

    private static void Simulation()
    {
        const long systems = 20_000_000;
        const int theirs = 300_000;
        InstallationSampling.Estimate(Walls, Brackets, Shared, 1_000_000, 1);
        var watch = Stopwatch.StartNew();
        double share = InstallationSampling.Estimate(Walls, Brackets, Shared, systems, 7).Share;
        double rate = systems / watch.Elapsed.TotalSeconds;
        var random = new MathNet.Numerics.Random.Xoshiro256StarStar(3);
        watch.Restart();
        int failed = 0;
        for (int i = 0; i < theirs; i++)
        {
            double q = LogNormal.WithMeanVariance(1, 0.09, random).Sample() / LogNormal.WithMeanVariance(1, 0.01, random).Sample(), u = random.NextDouble();
            int wall = 0;
            while (wall < 4 && (u -= Walls[wall]) >= 0) wall++;
            for (int b = 0; b < 8; b++)
            {
                var c = Brackets[8 * wall + b];
                double r = LogNormal.WithMeanVariance(c.MeanResistance, Math.Pow(c.MeanResistance * c.CovResistance, 2), random).Sample();
                if (r < q * LogNormal.WithMeanVariance(c.MeanAction, Math.Pow(c.MeanAction * c.CovAction, 2), random).Sample()) { failed++; break; }
            }
        }
        double slow = theirs / watch.Elapsed.TotalSeconds;
        Say($"simulation: {rate / 1e6:0.0} million eight-bracket systems a second (target 20), share {share:0.00000}; drawn plainly with MathNet {slow / 1e6:0.00} million, share {failed / (double)theirs:0.00000}, ratio {rate / slow:0}");
    }

    /// <summary>How often the 5 % fractile at 75 % confidence lies below the true one, five tests.</summary>
    private static void Coverage()
    {
        Say($"coverage of the characteristic value, nominal 75 %, {Benches} benches of 5 tests:");
        Say($"  where its model holds {Covered(r => Bell(r), -1.644854):0.0} %");
        Say($"  one test in twenty is 4 s low (outliers) {Covered(r => r.NextDouble() < 0.05 ? Bell(r) - 4 : Bell(r), MixedFractile(0.05, 4)):0.0} %");
        Say($"  two modes: a fifth fails 3 s lower {Covered(r => r.NextDouble() < 0.2 ? Bell(r) - 3 : Bell(r), MixedFractile(0.2, 3)):0.0} %");
        Say($"  two modes of equal weight, 3 s apart {Covered(r => r.NextDouble() < 0.5 ? Bell(r) - 3 : Bell(r), MixedFractile(0.5, 3)):0.0} %");
    }

    private static double MixedFractile(double share, double low)
    {
        double a = -12, b = 4;
        for (int i = 0; i < 80; i++)
        {
            double m = (a + b) / 2;
            if (share * Normal.CDF(0, 1, m + low) + (1 - share) * Normal.CDF(0, 1, m) < 0.05) a = m; else b = m;
        }
        return a;
    }

    private static double Covered(Func<Random, double> draw, double fractile)
    {
        var random = new Random(3);
        double k = ToleranceFactor.ScatterUnknown(5, 0.95, 0.75);
        int covered = 0;
        for (int i = 0; i < Benches; i++)
        {
            double[] bench = [draw(random), draw(random), draw(random), draw(random), draw(random)];
            if (Characteristic.Value(bench, k, StrengthLaw.Normal) <= fractile) covered++;
        }
        return 100.0 * covered / Benches;
    }

    /// <summary>How often a new test falls below the predicted 5 % fractile, kinds drawn from the model's own prior and otherwise.</summary>
    private static void Shrinkage()
    {
        Say($"new tests below shrinkage's 5 % fractile, {Benches} benches of 5 kinds with 1 to 3 tests:");
        Say($"  kinds from its own prior {Below((r, s) => s * Bell(r)):0.0} %");
        Say($"  one test in twenty is 4 s low {Below((r, s) => s * (r.NextDouble() < 0.05 ? Bell(r) - 4 : Bell(r))):0.0} %");
        Say($"  two modes: a fifth fails 3 s lower {Below((r, s) => s * (r.NextDouble() < 0.2 ? Bell(r) - 3 : Bell(r))):0.0} %");
    }

    private static double Below(Func<Random, double, double> error)
    {
        var random = new Random(29);
        int below = 0;
        for (int i = 0; i < Benches; i++)
        {
            double s = Math.Exp(Math.Log(0.01) + random.NextDouble() * Math.Log(150)), tau = 0.2 * Math.Tan(Math.PI / 2 * random.NextDouble());
            double[] theta = [.. Enumerable.Range(0, 5).Select(_ => 6 + tau * Bell(random))];
            var fit = ShrunkKinds.Fit([.. theta.Select((t, k) => new KindSeries($"{k}", [.. Enumerable.Range(0, 1 + k % 3).Select(_ => t + error(random, s))]))]);
            if (fit.NextOf(i % 5).Cdf(theta[i % 5] + error(random, s)) < 0.05) below++;
        }
        return 100.0 * below / Benches;
    }

    private static double Bell(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>Best of five, microseconds.</summary>
    private static double Micro<T>(Func<T> what, int times)
    {
        double best = double.PositiveInfinity;
        for (int run = 0; run < 6; run++)
        {
            var watch = Stopwatch.StartNew();
            for (int i = 0; i < times; i++) what();
            best = Math.Min(best, watch.Elapsed.TotalMicroseconds / times);
        }
        return best;
    }

    private static double Python(string program)
    {
        using var process = Process.Start(new ProcessStartInfo(File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3", ["-c", program]) { RedirectStandardOutput = true })!;
        string text = process.StandardOutput.ReadToEnd();
        return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double us) ? us : double.NaN;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
