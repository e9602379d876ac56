namespace Pattress.Supports;

/// <summary>What readings say of a wall on dabs of adhesive, where masonry is 10 to 25 mm behind the board.</summary>
internal static class DabEvidence
{
    /// <summary>True when a reading points to dabs at all.</summary>
    public static bool Hints(LineReading reading) =>
        reading is Tap { Sound: TapSound.High } or ThinHole { Met: HoleMet.Dab or HoleMet.Masonry };

    /// <summary>Log of P(reading | dab wall, no dab near) / P(reading | stud wall, no support near).</summary>
    public static double LogRatio(LineReading reading, LineRates r, double noggin = 0) => reading switch
    {
        Tap { Sound: TapSound.High } => Math.Log(r.TapHighDab / r.TapHighStud) * r.TapHighShare,
        Tap { Sound: TapSound.Hollow } => Math.Log((1 - r.TapHighDab) / (1 - r.TapHighStud)) * r.TapHighShare,
        ThinHole h => Math.Log(Off(h.Met, r) / PointWeights.HoleOff(h.Met, r, noggin)),
        _ => 0,
    };

    /// <summary>Weights of a hole for a dab centred at each place.</summary>
    public static void Hole(Span<double> w, double step, ThinHole hole, double halfWidth, LineRates r)
    {
        double ratio = On(hole.Met, r) / Off(hole.Met, r);
        int from = Math.Max(0, (int)Math.Ceiling((hole.AtMm - halfWidth) / step)), to = Math.Min(w.Length - 1, (int)Math.Floor((hole.AtMm + halfWidth) / step));
        for (int i = from; i <= to; i++) w[i] *= ratio;
    }

    /// <summary>What is left over is void and the rest, alike.</summary>
    private static double On(HoleMet met, LineRates r) => met switch
    {
        HoleMet.Dab => r.DabMeetsOn,
        HoleMet.Masonry => r.DabMasonryOn,
        HoleMet.Support => r.DabSupport,
        _ => Math.Max(1e-4, (1 - r.DabMeetsOn - r.DabMasonryOn - r.DabSupport) / 2),
    };

    private static double Off(HoleMet met, LineRates r) => met switch
    {
        HoleMet.Masonry => r.DabMasonryOff,
        HoleMet.Void => r.DabVoidOff,
        HoleMet.Dab => r.DabMeetsOff,
        HoleMet.Support => r.DabSupport,
        _ => Math.Max(1e-4, 1 - r.DabMasonryOff - r.DabVoidOff - r.DabMeetsOff - r.DabSupport),
    };
}
