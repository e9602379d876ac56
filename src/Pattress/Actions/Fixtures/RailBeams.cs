using Pattress.Actions.Beams;
using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>Shares of loads that come to each bracket of a rail, at its worst over the stiffness of brackets and walls.</summary>
internal sealed class RailBeams
{
    // Brackets nearer to one another than this are one support.
    private const double OneSupportMm = 5;

    private readonly int[] _groupOf;
    private readonly int[] _groupSize;
    private readonly IReadOnlyList<RailState>[] _states;

    public RailBeams(Site site, Stand stand, double lengthMm, double ei, bool cups)
    {
        double left = Math.Min(site.Middle.X - lengthMm / 2, stand.Brackets.Min(b => b.X));
        double right = Math.Max(site.Middle.X + lengthMm / 2, stand.Brackets.Max(b => b.X));
        Length = right - left;
        double[] at = Groups([.. stand.Brackets.Select(b => b.X - left)], out _groupOf);
        _groupSize = [.. at.Select((_, g) => _groupOf.Count(o => o == g))];
        _states = at.Length == 1 ? [[]] : States(site, at, ei, cups);
    }

    /// <summary>Length of the rail, mm; a bracket beyond its end makes it longer.</summary>
    public double Length { get; }

    public IReadOnlyList<double> Standing(IReadOnlyList<UniformLoad> loads) => Worst((s, g) => s.Standing(loads, g), loads.Sum(Total));

    public IReadOnlyList<double> Moving(IReadOnlyList<UniformLoad> standing, IReadOnlyList<PatchLoad> patches) =>
        Worst((s, g) => s.Moving(standing, patches, g), standing.Sum(Total) + patches.Sum(p => p.Length * p.PerLength));

    public IReadOnlyList<double> OnAnySpans(double perMm) => Worst((s, g) => s.OnAnySpans(perMm, g), perMm * Length);

    private static double Total(UniformLoad load) => (load.To - load.From) * load.PerLength;

    // A single support carries everything.
    private IReadOnlyList<double> Worst(Func<RailState, int, double> share, double all) =>
        [.. _groupOf.Select(g => (_states[g].Count == 0 ? all : _states[g].Max(s => share(s, g))) / _groupSize[g])];

    private static double[] Groups(double[] x, out int[] groupOf)
    {
        var at = new List<double>();
        groupOf = new int[x.Length];
        foreach (int i in Enumerable.Range(0, x.Length).OrderBy(i => x[i]))
        {
            if (at.Count == 0 || x[i] - at[^1] > OneSupportMm) at.Add(x[i]);
            groupOf[i] = at.Count - 1;
        }
        return [.. at];
    }

    // On two supports the shares do not depend on how stiff they are.
    private IReadOnlyList<RailState>[] States(Site site, double[] at, double ei, bool cups)
    {
        var rigid = State(at, ei, cups, _ => double.PositiveInfinity);
        if (at.Length == 2) return [[rigid], [rigid]];
        double least = site.Entries.Table("bracket.stiffness_least"), most = site.Entries.Table("bracket.stiffness_most");
        RailState stiff = State(at, ei, cups, _ => most), soft = State(at, ei, cups, _ => least);
        return [.. at.Select((_, g) => (IReadOnlyList<RailState>)[rigid, stiff, soft, State(at, ei, cups, o => o == g ? most : least)])];
    }

    private RailState State(double[] at, double ei, bool cups, Func<int, double> stiffness) =>
        new(new Beam(Length, ei, [.. at.Select((x, g) => new BeamSupport(x, stiffness(g)))]), cups);
}
