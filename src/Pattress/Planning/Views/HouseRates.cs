using Pattress.Jobs;
using Pattress.Supports;

namespace Pattress.Planning.Views;

/// <summary>
/// How taps and magnets mislead in this house: the assumed rates as a prior, re-estimated from the walls that have holes. All
/// walls share them, those without a hole too.
/// </summary>
/// <param name="Teachers">
/// Walls with studs or joists, as a hole has shown, by their ids. One in which a hole met masonry or a dab is left out: it sounds solid, or
/// high, everywhere, which says nothing of how studs sound.
/// </param>
public sealed record HouseRates(IReadOnlyList<Wall> Teachers, LineLearning Learned)
{
    public LineRates Rates => Learned.Rates;

    /// <param name="before">What an earlier state of the job taught: it holds while no wall with a hole has changed.</param>
    public static HouseRates Of(IReadOnlyList<Wall> walls, HouseRates? before = null)
    {
        List<Wall> teachers = [.. walls.Where(Teaches).OrderBy(w => w.Id, StringComparer.Ordinal)];
        if (before is not null && before.Teachers.SequenceEqual(teachers, ReferenceEqualityComparer.Instance)) return before;
        List<LineScan> scans = [.. teachers.Select(w => before?.ScanOf(w) ?? LineScans.Whole(w))];
        return new(teachers, LineLearning.Of(scans, LineRates.Default, LinePriors.Default, before?.Learned)) { Scans = scans };
    }

    private IReadOnlyList<LineScan> Scans { get; init; } = [];

    private LineScan? ScanOf(Wall wall)
    {
        for (int i = 0; i < Teachers.Count; i++) if (ReferenceEquals(Teachers[i], wall)) return Scans[i];
        return null;
    }

    /// <summary>The rates as they were when a wall had these readings only; the other walls as they are.</summary>
    public LineRates When(Wall then)
    {
        for (int i = 0; i < Teachers.Count; i++)
            if (Teachers[i].Id == then.Id) return Learned.With(i, Teaches(then) ? LineScans.Whole(then) : null);
        return Rates;
    }

    private static bool Teaches(Wall wall)
    {
        List<HoleMet> met = [.. wall.Readings.Where(r => !r.Withdrawn && r.Kind is "hole" or "probe").Select(r => LineScans.HoleOf(wall, r)?.Met).OfType<HoleMet>()];
        return met.Exists(m => m is HoleMet.Support or HoleMet.Metal or HoleMet.Void or HoleMet.Passed) && !met.Exists(m => m is HoleMet.Masonry or HoleMet.Dab);
    }
}
