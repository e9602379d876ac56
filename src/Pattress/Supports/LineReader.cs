namespace Pattress.Supports;

/// <summary>Reads scans one after another on the same buffers. Not for several threads at once.</summary>
public sealed class LineReader
{
    /// <summary>No hole is surer than this: what no model here knows of (assumed).</summary>
    internal const double Surest = 0.995;

    private readonly LineModel _model = new();
    private double[] _sums = [];
    private LineReader? _coarse, _otherWay;

    /// <summary>Everything about the scan, the next check too.</summary>
    public SupportBelief Infer(LineScan scan, LineRates rates, LinePriors priors)
    {
        var belief = Read(scan, rates, priors);
        return belief with { Next = LineNextCheck.Best(_coarse ??= new(), scan, rates, priors, belief) };
    }

    /// <summary>The same without the next check, which costs a run per possible finding.</summary>
    public SupportBelief Read(LineScan scan, LineRates rates, LinePriors priors)
    {
        var other = scan.OtherWay is { } way ? (_otherWay ??= new()).OneWay(way, rates, priors) : null;
        _model.Load(scan, rates, priors, SupportModel.StepMm, other?.LogRatio);
        return Believe(scan, rates, priors) with { OtherWay = other };
    }

    /// <summary>What is believed if the line runs across the joists.</summary>
    private SupportBelief OneWay(LineScan scan, LineRates rates, LinePriors priors)
    {
        _model.Load(scan, rates, priors, SupportModel.StepMm, oneWay: true);
        return Believe(scan, rates, priors);
    }

    private SupportBelief Believe(LineScan scan, LineRates rates, LinePriors priors)
    {
        double log = _model.Run(null, marginals: true);
        double[] hit = Window(0, priors), usable = Window(priors.EdgeDistanceMm, priors), centre = Centres();
        var pitches = Pitches();
        var supports = SupportBasis.Of(SupportPeaks.Of(_model.Timber, _model.Steel, SupportModel.StepMm, priors), scan);
        double steel = _model.Posterior(LineSort.Steel), dabs = _model.Posterior(LineSort.Dabs), along = _model.Posterior(LineSort.Along);
        var zones = scan.Zones.Select(z => Zone(z, hit, usable, log)).ToList();
        return new(SupportModel.StepMm, centre, hit, usable, pitches, steel, dabs, _model.Posterior(LineSort.Parallel), supports, zones, null,
            LineScanCheck.Contradictions(scan, priors), log + _model.Evidence.LogNone) { AlongProbability = along, LogRatio = log, Rows = NogginRows.Of(scan, priors), Noggins = Noggins(scan, rates, priors, hit, 1 - dabs) };
    }

    /// <summary>Holes that met wood at the height of a row of noggins where no stud is believed.</summary>
    private static List<NogginFound> Noggins(LineScan scan, LineRates rates, LinePriors priors, double[] hit, double studs)
    {
        var rows = NogginRows.Of(scan, priors);
        List<NogginFound> found = [];
        if (rows.WallHeightMm <= 0) return found;
        var holes = scan.Readings.OfType<ThinHole>().Where(h => h.AtMm >= 0 && h.AtMm <= scan.LengthMm).ToList();
        double Stud(ThinHole h) => hit[Math.Min(hit.Length - 1, (int)Math.Round(h.AtMm / SupportModel.StepMm, MidpointRounding.AwayFromZero))];
        foreach (var h in holes.Where(h => h.Met == HoleMet.Support))
        {
            double noggin = rows.At(h.HeightMm), stud = Stud(h);
            double chance = Math.Max(0, studs - stud) * noggin * rates.HoleMeetsOn / PointWeights.HoleOff(HoleMet.Support, rates, noggin);
            if (chance > 0.01) found.Add(new(h.AtMm, h.HeightMm, chance));
        }
        return [.. found.Select(n => n.In(holes.Select(h => (h, Math.Max(0, studs - Stud(h)))), priors))];
    }

    /// <summary>The chance of meeting a support per step, and the log evidence; for search loops.</summary>
    internal (double Log, double[] Hit) Hits(LineScan scan, LineRates rates, LinePriors priors, double step)
    {
        _model.Load(scan, rates, priors, step);
        double log = _model.Run(null, marginals: true);
        return (log + _model.Evidence.LogNone, Window(0, priors));
    }

    /// <summary>Log of P(readings) on a grid of this step, and nothing else.</summary>
    internal double Evidence(LineScan scan, LineRates rates, LinePriors priors, double step, bool marginals = false)
    {
        double? other = null;
        if (scan.OtherWay is { } way)
        {
            var turned = (_otherWay ??= new())._model;
            turned.Load(way, rates, priors, step, oneWay: true);
            other = turned.Run(null, marginals: false);
        }
        _model.Load(scan, rates, priors, step, other);
        return _model.Run(null, marginals) + _model.Evidence.LogNone;
    }

    /// <summary>Log of P(readings), sums of the supports to be expected up to each step (one entry more than steps), and the chance that the line runs across them.</summary>
    internal (double Log, double[] Sums, double Across) Expected(LineScan scan, LineRates rates, LinePriors priors, double step)
    {
        double log = Evidence(scan, rates, priors, step, marginals: true);
        var sums = new double[_model.Length + 1];
        for (int i = 0; i < _model.Length; i++) sums[i + 1] = sums[i] + _model.Timber[i] + _model.Steel[i];
        return (log, sums, 1 - _model.Posterior(LineSort.Parallel) - _model.Posterior(LineSort.Along));
    }

