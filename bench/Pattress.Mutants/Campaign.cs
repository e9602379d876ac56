using System.Diagnostics;
using System.Globalization;

namespace Pattress.Mutants;

/// <summary>A test as the baseline found it.</summary>
internal sealed record Known(int Index, long Ms, string Fault, string Name, int[] Reaches);

/// <summary>The order of work: a baseline, then mutants in a seeded order, each against the tests that reach it, the quickest first.</summary>
internal static class Campaign
{
    /// <summary>Tests slower than this are not used, ms.</summary>
    internal const int SlowestMs = 1500;

    /// <summary>A mutant is tried by its quickest tests, up to this much time in all, ms.</summary>
    private const int EnoughMs = 12_000;

    private const int Seed = 20_251;

    internal static int Baseline(string folder, string[] spaces)
    {
        File.WriteAllLines(Path.Combine(folder, "spaces.txt"), spaces);
        int mutants = Mutants(folder).Max(m => m.Id) + 1;
        using var worker = Start(folder, spaces);
        worker.StandardInput.WriteLine($"baseline {mutants}");
        var rows = new List<string>();
        while (worker.StandardOutput.ReadLine() is { } line && line != "end") rows.Add(line);
        worker.StandardInput.Close();
        File.WriteAllLines(Path.Combine(folder, "tests.tsv"), rows);
        var known = Tests(folder);
        Console.WriteLine($"{known.Count} tests, {known.Sum(t => t.Ms) / 1000} s; {known.Count(t => t.Fault != "")} fail here: {string.Join(", ", known.Where(t => t.Fault != "").Select(t => t.Name + " " + t.Fault).Take(5))}; {known.Count(t => t.Ms >= SlowestMs)} too slow");
        return known.Count == 0 ? 1 : 0;
    }

    internal static int Run(string folder, int seconds, int seed = Seed)
    {
        var (clock, usable) = (Stopwatch.StartNew(), Usable(folder));
        string log = Path.Combine(folder, "results.tsv");
        var done = File.Exists(log) ? File.ReadLines(log).Select(l => int.Parse(l.Split('\t')[0], CultureInfo.InvariantCulture)).ToHashSet() : [];
        using var results = File.AppendText(log);
        Process? worker = null;
        foreach (var mutant in Ordered(folder, seed).Where(m => !done.Contains(m.Id)))
        {
            if (clock.Elapsed.TotalSeconds > seconds) break;
            var tests = usable.Where(t => mutant.Id == 0 || Array.BinarySearch(t.Reaches, mutant.Id) >= 0).OrderBy(t => t.Ms).ToList();
            long sum = 0;
            tests = [.. tests.TakeWhile(t => (sum += t.Ms) <= EnoughMs)];
            string verdict = tests.Count == 0 ? "reached by no test" : Ask(worker ??= Start(folder, File.ReadAllLines(Path.Combine(folder, "spaces.txt"))), mutant, tests);
            if (verdict == "runs too long") { End(worker!); worker = null; }
            results.WriteLine($"{mutant.Id}\t{verdict}");
            results.Flush();
        }
        if (worker != null) End(worker);
        Console.WriteLine($"{File.ReadLines(log).Count()} of {Mutants(folder).Count} tried");
        return 0;
    }

    internal static List<Mutant> Mutants(string folder) => [.. File.ReadLines(Path.Combine(folder, "mutants.tsv")).Select(Mutant.Read)];

    internal static List<Known> Tests(string folder) => [.. File.ReadLines(Path.Combine(folder, "tests.tsv")).Select(l => l.Split('\t')).Select(p =>
        new Known(int.Parse(p[0], CultureInfo.InvariantCulture), long.Parse(p[1], CultureInfo.InvariantCulture), p[2], p[3], p[4] == "" ? [] : [.. p[4].Split(',').Select(int.Parse)]))];

    /// <summary>The planted one first, the rest shuffled by the seed: any part of them is a fair sample.</summary>
    private static IEnumerable<Mutant> Ordered(string folder, int seed)
    {
        var all = Mutants(folder).ToArray();
        new Random(seed).Shuffle(all.AsSpan(1));
        return all;
    }

    private static List<Known> Usable(string folder) => [.. Tests(folder).Where(t => t.Fault == "" && t.Ms < SlowestMs)];

    // The limit is in the worker's own processor time, so that a busy machine kills nothing.
    private static string Ask(Process worker, Mutant mutant, List<Known> tests)
    {
        long limit = 2000 + 5 * tests.Sum(t => t.Ms);
        worker.StandardInput.WriteLine($"try {mutant.Id} {40 * limit} {string.Join(',', tests.Select(t => t.Index))}");
        worker.StandardInput.Flush();
        var (answer, start) = (worker.StandardOutput.ReadLineAsync(), Used(worker));
        while (!answer.Wait(100))
            if (Used(worker) - start > limit) return "runs too long";
        return answer.Result ?? "runs too long";
    }

    private static double Used(Process worker)
    {
        worker.Refresh();
        return worker.HasExited ? double.PositiveInfinity : worker.TotalProcessorTime.TotalMilliseconds;
    }

    private static void End(Process worker)
    {
        worker.Kill();
        worker.Dispose();
    }

    private static Process Start(string folder, string[] spaces)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!, ["worker", Path.GetFullPath(folder), .. spaces]) { WorkingDirectory = Path.GetFullPath(folder), RedirectStandardInput = true, RedirectStandardOutput = true };
        start.Environment["CsCheck_Threads"] = "1";
        start.Environment["PATTRESS_BRACKETS"] = "3000";
        start.Environment["DOTNET_TieredPGO"] = "0";
        return Process.Start(start)!;
    }
}
