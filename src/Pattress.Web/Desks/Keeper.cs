using Pattress.Jobs;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>Where a job stands on its way to the device.</summary>
public enum Kept { Saved, Saving, Failed }

/// <summary>A job kept on this device.</summary>
public sealed record KeptJob(string Id, string Title);

/// <summary>Keeps every change on the device; it shows as saved only when the device has said so.</summary>
public sealed class Keeper
{
    private const string Demo = "samples/demo-house.job.json";
    private readonly Desk _desk;
    private Task _last = Task.CompletedTask;
    private int _saved;

    public Keeper(Desk desk)
    {
        _desk = desk;
        desk.Changed += () => _ = Save();
    }

    public event Action? Changed;

    public Kept State { get; private set; } = Kept.Saved;

    /// <summary>Why the last job could not be opened, or none.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>Opens what was open last on this device, else the demo house.</summary>
    public async Task OpenLast()
    {
        try
        {
            if (await Page.LastOpened() is { } id && await Open(id)) return;
        }
        catch (System.Runtime.InteropServices.JavaScript.JSException)
        {
            Note(Kept.Failed);
        }

        OpenDemo();
    }

    /// <summary>Opens a kept job.</summary>
    public async Task<bool> Open(string id) => await Page.Kept(id) is { } text && Read(text, id);

    /// <summary>The invented house; keeping it under its own id, so that changes to it survive as well.</summary>
    public void OpenDemo() => Read(Embedded.Text(Demo), "demo");

    /// <summary>Reads a document; on failure the desk stays as it was and <see cref="Problems"/> says why.</summary>
    public bool Read(string text, string keptAs)
    {
        var read = JobReader.Read(text);
        Problems = read.Problems;
        if (read.Value is not { } job) return false;
        _desk.Open(job, keptAs);
        return true;
    }

    public static async Task<IReadOnlyList<KeptJob>> All() =>
        [.. (await Page.KeptJobs()).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(l => l.Split('\t', 2)).Select(p => new KeptJob(p[0], p[1]))];

    private async Task Save()
    {
        Note(Kept.Saving);
        int revision = _desk.Revision;
        var (id, title, text) = (_desk.KeptAs, _desk.Job.Title, JobWriter.Write(_desk.Job));
        _last = After(_last, id, title, text, revision);
        await _last;
    }

    // One after the other, so that an older state never overwrites a newer one.
    private async Task After(Task before, string id, string title, string text, int revision)
    {
        await before;
        try
        {
            await Page.Keep(id, title, text);
            await Page.SetLastOpened(id);
            _saved = Math.Max(_saved, revision);
            Note(_saved == _desk.Revision ? Kept.Saved : Kept.Saving);
        }
        catch (System.Runtime.InteropServices.JavaScript.JSException)
        {
            Note(Kept.Failed);
        }
    }

    private void Note(Kept state)
    {
        State = state;
        Changed?.Invoke();
    }
}
