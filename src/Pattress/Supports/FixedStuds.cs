namespace Pattress.Supports;

/// <summary>
/// Supports whose place is known but for their spread: at the ends of the wall, beside openings (one timber, or two nailed
/// together), and up the wall its plates and rows of noggins. One more may stand anywhere.
/// </summary>
internal sealed class FixedStuds
{
    /// <param name="PairShare">Share of its presence in which two stand side by side, centred at <paramref name="PairCentre"/>.</param>
    private readonly record struct Stud(double Centre, double Presence, double PairCentre, double PairShare, double[] Kernel);

    private readonly List<Stud> _studs = [];
    private readonly List<Zone> _taken = [];
    private double[] _kernel = [1], _row = [1], _joint = [1];
    private double _step = 1, _half, _any;
    private (double End, double Row, double Joint, double Step) _made;

    /// <summary>An end stud stands this far into the wall at most, with what touches it, mm.</summary>
    private const double EndMm = 100;

    /// <summary>What lies within this of a trimmer's centre touches it, mm.</summary>
    private const double TouchesMm = 55;

    /// <summary>
    /// Where no place of a lattice, no extra and no gap of a renewal is looked for: what was seen there is these studs', and one reading must
    /// not count for two of them.
    /// </summary>
    public IReadOnlyList<Zone> Taken => _taken;

    /// <summary>Sets them out for a scan.</summary>
    /// <param name="pairs">Two timbers beside an opening are one pair; else (steel) two supports of their own.</param>
    public void Set(LineScan scan, LinePriors p, double width, double step, bool pairs)
    {
        _studs.Clear();
        _taken.Clear();
        (_step, _half, _any) = (step, width / 2, 0);
        Kernels((p.EndSdMm, p.NogginSdMm, p.NogginJointSdMm, step));
        if (scan.IsCeiling) return;
        if (p.EndStud > 0)
        {
            _taken.Add(new(0, EndMm));
            _taken.Add(new(scan.LengthMm - EndMm, scan.LengthMm));
            _studs.Add(Single(width / 2, p.EndStud, _kernel));
            _studs.Add(Single(scan.LengthMm - (width / 2), p.EndStud, _kernel));
        }
        if (scan.IsUp) AddRows(scan, p);
        foreach (var o in scan.Openings) AddTrimmers(o, p, width, scan.LengthMm, pairs);
    }

    /// <summary>Log of the product of (1-q) + q (spread * w) over these studs.</summary>
    public double LogFactor(ReadOnlySpan<double> weights, ReadOnlySpan<double> pairs)
    {
        double log = _any > 0 ? Math.Log(1 - _any + (_any * Vectors.Sum(weights) / weights.Length)) : 0;
        foreach (var s in _studs) log += Math.Log(Factor(s, weights, pairs));
        return log;
    }

    /// <summary>Adds their marginals, times a share.</summary>
    public void AddDensity(ReadOnlySpan<double> weights, ReadOnlySpan<double> pairs, Span<double> density, double share)
    {
        foreach (var s in _studs)
        {
            double scale = share * s.Presence / Factor(s, weights, pairs);
            Add(weights, s.Kernel, s.Centre, 0, density, scale * (1 - s.PairShare));
            if (s.PairShare <= 0) continue;
            Add(pairs, s.Kernel, s.PairCentre, -_half, density, scale * s.PairShare);
            Add(pairs, s.Kernel, s.PairCentre, _half, density, scale * s.PairShare);
        }
        if (_any <= 0) return;
        double each = share * _any / weights.Length / (1 - _any + (_any * Vectors.Sum(weights) / weights.Length));
        for (int i = 0; i < weights.Length; i++) density[i] += each * weights[i];
    }

    private void Kernels((double End, double Row, double Joint, double Step) want)
    {
        if (want == _made) return;
        _made = want;
        _kernel = Normal.Kernel(want.End, 0, 0, want.Step);
        _row = Normal.Kernel(want.Row, 0, 0, want.Step);
        _joint = Normal.Kernel(want.Joint, 0, 0, want.Step);
    }

    private static Stud Single(double centre, double presence, double[] kernel) => new(centre, presence, centre, 0, kernel);

    /// <summary>Rows of noggins: at mid height, where a board laid across ends, and one more anywhere.</summary>
    private void AddRows(LineScan scan, LinePriors p)
    {
        _any = p.NogginAny;
        _studs.Add(Single(scan.LengthMm / 2, p.NogginMid, _row));
        for (double joint = p.BoardWidthMm; joint < scan.LengthMm - 100; joint += p.BoardWidthMm)
            if (Math.Abs(joint - (scan.LengthMm / 2)) > 3 * p.NogginJointSdMm) _studs.Add(Single(joint, p.NogginJoint, _joint));
    }

    private void AddTrimmers(LineOpening o, LinePriors p, double width, double length, bool pairs)
    {
        AddTrimmer(o.FromMm - (width / 2), o.FromMm - width, o.FromMm - (1.5 * width), p, length, pairs);
        AddTrimmer(o.ToMm + (width / 2), o.ToMm + width, o.ToMm + (1.5 * width), p, length, pairs);
    }

    private void AddTrimmer(double centre, double pair, double second, LinePriors p, double length, bool pairs)
    {
        if (centre <= 0 || centre >= length) return;
        bool room = second > 0 && second < length;
        _studs.Add(new(centre, p.Trimmer, pair, pairs && room ? p.TrimmerDoubled : 0, _kernel));
        _taken.Add(new(Math.Min(centre, second) - TouchesMm, Math.Max(centre, second) + TouchesMm));
        if (!pairs && room) _studs.Add(Single(second, p.TrimmerDoubled, _kernel));
    }

    private double Factor(Stud s, ReadOnlySpan<double> weights, ReadOnlySpan<double> pairs)
    {
        double mean = Mean(weights, s.Kernel, s.Centre);
        if (s.PairShare > 0) mean = ((1 - s.PairShare) * mean) + (s.PairShare * Mean(pairs, s.Kernel, s.PairCentre));
        return 1 - s.Presence + (s.Presence * mean);
    }

    /// <summary>Adds kernel x weights to a density, moved along by some mm.</summary>
    private void Add(ReadOnlySpan<double> weights, double[] kernel, double centre, double movedMm, Span<double> density, double scale)
    {
        int at = At(centre), moved = At(centre + movedMm) - at, half = kernel.Length / 2;
        for (int t = -half; t <= half; t++)
        {
            int to = at + t + moved;
            if (to >= 0 && to < density.Length) density[to] += scale * kernel[t + half] * (at + t >= 0 && at + t < weights.Length ? weights[at + t] : 1);
        }
    }

    private int At(double centre) => (int)Math.Round(centre / _step, MidpointRounding.AwayFromZero);

    private double Mean(ReadOnlySpan<double> weights, double[] kernel, double centre)
    {
        double sum = 0;
        int at = At(centre), half = kernel.Length / 2;
        for (int t = -half; t <= half; t++)
            sum += kernel[t + half] * (at + t >= 0 && at + t < weights.Length ? weights[at + t] : 1);
        return sum;
    }
}
