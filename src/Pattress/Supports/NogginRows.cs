namespace Pattress.Supports;

/// <summary>
/// Rows of noggins across a wall whose height is known: at mid height, and where boards laid across join. What sounds or feels solid
/// at such a height between two studs may be one of them, so it says less of a stud.
/// </summary>
internal readonly record struct NogginRows(double WallHeightMm, LinePriors Priors)
{
    /// <summary>Mean length of a noggin: from stud to stud, mm (assumed).</summary>
    public const double LengthMm = 500;

    /// <summary>None where the height is not known, on ceilings and up a wall.</summary>
    public static NogginRows Of(LineScan scan, LinePriors priors) => new(scan.IsCeiling || scan.IsUp ? 0 : scan.WallHeightMm, priors);

    /// <summary>Chance that a place between two studs at this height lies on a noggin.</summary>
    /// <param name="besideMm">What lies this far beside it counts as on it: a tap's reach.</param>
    public double At(double heightMm, double besideMm = 0)
    {
        if (WallHeightMm <= 0) return 0;
        double mid = WallHeightMm / 2, none = 1 - (Priors.NogginMid * On(heightMm - mid, Priors.NogginSdMm, besideMm));
        for (double joint = Priors.BoardWidthMm; joint < WallHeightMm - 100; joint += Priors.BoardWidthMm)
            if (Math.Abs(joint - mid) > 3 * Priors.NogginJointSdMm) none *= 1 - (Priors.NogginJoint * On(heightMm - joint, Priors.NogginJointSdMm, besideMm));
        return 1 - none;
    }

    /// <summary>The rates of a line of taps at this height: a noggin sounds solid from one stud to the next, as a long patch does.</summary>
    public LineRates Taps(LineRates r, double heightMm)
    {
        double noggin = At(heightMm, r.TapEdgeMm);
        if (noggin < 1e-4) return r;
        double patch = r.PatchPerMm * r.PatchLengthMm / (1 + (r.PatchPerMm * r.PatchLengthMm)), row = noggin * (1 - patch), share = patch + row;
        double length = ((patch * r.PatchLengthMm) + (row * LengthMm)) / share;
        return r with { PatchLengthMm = length, PatchPerMm = share / (1 - share) / length, PatchSolid = ((patch * r.PatchSolid) + (row * r.TapSolidOn)) / share };
    }

    /// <summary>The rates of a sweep at this height: boards are screwed to noggins too.</summary>
    public LineRates Sweep(LineRates r, double heightMm)
    {
        double noggin = At(heightMm);
        return noggin < 1e-4 ? r : r with { MagnetFalsePerMm = r.MagnetFalsePerMm + (noggin * Priors.NogginScrewed * r.MagnetFinds / r.ScrewSpacingMm) };
    }

    private double On(double off, double sd, double beside)
    {
        double half = (Priors.TimberWidthMm / 2) + beside;
        return Normal.Below((half - off) / sd) - Normal.Below((-half - off) / sd);
    }
}

/// <summary>A noggin that a hole has met, between two studs.</summary>
/// <param name="Probability">Chance that it is one, and no stud.</param>
internal readonly record struct NogginFound(double XMm, double YMm, double Probability)
{
    /// <summary>A noggin found reaches this far along the wall at least, mm (assumed).</summary>
    private const double AlongMm = 100;

    /// <summary>Chance that a hole at a place meets it, that much inside its edges: it was met somewhere in its depth, anywhere alike.</summary>
    public double At(double xMm, double yMm, double widthMm, double edgeMm)
    {
        if (Math.Abs(xMm - XMm) > AlongMm) return 0;
        double off = yMm - YMm, half = widthMm / 2, inside = half - edgeMm;
        return Probability * Math.Max(0, Math.Min(half, off + inside) - Math.Max(-half, off - inside)) / widthMm;
    }
}
