namespace Pattress.Supports;

/// <summary>The rows of weights of one scan: for timber, for steel and for dabs; reused from scan to scan.</summary>
internal sealed class LineEvidence
{
    private readonly TapWeights _taps = new();
    private double[] _timber = [], _steel = [], _dab = [], _pair = [];
    private double[] _timberKept = [], _steelKept = [], _dabKept = [], _pairKept = [];
    private double _logNoneKept, _logDabKept, _logAlongKept;
    private readonly List<MagnetSweep> _sweeps = [];
    private IReadOnlyList<LineOpening> _openings = [];
    private NogginRows _rows;
    private int _length;

    public double Step { get; private set; } = 1;

    /// <summary>Log of P(readings | no support near any of them, stud wall).</summary>
    public double LogNone { get; private set; }

    /// <summary>Log of how much likelier what is not explained by places is in a dab wall than in a stud wall.</summary>
    public double LogDab { get; private set; }

    /// <summary>Log of how much likelier the readings are where a support lies under the whole line than where none is near.</summary>
    public double LogAlong { get; private set; }

    /// <summary>True when some reading points to dabs, or they are likely from the start; else their row is left as it is.</summary>
    public bool HintsAtDabs { get; private set; }

    public ReadOnlySpan<double> Timber => _timber.AsSpan(0, _length);

    public ReadOnlySpan<double> Steel => _steel.AsSpan(0, _length);

    public ReadOnlySpan<double> Dab => _dab.AsSpan(0, _length);

    /// <summary>Weights of two timbers nailed together, centred at each place.</summary>
    public ReadOnlySpan<double> Pair => _pair.AsSpan(0, _length);

    /// <param name="keep">Keeps the rows without sweeps, for <see cref="Try"/>.</param>
    public void Load(LineScan scan, LineRates rates, LinePriors priors, double step, bool keep = false)
    {
        (Step, _openings, _rows) = (step, scan.Openings, NogginRows.Of(scan, priors));
        _length = (int)Math.Floor(scan.LengthMm / step) + 1;
        Vectors.Buffer(ref _timber, _length).AsSpan(0, _length).Fill(1);
        Vectors.Buffer(ref _steel, _length).AsSpan(0, _length).Fill(1);
        Vectors.Buffer(ref _dab, _length).AsSpan(0, _length).Fill(1);
        Vectors.Buffer(ref _pair, _length).AsSpan(0, _length).Fill(1);
        var readings = Distinct(scan.Readings);
        _sweeps.Clear();
        _sweeps.AddRange(readings.OfType<MagnetSweep>());
        readings.RemoveAll(r => r is MagnetSweep);
        LogNone = readings.Sum(r => PointWeights.LogNone(r, rates, _rows.At(r.HeightMm)));
        LogDab = readings.Sum(r => DabEvidence.LogRatio(r, rates, _rows.At(r.HeightMm)));
        HintsAtDabs = priors.DabShare >= 0.5 || readings.Any(DabEvidence.Hints);
        AddTaps(readings, rates, priors);
        AddPoints(readings, rates, priors);
        if (keep) Keep();
        AddSweeps(_sweeps, rates, priors);
        Finish(rates);
    }

    /// <summary>True where the line itself was swept already.</summary>
    public bool Swept(double at) => _sweeps.Exists(s => Math.Abs(s.HeightMm) <= SweepJoin.SameLineMm && at >= Math.Min(s.FromMm, s.ToMm) && at <= Math.Max(s.FromMm, s.ToMm));

    private void Keep()
    {
        (_logNoneKept, _logDabKept, _logAlongKept) = (LogNone, LogDab, LogAlong);
        Pair.CopyTo(Vectors.Buffer(ref _pairKept, _length));
        Timber.CopyTo(Vectors.Buffer(ref _timberKept, _length));
        Steel.CopyTo(Vectors.Buffer(ref _steelKept, _length));
        Dab.CopyTo(Vectors.Buffer(ref _dabKept, _length));
    }

    /// <summary>The scan that was loaded, with one sweep along the line more.</summary>
    public void Try(MagnetSweep sweep, LineRates rates, LinePriors priors)
    {
        (LogNone, LogDab, LogAlong) = (_logNoneKept, _logDabKept, _logAlongKept);
        _timberKept.AsSpan(0, _length).CopyTo(_timber);
        _steelKept.AsSpan(0, _length).CopyTo(_steel);
        _dabKept.AsSpan(0, _length).CopyTo(_dab);
        _pairKept.AsSpan(0, _length).CopyTo(_pair);
        AddSweeps([.. _sweeps, sweep], rates, priors);
        Finish(rates);
    }

