using Pattress.Jobs;
using Pattress.Planning.Views;
using Pattress.Walls;

namespace Pattress.Planning;

/// <summary>
/// All walls of a job as believed. A view that follows another keeps what cannot have changed: what a wall says by itself
/// while the wall and the rates that the holes have taught are the same, and all that is believed of it while no wall of its kind has changed.
/// </summary>
public sealed class HouseView
{
    private readonly Dictionary<string, WallView> _views = new(StringComparer.Ordinal);
    private readonly Dictionary<Wall, OneWall> _alone = new(ReferenceEqualityComparer.Instance);
    private readonly List<Group> _groups = [];
    private readonly Settings _settings;

    /// <summary>Walls that inform each other, in the order of the job.</summary>
    private sealed record Group((string Kind, string Role) Kind, IReadOnlyList<OneWall> Walls);

    /// <param name="before">The view of an earlier state of the job, or none.</param>
    public HouseView(Job job, HouseView? before = null)
    {
        _settings = job.Settings;
        Learned = HouseRates.Of(job.Walls, before?.Learned);
        if (before?._settings != job.Settings) before = null;
        foreach (var wall in job.Walls) _alone[wall] = Kept(before, wall) ?? OneWall.Of(wall, job.Settings, Learned.Rates);
        foreach (var group in job.Walls.Select(w => _alone[w]).GroupBy(w => HouseModel.KindOf(w.Evidence))) Believe(new(group.Key, [.. group]), before);
    }

    /// <summary>What the job's holes have taught of taps and magnets. A hole on one wall changes how all are read.</summary>
    public HouseRates Learned { get; }

    private OneWall? Kept(HouseView? before, Wall wall) => before?._alone.GetValueOrDefault(wall) is { } kept && kept.Rates == Learned.Rates ? kept : null;

    public static HouseView Of(Job job) => new(job);

    /// <summary>The view of a wall by its id; the same object as before where nothing has changed.</summary>
    public WallView this[string wall] => _views[wall];

    private void Believe(Group group, HouseView? before)
    {
        _groups.Add(group);
        if (before?._groups.Find(g => g.Kind == group.Kind && g.Walls.SequenceEqual(group.Walls, ReferenceEqualityComparer.Instance)) is not null)
        {
            foreach (var wall in group.Walls) _views[wall.Wall.Id] = before._views[wall.Wall.Id];
            return;
        }
        var belief = new HouseBelief(group.Walls);
        foreach (var wall in group.Walls) _views[wall.Wall.Id] = new BuiltView(wall, belief);
    }
}
