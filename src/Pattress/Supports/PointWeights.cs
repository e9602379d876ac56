using System.Buffers;

namespace Pattress.Supports;

/// <summary>What a support is, for the weights: half its width, and where its screws stand.</summary>
/// <param name="LineMm">Screw lines stand this far either side of the centre; 0: one line at the centre.</param>
/// <param name="Finds">Chance that a sweep finds it (a steel stud), or a line of it (timber); <paramref name="SdMm"/> a line's spread.</param>
/// <param name="IsSteel">It draws a magnet all along its height.</param>
internal readonly record struct SupportKind(double HalfWidthMm, double LineMm, double Finds, double SdMm, bool IsSteel)
{
    public static SupportKind Timber(LinePriors p, LineRates r) => new(p.TimberWidthMm / 2, 0, r.MagnetFinds, r.MagnetSdMm, false);

    public static SupportKind Steel(LinePriors p, LineRates r) => new(p.SteelWidthMm / 2, r.SteelLineMm, r.MagnetFinds, r.SteelLineSdMm, true);

    /// <summary>Two timbers nailed together, as beside an opening: what touches both is weighed once for the pair, not once for each.</summary>
    public static SupportKind Pair(LinePriors p, LineRates r) => new(p.TimberWidthMm, p.TimberWidthMm / 2, r.MagnetFinds, r.MagnetSdMm, false);

    public bool TwoLines => LineMm > 0;
}

/// <summary>
/// Weights of all readings but taps: P(seen | support centred at c) / P(seen | none near), multiplied into the row of
/// places 0, h, 2h, ... mm.
/// </summary>
internal static class PointWeights
{
    /// <summary>A sweep: (1-p) + p sum over hits of q(h-c) / rho, p being what of the screw's spread the sweep covered; a sweep without a hit is evidence too.</summary>
    public static void Sweep(Span<double> w, double step, MagnetSweep s, SupportKind kind, LineRates r)
    {
        double reach = Reach(kind, r), from = Math.Min(s.FromMm, s.ToMm), to = Math.Max(s.FromMm, s.ToMm), within = Normal.Within(kind.SdMm, r.MagnetReachMm);
        int first = First(from - reach, step), last = Last(w, to + reach, step), apart = (int)Math.Round(kind.LineMm / step);
        double At(double centre) => Line(s, from, to, centre, kind.IsSteel ? 1 : kind.Finds, kind.SdMm, within, r);
        // Where the two lines fall on the grid each is worked out once and serves as the left one here, as the right one there.
        double[] lines = kind.TwoLines && apart * step == kind.LineMm && last >= first ? ArrayPool<double>.Shared.Rent(last - first + 1 + (2 * apart)) : [];
        for (int i = first - apart; lines.Length > 0 && i <= last + apart; i++) lines[i - first + apart] = At(i * step);
        for (int i = first; i <= last; i++)
        {
            double left = lines.Length > 0 ? lines[i - first] : At((i * step) - kind.LineMm);
            if (!kind.TwoLines) w[i] *= left;
            else
            {
                double right = lines.Length > 0 ? lines[i - first + (2 * apart)] : At((i * step) + kind.LineMm);
                w[i] *= kind.IsSteel ? Steel(left, right, kind, r) : left * right;
            }
        }

        if (lines.Length > 0) ArrayPool<double>.Shared.Return(lines);
    }

    /// <summary>A hole within the support's width meets it, beside it does not.</summary>
    /// <param name="noggin">Chance that a noggin is there where no support is.</param>
    public static void Hole(Span<double> w, double step, ThinHole hole, SupportKind kind, LineRates r, double noggin = 0)
    {
        double ratio = HoleOn(hole.Met, r, kind.IsSteel) / HoleOff(hole.Met, r, noggin);
        for (int i = First(hole.AtMm - kind.HalfWidthMm, step); i <= Last(w, hole.AtMm + kind.HalfWidthMm, step); i++) w[i] *= ratio;
    }

    /// <summary>
    /// P(noted | a support behind). Metal is what some note of a steel stud, and a misread elsewhere; laths and foam are passed on the
    /// way, and noted less often where the bit then met wood.
    /// </summary>
    public static double HoleOn(HoleMet met, LineRates r, bool isSteel = false) => met switch
    {
        HoleMet.Support => r.HoleMeetsOn,
        HoleMet.Void => (1 - r.HoleMeetsOn) * 0.6,
        HoleMet.Metal when isSteel => r.HoleMeetsOn * r.HoleMetalSteel,
        HoleMet.Metal => r.HoleDabOff,
        HoleMet.Passed => r.HoleDabOff * r.HolePassedOn,
        HoleMet.Masonry => r.HoleDabOff * r.HoleMasonryOn,
        _ => (1 - r.HoleMeetsOn) * 0.2,
    };

    /// <summary>P(noted | no support behind, but perhaps a noggin).</summary>
    public static double HoleOff(HoleMet met, LineRates r, double noggin) => noggin <= 0 ? HoleOff(met, r) : ((1 - noggin) * HoleOff(met, r)) + (noggin * HoleOn(met, r));

    public static double HoleOff(HoleMet met, LineRates r) => met switch
    {
        HoleMet.Support => r.HoleMeetsOff,
        HoleMet.Void => 1 - r.HoleMeetsOff - (2 * r.HoleDabOff),
        _ => r.HoleDabOff,
    };

