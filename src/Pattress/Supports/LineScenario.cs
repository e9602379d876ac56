namespace Pattress.Supports;

/// <summary>What a model of the wall takes the supports to be.</summary>
internal enum LineSort { Timber, Steel, Dabs, Parallel }

/// <summary>One model of the average: a lattice of one pitch, renewal (pitch 0), dabs, or a line along the joists.</summary>
internal sealed class LineScenario(LineSort sort, double pitch, double prior, int slot)
{
    public LineSort Sort => sort;

    /// <summary>Pitch in mm; 0 for renewal.</summary>
    public double Pitch => pitch;

    public double Prior => prior;

    public int Slot => slot;

    /// <summary>Prior of each phase; empty for a uniform one.</summary>
    public double[] Phases { get; set; } = [];

    public double Log { get; set; }

    public double Posterior { get; set; }

    /// <summary>The models that are averaged, with their prior shares summing to 1.</summary>
    public static List<LineScenario> All(LinePriors p, bool ceiling, bool dabs)
    {
        double parallel = ceiling ? p.ParallelShare : 0, dab = dabs && !ceiling ? p.DabShare : 0, studs = (1 - parallel) * (1 - dab);
        double steel = ceiling ? 0 : p.SteelShare, total = p.Pitches.Sum(x => x.Share);
        List<LineScenario> all = [];
        foreach (var (pitch, i) in p.Pitches.Select((x, i) => (x, i)))
        {
            double share = studs * pitch.Share / total;
            all.Add(new(LineSort.Timber, pitch.Mm, share * (1 - steel) * (1 - p.RenewalShare), i));
            if (steel > 0) all.Add(new(LineSort.Steel, pitch.Mm, share * steel, i));
        }
        if (p.RenewalShare > 0) all.Add(new(LineSort.Timber, 0, studs * (1 - steel) * p.RenewalShare, 0));
        if (dab > 0) all.AddRange(DabPitches.Select((d, i) => new LineScenario(LineSort.Dabs, d, (1 - parallel) * dab / DabPitches.Length, i)));
        if (parallel > 0) all.Add(new(LineSort.Parallel, 0, parallel, 0));
        return all;
    }

    private static readonly double[] DabPitches = [300, 400, 450, 600];
}
