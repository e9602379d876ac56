using System.Runtime.InteropServices.JavaScript;
using Pattress.Jobs;
using Pattress.Jobs.Merging;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>Two versions of one job that met on this device.</summary>
/// <param name="OtherKeptAs">Under which id the other is kept.</param>
public sealed record Met(Job Ours, Job Theirs, string OtherKeptAs, IReadOnlyList<JobDifference> Differences);

/// <summary>
/// Takes in jobs from files and codes. A job that is not here yet is kept; one that is here meets it: records are put
/// together, and where measures or things differ both versions stay.
/// </summary>
public sealed class Importer(Keeper keeper, Desk desk)
{
    /// <summary>The last two versions that met and differ, or null.</summary>
    public Met? Met { get; private set; }

    /// <summary>Takes one job, or one a line. True when two versions met and differ; problems are with the keeper.</summary>
    public async Task<bool> Take(string text)
    {
        Met = null;
        string[] lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        bool many = lines.Length > 1 && lines.All(l => l.StartsWith('{') && l.EndsWith('}'));
        foreach (string document in many ? lines : [text]) if (!await One(document)) break;
        return Met is not null;
    }

    private async Task<bool> One(string text)
    {
        if (JobReader.Read(text).Value is not { } theirs) return keeper.Read(text, desk.NewId());
        if (theirs.Id.Length == 0 || await Here(theirs.Id) is not { } keptAs) keeper.Begin(theirs);
        else await Meet(keptAs, theirs);
        return true;
    }

    /// <summary>The kept job with this id of its own.</summary>
    private static async Task<string?> Here(string id)
    {
        try
        {
            foreach (var job in await Keeper.All())
                if (await Store.Kept(job.Id) is { } text && JobReader.Read(text).Value?.Id == id) return job.Id;
        }
        catch (JSException)
        {
            // Nothing can be read here: then nothing meets.
        }

        return null;
    }

    private async Task Meet(string keptAs, Job theirs)
    {
        if (!await keeper.Open(keptAs)) return;
        var ours = desk.Job;
        var differences = JobDifferences.Between(ours, theirs);
        desk.Change(ours.WithRecordsOf(theirs));
        if (differences.Count == 0) return;
        string other = desk.NewId();
        var both = theirs.WithRecordsOf(ours);
        await Store.Keep(other, both.Title, JobWriter.Write(both), "", 0);
        Met = new(desk.Job, both, other, differences);
    }

    /// <summary>Takes the other version in place of ours; ours can be had back by undo.</summary>
    public async Task TakeTheirs()
    {
        if (Met is not { } met) return;
        desk.Change(met.Theirs);
        await Store.Forget(met.OtherKeptAs);
        Met = null;
    }

    /// <summary>Stays with ours; the other is forgotten.</summary>
    public async Task KeepOurs()
    {
        if (Met is not { } met) return;
        await Store.Forget(met.OtherKeptAs);
        Met = null;
    }
}
