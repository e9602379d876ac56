using Pattress.Planning;
using Pattress.Planning.Resisting;

namespace Pattress.Jobs;

/// <summary>
/// Plans a job again and again while it is edited. What the last plan found is kept for walls and things that are the same
/// objects as then, so that a change costs what it touches. Each plan is the one that <see cref="Planner.Plan"/> gives,
/// byte for byte. Not for several threads at once.
/// </summary>
public sealed class Replanner(PlanData data)
{
    private Job? _before;
    private HouseView? _house;
    private Dictionary<(Fixture, WallView), PlannedItem> _items = new(SameObjects.Instance);

    /// <summary>The plan of the job as it is now.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled; the next plan is right all the same.</exception>
    public PlanAnswer Plan(Job job, CancellationToken cancel = default)
    {
        var house = new HouseView(job, _house);
        var trials = OwnTrials.Of(job.Trials, job.Proofs);
        // Own tests speak of every fixing of their kind.
        bool sameTrials = _before is { } before && ReferenceEquals(before.Trials, job.Trials) && ReferenceEquals(before.Proofs, job.Proofs);
        var items = new Dictionary<(Fixture, WallView), PlannedItem>(SameObjects.Instance);
        foreach (var fixture in job.Fixtures)
        {
            cancel.ThrowIfCancellationRequested();
            var wall = house[fixture.Wall];
            items[(fixture, wall)] = (sameTrials ? _items.GetValueOrDefault((fixture, wall)) : null) ?? ItemPlanner.Plan(fixture, wall, job.Settings, data.Catalogue, trials);
        }
        (_before, _house, _items) = (job, house, items);
        return Planner.Gather(job, data, house, [.. job.Fixtures.Select(f => ProofGate.Apply(items[(f, house[f.Wall])], job.Proofs))]);
    }

    /// <summary>Records compare by content, which costs more than planning what has changed.</summary>
    private sealed class SameObjects : IEqualityComparer<(Fixture Fixture, WallView Wall)>
    {
        public static SameObjects Instance { get; } = new();

        public bool Equals((Fixture Fixture, WallView Wall) a, (Fixture Fixture, WallView Wall) b) =>
            ReferenceEquals(a.Fixture, b.Fixture) && ReferenceEquals(a.Wall, b.Wall);

        public int GetHashCode((Fixture Fixture, WallView Wall) pair) =>
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(pair.Fixture);
    }
}
