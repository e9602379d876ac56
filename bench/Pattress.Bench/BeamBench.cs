using BenchmarkDotNet.Attributes;
using Pattress.Actions.Beams;

namespace Pattress.Bench;

/// <summary>A rail on twelve elastic brackets: standing loads, and the envelopes of all reactions under a moving stack.</summary>
[ShortRunJob, MemoryDiagnoser]
public class BeamBench
{
    private readonly Beam _rail = new(6000, 1.6e9, [.. Enumerable.Range(0, 12).Select(i => new BeamSupport(100 + 527 * i, 20 + 5 * i))]);
    private readonly BeamLoads _own = new([new(0, 6000, 0.012)], []);
    private readonly MovingLoads _stack = new(new(400, 0.3));
    private readonly MovingLoads _pair = new(new(400, 0.3), new(300, 0.2));

    [Benchmark]
    public int Standing() => BeamSolver.Solve(_rail, _own)!.Reactions.Count;

    [Benchmark]
    public int All_envelopes() => BeamEnvelope.Of(_rail, _own, _stack)!.Reactions.Count;

    [Benchmark]
    public double Moment_envelope() => MomentEnvelope.Of(_rail, _own, _stack)!.Value.Max.Value;

    [Benchmark]
    public int All_envelopes_of_two_stacks() => BeamEnvelope.Of(_rail, _own, _pair)!.Reactions.Count;
}
