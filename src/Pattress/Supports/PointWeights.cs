namespace Pattress.Supports;

/// <summary>What a support is, for the weights: half its width, and whether its screws stand in two lines.</summary>
internal readonly record struct SupportKind(double HalfWidthMm, bool TwoLines);

/// <summary>
/// Weights of all readings but taps: P(seen | support centred at c) / P(seen | none near), multiplied into the row of
/// places 0, h, 2h, ... mm.
/// </summary>
internal static class PointWeights
{
    /// <summary>A sweep: (1-p) + p sum over hits of q(h-c) / rho, p being what of the screw's spread the sweep covered; a sweep without a hit is evidence too.</summary>
    /// <param name="share">Part of its evidence this sweep counts for, below 1 where it repeats another.</param>
    public static void Sweep(Span<double> w, double step, MagnetSweep s, SupportKind kind, LineRates r, double share)
    {
        double reach = Reach(kind, r), from = Math.Min(s.FromMm, s.ToMm), to = Math.Max(s.FromMm, s.ToMm);
        for (int i = First(from - reach, step); i <= Last(w, to + reach, step); i++)
        {
            double v = kind.TwoLines
                ? Line(s, from, to, (i * step) - r.SteelLineMm, r.SteelLineFinds, r.SteelLineSdMm, r)
                    * Line(s, from, to, (i * step) + r.SteelLineMm, r.SteelLineFinds, r.SteelLineSdMm, r)
                : Line(s, from, to, i * step, r.MagnetFinds, r.MagnetSdMm, r);
            w[i] *= share == 1 ? v : Math.Pow(v, share);
        }
    }

    /// <summary>A hole within the support's width meets it, beside it does not.</summary>
    public static void Hole(Span<double> w, double step, ThinHole hole, SupportKind kind, LineRates r)
    {
        double ratio = HoleOn(hole.Met, r) / HoleOff(hole.Met, r);
        for (int i = First(hole.AtMm - kind.HalfWidthMm, step); i <= Last(w, hole.AtMm + kind.HalfWidthMm, step); i++) w[i] *= ratio;
    }

    public static double HoleOn(HoleMet met, LineRates r) => met switch
    {
        HoleMet.Support => r.HoleMeetsOn,
        HoleMet.Void => (1 - r.HoleMeetsOn) * 0.6,
        _ => (1 - r.HoleMeetsOn) * 0.2,
    };

    public static double HoleOff(HoleMet met, LineRates r) => met switch
    {
        HoleMet.Support => r.HoleMeetsOff,
        HoleMet.Void => 1 - r.HoleMeetsOff - (2 * r.HoleDabOff),
        _ => r.HoleDabOff,
    };

    /// <summary>A sweep up the wall: Poisson counts, by the screw spacing over a timber support, all along a steel one.</summary>
    public static void Along(Span<double> w, double step, SweepAlong s, SupportKind kind, LineRates r)
    {
        double none = Math.Max(0.02, r.MagnetFalsePerMm * s.LengthMm * 0.2), here = (kind.TwoLines ? 2 : 1) * r.MagnetFinds * s.LengthMm / r.ScrewSpacingMm;
        double ratio = Math.Exp(none - here) * Math.Pow(here / none, Math.Min(s.Hits, 6));
        double reach = kind.TwoLines ? kind.HalfWidthMm : r.MagnetReachMm / 2;
        for (int i = First(s.AtMm - reach, step); i <= Last(w, s.AtMm + reach, step); i++) w[i] *= ratio;
    }

    public static void Detector(Span<double> w, double step, DetectorSignal s, LineRates r)
    {
        double ratio = s.Beeped ? r.DetectorOn / r.DetectorOff : (1 - r.DetectorOn) / (1 - r.DetectorOff);
        for (int i = First(s.AtMm - r.DetectorReachMm, step); i <= Last(w, s.AtMm + r.DetectorReachMm, step); i++) w[i] *= ratio;
    }

    /// <summary>Log of P(seen | none near) of a reading that is no tap, hits taken as a density over mm.</summary>
    public static double LogNone(LineReading reading, LineRates r) => reading switch
    {
        MagnetSweep s => (s.HitsMm.Count * Math.Log(r.MagnetFalsePerMm)) - (r.MagnetFalsePerMm * Math.Abs(s.ToMm - s.FromMm)),
        ThinHole h => Math.Log(HoleOff(h.Met, r)),
        DetectorSignal d => Math.Log(d.Beeped ? r.DetectorOff : 1 - r.DetectorOff),
        _ => 0,
    };

    private static double Line(MagnetSweep s, double from, double to, double centre, double finds, double sd, LineRates r)
    {
        double p = finds * Normal.CutMass(from - centre, to - centre, sd, r.MagnetReachMm), sum = 0;
        for (int i = 0; i < s.HitsMm.Count; i++) sum += Normal.CutDensity(s.HitsMm[i] - centre, sd, r.MagnetReachMm);
        return 1 - p + (finds * sum / r.MagnetFalsePerMm);
    }

    private static double Reach(SupportKind kind, LineRates r) => kind.TwoLines ? r.SteelLineMm + r.MagnetReachMm : r.MagnetReachMm;

    private static int First(double from, double step) => Math.Max(0, (int)Math.Ceiling((from / step) - 1e-9));

    private static int Last(Span<double> w, double to, double step) => Math.Min(w.Length - 1, (int)Math.Floor((to / step) + 1e-9));
}
