namespace Pattress.Supports;

/// <summary>Supports whose place is known but for their spread: at the ends of the wall and beside openings.</summary>
internal sealed class FixedStuds
{
    private readonly List<(double Centre, double Presence)> _studs = [];
    private double[] _kernel = [1];
    private double _step = 1;

    public void Set(LineScan scan, LinePriors p, double width, double step)
    {
        _studs.Clear();
        (_step, _kernel) = (step, Normal.Kernel(p.EndSdMm, 0, 0, step));
        if (scan.IsCeiling) return;
        if (p.EndStud > 0) _studs.AddRange([(width / 2, p.EndStud), (scan.LengthMm - (width / 2), p.EndStud)]);
        foreach (var o in scan.Openings) AddTrimmers(o, p, width, scan.LengthMm);
    }

    /// <summary>Log of the product of (1-q) + q (spread * w) over these studs.</summary>
    public double LogFactor(ReadOnlySpan<double> weights)
    {
        double log = 0;
        foreach (var (centre, q) in _studs) log += Math.Log(1 - q + (q * Mean(weights, centre)));
        return log;
    }

    /// <summary>Adds their marginals, times a share.</summary>
    public void AddDensity(ReadOnlySpan<double> weights, Span<double> density, double share)
    {
        foreach (var (centre, q) in _studs)
        {
            double scale = share * q / (1 - q + (q * Mean(weights, centre)));
            int at = At(centre), half = _kernel.Length / 2;
            for (int t = -half; t <= half; t++)
                if (at + t >= 0 && at + t < weights.Length) density[at + t] += scale * _kernel[t + half] * weights[at + t];
        }
    }

    private void AddTrimmers(LineOpening o, LinePriors p, double width, double length)
    {
        foreach (double centre in new[] { o.FromMm - (width / 2), o.ToMm + (width / 2) })
            if (centre > 0 && centre < length) _studs.Add((centre, p.Trimmer));
        foreach (double centre in new[] { o.FromMm - (1.5 * width), o.ToMm + (1.5 * width) })
            if (centre > 0 && centre < length) _studs.Add((centre, p.TrimmerDoubled));
    }

    private int At(double centre) => (int)Math.Round(centre / _step, MidpointRounding.AwayFromZero);

    private double Mean(ReadOnlySpan<double> weights, double centre)
    {
        double sum = 0;
        int at = At(centre), half = _kernel.Length / 2;
        for (int t = -half; t <= half; t++)
            sum += _kernel[t + half] * (at + t >= 0 && at + t < weights.Length ? weights[at + t] : 1);
        return sum;
    }
}
