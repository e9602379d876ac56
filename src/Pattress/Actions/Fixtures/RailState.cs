using Pattress.Actions.Beams;

namespace Pattress.Actions.Fixtures;

/// <summary>A rail on supports of one set of stiffnesses.</summary>
/// <param name="beam">The rail with supports that hold both ways.</param>
/// <param name="cups">The brackets are open cups: the rail can lift off.</param>
internal sealed class RailState(Beam beam, bool cups)
{
    private readonly Beam _cups = cups ? beam with { Supports = [.. beam.Supports.Select(s => s with { OneSided = true })] } : beam;

    private IReadOnlyList<InfluenceLine>? _lines;

    private (IReadOnlyList<UniformLoad>? Loads, IReadOnlyList<double>? Reactions) _lifted;

    /// <summary>Reaction of one support under standing loads; out of cups the rail may lift, but on two it would fall instead.</summary>
    public double Standing(IReadOnlyList<UniformLoad> loads, int support)
    {
        if (!cups || beam.Supports.Count == 2 || !Lifts(loads)) return Held(loads, support);
        if (!ReferenceEquals(_lifted.Loads, loads)) _lifted = (loads, BeamSolver.Solve(_cups, new(loads, []))?.Reactions);
        return _lifted.Reactions is { } lifted ? lifted[support] : Held(loads, support);
    }

    private bool Lifts(IReadOnlyList<UniformLoad> loads) => Enumerable.Range(0, beam.Supports.Count).Any(s => Held(loads, s) < 0);

    private double Held(IReadOnlyList<UniformLoad> loads, int support) =>
        loads.Sum(load => load.PerLength * (Line(support).Integral(load.To) - Line(support).Integral(load.From)));

    private InfluenceLine Line(int support) =>
        (_lines ??= InfluenceLine.OfReactions(beam) ?? throw new InvalidOperationException("a rail on two supports cannot move freely"))[support];

    /// <summary>Reaction of one support with the patches where they are worst for it.</summary>
    public double Moving(IReadOnlyList<UniformLoad> standing, IReadOnlyList<PatchLoad> patches, int support)
    {
        var line = Line(support);
        UniformLoad[] worst = patches.Count == 1
            ? [Placed(patches[0], MovingPatch.Envelope(line, patches[0]).Max.At)]
            : Placed(patches, TwoPatches.Envelope(line, patches[0], patches[1]).Max);
        return Standing([.. standing, .. worst], support);
    }

    /// <summary>Reaction of one support with the load on those spans alone that add to it.</summary>
    public double OnAnySpans(double perMm, int support)
    {
        double[] cuts = [0, .. beam.Supports.Select(s => s.At), beam.Length];
        double sum = 0;
        for (int i = 0; i + 1 < cuts.Length; i++)
            sum += Math.Max(0, Line(support).Integral(cuts[i + 1]) - Line(support).Integral(cuts[i]));
        return perMm * sum;
    }

    private static UniformLoad Placed(PatchLoad patch, double at) => new(at, at + patch.Length, patch.PerLength);

    private static UniformLoad[] Placed(IReadOnlyList<PatchLoad> patches, PairExtreme at) =>
        [Placed(patches[0], at.First), Placed(patches[1], at.Second)];
}
