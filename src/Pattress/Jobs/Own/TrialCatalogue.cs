using Pattress.Jobs.Merging;

namespace Pattress.Jobs.Own;

/// <summary>One result in the catalogue of the user's own trials, and the job it came from.</summary>
/// <param name="Job">Id of the job, or what it is kept as.</param>
/// <param name="Title">Title of the job.</param>
/// <param name="Out">Taken out of the catalogue by the user: it is kept and not used.</param>
public sealed record CatalogueTest(string Job, string Title, OwnTest Test, bool Out = false);

/// <summary>
/// The user's own trials from all of his jobs: tests at the bench, pulls on site, and what came away on a later visit. They count in the plan of every job.
/// Each job's results follow the job: what is taken back there is gone here, and what was taken out here stays out.
/// </summary>
public sealed record TrialCatalogue(IReadOnlyList<CatalogueTest> Tests)
{
    public static TrialCatalogue Empty { get; } = new([]);

    /// <summary>The results that a job has at present. A pull that held counts as a test stopped at its load, one that did not as a failure.</summary>
    public static IReadOnlyList<OwnTest> ResultsOf(Job job) =>
        [.. job.Trials.Where(t => !t.Withdrawn && t.From.Length == 0), .. job.Proofs.Where(p => !p.Withdrawn && p.Fixing.Length > 0).Select(p => Pull(p, job))];

    private static OwnTest Pull(ProofRecord p, Job job) => new()
    {
        Id = p.Id, Fixing = p.Fixing, Load = "tension", LoadN = p.LoadN, Outcome = p.Result == "held" ? "stopped" : "failed", Where = "site", On = p.On, Note = p.Note,
        Wall = job.Fixtures.FirstOrDefault(f => f.Id == p.Fixture)?.Wall ?? "",
    };

    /// <summary>The catalogue with a job's results as they are now in place of those it had from it.</summary>
    /// <param name="id">The job's id, or what it is kept as.</param>
    public TrialCatalogue Taking(string id, Job job)
    {
        var outs = Tests.Where(t => t.Job == id && t.Out).Select(t => t.Test.Id).ToHashSet(StringComparer.Ordinal);
        List<CatalogueTest> now = [.. ResultsOf(job).Select(t => new CatalogueTest(id, job.Title, t, outs.Contains(t.Id)))];
        List<CatalogueTest> before = [.. Tests.Where(t => t.Job == id)];
        return before.SequenceEqual(now) ? this : new([.. Tests.Where(t => t.Job != id), .. now]);
    }

    /// <summary>One result taken out, or put back.</summary>
    public TrialCatalogue With(string test, bool isOut) => new([.. Tests.Select(t => t.Test.Id == test ? t with { Out = isOut } : t)]);

    /// <summary>All results of a job taken out, or put back.</summary>
    public TrialCatalogue WithJob(string id, bool isOut) => new([.. Tests.Select(t => t.Job == id ? t with { Out = isOut } : t)]);

    /// <summary>Both catalogues together; what is out in either is out.</summary>
    public TrialCatalogue With(TrialCatalogue other) =>
        new(Union.Of(Tests, other.Tests, t => $"{t.Job} {t.Test.Id}", (a, b) => Union.Greater(a, b, t => (t with { Out = false }).ToString()) with { Out = a.Out || b.Out }));

    /// <summary>
    /// The tests that a job's plan counts: its own, and those of all other jobs. A wall of another job is none of this one's, so that its name is left off.
    /// </summary>
    public IReadOnlyList<OwnTest> For(string id, Job job)
    {
        var seen = ResultsOf(job).Concat(job.Trials).Select(Plain).ToHashSet();
        var ids = seen.Select(t => t.Id).ToHashSet(StringComparer.Ordinal);
        List<OwnTest> others = [.. Tests.Where(t => t.Job != id && !t.Out && seen.Add(Plain(t.Test))).Select(t => t.Test with { Id = Free(t.Test.Id, ids), From = t.Title.Length > 0 ? t.Title : t.Job, Wall = "" })];
        return others.Count == 0 ? job.Trials : [.. job.Trials, .. others];
    }

    /// <summary>What makes two records the same test, whichever copy of a job they come from.</summary>
    private static OwnTest Plain(OwnTest t) => t with { Wall = "", From = "", Withdrawn = false };

    /// <summary>Short ids that two jobs both use are told apart.</summary>
    private static string Free(string id, HashSet<string> taken)
    {
        string free = id;
        for (int n = 2; !taken.Add(free); n++) free = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{id}-{n}");
        return free;
    }

    /// <summary>The job as its plan sees it.</summary>
    public Job In(string id, Job job) => For(id, job) is var all && ReferenceEquals(all, job.Trials) ? job : job with { Trials = all };
}
