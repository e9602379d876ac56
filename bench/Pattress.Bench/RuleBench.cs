using BenchmarkDotNet.Attributes;
using Pattress.Strength;
using Pattress.Working;

namespace Pattress.Bench;

/// <summary>One evaluation of each rule, working off and on. Target: at most 1 us with the working off.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class RuleBench
{
    private double[] _inputs = [];
    private Rule _rule = null!;

    [ParamsSource(nameof(Ids))]
    public string Id { get; set; } = "";

    public static IEnumerable<string> Ids =>
        ["en1995_1_1.8_7_2.withdrawal", "en1995_1_1.8_2_2.single_shear", "en1995_1_1.8_2_3.thick_plate", "nds.12_3.lateral", "aisi_s100.j4_3_1.shear", "en1992_4.7_2_2_3.steel_shear_arm", "plates.strip.moment_x"];

    [GlobalSetup]
    public void Setup()
    {
        _rule = RuleBook.Find(Id)!;
        var random = new Random(1);
        do _inputs = [.. _rule.Parameters.Select(p => p.Min + random.NextDouble() * (Math.Min(p.Max, p.Min * 10 + 10) - p.Min))];
        while (!_rule.Evaluate(_inputs).Covered);
    }

    [Benchmark(Baseline = true)]
    public double Off() => _rule.Evaluate(_inputs).Value;

    [Benchmark]
    public int On()
    {
        var trace = new Trace();
        _rule.Evaluate(_inputs, trace);
        return trace.Steps.Count;
    }
}
