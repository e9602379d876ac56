namespace Pattress.Supports;

/// <summary>One pitch and its probability; 0 mm stands for "no regular pitch".</summary>
public sealed record PitchBelief(double Mm, double Probability);

/// <summary>A support: its centre, the spread of that centre and the chance that it is there at all.</summary>
/// <param name="Probability">Never surer than 99.5 %, as no hole is.</param>
/// <param name="Material"><c>timber</c> or <c>steel</c>, whichever is likelier.</param>
public sealed record SupportFound(double CentreMm, double SdMm, double Probability, string Material, double WidthMm)
{
    /// <summary>
    /// What it rests on: <c>read</c> where something was read near it, <c>assumed</c> where nothing was and walls usually have one (at an end, beside an
    /// opening, a row up the wall), <c>pitch</c> where it follows from the others.
    /// </summary>
    public string Basis { get; init; } = "read";
}

/// <summary>The answer for one stretch of the line.</summary>
/// <param name="BestMm">Place in the zone where a thin hole is likeliest to meet a support.</param>
/// <param name="Probability">Chance that it does.</param>
/// <param name="UsableProbability">Chance that it meets the support at least the edge distance inside its edge.</param>
/// <param name="NoneProbability">Chance that no hole anywhere in the zone would meet a support.</param>
/// <param name="BestUsableMm">Place where the usable chance is greatest, with that chance.</param>
public sealed record ZoneBelief(double FromMm, double ToMm, double BestMm, double Probability, double UsableProbability, double NoneProbability,
    double BestUsableMm, double BestUsableProbability);

/// <summary>The next thing to do along the line.</summary>
/// <param name="Kind"><c>tap</c>, <c>magnet</c> or <c>hole</c>.</param>
/// <param name="Zone">Index of the zone it is for.</param>
/// <param name="Before">Chance of meeting the support at the zone's best place now, <paramref name="After"/> expected after the check.</param>
public sealed record LineCheck(string Kind, double AtMm, int Zone, double Before, double After, double Minutes, Reason Why);

/// <summary>A contradiction between readings, with the ids of those concerned.</summary>
public sealed record LineContradiction(Reason What, IReadOnlyList<string> Readings);

/// <summary>Where the supports of one line are.</summary>
/// <param name="StepMm">Distance between entries of the rows; entry i is at i times it from the left end.</param>
/// <param name="Centre">Density of support centres: expected number in each step.</param>
/// <param name="Hit">Chance that a thin hole there meets a support; <paramref name="Usable"/> the same, clear of the edge.</param>
/// <param name="LogEvidence">Log of P(readings) under the average of models.</param>
public sealed record SupportBelief(
    double StepMm, IReadOnlyList<double> Centre, IReadOnlyList<double> Hit, IReadOnlyList<double> Usable,
    IReadOnlyList<PitchBelief> Pitches, double SteelProbability, double DabProbability, double ParallelProbability,
    IReadOnlyList<SupportFound> Supports, IReadOnlyList<ZoneBelief> Zones, LineCheck? Next,
    IReadOnlyList<LineContradiction> Contradictions, double LogEvidence)
{
    /// <summary>Chance that a support lies under the whole line: a joist that it runs along, or one stud up a wall.</summary>
    public double AlongProbability { get; init; }

    /// <summary>
    /// Log of P(readings) over P(readings | no support near any). Directions of a ceiling are weighed by it: what is seen with
    /// nothing near is the same either way, though the two lines do not share out their taps alike.
    /// </summary>
    internal double LogRatio { get; init; }

    internal NogginRows Rows { get; init; }

    /// <summary>Noggins that holes have met.</summary>
    internal IReadOnlyList<NogginFound> Noggins { get; init; } = [];

    /// <summary>Ceilings with readings both ways: the belief along the other direction, if the joists run that way (<see cref="ParallelProbability"/>).</summary>
    public SupportBelief? OtherWay { get; init; }

    /// <summary>Chance that a thin hole at this place meets a support; 0 off the wall.</summary>
    public double HitAt(double atMm) => At(Hit, atMm);

    /// <summary>The same, at least the edge distance inside the support's edge.</summary>
    public double UsableAt(double atMm) => At(Usable, atMm);

    /// <summary>
    /// The same at a place: a ceiling that was read both ways has joists spaced along x, or along y; on a wall a noggin that a hole met
    /// may be there, and else y does not matter.
    /// </summary>
    public double HitAt(double xMm, double yMm) => HitAt(xMm) + (OtherWay is { } other ? ParallelProbability * other.HitAt(yMm) : Noggin(xMm, yMm, 0));

    /// <summary>The same, at least the edge distance inside the support's edge.</summary>
    public double UsableAt(double xMm, double yMm) => UsableAt(xMm) + (OtherWay is { } other ? ParallelProbability * other.UsableAt(yMm) : Noggin(xMm, yMm, Noggins.Count > 0 ? Rows.Priors.EdgeDistanceMm : 0));

    /// <summary>Chance that a hole of the line met a support, or a noggin of the row that may be at its height.</summary>
    internal double MetBy(ThinHole hole, double atMm)
    {
        double stud = HitAt(atMm), row = Math.Max(0, 1 - stud - DabProbability) * Rows.At(hole.HeightMm);
        return stud + Math.Max(row, Noggin(atMm, hole.HeightMm, 0));
    }

    private double Noggin(double xMm, double yMm, double edge) => Noggins.Count == 0 ? 0 : Math.Max(0, Math.Min(Noggins.Max(n => n.At(xMm, yMm, Rows.Priors, edge)), 1 - HitAt(xMm)));

    /// <summary>
    /// Chance that a support is behind a hole, from everything but that hole itself, given that the wall has studs or joists at
    /// all: what the hole then found may count anew. Never surer than the rows are.
    /// </summary>
    public double HitWithout(ThinHole hole, LineRates? rates = null)
    {
        var r = rates ?? LineRates.Default;
        double noggin = Rows.At(hole.HeightMm), p = Math.Clamp((OtherWay is null ? HitAt(hole.AtMm) : HitAt(hole.AtMm, hole.HeightMm)) / Math.Max(0.02, 1 - DabProbability), 1e-6, 1 - 1e-6);
        double on = ((1 - SteelProbability) * PointWeights.HoleOn(hole.Met, r)) + (SteelProbability * PointWeights.HoleOn(hole.Met, r, isSteel: true));
        double odds = p / (1 - p) * PointWeights.HoleOff(hole.Met, r, noggin) / on, stud = odds / (1 + odds);
        return stud + ((1 - stud) * noggin);
    }

    private double At(IReadOnlyList<double> row, double atMm)
    {
        int i = (int)Math.Round(atMm / StepMm, MidpointRounding.AwayFromZero);
        return i < 0 || i >= row.Count ? 0 : row[i];
    }
}
