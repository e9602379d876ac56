using System.Globalization;
using System.Runtime.InteropServices.JavaScript;
using Pattress.Jobs;
using Pattress.Jobs.Merging;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>Where a job stands on its way to the device.</summary>
public enum Kept { Saved, Saving, Failed, Full }

/// <summary>A job kept on this device.</summary>
/// <param name="Standing">How it stood when it was kept, or null.</param>
public sealed record KeptJob(string Id, string Title, DateTimeOffset At, KeptStanding? Standing);

/// <summary>Keeps every change on the device; it shows as saved only when the device has said so.</summary>
public sealed class Keeper
{
    private const string Demo = "samples/demo-house.job.json";
    private readonly Desk _desk;
    private Task _last = Task.CompletedTask;
    private Task? _laid;
    // The revision at which each job was read or last kept here.
    private readonly Dictionary<string, int> _revisions = [];
    private int _saved;
    private bool _asked;

    public Keeper(Desk desk)
    {
        _desk = desk;
        desk.Changed += () => _ = Save();
    }

    public event Action? Changed;

    public Kept State { get; private set; } = Kept.Saved;

    /// <summary>Why the last job could not be opened, or none.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>The job was changed elsewhere at the same time; the other version is kept under this title.</summary>
    public string KeptBoth { get; private set; } = "";

    /// <summary>Hears from now on what other tabs keep.</summary>
    public void Listen() => Store.OnKept(id => _ = KeptElsewhere(id));

    /// <summary>Sees to it that a job lies on the desk: what was open last on this device, else the demo house. The list of jobs needs neither.</summary>
    public Task Lay() => _desk.IsLaid ? Task.CompletedTask : _laid ??= LastOrDemo();

    /// <summary>Opens what was open last on this device, if nothing lies on the desk yet; false where nothing was.</summary>
    public async Task<bool> OpenLast()
    {
        if (_desk.IsLaid) return true;
        try
        {
            return await Store.LastOpened() is { } id && await Open(id, first: true);
        }
        catch (JSException)
        {
            Note(Kept.Failed);
            return false;
        }
    }

    /// <summary>Opens a kept job.</summary>
    /// <param name="first">Only if nothing lies on the desk yet: whoever was quicker has begun a job of his own.</param>
    public async Task<bool> Open(string id, bool first = false)
    {
        if (await Store.Kept(id) is not { } text) return false;
        int revision = await Store.Revision(id);
        if (first && _desk.IsLaid) return true;
        _revisions[id] = revision;
        if (!Read(text, id, asKept: true)) return false;
        await Store.SetLastOpened(id);
        return true;
    }

    /// <summary>The invented house; keeping it under its own id, so that changes to it survive as well.</summary>
    public void OpenDemo()
    {
        _revisions["demo"] = -1;
        Read(Embedded.Text(Demo), "demo", asKept: true);
    }

    /// <summary>Puts a new job on the desk and keeps it.</summary>
    public void Begin(Job job)
    {
        string id = _desk.NewId();
        _desk.Open(job with { Id = job.Id.Length > 0 ? job.Id : id }, id);
    }

    /// <summary>Reads a document; on failure the desk stays as it was and <see cref="Problems"/> says why.</summary>
    public bool Read(string text, string keptAs, bool asKept = false)
    {
        var read = JobReader.Read(text);
        Problems = read.Problems;
        if (read.Value is not { } job)
        {
            Changed?.Invoke();
            return false;
        }

        KeptBoth = "";
        _desk.Open(job, keptAs, asKept);
        return true;
    }

    public static async Task<IReadOnlyList<KeptJob>> All() =>
        [.. (await Store.KeptJobs()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t', 4))
            .Select(p => new KeptJob(p[0], p[3], DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(p[1], CultureInfo.InvariantCulture)), KeptStanding.Read(p[2])))];

    private async Task LastOrDemo()
    {
        if (!await OpenLast() && !_desk.IsLaid) OpenDemo();
    }

    private async Task Save()
    {
        if (_desk.IsAsKept)
        {
            _saved = _desk.Revision;
            Note(Kept.Saved);
            return;
        }

        Note(Kept.Saving);
        int revision = _desk.Revision;
        var (id, job, text) = (_desk.KeptAs, _desk.Job, JobWriter.Write(_desk.Job));
        _last = After(_last, id, job, text, revision);
        await _last;
    }

    // One after the other, so that an older state never overwrites a newer one.
    private async Task After(Task before, string id, Job job, string text, int revision)
    {
        await before;
        try
        {
            string standing = ReferenceEquals(job, _desk.Job) ? KeptStanding.Of(_desk.Standing).Text : "";
            int kept = await Store.Keep(id, job.Title, text, standing, _revisions.GetValueOrDefault(id));
            _revisions[id] = kept;
            await Store.SetLastOpened(id);
            _saved = Math.Max(_saved, revision);
            Note(_saved == _desk.Revision ? Kept.Saved : Kept.Saving);
            if (!_asked) _asked = await Installed.Persist() || true;
        }
        catch (JSException e) when (e.Message.Contains("elsewhere", StringComparison.Ordinal))
        {
            await KeepBoth(id, job);
        }
        catch (JSException e)
        {
            Note(e.Message.Contains("Quota", StringComparison.OrdinalIgnoreCase) ? Kept.Full : Kept.Failed);
        }
    }

    /// <summary>Another tab kept this job first: both versions stay, each with everything that either recorded.</summary>
    private async Task KeepBoth(string id, Job ours)
    {
        if (await Store.Kept(id) is not { } text || JobReader.Read(text).Value is not { } theirs) return;
        var both = ours.WithRecordsOf(theirs);
        if (JobDifferences.Between(ours, theirs).Count > 0)
        {
            KeptBoth = theirs.Title;
            await Store.Keep(_desk.NewId(), theirs.Title, JobWriter.Write(theirs.WithRecordsOf(ours)), "", 0);
        }

        _revisions[id] = await Store.Revision(id);
        _desk.Change(both, "together");
    }

    private async Task KeptElsewhere(string id)
    {
        if (id == _desk.KeptAs && State == Kept.Saved && await Store.Revision(id) > _revisions.GetValueOrDefault(id)) await Open(id);
        Changed?.Invoke();
    }

    private void Note(Kept state)
    {
        State = state;
        Changed?.Invoke();
    }
}