    /// <summary>A sweep up the wall: Poisson counts, by the screw spacing over a timber support, all along a steel one.</summary>
    public static void Along(Span<double> w, double step, SweepAlong s, SupportKind kind, LineRates r)
    {
        double none = AlongNone(s, r), here = AlongHere(s, kind.TwoLines ? 2 : 1, r);
        double ratio = Math.Exp(none - here) * Math.Pow(here / none, Math.Min(s.Hits, 6));
        double reach = kind.TwoLines ? kind.HalfWidthMm : r.MagnetReachMm / 2;
        for (int i = First(s.AtMm - reach, step); i <= Last(w, s.AtMm + reach, step); i++) w[i] *= ratio;
    }

    /// <summary>Hits to be expected of a sweep up the wall beside any support.</summary>
    private static double AlongNone(SweepAlong s, LineRates r) => Math.Max(0.02, r.MagnetFalsePerMm * s.LengthMm * 0.2);

    private static double AlongHere(SweepAlong s, int lines, LineRates r) => lines * r.MagnetFinds * s.LengthMm / r.ScrewSpacingMm;

    /// <summary>Log of P(reading | a support under the whole line) / P(reading | none near), for a line that runs along one.</summary>
    public static double LogAlong(LineReading reading, LineRates r)
    {
        switch (reading)
        {
            case Tap t:
                double on = t.Sound is TapSound.Solid or TapSound.Dull ? r.TapSolidOn / r.TapSolidOff : (1 - r.TapSolidOn) / (1 - r.TapSolidOff);
                return Math.Log(on) * (t.Sound == TapSound.Dull ? r.TapDullWeight : 1);
            case ThinHole h: return Math.Log(HoleOn(h.Met, r) / HoleOff(h.Met, r));
            case DetectorSignal d: return Math.Log(d.Beeped ? r.DetectorOn / r.DetectorOff : (1 - r.DetectorOn) / (1 - r.DetectorOff));
            case MagnetSweep m:
                double rate = r.MagnetFinds / r.ScrewSpacingMm;
                return (m.HitsMm.Count * Math.Log(rate / r.MagnetFalsePerMm)) - ((rate - r.MagnetFalsePerMm) * Math.Abs(m.ToMm - m.FromMm));
            default: return 0;
        }
    }

    /// <summary>Joints lie on supports.</summary>
    public static void Joint(Span<double> w, double step, BoardJoint joint, SupportKind kind, LineRates r)
    {
        for (int i = First(joint.AtMm - kind.HalfWidthMm, step); i <= Last(w, joint.AtMm + kind.HalfWidthMm, step); i++) w[i] *= r.JointRatio;
    }

    public static void Detector(Span<double> w, double step, DetectorSignal s, LineRates r, double noggin = 0)
    {
        double off = DetectorOff(r, noggin), ratio = s.Beeped ? r.DetectorOn / off : (1 - r.DetectorOn) / (1 - off);
        for (int i = First(s.AtMm - r.DetectorReachMm, step); i <= Last(w, s.AtMm + r.DetectorReachMm, step); i++) w[i] *= ratio;
    }

    private static double DetectorOff(LineRates r, double noggin) => r.DetectorOff + (noggin * (r.DetectorOn - r.DetectorOff));

    /// <summary>Log of P(seen | none near) of a reading that is no tap, hits taken as a density over mm.</summary>
    public static double LogNone(LineReading reading, LineRates r, double noggin = 0) => reading switch
    {
        MagnetSweep s => (s.HitsMm.Count * Math.Log(r.MagnetFalsePerMm)) - (r.MagnetFalsePerMm * Math.Abs(s.ToMm - s.FromMm)),
        ThinHole h => Math.Log(HoleOff(h.Met, r, noggin)),
        DetectorSignal d => Math.Log(d.Beeped ? DetectorOff(r, noggin) : 1 - DetectorOff(r, noggin)),
        SweepAlong a => (Math.Min(a.Hits, 6) * Math.Log(AlongNone(a, r) / a.LengthMm)) - AlongNone(a, r),
        _ => 0,
    };

    /// <summary>A steel stud is not found, or one of its lines is, either alike, or both are.</summary>
    private static double Steel(double left, double right, SupportKind kind, LineRates r) =>
        1 - kind.Finds + (kind.Finds * (((1 - r.SteelBothLines) * (left + right) / 2) + (r.SteelBothLines * left * right)));

    private static double Line(MagnetSweep s, double from, double to, double centre, double finds, double sd, double within, LineRates r)
    {
        double p = finds * Normal.CutMass(from - centre, to - centre, sd, r.MagnetReachMm, within), sum = 0;
        for (int i = 0; i < s.HitsMm.Count; i++) sum += Normal.CutDensity(s.HitsMm[i] - centre, sd, r.MagnetReachMm, within);
        return 1 - p + (finds * sum / r.MagnetFalsePerMm);
    }

    private static double Reach(SupportKind kind, LineRates r) => kind.LineMm + r.MagnetReachMm;

    private static int First(double from, double step) => Math.Max(0, (int)Math.Ceiling((from / step) - 1e-9));

    private static int Last(Span<double> w, double to, double step) => Math.Min(w.Length - 1, (int)Math.Floor((to / step) + 1e-9));
}
