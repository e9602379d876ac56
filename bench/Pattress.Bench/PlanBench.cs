using BenchmarkDotNet.Attributes;
using Pattress.Jobs;

namespace Pattress.Bench;

/// <summary>The main job: the demo house from document to plan. Goal: under 50 ms native.</summary>
[MemoryDiagnoser]
public class PlanBench
{
    private static readonly string Text = Embedded.Text("samples/demo-house.job.json");
    private static readonly Job Job = JobReader.Read(Text).Value!;

    [Benchmark(Baseline = true)]
    public Job Read() => JobReader.Read(Text).Value!;

    [Benchmark]
    public PlanAnswer Plan() => Planner.Plan(Job, PlanData.Embedded);
}
