namespace Pattress.Jobs.Site;

/// <summary>What a hole leaves in the job: a reading of the wall, a hole in the record, or both. Nothing is changed in place.</summary>
public static class DrillRecord
{
    /// <summary>What the drill may meet, as a reading has it.</summary>
    public static IReadOnlyList<string> Met { get; } = ["void", "support", "dab", "masonry", "foam", "metal", "laths"];

    /// <summary>The job after a hole.</summary>
    /// <param name="met">One of <see cref="Met"/>; empty when nothing new was felt (a hole that was only widened).</param>
    /// <param name="newId">Makes a UUID v7.</param>
    /// <param name="when">Now.</param>
    public static Job After(Job job, DrillTask task, string met, Func<string> newId, DateTimeOffset when)
    {
        if (met.Length > 0) job = job with { Walls = [.. job.Walls.Select(w => w.Id == task.Wall ? With(w, task, met, newId()) : w)] };
        return task.Aim == DrillAim.Feel ? job : job with { Done = job.Done with { Holes = [.. job.Done.Holes, Hole(task, newId(), when)] } };
    }

    /// <summary>The job with these cautions ticked for a wall.</summary>
    public static Job Ticked(Job job, string wall, IReadOnlyList<string> codes, string id, DateTimeOffset when) =>
        codes.Count == 0 ? job : job with { Done = job.Done with { Read = [.. job.Done.Read, new(id, wall, codes, Stamp.Text(when))] } };

    private static DrilledHole Hole(DrillTask task, string id, DateTimeOffset when) =>
        new(id, task.Item, task.Bracket, task.At, task.DiameterMm, task.StopMm, Stamp.Text(when), false);

    private static Wall With(Wall wall, DrillTask task, string met, string id) => wall with
    {
        Readings = [.. wall.Readings, new Reading { Id = id, Kind = "hole", At = task.At, Met = met, DiameterMm = task.DiameterMm, DepthMm = task.StopMm }],
    };
}
