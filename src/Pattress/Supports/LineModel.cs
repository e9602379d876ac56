namespace Pattress.Supports;

/// <summary>
/// The average of models over one scan: lattices of every pitch in timber and in steel, renewal, dabs, a line along the
/// joists. Load once, run as often as wanted; a run allocates nothing once warm.
/// </summary>
internal sealed class LineModel
{
    private readonly LineEvidence _evidence = new();
    private readonly LatticeKernel _timberKernel = new(), _steelKernel = new(), _dabKernel = new();
    private readonly RenewalKernel _renewal = new();
    private readonly FixedStuds _timberFixed = new(), _steelFixed = new();
    private double[] _timber = [], _steel = [], _dab = [], _pair = [], _extra = [], _scratch = [];
    private double[] _timberFree = [], _steelFree = [], _pairFree = [];
    private double[] _timberDensity = [], _steelDensity = [], _dabDensity = [];
    private double[] _jitter = [1], _dabJitter = [1];
    private LinePriors _priors = LinePriors.Default;
    private LineScan _scan = new(1000, [], []);
    private int _length;
    private double _maxPitch;
    private double? _otherWay;
    private bool _masked;

    /// <summary>A model with less than this of the posterior moves no chance by more: its marginals are not worked out.</summary>
    private const double Nothing = 1e-17;

    private (double Length, double Step, LinePriors Priors, LineSetting Setting) _made;
    private (double Step, LinePriors Priors) _shared;

    /// <summary>The models that are averaged; an array, so that walking them allocates nothing.</summary>
    internal LineScenario[] Scenarios { get; private set; } = [];

    public LineEvidence Evidence => _evidence;

    /// <summary>Marginal density of timber (steel, dab) centres per step, after a run with marginals.</summary>
    public ReadOnlySpan<double> Timber => _timberDensity.AsSpan(0, _length);

    public ReadOnlySpan<double> Steel => _steelDensity.AsSpan(0, _length);

    public ReadOnlySpan<double> Dabs => _dabDensity.AsSpan(0, _length);

    /// <param name="otherWay">Ceilings: log of P(readings) / P(readings | no support near any) if the joists run the other way, where that is known.</param>
    /// <param name="oneWay">Ceilings: the line is taken to run across the joists.</param>
    /// <param name="keep">Sweeps will be tried on top.</param>
    public void Load(LineScan scan, LineRates rates, LinePriors priors, double step, double? otherWay = null, bool oneWay = false, bool keep = false)
    {
        (_scan, _priors, _otherWay) = (scan, priors, otherWay);
        _evidence.Load(scan, rates, priors, step, keep);
        _length = _evidence.Timber.Length;
        Prepare(scan.LengthMm, step, priors, new(scan.IsCeiling, scan.IsUp, oneWay, otherWay is not null, _evidence.HintsAtDabs));
        _timberFixed.Set(scan, priors, priors.TimberWidthMm, step, pairs: true);
        _steelFixed.Set(scan, priors, priors.SteelWidthMm, step, pairs: false);
    }

    /// <summary>
    /// Runs every model and returns the log of P(readings) / P(readings | no support near any). With a mask no timber or
    /// steel centre may lie within half its width of these zones: the chance that nothing is there is the ratio of the two runs.
    /// </summary>
    public double Run(Zone[]? mask, bool marginals)
    {
        Copy(_evidence.Timber, ref _timber, mask, _priors.TimberWidthMm / 2);
        Copy(_evidence.Steel, ref _steel, mask, _priors.SteelWidthMm / 2);
        Copy(_evidence.Dab, ref _dab, null, 0);
        Copy(_evidence.Pair, ref _pair, mask, _priors.TimberWidthMm);
        Free(_timber, ref _timberFree, _timberFixed);
        Free(_pair, ref _pairFree, _timberFixed);
        Free(_steel, ref _steelFree, _steelFixed);
        _masked = mask is not null;
        LoadKernels();
        double most = double.NegativeInfinity, sum = 0;
        foreach (var s in Scenarios) most = Math.Max(most, s.Log = Log(s) + Math.Log(s.Prior));
        foreach (var s in Scenarios) sum += Math.Exp(s.Log - most);
        if (marginals) Marginals(most, sum);
        return most + Math.Log(sum);
    }

    /// <summary>Length of the loaded row in steps.</summary>
    public int Length => _length;

