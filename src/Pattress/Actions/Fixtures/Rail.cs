using Pattress.Actions.Beams;
using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>
/// A rail, headrail or board on brackets: a beam on springs. A stiffer bracket attracts load and nobody knows how stiff one is,
/// so each bracket is taken at its worst of three walls: all stiff, all soft, and itself stiff among soft ones.
/// </summary>
internal sealed class Rail : ICarrier
{
    // The width of a hand that pulls, mm (assumed).
    private const double HandMm = 80;

    private readonly Stand _stand;
    private readonly RailBeams _beams;
    private readonly double _arm;
    private IReadOnlyList<double>? _hand;

    public Rail(Site site, Stand stand, double lengthMm, double eiNmm2, double armMm, bool cups = false)
    {
        (_stand, _arm) = (stand, armMm);
        _beams = new RailBeams(site, stand, lengthMm, eiNmm2, cups);
    }

    /// <summary>Number of brackets.</summary>
    public int Count => _stand.Count;

    /// <summary>Length of the rail, mm.</summary>
    public double Length => _beams.Length;

    /// <summary>A load that lies all along the rail, N in all.</summary>
    public IReadOnlyList<Wrench> Along(Force total, double outMm) => Standing([new(0, Length, 1 / Length)], total, outMm);

    /// <summary>Loads that stand where they are; their sizes are fractions of the total per mm.</summary>
    public IReadOnlyList<Wrench> Standing(IReadOnlyList<UniformLoad> loads, Force total, double outMm) =>
        Wrenches(_beams.Standing(loads), total, outMm);

    /// <summary>What stands and, wherever it is worst for each bracket, what moves: one patch or two.</summary>
    public IReadOnlyList<Wrench> Moving(IReadOnlyList<UniformLoad> standing, IReadOnlyList<PatchLoad> patches, Force total, double outMm) =>
        Wrenches(_beams.Moving(standing, patches), total, outMm);

    /// <summary>A load that may lie on any spans and leave out others, N if it lay on all of them.</summary>
    public IReadOnlyList<Wrench> OnAnySpans(Force total, double outMm) => Wrenches(_beams.OnAnySpans(1 / Length), total, outMm);

    /// <summary>A hand that pulls anywhere along the rail; sideways all of it comes to one bracket.</summary>
    public IReadOnlyList<Wrench> Carry(Push push)
    {
        double hand = Math.Min(HandMm, Length / 4);
        // What comes to each bracket of a hand's pull does not depend on which way it pulls.
        var across = Wrenches(_hand ??= _beams.Moving([], [new(hand, 1 / hand)]), push.Force with { X = 0 }, push.Out);
        var sideways = new EachAlone(_stand.Brackets).Carry(push with { Force = new(push.Force.X, 0, 0), Out = _arm });
        return across.Plus(sideways);
    }

    private IReadOnlyList<Wrench> Wrenches(IReadOnlyList<double> shares, Force total, double outMm) =>
        [.. shares.Select(s => new Push(0, 0, outMm, s * total).About(0, 0))];
}
