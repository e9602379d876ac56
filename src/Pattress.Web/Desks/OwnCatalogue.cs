using System.Runtime.InteropServices.JavaScript;
using Pattress.Jobs;
using Pattress.Jobs.Own;
using Pattress.Web.Browser;

namespace Pattress.Web.Desks;

/// <summary>
/// The user's own trials from all jobs on this device, kept beside them. The job on the desk puts its results in as they are made and takes them out as they
/// are taken back; the invented demo house puts none in.
/// </summary>
public sealed class OwnCatalogue
{
    private const string Demo = "demo";
    private readonly Desk _desk;
    private Task _last = Task.CompletedTask;
    private bool _read;
    private (string Id, IReadOnlyList<OwnTest> Trials, IReadOnlyList<ProofRecord> Proofs) _seen = ("", [], []);

    public OwnCatalogue(Desk desk) => _desk = desk;

    /// <summary>Follows the desk from now on; what is kept is read when the first job lies on it.</summary>
    public void Listen() => _desk.Changed += Follow;

    /// <summary>Why the last reading or writing failed, or none.</summary>
    public bool Failed { get; private set; }

    /// <summary>Whether it failed is otherwise than before.</summary>
    public event Action? Told;

    private async Task Load()
    {
        try
        {
            // An empty one changes nothing, and the page need not be drawn again for it.
            if (await Kept() is { Tests.Count: > 0 } kept) _desk.Use(kept);
        }
        catch (JSException) { Tell(failed: true); }
    }

    private void Tell(bool failed)
    {
        bool other = failed != Failed;
        Failed = failed;
        if (other) Told?.Invoke();
    }

    /// <summary>Changes what is kept: one change after the other, each on what the device has now.</summary>
    public Task Change(Func<TrialCatalogue, TrialCatalogue> change) => _last = After(_last, change);

    /// <summary>The plans of the other jobs on this device that are not what they were without other jobs' results.</summary>
    public async Task<IReadOnlyList<ChangedPlan>> Changed()
    {
        var changed = new List<ChangedPlan>();
        foreach (var kept in await Keeper.All())
        {
            if (await Store.Kept(kept.Id) is not { } text || JobReader.Read(text).Value is not { } job) continue;
            if (ChangedPlans.Of(kept.Id, job, TrialCatalogue.Empty, _desk.Own, PlanData.Embedded) is { } plan) changed.Add(plan);
            await Task.Delay(1);
        }

        return changed;
    }

    private void Follow()
    {
        if (!_read)
        {
            _read = true;
            _ = Load();
        }

        if (_desk.KeptAs == Demo) return;
        var now = (_desk.KeptAs, _desk.Job.Trials, _desk.Job.Proofs);
        if (now.KeptAs == _seen.Id && ReferenceEquals(now.Trials, _seen.Trials) && ReferenceEquals(now.Proofs, _seen.Proofs)) return;
        _seen = now;
        var (id, job) = (_desk.KeptAs, _desk.Job);
        _ = Change(c => c.Taking(id, job));
    }

    private async Task After(Task before, Func<TrialCatalogue, TrialCatalogue> change)
    {
        await before;
        try
        {
            var kept = await Kept();
            var now = change(kept);
            if (!ReferenceEquals(now, kept)) await Store.KeepTrials(CatalogueDocument.Write(now));
            if (!now.Tests.SequenceEqual(_desk.Own.Tests)) _desk.Use(now);
            Tell(failed: false);
        }
        catch (JSException) { Tell(failed: true); }
    }

    /// <summary>A catalogue that cannot be read any more is not written over: nothing is taken from it and the failure is said.</summary>
    private static async Task<TrialCatalogue> Kept()
    {
        if (await Store.KeptTrials() is not { } text) return TrialCatalogue.Empty;
        return CatalogueDocument.Read(text).Value ?? throw new JSException("the catalogue of own trials cannot be read");
    }
}
