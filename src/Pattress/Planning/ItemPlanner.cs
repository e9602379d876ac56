using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning.Resisting;
using Pattress.Strength.Mechanisms;
using Pattress.Trials.Installations;

namespace Pattress.Planning;

/// <summary>An item's answer with the checks that it asks for.</summary>
/// <param name="Needs">What its brackets want from the shop; none where nothing holds.</param>
/// <param name="Loads">What it loads its brackets with; null where it was refused.</param>
public sealed record PlannedItem(ItemAnswer Answer, IReadOnlyList<CheckToDo> Checks, IReadOnlyList<Buying.BracketNeed> Needs, FixtureActions? Loads = null);

/// <summary>Plans one thing to hang.</summary>
public static class ItemPlanner
{
    /// <summary>The same batch, the same damp, the same fitter: one factor on every resistance of an installation (assumed).</summary>
    public static double BatchCov { get; } = Factors.Of("batch_cov");

    /// <param name="wanted">Size wanted for each bracket by index, where one was chosen already.</param>
    /// <param name="loads">Its loads where they are known: they depend on the fixture, the kind of wall and the settings alone.</param>
    public static PlannedItem Plan(
        Fixture fixture, WallView wall, Settings settings, FixingCatalogue catalogue, OwnTrials? trials = null, Func<int, string?>? wanted = null, FixtureActions? loads = null)
    {
        if (FixtureCatalogue.Find(fixture.What) is not { Refusal: null } kind) return Refused(fixture, FixtureCatalogue.Find(fixture.What)!);
        var actions = loads ?? FixtureLoads.Of(fixture, wall.Wall, settings);
        var ask = AskFor(fixture, wall, actions, settings) with { Trials = trials ?? OwnTrials.None };
        // The allowed chance is the whole thing's: each bracket has its share, so that together they keep to it.
        var share = ask with { TargetProbability = ask.TargetProbability / Math.Max(1, actions.Brackets.Count) };
        // The brackets of a thing have one plate.
        var known = actions.Brackets.Count == 0 ? null : new KnownSpots(share, actions.Brackets[0].Plate);
        BracketPlan At(BracketActions b, string? size) => BracketPlanner.Plan(b, wall.Ideas(b), share, wall, catalogue, size, ReferenceEquals(b.Plate, actions.Brackets[0].Plate) ? known : null);
        var brackets = actions.Brackets.Select(b => At(b, wanted?.Invoke(b.Index))).ToList();
        bool Off(BracketActions b) => OffWall(b, wall.Wall);
        var ruling = Gates.Rule(fixture, wall, brackets, ask, actions.Brackets.Any(Off), b => Off(b) ? null : At(b, null));
        return new(Answer(fixture, actions, brackets, ruling, ask, wall), ruling.Checks, Needs(fixture, brackets, ruling, ask), actions);
    }

    private static IReadOnlyList<Buying.BracketNeed> Needs(Fixture fixture, IReadOnlyList<BracketPlan> brackets, Gates.Ruling ruling, Ask ask) =>
        ruling.Verdict == Verdict.NotHere ? [] : [.. brackets.Select(b => Buying.BracketNeed.Of(fixture.Id, b, ask)).OfType<Buying.BracketNeed>()];

    internal static Ask AskFor(Fixture fixture, WallView wall, FixtureActions actions, Settings settings) => AskFor(fixture, wall.Wall, actions, settings);

    internal static Ask AskFor(Fixture fixture, Wall wall, FixtureActions actions, Settings settings)
    {
        var target = ClassTarget.Of(actions.Class);
        return new(actions.Class, fixture.Removable, fixture.ToeStrip, wall.Kind == "ceiling", settings, wall.Condition.Moisture, target.Sure, target.Probability);
    }

    private static ItemAnswer Answer(Fixture f, FixtureActions actions, IReadOnlyList<BracketPlan> brackets, Gates.Ruling ruling, Ask ask, WallView wall) => new(
        f.Id, f.What, f.Wall, f.Name, ruling.Verdict, ruling.Why, ruling.Remedies, actions.MassKg, actions.Class, [.. brackets.Select(b => b.Answer)],
        Failure(brackets), ask.TargetProbability, actions.Cautions, [.. actions.Assumptions, .. Assumed(brackets, ask, wall)]);

