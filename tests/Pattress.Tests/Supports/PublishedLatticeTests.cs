using System.Globalization;
using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>
/// CHECKS section M with the kernel: a lattice without jitter, gaps or extras on a 25 mm (M-2: 50, M-4: 5) grid. "Stud present
/// at x" within 19 mm is "centre at the grid place x", since the grids are coarser; unbounded walls by one long enough that
/// readings lie well inside, its length a multiple of no pitch mattering because weights off the readings are 1.
/// </summary>
public class PublishedLatticeTests
{
    private sealed record Case(double Step, double[] Pitches, double[] Prior, double LogNone, double[] Weights)
    {
        private readonly LatticeKernel _kernel = new();

        public Dictionary<string, double> Results(IEnumerable<string> wanted)
        {
            _kernel.Load(Weights, new(1, 0, 0), [1], Pitches.Max() / Step);
            double[] joint = [.. Pitches.Select((p, i) => Prior[i] * Math.Exp(_kernel.LogEvidence(i, p / Step, [])))];
            double z = joint.Sum(), log = Math.Log(z) + LogNone;
            double[] density = new double[Weights.Length], scratch = new double[Weights.Length];
            _kernel.Clear();
            for (int i = 0; i < joint.Length; i++) _kernel.Gather(i, Pitches[i] / Step, joint[i] / z);
            _kernel.AddDensity(density, scratch);
            return wanted.ToDictionary(q => q, q => One(q, joint, z, log, density), StringComparer.Ordinal);
        }

        private double One(string q, double[] joint, double z, double log, double[] density)
        {
            if (q == "evidence") return Math.Exp(log);
            if (q == "logevidence") return log;
            if (q.StartsWith("at ", StringComparison.Ordinal)) return density[(int)(Number(q[3..]) / Step)];
            string[] inside = q[(q.IndexOf('(', StringComparison.Ordinal) + 1)..^1].Split(';');
            if (q.StartsWith("E(", StringComparison.Ordinal)) return MeanPhase(Index(inside[1]));
            int pitch = Index(inside[0]);
            return joint[pitch] / z * (inside.Length == 1 ? 1 : _kernel.Phase(pitch, Pitches[pitch] / Step)[(int)(Number(inside[1]) / Step)]);
        }

        private int Index(string pitch) => Array.IndexOf(Pitches, Number(pitch));

        private double MeanPhase(int pitch)
        {
            double mean = 0;
            var phase = _kernel.Phase(pitch, Pitches[pitch] / Step);
            for (int i = 0; i < phase.Length; i++) mean += phase[i] * i * Step;
            return mean;
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Hits: .90 on a stud, .05 off, as weight of a stud centred at the reading's place; elsewhere it is off.</summary>
    private static Case Hits(double step, double[] pitches, double[] prior, params (double At, bool Hit)[] seen)
    {
        double[] w = [.. Enumerable.Repeat(1.0, (int)(12000 / step) + 1)];
        double log = 0;
        foreach (var (at, hit) in seen)
        {
            w[(int)(at / step)] *= hit ? 0.90 / 0.05 : 0.10 / 0.95;
            log += Math.Log(hit ? 0.05 : 0.95);
        }
        return new(step, pitches, prior, log, w);
    }

    /// <summary>
    /// M-4: each located centre belongs to its nearest stud, so the weight of a stud at c is .95 phi((x-c)/s)/s + .05/2400
    /// over .05/2400 where c is within half a pitch of x. Both pitches' studs are more than 200 mm from the next, and
    /// beyond 200 mm the normal density is nil.
    /// </summary>
    private static Case Located()
    {
        double[] w = [.. Enumerable.Repeat(1.0, 12000 / 5 + 1)];
        double none = 0.05 / 2400;
        foreach (double x in new[] { 212.0, 598, 1007 })
            for (int i = 0; i < w.Length; i++)
                if (Math.Abs(x - (i * 5)) < 200) w[i] *= ((0.95 * Normal.Density(x - (i * 5), 10)) + none) / none;
        return new(5, [400, 600], [0.5, 0.5], 3 * Math.Log(none), w);
    }

    private static Case Of(string id) => id switch
    {
        "M-1" => Hits(25, [400, 450, 600], [0.5, 0.2, 0.3], (100, false), (150, true), (200, false), (350, false), (550, true), (750, false)),
        "M-2" => Hits(50, [400, 600], [0.6, 0.4]),
        "M-3" => Hits(25, [400, 450, 600], [0.5, 0.2, 0.3], (200, true)),
        _ => Located(),
    };

    [Theory]
    [InlineData("M-1")]
    [InlineData("M-2")]
    [InlineData("M-3")]
    [InlineData("M-4")]
    public void Brute_force_references_of_section_M(string id)
    {
        var rows = CsvTable.Parse(System.IO.File.ReadAllText("Published/published_m.csv")).Rows.Where(r => r["id"] == id).ToList();
        var results = Of(id).Results(rows.Select(r => r["quantity"]));
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            string printed = row["expected"];
            int decimals = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
            // P(600) of M-1 and the like: half the last printed digit; exact fractions (0.6) are meant exactly.
            double tolerance = decimals <= 3 ? 1e-12 : 0.5 * Math.Pow(10, -decimals);
            Assert.True(Math.Abs(results[row["quantity"]] - Number(printed)) <= tolerance * 1.0001, $"{id} {row["quantity"]}: {results[row["quantity"]]:R} for {printed}");
        }
    }
}