    /// <summary>Probability of a sort of model, after a run with marginals.</summary>
    public double Posterior(LineSort sort)
    {
        double sum = 0;
        foreach (var s in Scenarios) if (s.Sort == sort) sum += s.Posterior;
        return sum;
    }

    private void Prepare(double length, double step, LinePriors priors, LineSetting setting)
    {
        var want = (length, step, priors, setting);
        if (want.Equals(_made)) return;
        _made = want;
        var all = LineScenario.All(priors, setting);
        var datum = setting.IsCeiling ? priors with { DatumLeft = priors.DatumLeft * priors.CeilingDatum, DatumRight = priors.DatumRight * priors.CeilingDatum } : priors;
        // Timber and steel are set out alike.
        foreach (var pitch in all.Where(s => s.Sort is LineSort.Timber or LineSort.Steel && s.Pitch > 0).GroupBy(s => s.Pitch))
        {
            double[] phases = PhasePrior.Of(pitch.Key, length, step, datum);
            foreach (var s in pitch) s.Phases = phases;
        }
        Scenarios = [.. all];
        _maxPitch = all.Max(s => s.Pitch) / step;
        if (_shared == (step, priors)) return;
        _shared = (step, priors);
        _jitter = Normal.Kernel(priors.JitterSdMm, priors.JitterWideSdMm, priors.JitterWideShare, step);
        _dabJitter = Normal.Kernel(priors.DabJitterSdMm, 0, 0, step);
        var gaps = GapPrior.Of(priors, step);
        _renewal.SetPrior(GapPrior.First(gaps), gaps);
    }

    private void Copy(ReadOnlySpan<double> from, ref double[] to, Zone[]? mask, double half)
    {
        from.CopyTo(Vectors.Buffer(ref to, from.Length));
        if (mask is null) return;
        foreach (var zone in mask) _evidence.Inside(to, zone.FromMm - half, zone.ToMm + half).Clear();
    }

    /// <summary>The weights as lattices and renewal see them: where a stud of a known place stands nothing was seen.</summary>
    private void Free(double[] from, ref double[] to, FixedStuds known)
    {
        from.AsSpan(0, _length).CopyTo(Vectors.Buffer(ref to, _length));
        for (int i = 0; i < known.Taken.Count; i++) Within(to, known.Taken[i]).Fill(1);
    }

    private Span<double> Within(double[] row, Zone z) => _evidence.Inside(row, z.FromMm, z.ToMm);

    private void LoadKernels()
    {
        double step = _evidence.Step;
        LatticeShape shape = new(_priors.Presence, _priors.ExtraPerBay, (int)Math.Round(_priors.ExtraClearMm / step));
        _timberKernel.Load(_timberFree.AsSpan(0, _length), shape, _jitter, _maxPitch, Extras());
        if (Has(LineSort.Steel)) _steelKernel.Load(_steelFree.AsSpan(0, _length), shape, _jitter, _maxPitch);
        if (Has(LineSort.Dabs)) _dabKernel.Load(_dab.AsSpan(0, _length), new(_priors.DabPresence, _priors.DabExtra, (int)(_priors.DabClearMm / step)), _dabJitter, _maxPitch);
        if (HasRenewal()) _renewal.Run(_timberFree.AsSpan(0, _length));
    }

    /// <summary>Weights of an extra: one timber, or two nailed together as beside an opening.</summary>
    private ReadOnlySpan<double> Extras()
    {
        var extra = Vectors.Buffer(ref _extra, _length).AsSpan(0, _length);
        double pair = _priors.TrimmerDoubled;
        Vectors.Mix(_timberFree.AsSpan(0, _length), 1 - pair, _pairFree.AsSpan(0, _length), pair, extra);
        return extra;
    }

    private bool Has(LineSort sort)
    {
        foreach (var s in Scenarios) if (s.Sort == sort) return true;
        return false;
    }

    private bool HasRenewal()
    {
        foreach (var s in Scenarios) if (s is { Sort: LineSort.Timber, Pitch: 0 }) return true;
        return false;
    }

