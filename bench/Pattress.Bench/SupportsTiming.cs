using System.Diagnostics;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>A quick timing without a benchmark run: <c>lines</c>. Processor time, with what was allocated.</summary>
internal static class SupportsTiming
{
    public static void Run()
    {
        double[] w = [.. Enumerable.Range(0, 6001).Select(i => i % 600 < 40 ? 5.0 : 0.7)], density = new double[6001], scratch = new double[6001];
        var jitter = Normal.Kernel(5, 12, 0.1, 1);
        var kernel = new LatticeKernel();
        Time("lattice, three pitches, 6 m at 1 mm", () => Lattice(kernel, w, jitter, density, scratch));
        var renewal = new RenewalKernel();
        var gaps = GapPrior.Of(LinePriors.Default, 1);
        renewal.SetPrior(GapPrior.First(gaps), gaps);
        Time("renewal, 6 m at 1 mm", () => { renewal.Run(w); renewal.AddDensity(density, 1); });
        var model = new LineModel();
        var scan = Scan(60);
        model.Load(scan, LineRates.Default, LinePriors.Default, 1);
        Time("average of all models, loaded", () => model.Run(null, true));
        Time("loading 60 readings", () => model.Load(scan, LineRates.Default, LinePriors.Default, 1));
        Time("scan of 60 readings, whole answer", () => SupportModel.Infer(scan));
        WallEvidence wall = new("w", "wall", [.. Enumerable.Range(0, 54).Select(i => new TapHeard($"t{i}", i * 100, 1500, i % 6 == 0 ? "solid" : "hollow")),
            new HoleFelt("h", 5, 5) { Met = "void" }, new HookedWire("w", 5, 5, 14.2), new StiffWire("v", 5, 5, 88), new HoleFelt("h2", 900, 5) { SolidAtMm = 14 }, new MagnetDrawn("m", 0, 0, 2000, 3), new HookedWire("w2", 5, 5, 14.6)]);
        Time("wall of 60 readings", () => WallModel.Infer(wall));
        var belief = WallModel.Infer(new("w", "wall", []));
        Time("next check on a wall", () => WallChecks.Next(belief, new(true, false, true)));
        var (prior, offers, decision) = Ten();
        Time("policy, 10 checks x 3 outcomes x 12 walls", () => CheckPolicy.Next(prior, offers, decision));
    }

    private static void Lattice(LatticeKernel kernel, double[] w, double[] jitter, double[] density, double[] scratch)
    {
        kernel.Load(w, new(0.98, 0.12, 60), jitter, 600);
        kernel.Clear();
        for (int i = 0; i < 3; i++) kernel.LogEvidence(i, i == 0 ? 400 : i == 1 ? 450 : 600, []);
        for (int i = 0; i < 3; i++) kernel.Gather(i, i == 0 ? 400 : i == 1 ? 450 : 600, 1.0 / 3);
        kernel.AddDensity(density, scratch);
    }

    private static LineScan Scan(int n) => new(6000, [.. Enumerable.Range(1, n).Select(i => new Tap($"t{i}", i * 6000.0 / (n + 1), i % 7 == 0 ? TapSound.Solid : TapSound.Hollow))], [new(2000, 2640)]);

    /// <summary>Walls in pairs that each check tells apart at eight to one or so.</summary>
    private static (double[], CheckOffer[], CheckDecision) Ten()
    {
        var r = new Random(5);
        double[] prior = [.. Enumerable.Repeat(1.0 / 12, 12)];
        CheckOffer[] offers = [.. Enumerable.Range(0, 10).Select(c =>
        {
            double[][] like = [.. Enumerable.Range(0, 3).Select(_ => Enumerable.Range(0, 12).Select(_ => Math.Pow(r.NextDouble(), 3) + 0.02).ToArray())];
            for (int h = 0; h < 12; h++) { double sum = like.Sum(l => l[h]); foreach (var l in like) l[h] /= sum; }
            return new CheckOffer($"c{c}", 1 + c, ["a", "b", "c"], like);
        })];
        return (prior, offers, new([.. Enumerable.Range(0, 12).Select(i => $"a{i}")], [.. Enumerable.Range(0, 12).Select(a => Enumerable.Range(0, 12).Select(h => a == h ? 0.0 : 40).ToArray())]));
    }

    // Until the last tier of the compiler has had its turn; its own time counts as the processor's, too.
    private static void WarmUp(Action run)
    {
        for (int round = 0; round < 4; round++)
        {
            for (int i = 0; i < 40; i++) run();
            Thread.Sleep(250);
        }
    }

    private static void Time(string what, Action run)
    {
        WarmUp(run);
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        var cpu = Environment.CpuUsage.TotalTime;
        int n = 0;
        for (; n < 5 || (Environment.CpuUsage.TotalTime - cpu).TotalMilliseconds < 150; n++) run();
        double micro = (Environment.CpuUsage.TotalTime - cpu).TotalMicroseconds / n;
        Console.WriteLine(FormattableString.Invariant($"{what,-45} {micro,10:0.0} us  {(GC.GetAllocatedBytesForCurrentThread() - allocated) / n} bytes"));
    }
}