    /// <summary>Readies a scan for <see cref="Try"/> on a grid of this step: log evidence, chances of meeting a support and of a hole clear of its edge.</summary>
    internal (double Log, double[] Hit, double[] Usable) Begin(LineScan scan, LineRates rates, LinePriors priors, double step)
    {
        _model.Load(scan, rates, priors, step, keep: true);
        double log = _model.Run(null, marginals: true);
        return (log + _model.Evidence.LogNone, Window(0, priors), Window(priors.EdgeDistanceMm, priors));
    }

    /// <summary>True where the line was swept already.</summary>
    internal bool Swept(double atMm) => _model.Evidence.Swept(atMm);

    /// <summary>What one more sweep would make of the scan that was begun.</summary>
    internal (double Log, double[] Hit, double[] Usable) Try(MagnetSweep reading, LineRates rates, LinePriors priors)
    {
        _model.Evidence.Try(reading, rates, priors);
        double log = _model.Run(null, marginals: true);
        return (log + _model.Evidence.LogNone, Window(0, priors), Window(priors.EdgeDistanceMm, priors));
    }

    /// <summary>Supports to be expected with their centre on a stretch, after the last run.</summary>
    internal double Supports(double fromMm, double toMm)
    {
        double sum = 0, step = _model.Evidence.Step;
        for (int i = Math.Max(0, (int)Math.Ceiling(fromMm / step)); i < _model.Length && i * step <= toMm; i++) sum += _model.Timber[i] + _model.Steel[i];
        return sum;
    }

    internal double AllHit(LineScan scan, IReadOnlyList<double> atMm, LineRates rates, LinePriors priors)
    {
        _model.Load(scan, rates, priors, SupportModel.StepMm, scan.OtherWay is { } way ? (_otherWay ??= new()).OneWay(way, rates, priors).LogRatio : null);
        double all = _model.Run(null, marginals: false), chance = 0;
        for (int set = 0; set < 1 << atMm.Count; set++)
            chance += (System.Numerics.BitOperations.PopCount((uint)set) % 2 == 0 ? 1 : -1) * Math.Exp(Without(atMm, set) - all);
        return Math.Clamp(chance, 0, 1);
    }

    /// <summary>Log evidence with no support where any hole of the set is.</summary>
    private double Without(IReadOnlyList<double> atMm, int set) =>
        _model.Run([.. atMm.Where((_, i) => (set >> i & 1) == 1).Select(x => new Zone(x, x))], marginals: false);

    private ZoneBelief Zone(Zone z, double[] hit, double[] usable, double log)
    {
        int best = Best(z, hit, usable), clear = Best(z, usable, hit);
        double none = Math.Exp(_model.Run([z], marginals: false) - log);
        return new(z.FromMm, z.ToMm, At(z, best), hit[best], usable[best], Math.Clamp(none, 0, 1), At(z, clear), usable[clear]);
    }

    private static double At(Zone z, int i) => Math.Clamp(i * SupportModel.StepMm, z.FromMm, z.ToMm);

    /// <summary>The greatest of a row in the zone; equal ones (to 1e-6) by the second row, then the first from the left.</summary>
    private static int Best(Zone z, double[] row, double[] second)
    {
        int from = Math.Clamp((int)Math.Ceiling(z.FromMm / SupportModel.StepMm), 0, row.Length - 1);
        int to = Math.Clamp((int)Math.Floor(z.ToMm / SupportModel.StepMm), from, row.Length - 1), best = from;
        for (int i = from + 1; i <= to; i++)
        {
            double more = Math.Round(row[i] - row[best], 6);
            if (more > 0 || (more == 0 && Math.Round(second[i] - second[best], 6) > 0)) best = i;
        }
        return best;
    }

    private List<PitchBelief> Pitches() =>
        [.. _model.Scenarios.Where(s => s.IsTimber || s.Sort == LineSort.Steel).GroupBy(s => s.Pitch)
            .Select(g => new PitchBelief(g.Key, g.Sum(s => s.Posterior))).OrderByDescending(p => p.Probability).ThenBy(p => p.Mm)];

    private double[] Centres()
    {
        var centre = new double[_model.Length];
        Vectors.Mix(_model.Timber, 1, _model.Steel, 1, centre);
        return centre;
    }

    /// <summary>Sums of the densities within half the support's width less an edge distance, about each step.</summary>
    private double[] Window(double edge, LinePriors p)
    {
        var sums = new double[_model.Length];
        AddWindow(_model.Timber, (p.TimberWidthMm / 2) - edge, sums);
        AddWindow(_model.Steel, (p.SteelWidthMm / 2) - edge, sums);
        if (_model.Posterior(LineSort.Along) is var along and > 0) for (int i = 0; i < sums.Length; i++) sums[i] += along;
        Vectors.Clamp(sums, 0, Surest);
        return sums;
    }

    private void AddWindow(ReadOnlySpan<double> density, double halfMm, double[] result)
    {
        int half = (int)Math.Floor((halfMm / _model.Evidence.Step) + 1e-9), n = density.Length;
        // Sums up to each step, as much longer at both ends as a window reaches past them.
        var sums = Vectors.Buffer(ref _sums, n + 1 + (2 * half));
        double sum = 0;
        Array.Clear(sums, 0, half + 1);
        for (int i = 0; i < n; i++) sums[half + 1 + i] = sum += density[i];
        sums.AsSpan(half + 1 + n, half).Fill(sum);
        Vectors.AddDifference(sums.AsSpan((2 * half) + 1, n), sums.AsSpan(0, n), result);
    }
}
