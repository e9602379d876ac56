using Pattress.Actions;
using Pattress.Planning;
using Pattress.Planning.Resisting;

namespace Pattress.Jobs;

/// <summary>
/// Plans a job again and again while it is edited. What the last plan found is kept for walls and things that are the same
/// objects as then, so that a change costs what it touches. Each plan is the one that <see cref="Planner.Plan"/> gives,
/// byte for byte. Not for several threads at once.
/// </summary>
/// <param name="sizes">Sizes wanted for some brackets, e.g. as the buying chose them.</param>
public sealed class Replanner(PlanData data, WantedSizes? sizes = null)
{
    private Job? _before;
    private HouseView? _house;
    private Dictionary<(Fixture, WallView), PlannedItem> _items = new(SameObjects.Instance);
    private Dictionary<Fixture, (string Surface, FixtureActions? Loads)> _loads = new(ReferenceEqualityComparer.Instance);

    /// <summary>The plan of the job as it is now.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled; the next plan is right all the same.</exception>
    public PlanAnswer Plan(Job job, CancellationToken cancel = default) => House(job, cancel).Plan;

    /// <summary>The plan with what its brackets want from the shop.</summary>
    internal PlannedHouse House(Job job, CancellationToken cancel)
    {
        var priced = data with { Catalogue = data.Catalogue.With(job.Prices) };
        var house = new HouseView(job, _house);
        var trials = OwnTrials.Of(job.Trials, job.Proofs);
        // Own tests speak of every fixing of their kind, own prices of every choice.
        bool sameTrials = _before is { } before && ReferenceEquals(before.Trials, job.Trials) && ReferenceEquals(before.Proofs, job.Proofs) && ReferenceEquals(before.Prices, job.Prices);
        var items = new Dictionary<(Fixture, WallView), PlannedItem>(SameObjects.Instance);
        foreach (var fixture in job.Fixtures)
        {
            cancel.ThrowIfCancellationRequested();
            var wall = house[fixture.Wall];
            items[(fixture, wall)] = (sameTrials ? _items.GetValueOrDefault((fixture, wall)) : null)
                ?? ItemPlanner.Plan(fixture, wall, job.Settings, priced.Catalogue, trials.On(fixture.Wall), i => sizes?.For(fixture.Id, i), LoadsOf(fixture, wall, job));
        }
        (_before, _house, _items) = (job, house, items);
        _loads = new(ReferenceEqualityComparer.Instance);
        foreach (var fixture in job.Fixtures) _loads[fixture] = (house[fixture.Wall].Wall.Kind, items[(fixture, house[fixture.Wall])].Loads);
        List<PlannedItem> planned = [.. job.Fixtures.Select(f => ProofGate.Apply(items[(f, house[f.Wall])], job.Proofs))];
        return new(Planner.Gather(job, priced, house, planned), [.. planned.SelectMany(p => p.Needs)]);
    }

    /// <summary>Loads as they were, while the thing, the settings and whether it hangs on a wall or a ceiling are the same.</summary>
    private FixtureActions? LoadsOf(Fixture fixture, WallView wall, Job job) =>
        _before?.Settings == job.Settings && _loads.TryGetValue(fixture, out var known) && known.Surface == wall.Wall.Kind ? known.Loads : null;

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
