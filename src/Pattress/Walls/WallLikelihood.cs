namespace Pattress.Walls;

/// <summary>
/// P(readings | build-up) for every row of a kind. Given the build-up, readings are independent but for two things they
/// share: how well this wall's sound tells (three levels), and the depths of front and void.
/// </summary>
internal sealed class WallLikelihood
{
    private readonly IReadOnlyList<BuildUp> _rows;
    private readonly WallRates _rates;
    private readonly DepthReadings _depths;
    private readonly Dictionary<string, double> _tapsByFamily = new(StringComparer.Ordinal);

    public WallLikelihood(IReadOnlyList<BuildUp> rows, WallEvidence evidence, WallRates rates)
    {
        (_rows, _rates, _depths) = (rows, rates, new(rates));
        var face = BuildUps.Face(evidence.Face);
        var readings = Ordered(evidence.Readings);
        var taps = readings.OfType<TapHeard>().ToList();
        Log = new double[rows.Count];
        Depths = new DepthMixture[rows.Count];
        var sounds = Sounds(taps);
        List<WallReading> others = [.. readings.Where(r => r is not TapHeard)];
        for (int i = 0; i < rows.Count; i++) Row(i, others, sounds, face, evidence.WholeThicknessMm);
    }

    /// <summary>Log of P(readings | row).</summary>
    public double[] Log { get; }

    /// <summary>The depths of each row given the readings.</summary>
    public DepthMixture[] Depths { get; }

    /// <summary>Readings once each and in an order of their own, so that the order they came in cannot matter.</summary>
    public static List<WallReading> Ordered(IReadOnlyList<WallReading> readings)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. readings.Where(r => seen.Add(r.Id)).OrderBy(r => r.Id, StringComparer.Ordinal)];
    }

    /// <summary>The sounds heard, and how many taps' worth of evidence each has: a tap shares its own with those near it.</summary>
    private (string Sound, double Taps)[] Sounds(List<TapHeard> taps)
    {
        var sounds = new Dictionary<string, double>(StringComparer.Ordinal);
        double near = Math.Max(1, _rates.TapNearMm);
        double[] x = [.. taps.Select(t => t.XMm)], y = [.. taps.Select(t => t.YMm)];
        for (int i = 0; i < x.Length; i++) sounds[taps[i].Sound] = sounds.GetValueOrDefault(taps[i].Sound) + (1 / Crowd(x, y, i, near));
        return [.. sounds.Select(s => (s.Key, s.Value))];
    }

    /// <summary>A tap and what those nearer than a distance have in common with it.</summary>
    private static double Crowd(double[] x, double[] y, int i, double near)
    {
        double crowd = 1, atX = x[i], atY = y[i];
        for (int j = 0; j < x.Length; j++)
        {
            double dx = x[j] - atX, dy = y[j] - atY, square = (dx * dx) + (dy * dy);
            if (square < near * near && j != i) crowd += 1 - (Math.Sqrt(square) / near);
        }
        return crowd;
    }

    private void Row(int i, List<WallReading> readings, (string Sound, double Taps)[] sounds, FaceLayer face, double? whole)
    {
        var b = _rows[i];
        var depths = Depths[i] = new(b.FrontMm, b.FrontSdMm, b.VoidMm, b.VoidSdMm);
        if (!_tapsByFamily.TryGetValue(b.Family, out double log)) _tapsByFamily[b.Family] = log = Taps(sounds, b.Family);
        foreach (var r in readings)
        {
            var options = _depths.Options(r, b, face);
            log += options.IsEmpty ? Plain(r, b) : depths.Observe(options);
        }
        if (whole is { } w) log += depths.Observe(_depths.Whole(w, b));
        Log[i] = log;
    }

    private double Plain(WallReading reading, BuildUp b) => reading switch
    {
        MagnetDrawn m => Magnet(m, b),
        WordReading w => Math.Log(Likelihoods.Word(w.Kind, w.Finding, b.Family)),
        _ => 0,
    };

    /// <summary>Hits of a sweep are Poisson by its length, counted at less than their face value: they cluster.</summary>
    private double Magnet(MagnetDrawn m, BuildUp b)
    {
        double mean = PerMetre(b) * Math.Clamp(m.LengthMm, 10, 20000) / 1000, log = (m.Hits * Math.Log(mean)) - mean;
        for (int k = 2; k <= m.Hits; k++) log -= Math.Log(k);
        return _rates.MagnetTrust * log;
    }

    private double PerMetre(BuildUp b) => b.Family switch
    {
        "lath" or "lath_ceiling" => _rates.MagnetPerMLath,
        "steel_header" or "lintel_steel" => _rates.MagnetPerMMetal,
        _ => b.Support switch { "steel_stud" => _rates.MagnetPerMSteel, "timber_stud" or "joist" or "batten" => _rates.MagnetPerMTimber, _ => _rates.MagnetPerMOther },
    };

    /// <summary>The taps together: a mean over how well this wall tells.</summary>
    private double Taps((string Sound, double Taps)[] sounds, string family)
    {
        if (sounds.Length == 0) return 0;
        double well = Taps(sounds, family, 1), middling = Taps(sounds, family, _rates.TellMiddlingStrength), poor = Taps(sounds, family, _rates.TellPoorStrength);
        double most = Math.Max(well, Math.Max(middling, poor)), rest = 1 - _rates.TellWell - _rates.TellPoor;
        return most + Math.Log((_rates.TellWell * Math.Exp(well - most)) + (rest * Math.Exp(middling - most)) + (_rates.TellPoor * Math.Exp(poor - most)));
    }

    private static double Taps((string Sound, double Taps)[] sounds, string family, double strength)
    {
        double log = 0;
        foreach (var (sound, taps) in sounds)
            log += taps * Math.Log((strength * Likelihoods.Word("tap", sound, family)) + ((1 - strength) * Likelihoods.Mean("tap", sound)));
        return log;
    }
}
