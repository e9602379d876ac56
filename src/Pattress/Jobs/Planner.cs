using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs.Text;
using Pattress.Planning;
using Pattress.Strength.Mechanisms;
using Pattress.Supports;

namespace Pattress.Jobs;

/// <summary>The catalogue and priors a plan rests on, and their fingerprint.</summary>
public sealed record PlanData(FixingCatalogue Catalogue, string Hash)
{
    /// <summary>What ships with the program.</summary>
    public static PlanData Embedded { get; } = new(FixingCatalogue.FromEmbedded, DataHash.OfEmbedded());
}

/// <summary>A plan, and what its brackets want from the shop.</summary>
internal sealed record PlannedHouse(PlanAnswer Plan, IReadOnlyList<Planning.Buying.BracketNeed> Needs);

/// <summary>Sizes wanted for some brackets, by item and index.</summary>
public sealed record WantedSizes(IReadOnlyDictionary<(string Item, int Index), string> Wanted)
{
    public static WantedSizes None { get; } = new(new Dictionary<(string, int), string>());

    public string? For(string item, int index) => Wanted.GetValueOrDefault((item, index));
}

/// <summary>The one entry point of the main job: a pure synchronous function from a job to its plan.</summary>
public static class Planner
{
    /// <summary>Version of the program that made a plan.</summary>
    public static string ProgramVersion { get; } = typeof(Planner).Assembly.GetName().Version!.ToString(3);

    /// <summary>Plans a whole job. The same job gives the same plan on the same build. Never fails on a job that passed the door.</summary>
    /// <exception cref="OperationCanceledException">The caller cancelled.</exception>
    public static PlanAnswer Plan(Job job, PlanData data, CancellationToken cancel = default) => new Replanner(data).Plan(job, cancel);

    /// <summary>The plan with what its brackets want from the shop.</summary>
    /// <param name="sizes">Sizes wanted for some brackets, e.g. as the buying chose them.</param>
    internal static PlannedHouse House(Job job, PlanData data, WantedSizes sizes, CancellationToken cancel) => new Replanner(data, sizes).House(job, cancel);

    internal static PlanAnswer Gather(Job job, PlanData data, HouseView house, IReadOnlyList<PlannedItem> planned)
    {
        var items = planned.Select(p => p.Answer).ToList();
        var buy = GreedyBuying.Lines(items, job.Stock, data.Catalogue);
        return new(
            items.Count == 0 ? Verdict.CheckFirst : items.Max(i => i.Verdict), job.Title, ProgramVersion, data.Hash, items,
            [.. job.Walls.Select(w => house[w.Id].Answer)], Checks(planned), buy, buy.Sum(l => l.Price), job.Settings.Currency,
            OrderOfWork.Steps(items), Cautions.Of(job, items), Assumed(job, house.Learned.Learned));
    }

    /// <summary>Each check once, with all the items that wait for it; in the order of the items.</summary>
    private static IReadOnlyList<CheckToDo> Checks(IReadOnlyList<PlannedItem> planned) =>
        [.. planned.SelectMany(p => p.Checks).GroupBy(c => (c.Kind, c.Wall, c.At, Key(c.Why)))
            .Select(g => g.First() with { Items = [.. g.SelectMany(c => c.Items).Distinct(StringComparer.Ordinal)] })];

    private static string Key(Reason why) => why.Code + string.Join('|', why.Values);

    private static List<Assumption> Assumed(Job job, LineLearning learned)
    {
        var said = new List<Assumption> { job.Prices.Count == 0 ? new("assume_prices", [], "invented") : new("assume_other_prices", [Said.Count(job.Prices.Count)], "invented") };
        if (job.Settings.YearBuilt is null) said.Add(new("assume_year", [], "assumed"));
        if (job.Settings.Standards == "us") said.Add(new("assume_allowable_stress", [Said.Plain(Factors.OnAction)], "rule"));
        if (job.Trials.Count(t => !t.Withdrawn && t.From.Length > 0) is > 0 and var others) said.Add(new("assume_catalogue", [Said.Count(others)], "own tests"));
        if (job.Walls.Any(w => w.Readings.Count > 0)) said.Add(new("assume_line", [], "assumed"));
        if (RatesWords.Of(learned) is { } rates) said.Add(new(rates.Code, rates.Values, "own holes"));
        return said;
    }
}
