using Pattress.Planning.Views;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Jobs.WallFile;

/// <summary>
/// What was to be expected of each hole, and what it met. Readings are only ever added, so that what was expected of a hole is what the
/// readings before it say: the job keeps the log by keeping its readings.
/// </summary>
/// <param name="Holes">By walls and readings in their order; expected: the chance that a support is met.</param>
/// <param name="Rates">Of the whole house, as its plan uses them. Empty without a hole.</param>
public sealed record HoleLog(IReadOnlyList<PredictedFound> Holes, LearningReport Report, IReadOnlyList<LearnedRate> Rates)
{
    /// <summary>Holes of one wall that are looked back on; further ones still teach the rates.</summary>
    public const int Most = 60;

    /// <summary>The log of some walls of a house.</summary>
    public static HoleLog Of(Job house, IReadOnlyList<string> walls)
    {
        List<Wall> these = [.. house.Walls.Where(w => walls.Contains(w.Id, StringComparer.Ordinal))];
        var rates = HouseRates.Of(house.Walls);
        List<PredictedFound> holes = [.. these.SelectMany(w => HolesOf(house, w, rates))];
        return new(holes, Learning.Report(holes), rates.Teachers.Count == 0 ? [] : rates.Learned.Learned);
    }

    /// <summary>The whole in one sentence.</summary>
    public Reason Why => Holes.Count == 0 ? new("holes_none")
        : new("holes_expected", Said.Count(Holes.Count), Said.Plain(Math.Round(Holes.Sum(h => h.Predicted), 1)), Said.Count(Holes.Count(h => h.Found)));

    private static IEnumerable<PredictedFound> HolesOf(Job house, Wall wall, HouseRates rates)
    {
        List<Reading> kept = [.. wall.Readings.Where(r => !r.Withdrawn)];
        return kept.Select((r, i) => (Hole: LineOf(wall, r), Before: i)).Where(h => h.Hole is not null).Take(Most)
            .Select(h => new PredictedFound(h.Hole!.Id, Expected(house, wall with { Readings = kept[..h.Before] }, h.Hole, rates), h.Hole.Met is HoleMet.Support or HoleMet.Metal));
    }

    private static ThinHole? LineOf(Wall wall, Reading r) => r.Kind is "hole" or "probe" ? LineScans.HoleOf(wall, r) : null;

    /// <summary>The chance that this hole meets a support, by what was known of its wall then and by all that is known of the others; the hole itself taught the rates nothing.</summary>
    private static double Expected(Job house, Wall then, ThinHole hole, HouseRates rates)
    {
        var belief = new HouseBelief(house with { Walls = [.. house.Walls.Select(w => w.Id == then.Id ? then : w)] }, rates.When(then));
        double studs = belief.Whole(then.Id).Where(b => b.BuildUp.Support is not ("none" or "dab")).Sum(b => b.Probability);
        var line = belief.Line(then.Id);
        double met = line.OtherWay is null ? line.MetBy(hole, hole.AtMm) : line.HitAt(hole.AtMm, hole.HeightMm);
        return Math.Clamp(studs * met / Math.Max(0.02, 1 - line.DabProbability), 0, 1);
    }
}