    private static List<LineReading> Distinct(IReadOnlyList<LineReading> readings)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. readings.Where(r => seen.Add(r.Id)).OrderBy(r => r.Id, StringComparer.Ordinal)];
    }

    private void AddTaps(List<LineReading> readings, LineRates rates, LinePriors priors)
    {
        LogAlong = 0;
        foreach (var line in TapLines.Of(readings.OfType<Tap>()))
        {
            var share = TapLines.Shares(line, rates);
            _taps.Load([.. line.Select(t => t.AtMm)], [.. line.Select(t => t.Sound is TapSound.Solid or TapSound.Dull)], share, _rows.Taps(rates, line.Average(t => t.HeightMm)));
            LogNone += _taps.LogNone;
            for (int i = 0; i < line.Count; i++) LogAlong += share[i] * PointWeights.LogAlong(line[i], rates);
            _taps.Multiply(_timber.AsSpan(0, _length), Step, priors.TimberWidthMm / 2);
            _taps.Multiply(_steel.AsSpan(0, _length), Step, priors.SteelWidthMm / 2);
            if (HintsAtDabs) _taps.Multiply(_dab.AsSpan(0, _length), Step, priors.DabWidthMm / 2);
            _taps.Multiply(_pair.AsSpan(0, _length), Step, priors.TimberWidthMm);
        }
    }

    private void AddPoints(List<LineReading> readings, LineRates rates, LinePriors priors)
    {
        foreach (var r in readings)
        {
            Add(r, _timber.AsSpan(0, _length), SupportKind.Timber(priors, rates), rates);
            Add(r, _steel.AsSpan(0, _length), SupportKind.Steel(priors, rates), rates);
            Add(r, _pair.AsSpan(0, _length), SupportKind.Pair(priors, rates), rates);
            if (r is not Tap) LogAlong += PointWeights.LogAlong(r, rates);
            if (HintsAtDabs && r is ThinHole h) DabEvidence.Hole(_dab.AsSpan(0, _length), Step, h, priors.DabWidthMm / 2, rates);
        }
    }

    private void AddSweeps(List<MagnetSweep> sweeps, LineRates rates, LinePriors priors)
    {
        if (sweeps.Count == 0) return;
        foreach (var s in SweepJoin.Of(sweeps, rates))
        {
            var here = _rows.Sweep(rates, s.HeightMm);
            LogNone += PointWeights.LogNone(s, here);
            LogAlong += PointWeights.LogAlong(s, here);
            PointWeights.Sweep(_timber.AsSpan(0, _length), Step, s, SupportKind.Timber(priors, here), here);
            PointWeights.Sweep(_steel.AsSpan(0, _length), Step, s, SupportKind.Steel(priors, here), here);
            PointWeights.Sweep(_pair.AsSpan(0, _length), Step, s, SupportKind.Pair(priors, here), here);
        }
    }

    private void Add(LineReading reading, Span<double> row, SupportKind kind, LineRates rates)
    {
        switch (reading)
        {
            case ThinHole h: PointWeights.Hole(row, Step, h, kind, rates, _rows.At(h.HeightMm)); break;
            case SweepAlong a: PointWeights.Along(row, Step, a, kind, rates); break;
            case DetectorSignal d: PointWeights.Detector(row, Step, d, rates, _rows.At(d.HeightMm)); break;
            case BoardJoint j: PointWeights.Joint(row, Step, j, kind, rates); break;
        }
    }

    /// <summary>Nothing is surer than the bound; inside an opening on the line nothing is known, as off the wall.</summary>
    private void Finish(LineRates rates)
    {
        ReadOnlySpan<double[]> rows = [_timber, _steel, _dab, _pair];
        foreach (double[] row in rows)
        {
            Vectors.Clamp(row.AsSpan(0, _length), 1 / rates.WeightMost, rates.WeightMost);
            foreach (var o in _openings) if (o.OnLine) Inside(row, o.FromMm, o.ToMm).Fill(1);
        }
    }

    /// <summary>The part of a row that lies between two places.</summary>
    public Span<double> Inside(double[] row, double fromMm, double toMm)
    {
        int from = Math.Clamp((int)Math.Ceiling(fromMm / Step), 0, _length), to = Math.Clamp((int)Math.Floor(toMm / Step) + 1, from, _length);
        return row.AsSpan(from, to - from);
    }
}