    private double Log(LineScenario s) => s.Sort switch
    {
        LineSort.Timber => FixedTimber + (s.Pitch > 0 ? Lattice(_timberKernel, s) : _renewal.LogEvidence),
        LineSort.Steel => _steelFixed.LogFactor(_steel.AsSpan(0, _length), []) + Lattice(_steelKernel, s),
        LineSort.Dabs => _evidence.LogDab + Lattice(_dabKernel, s),
        LineSort.Rows => FixedTimber,
        LineSort.Battens => Lattice(_timberKernel, s),
        LineSort.Along => _masked ? double.NegativeInfinity : _evidence.LogAlong,
        _ => _otherWay ?? 0,
    };

    private double FixedTimber => _timberFixed.LogFactor(_timber.AsSpan(0, _length), _pair.AsSpan(0, _length));

    private double Lattice(LatticeKernel kernel, LineScenario s) => kernel.LogEvidence(s.Slot, s.Pitch / _evidence.Step, s.Phases);

    private void Marginals(double most, double sum)
    {
        _timberKernel.Clear();
        _steelKernel.Clear();
        _dabKernel.Clear();
        foreach (var s in Scenarios)
        {
            s.Posterior = Math.Exp(s.Log - most) / sum;
            if (s.Pitch > 0 && s.Posterior > Nothing) Kernel(s.Sort).Gather(s.Slot, s.Pitch / _evidence.Step, s.Posterior);
        }
        Gather(_timberKernel, LineSort.Timber, ref _timberDensity);
        Gather(_steelKernel, LineSort.Steel, ref _steelDensity);
        Gather(_dabKernel, LineSort.Dabs, ref _dabDensity);
        for (int i = 0; i < _timberFixed.Taken.Count; i++) Within(_timberDensity, _timberFixed.Taken[i]).Clear();
        for (int i = 0; i < _steelFixed.Taken.Count; i++) Within(_steelDensity, _steelFixed.Taken[i]).Clear();
        AddFixed();
        for (int i = 0; i < _scan.Openings.Count; i++) if (_scan.Openings[i].OnLine) Hide(_scan.Openings[i]);
    }

    private LatticeKernel Kernel(LineSort sort) => sort switch { LineSort.Timber or LineSort.Battens => _timberKernel, LineSort.Steel => _steelKernel, _ => _dabKernel };

    private void Gather(LatticeKernel kernel, LineSort sort, ref double[] density)
    {
        var d = Vectors.Buffer(ref density, _length).AsSpan(0, _length);
        d.Clear();
        if (sort == LineSort.Timber) AddTimbers(d);
        else if (Has(sort)) kernel.AddDensity(d, Vectors.Buffer(ref _scratch, _length));
        if (sort != LineSort.Timber) return;
        foreach (var s in Scenarios) if (s is { Sort: LineSort.Timber, Pitch: 0, Posterior: > Nothing }) _renewal.AddDensity(d, s.Posterior);
    }

    /// <summary>The lattice's own places, and its extras: the timbers of a pair stand half a width either side of its middle.</summary>
    private void AddTimbers(Span<double> density)
    {
        if (!Has(LineSort.Timber) && !Has(LineSort.Battens)) return;
        var extra = _extra.AsSpan(0, _length);
        _timberKernel.AddDensity(density, Vectors.Buffer(ref _scratch, _length), extra);
        double pair = _priors.TrimmerDoubled;
        int half = (int)Math.Round(_priors.TimberWidthMm / 2 / _evidence.Step);
        for (int i = 0; i < extra.Length; i++)
        {
            density[i] += extra[i] * (1 - pair) * _timberFree[i];
            double both = extra[i] * pair * _pairFree[i];
            if (i - half >= 0) density[i - half] += both;
            if (i + half < density.Length) density[i + half] += both;
        }
    }

    private void AddFixed()
    {
        double timber = 0, steel = 0;
        foreach (var s in Scenarios) (timber, steel) = (timber + (s.Sort is LineSort.Timber or LineSort.Rows ? s.Posterior : 0), steel + (s.Sort == LineSort.Steel ? s.Posterior : 0));
        _timberFixed.AddDensity(_timber.AsSpan(0, _length), _pair.AsSpan(0, _length), _timberDensity.AsSpan(0, _length), timber);
        if (steel > 0) _steelFixed.AddDensity(_steel.AsSpan(0, _length), [], _steelDensity.AsSpan(0, _length), steel);
    }

    private void Hide(LineOpening o)
    {
        _evidence.Inside(_timberDensity, o.FromMm, o.ToMm).Clear();
        _evidence.Inside(_steelDensity, o.FromMm, o.ToMm).Clear();
    }
}
