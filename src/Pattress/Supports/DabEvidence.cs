namespace Pattress.Supports;

/// <summary>What readings say of a wall on dabs of adhesive, where masonry is 10 to 25 mm behind the board.</summary>
internal static class DabEvidence
{
    /// <summary>True when a reading points to dabs at all.</summary>
    public static bool Hints(LineReading reading) =>
        reading is Tap { Sound: TapSound.High } or ThinHole { Met: HoleMet.Dab or HoleMet.Masonry };

    /// <summary>Log of P(reading | dab wall, no dab near) / P(reading | stud wall, no support near).</summary>
    public static double LogRatio(LineReading reading, LineRates r) => reading switch
    {
        Tap { Sound: TapSound.High } => Math.Log(r.TapHighDab / r.TapHighStud) * 0.5,
        Tap { Sound: TapSound.Hollow } => Math.Log((1 - r.TapHighDab) / (1 - r.TapHighStud)) * 0.5,
        ThinHole h => Math.Log(Off(h.Met) / PointWeights.HoleOff(h.Met, r)),
        _ => 0,
    };

    /// <summary>Weights of a hole for a dab centred at each place.</summary>
    public static void Hole(Span<double> w, double step, ThinHole hole, double halfWidth)
    {
        double ratio = On(hole.Met) / Off(hole.Met);
        int from = Math.Max(0, (int)Math.Ceiling((hole.AtMm - halfWidth) / step)), to = Math.Min(w.Length - 1, (int)Math.Floor((hole.AtMm + halfWidth) / step));
        for (int i = from; i <= to; i++) w[i] *= ratio;
    }

    private static double On(HoleMet met) => met switch { HoleMet.Dab => 0.85, HoleMet.Masonry => 0.10, HoleMet.Support => 0.02, HoleMet.Void => 0.02, _ => 0.01 };

    private static double Off(HoleMet met) => met switch { HoleMet.Masonry => 0.70, HoleMet.Void => 0.20, HoleMet.Dab => 0.05, HoleMet.Support => 0.02, _ => 0.03 };
}
