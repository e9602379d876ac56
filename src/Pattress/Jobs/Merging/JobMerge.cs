namespace Pattress.Jobs.Merging;

/// <summary>
/// Puts together what two devices recorded of one job: readings, old holes, checks of strips, tests, pulls, and all that was done. These are
/// only ever added or withdrawn, so their union loses nothing. What is entered and changed in place (settings, measures, things)
/// is never mixed: see <see cref="JobDifferences"/>.
/// </summary>
public static class JobMerge
{
    /// <summary>Our job with everything that either recorded. Walls that only they have are not taken over.</summary>
    public static Job WithRecordsOf(this Job ours, Job theirs) => ours with
    {
        Walls = [.. ours.Walls.Select(w => theirs.Walls.FirstOrDefault(t => t.Id == w.Id) is { } t ? Walls(w, t) : w)],
        Trials = Union.Of(ours.Trials, theirs.Trials, t => t.Id, (a, b) => Union.Greater(a, b, t => (t with { Withdrawn = false }).ToString()) with { Withdrawn = a.Withdrawn || b.Withdrawn }),
        Proofs = Union.Of(ours.Proofs, theirs.Proofs, p => p.Id, (a, b) => Union.Greater(a, b, p => (p with { Withdrawn = false }).ToString()) with { Withdrawn = a.Withdrawn || b.Withdrawn }),
        Actuals = Union.Of(ours.Actuals, theirs.Actuals, a => a.Id, (a, b) => Union.Greater(a, b, x => x.ToString())),
        Done = Done(ours.Done, theirs.Done),
    };

    /// <summary>What was done on either device.</summary>
    public static WorkDone Done(WorkDone ours, WorkDone theirs) => new()
    {
        Holes = Union.Of(ours.Holes, theirs.Holes, h => h.Id, (a, b) => Union.Greater(a, b, h => (h with { Withdrawn = false }).ToString()) with { Withdrawn = a.Withdrawn || b.Withdrawn }),
        Read = Union.Of(ours.Read, theirs.Read, r => r.Id, (a, b) => Union.Greater(a, b, RecordText.Of)),
        Signed = Union.Of(ours.Signed, theirs.Signed, s => s.Id, (a, b) => Union.Greater(a, b, s => RecordText.Of(s with { Withdrawn = false })) with { Withdrawn = a.Withdrawn || b.Withdrawn }),
    };

    /// <summary>The job without what is only ever added: what two people could have changed each in his own way.</summary>
    public static Job WithoutRecords(this Job job) => job with
    {
        Walls = [.. job.Walls.Select(w => w with { Readings = [], OldHoles = [], StripChecks = [] })],
        Trials = [], Proofs = [], Actuals = [], Done = new(),
    };

    private static Wall Walls(Wall ours, Wall theirs) => ours with
    {
        Readings = Union.Of(ours.Readings, theirs.Readings, r => r.Id, (a, b) => Union.Greater(a, b, r => RecordText.Of(r with { Withdrawn = false })) with { Withdrawn = a.Withdrawn || b.Withdrawn }),
        OldHoles = Union.Of(ours.OldHoles, theirs.OldHoles, h => h.Id, (a, b) => Union.Greater(a, b, h => h.ToString())),
        StripChecks = Union.Of(ours.StripChecks, theirs.StripChecks, c => c.Id, (a, b) => Union.Greater(a, b, c => c.ToString())),
    };
}
