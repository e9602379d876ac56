namespace Pattress.Supports;

/// <summary>
/// What a model of the wall takes the supports to be: studs or joists of timber or steel, dabs, none because the line runs
/// between joists, one all along; up a wall rows of noggins, or battens at a pitch.
/// </summary>
internal enum LineSort { Timber, Steel, Dabs, Parallel, Along, Rows, Battens }

/// <summary>One model of the average: a lattice of one pitch, renewal (timber of pitch 0), or one that has no pitch.</summary>
internal sealed class LineScenario(LineSort sort, double pitch, double prior, int slot)
{
    public LineSort Sort => sort;

    /// <summary>Pitch in mm; 0 for renewal and for what has none.</summary>
    public double Pitch => pitch;

    public double Prior => prior;

    public int Slot => slot;

    /// <summary>True where supports are timbers of the line's own row.</summary>
    public bool IsTimber => sort is LineSort.Timber or LineSort.Rows or LineSort.Battens;

    /// <summary>Prior of each phase; empty for a uniform one.</summary>
    public double[] Phases { get; set; } = [];

    public double Log { get; set; }

    public double Posterior { get; set; }

    /// <summary>The models that are averaged, with their prior shares summing to 1.</summary>
    public static List<LineScenario> All(LinePriors p, LineSetting setting) => setting.IsUp ? Up(p, setting) : Across(p, setting);

    private static List<LineScenario> Across(LinePriors p, LineSetting setting)
    {
        double parallel = setting.IsCeiling && !setting.IsOneWay ? p.ParallelShare : 0;
        double dab = setting.Dabs && !setting.IsCeiling ? p.DabShare : 0, studs = (1 - parallel) * (1 - dab);
        double steel = setting.IsCeiling ? 0 : p.SteelShare, total = p.Pitches.Sum(x => x.Share);
        List<LineScenario> all = [];
        foreach (var (pitch, i) in p.Pitches.Select((x, i) => (x, i)))
        {
            double share = studs * pitch.Share / total;
            all.Add(new(LineSort.Timber, pitch.Mm, share * (1 - steel) * (1 - p.RenewalShare), i));
            if (steel > 0) all.Add(new(LineSort.Steel, pitch.Mm, share * steel, i));
        }
        if (p.RenewalShare > 0) all.Add(new(LineSort.Timber, 0, studs * (1 - steel) * p.RenewalShare, 0));
        all.AddRange(Dabs((1 - parallel) * dab, p));
        if (parallel > 0) all.AddRange(Parallel(parallel, setting.KnowsOtherWay ? 0 : p.AlongShare));
        return all;
    }

    private static List<LineScenario> Up(LinePriors p, LineSetting setting)
    {
        double dab = setting.Dabs ? p.DabShare : 0, studs = 1 - dab, total = p.Pitches.Sum(x => x.Share);
        List<LineScenario> all = [new(LineSort.Rows, 0, studs * (1 - p.AlongShare) * (1 - p.BattenShare), 0), new(LineSort.Along, 0, studs * p.AlongShare, 0)];
        all.AddRange(p.Pitches.Select((x, i) => new LineScenario(LineSort.Battens, x.Mm, studs * (1 - p.AlongShare) * p.BattenShare * x.Share / total, i)));
        all.AddRange(Dabs(dab, p));
        return all;
    }

    private static IEnumerable<LineScenario> Dabs(double share, LinePriors p) =>
        share <= 0 ? [] : p.DabPitches.Select((d, i) => new LineScenario(LineSort.Dabs, d.Mm, share * d.Share / p.DabPitches.Sum(x => x.Share), i));

    /// <summary>A line along the joists runs between two, or on one.</summary>
    private static IEnumerable<LineScenario> Parallel(double share, double along)
    {
        yield return new(LineSort.Parallel, 0, share * (1 - along), 0);
        if (along > 0) yield return new(LineSort.Along, 0, share * along, 0);
    }
}

/// <summary>What of a scan decides which models are averaged.</summary>
/// <param name="IsOneWay">Ceilings: the line is taken to run across the joists.</param>
/// <param name="KnowsOtherWay">Ceilings: what was seen speaks of the other direction as well.</param>
internal readonly record struct LineSetting(bool IsCeiling, bool IsUp, bool IsOneWay, bool KnowsOtherWay, bool Dabs);
