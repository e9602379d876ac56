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

    /// <summary>Bays that the assumed share of rows that go on weighs.</summary>
    private const double PriorBays = 2;

    /// <summary>Chance that the row goes on in another bay, as the holes of its height found it there or not.</summary>
    public double GoesOn { get; init; }

    /// <summary>Chance that a hole at a place meets it, that much inside its edges; in other bays another noggin of its row.</summary>
    public double At(double xMm, double yMm, LinePriors p, double edgeMm)
    {
        double width = p.TimberWidthMm;
        if (Math.Abs(xMm - XMm) <= AlongMm) return Probability * Overlap(yMm - YMm, width, edgeMm);
        double beside = (Overlap(yMm - YMm - width, width, edgeMm) + Overlap(yMm - YMm + width, width, edgeMm)) / 2;
        return Probability * GoesOn * ((p.NogginInLine * Overlap(yMm - YMm, width, edgeMm)) + ((1 - p.NogginInLine) * beside));
    }

    /// <summary>The same noggin, with what holes at its height in other bays say of the row: counts, beside those of the prior.</summary>
    /// <param name="others">Holes of the line with the chance that no stud is where they are.</param>
    public NogginFound In(IEnumerable<(ThinHole Hole, double NoStud)> others, LinePriors p)
    {
        double on = p.NogginGoesOn * PriorBays, all = PriorBays;
        foreach (var (hole, noStud) in others)
        {
            if (Math.Abs(hole.AtMm - XMm) <= AlongMm || Math.Abs(hole.HeightMm - YMm) > p.TimberWidthMm / 4 || hole.Met is not (HoleMet.Support or HoleMet.Void)) continue;
            // A void may also be a noggin that stands a thickness higher or lower.
            double told = hole.Met == HoleMet.Support ? noStud : noStud * p.NogginInLine;
            all += told;
            on += hole.Met == HoleMet.Support ? told : 0;
        }
        return this with { GoesOn = on / all };
    }

    /// <summary>Chance of being that much inside a timber of which another place, so far above or below, is anywhere in its width.</summary>
    private static double Overlap(double off, double width, double edge)
    {
        double half = width / 2, inside = half - edge;
        return Math.Max(0, Math.Min(half, off + inside) - Math.Max(-half, off - inside)) / width;
    }
}
