using System.Diagnostics;
using Pattress.Strength;

namespace Pattress.Bench;

/// <summary>Every rule of the book with the working off: median time of one evaluation, the slowest first. Goal: at most 1 us each.</summary>
internal static class RuleTiming
{
    private const int Samples = 16, Repeats = 2000, Rounds = 15;

    public static void Run()
    {
        var found = RuleBook.All.Select(r => (r.Id, Ns: Median(r))).OrderByDescending(r => r.Ns).ToList();
        foreach (var (id, ns) in found.Take(12)) Console.WriteLine(FormattableString.Invariant($"{ns,8:F1} ns  {id}"));
        Console.WriteLine(FormattableString.Invariant($"{found.Count} rules, median {found[found.Count / 2].Ns:F1} ns, {found.Count(f => f.Ns > 1000)} above 1000 ns"));
    }

    private static double Median(Rule rule)
    {
        var inputs = Inputs(rule);
        var times = new double[Rounds];
        double sum = 0;
        for (int round = -5; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < Repeats; i++) sum += rule.Evaluate(inputs[i % inputs.Length]).Covered ? 1 : 0;
            if (round >= 0) times[round] = Stopwatch.GetElapsedTime(start).TotalNanoseconds / Repeats;
        }
        Array.Sort(times);
        return sum > 0 ? times[Rounds / 2] : double.NaN;
    }

    private static double[][] Inputs(Rule rule)
    {
        var random = new Random(1);
        var covered = new List<double[]>();
        for (int i = 0; i < 100_000 && covered.Count < Samples; i++)
        {
            double[] x = [.. rule.Parameters.Select(p => Draw(p, random))];
            if (rule.Evaluate(x).Covered) covered.Add(x);
        }
        return [.. covered];
    }

    private static double Draw(Parameter p, Random random)
    {
        if (p.Words.Count > 0) return random.Next(p.Words.Count);
        double low = Math.Max(p.Min, p.Max * 1e-6), value = p.Max / low > 100 ? low * Math.Pow(p.Max / low, random.NextDouble()) : p.Min + random.NextDouble() * (p.Max - p.Min);
        return p.Symbol is "n" or "lot" or "failures" or "service_class" ? Math.Round(value) : value;
    }
}
