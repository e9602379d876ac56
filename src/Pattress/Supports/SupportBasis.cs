namespace Pattress.Supports;

/// <summary>Says of each support whether something was read near it, or whether it is there because walls are built so.</summary>
internal static class SupportBasis
{
    /// <summary>A reading this far from a support's centre still speaks of it, mm.</summary>
    private const double NearMm = 60;

    /// <summary>A support this near an end or an opening is one that stands there anyway, mm.</summary>
    private const double EndMm = 100;

    public static List<SupportFound> Of(List<SupportFound> supports, LineScan scan) => [.. supports.Select(s => s with { Basis = Basis(s.CentreMm, scan) })];

    private static string Basis(double at, LineScan scan)
    {
        if (scan.Readings.Any(r => Touches(r, at))) return "read";
        return scan.IsUp || (!scan.IsCeiling && (at < EndMm || at > scan.LengthMm - EndMm || scan.Openings.Any(o => BesideOpening(o, at)))) ? "assumed" : "pitch";
    }

    private static bool BesideOpening(LineOpening o, double at) => (at <= o.FromMm && at > o.FromMm - EndMm) || (at >= o.ToMm && at < o.ToMm + EndMm);

    private static bool Touches(LineReading reading, double at) => reading switch
    {
        Tap t => Near(t.AtMm, at),
        ThinHole h => Near(h.AtMm, at),
        DetectorSignal d => Near(d.AtMm, at),
        BoardJoint j => Near(j.AtMm, at),
        SweepAlong a => Near(a.AtMm, at),
        MagnetSweep s => at >= Math.Min(s.FromMm, s.ToMm) && at <= Math.Max(s.FromMm, s.ToMm),
        _ => false,
    };

    private static bool Near(double a, double b) => Math.Abs(a - b) <= NearMm;
}
