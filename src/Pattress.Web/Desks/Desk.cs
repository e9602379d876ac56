using Pattress.Jobs;
using Pattress.Jobs.Own;
using Pattress.Jobs.Site;

namespace Pattress.Web.Desks;

/// <summary>
/// The job on the desk, its plan, and the way back and forward. Every change plans what it touches, at once, in this browser.
/// </summary>
public sealed class Desk(TimeProvider clock)
{
    private readonly History _history = new();
    // The catalogues are read when the first plan is asked for, not when the app starts.
    private readonly Lazy<Replanner> _planner = new(() => new(PlanData.Embedded));
    private PlanAnswer? _plan;
    private IReadOnlyList<OwnTest>? _full, _listedFor;
    private IReadOnlyList<OwnTest> _listed = [];
    private TrialCatalogue? _listedOf;
    private Standing? _standing;
    private long _refusedAt;
    private static readonly TimeSpan JustNow = TimeSpan.FromSeconds(0.5);

    /// <summary>Something changed: whoever shows it draws again.</summary>
    public event Action? Changed;

    public Job Job { get; private set; } = new();

    /// <summary>The plan of the job, made when it is first looked at.</summary>
    public PlanAnswer Plan => _plan ??= _planner.Value.Plan(Full);

    /// <summary>What the user's jobs taught; it counts in every plan.</summary>
    public TrialCatalogue Own { get; private set; } = TrialCatalogue.Empty;

    /// <summary>The job as its plan sees it: with what other jobs taught.</summary>
    public Job Full => (_full ??= Trials()) is var trials && ReferenceEquals(trials, Job.Trials) ? Job : Job with { Trials = trials };

    /// <summary>Counts from now on what this catalogue holds.</summary>
    public void Use(TrialCatalogue own)
    {
        Own = own;
        (_full, _plan, _standing) = (null, null, null);
        Revision++;
        Changed?.Invoke();
    }

    // The list stays the same object while nothing in it changes, so that a plan after a change costs what it touches.
    private IReadOnlyList<OwnTest> Trials()
    {
        if (!ReferenceEquals(_listedFor, Job.Trials) || !ReferenceEquals(_listedOf, Own)) (_listed, _listedFor, _listedOf) = (Own.For(KeptAs, Job), Job.Trials, Own);
        return _listed;
    }

    /// <summary>Where the job stands.</summary>
    public Standing Standing => _standing ??= Standing.Of(Job, Plan);

    /// <summary>Id under which the job is kept on this device.</summary>
    public string KeptAs { get; private set; } = "demo";

    public bool CanUndo => _history.CanUndo;

    public bool CanRedo => _history.CanRedo;

    /// <summary>Counts changes, so that a late save can tell whether it is still the last one.</summary>
    public int Revision { get; private set; }

    /// <summary>True when what lies here is as it is kept, so that looking at it writes nothing.</summary>
    public bool IsAsKept { get; private set; } = true;

    /// <summary>A job lies here: the last one, the demo house, or one that was just begun.</summary>
    public bool IsLaid { get; private set; }

    /// <summary>The language to speak until a job lies here.</summary>
    public void Speak(string english)
    {
        if (!IsLaid && english.Length > 0) Job = Job with { Settings = Job.Settings with { English = english } };
    }

    /// <summary>Puts another job on the desk.</summary>
    /// <param name="asKept">It was read from the device just now; a new one is kept at once.</param>
    public void Open(Job job, string keptAs, bool asKept = false)
    {
        _history.Clear();
        KeptAs = keptAs;
        IsAsKept = asKept;
        IsLaid = true;
        Show(job);
    }

    /// <summary>Why the last change was refused, or none.</summary>
    public IReadOnlyList<Problem> Problems { get; private set; } = [];

    /// <summary>The job as it would have become, which <see cref="Problems"/> speak of; null when there are none.</summary>
    public Job? Refused { get; private set; }

    /// <summary>
    /// Changes the job; changes with the same key that follow each other are undone together (a slider that was dragged).
    /// A change passes the same door as a document, so that what is kept can be read again: refused, the job stays as it was.
    /// </summary>
    public void Change(Job next, string key = "")
    {
        if (ReferenceEquals(next, Job)) return;
        Problems = JobReader.Read(JobWriter.Write(next)).Problems;
        Refused = Problems.Count > 0 ? next : null;
        if (Refused is not null)
        {
            _refusedAt = clock.GetTimestamp();
            Changed?.Invoke();
            return;
        }

        _history.Did(Job, key);
        IsAsKept = false;
        Show(next);
    }

    /// <summary>Another page is opened: a refusal that stood there to be read is done with, one of just now comes along.</summary>
    public void Turned()
    {
        if (Refused is null || clock.GetElapsedTime(_refusedAt) < JustNow) return;
        (Problems, Refused) = ([], null);
        Changed?.Invoke();
    }

    public void Undo() => Step(_history.Undo(Job));

    public void Redo() => Step(_history.Redo(Job));

    /// <summary>An id for something added here: a UUID v7, so that two devices never make the same.</summary>
    public string NewId() => Guid.CreateVersion7(clock.GetUtcNow()).ToString();

    /// <summary>Today's date in UTC, as documents have it.</summary>
    public string Today => clock.GetUtcNow().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Now, as a record takes it.</summary>
    public DateTimeOffset Now => clock.GetUtcNow();

    private void Step(Job? job)
    {
        if (job is null) return;
        IsAsKept = false;
        Show(job);
    }

    private void Show(Job job)
    {
        Job = job;
        (_full, _plan, _standing) = (null, null, null);
        (Problems, Refused) = ([], null);
        Revision++;
        Changed?.Invoke();
    }
}

/// <summary>Jobs as they were and as they came to be.</summary>
internal sealed class History
{
    private const int Most = 200;
    private readonly List<Job> _past = [], _future = [];
    private string _lastKey = "";

    public bool CanUndo => _past.Count > 0;

    public bool CanRedo => _future.Count > 0;

    public void Did(Job before, string key)
    {
        _future.Clear();
        if (key.Length > 0 && key == _lastKey && _past.Count > 0) return;
        _lastKey = key;
        _past.Add(before);
        if (_past.Count > Most) _past.RemoveAt(0);
    }

    public Job? Undo(Job now) => Move(_past, _future, now);

    public Job? Redo(Job now) => Move(_future, _past, now);

    public void Clear()
    {
        _past.Clear();
        _future.Clear();
        _lastKey = "";
    }

    private Job? Move(List<Job> from, List<Job> to, Job now)
    {
        _lastKey = "";
        if (from.Count == 0) return null;
        to.Add(now);
        var job = from[^1];
        from.RemoveAt(from.Count - 1);
        return job;
    }
}