    /// <summary>Chance that any bracket fails, given the build-up planned for: the load and the batch are shared.</summary>
    private static double Failure(IReadOnlyList<BracketPlan> brackets)
    {
        if (brackets.Any(b => b.Picked is null)) return 1;
        var holds = brackets.Select(b => b.Picked!.Hold!).ToList();
        var parts = holds.Where(h => h.MeanActionN > 0).Select(h => new BracketOnWall(h.MeanResistanceN, h.ResistanceCov, h.MeanActionN)).ToArray();
        if (parts.Length == 0) return 0;
        var shared = new SharedCauses(LoadLaw.Lognormal, holds.Max(h => h.ActionCov), BatchCov);
        // The sum over the brackets is never less than the chance that any fails; below the integral's own error it says as much.
        double atMost = parts.Sum(b => BracketFailure.Probability(b.MeanResistance, Cov(b.CovResistance, BatchCov), b.MeanAction, shared.LoadCov));
        return atMost < BelowIntegral ? atMost : InstallationFailure.Probability(parts, shared);
    }

    /// <summary>Error of the integral over shared causes.</summary>
    private const double BelowIntegral = 1e-10;

    // Two independent lognormal factors.
    private static double Cov(double a, double b) => Math.Sqrt((1 + a * a) * (1 + b * b) - 1);

    private static IEnumerable<Assumption> Assumed(IReadOnlyList<BracketPlan> brackets, Ask ask, WallView wall)
    {
        yield return new("assume_sure", [Said.Percent(ask.SureWanted)], "assumed");
        if (wall.Wall.Condition.Moisture == "unknown") yield return new("assume_moisture", [], "assumed");
        if (wall.Wall.OldHoles.Count > 0) yield return new("assume_sound", [Said.Length(Neighbours.SoundMm)], "assumed");
        foreach (var said in OnTrials.Said(brackets)) yield return said;
        foreach (var used in brackets.Select(Stiffness).Concat(Numbers(brackets)).Concat(Marks(brackets)).SelectMany(a => a).DistinctBy(Text)) yield return used;
    }

    private static IEnumerable<Assumption> Stiffness(BracketPlan b)
    {
        if (b.Shown is not { } shown) yield break;
        var (k, bed) = (StiffnessData.Fixing(shown.Size.Kind.HoldsBy), StiffnessData.Bed(shown.ShownIn!.For(shown.Size.Kind)));
        yield return new("assume_stiffness", [Said.Plain(k.Low), Said.Plain(k.High)], "assumed");
        yield return new("assume_bed", [Said.Plain(bed.Low), Said.Plain(bed.High)], "assumed");
    }

    private static IEnumerable<IEnumerable<Assumption>> Numbers(IReadOnlyList<BracketPlan> brackets)
    {
        foreach (var b in brackets) yield return AssumedNumbers.In(b.Answer.Working);
        if (brackets.All(b => b.Picked is not null)) yield return [AssumedNumbers.Of("permanent_cov"), AssumedNumbers.Of("batch_cov")];
    }

    private static IEnumerable<IEnumerable<Assumption>> Marks(IReadOnlyList<BracketPlan> brackets) =>
        brackets.Select(b => (b.Picked?.Hold?.Marks ?? []).Select(AssumedNumbers.Of));

    private static string Text(Assumption a) => a.Code + string.Join('|', a.Values);

    private static bool OffWall(BracketActions b, Wall wall) => b.Plate.Holes.Select(h => new Point(b.At.X + h.X, b.At.Y + h.Y))
        .Any(p => p.X < 0 || p.Y < 0 || p.X > wall.WidthMm || p.Y > wall.HeightMm || wall.Openings.Any(o => o.Area.Contains(p)));

    private static PlannedItem Refused(Fixture f, FixtureKind kind) => new(
        new(f.Id, f.What, f.Wall, f.Name, Verdict.NotHere, kind.Refusal!, [new Reason("remedy_trade", Said.Name("trade." + kind.Trade))], 0, kind.Class, [], 1, 0, [], []), [], []);
}
