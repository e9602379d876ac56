using System.Diagnostics;
using Pattress.Jobs;
using Pattress.Planning;
using Pattress.Planning.Resisting;

namespace Pattress.Bench;

/// <summary>The demo house by stages without a benchmark run: <c>plan [runs]</c>. Median by the clock, processor time and allocation of each run.</summary>
internal static class PlanTiming
{
    public static void Run(int runs)
    {
        string text = Embedded.Text("samples/demo-house.job.json");
        var job = JobReader.Read(text).Value!;
        var plan = Planner.Plan(job, PlanData.Embedded);
        var house = HouseView.Of(job);
        var catalogue = PlanData.Embedded.Catalogue.With(job.Prices);
        var trials = OwnTrials.Of(job.Trials, job.Proofs);
        Time("document read", runs, () => JobReader.Read(text));
        Time("walls believed", runs, () => HouseView.Of(job));
        Time("things planned", runs, () => job.Fixtures.Select(f => ItemPlanner.Plan(f, house[f.Wall], job.Settings, catalogue, trials.On(f.Wall))).ToList());
        foreach (var f in job.Fixtures) Time("  " + f.Id, runs, () => ItemPlanner.Plan(f, house[f.Wall], job.Settings, catalogue, trials.On(f.Wall)));
        Time("plan, whole", runs, () => Planner.Plan(job, PlanData.Embedded));
        Time("plan as JSON", runs, () => PlanJson.Write(plan, job.Settings));
    }

    private static void Time(string what, int runs, Func<object?> work)
    {
        for (int i = 0; i < 20; i++) work();
        var times = new double[runs];
        long allocated = GC.GetAllocatedBytesForCurrentThread();
        var processor = Environment.CpuUsage.TotalTime;
        for (int i = 0; i < runs; i++)
        {
            long start = Stopwatch.GetTimestamp();
            work();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        double used = (Environment.CpuUsage.TotalTime - processor).TotalMilliseconds / runs;
        Array.Sort(times);
        Console.WriteLine(FormattableString.Invariant(
            $"{what,-24} median {times[runs / 2],8:0.00} ms, least {times[0],8:0.00} ms, processor {used,8:0.00} ms, {(GC.GetAllocatedBytesForCurrentThread() - allocated) / runs / 1024,8} KiB"));
    }
}
