using Pattress.Planning;
using Pattress.Jobs.Proofs;
using Pattress.Trials.Installations;
using Pattress.Trials.Special;

namespace Pattress.Jobs.Certain;

/// <summary>Works out how sure a plan's fixings are, what matters most, and what would help.</summary>
public static class CertaintyOf
{
    /// <summary>An unknown whose knowledge lowers the chance by less than this factor is not worth a test (assumed).</summary>
    private const double WorthTesting = 0.8;

    /// <summary>A chance below this share of the target needs no further test (assumed).</summary>
    private const double Ample = 0.1;

    /// <summary>Every item of a plan, in its order.</summary>
    public static IReadOnlyList<ItemCertainty> All(PlanAnswer plan, Job job) => [.. plan.Items.Select(i => Item(i, plan, job))];

    private static ItemCertainty Item(ItemAnswer item, PlanAnswer plan, Job job)
    {
        var brackets = item.Brackets.Where(b => b.Odds is not null).ToList();
        bool planned = brackets.Count > 0 && brackets.Count == item.Brackets.Count;
        var acting = brackets.Where(b => b.Odds!.MeanActionN > 0).ToList();
        var target = ClassTarget.Of(item.Class);
        var unknowns = planned && acting.Count > 0 ? Unknowns(acting) : [];
        double chance = item.ProbabilityOfFailure;
        return new(item.Id, item.Name, item.What, item.Verdict, item.Class, job.Settings.LifeYears, planned, chance, planned ? Independent(brackets) : 1, BetaOf(chance),
            target.Probability, -Normal.Quantile(target.Probability), target.Source, item.Brackets.Select(b => b.Utilisation).DefaultIfEmpty(0).Max(),
            item.Brackets.Select(b => b.BuildUpProbability).DefaultIfEmpty(0).Min(), unknowns, planned ? ProofOf.IfProved(brackets) : null,
            planned ? [.. Helps(item, plan, brackets, unknowns, chance)] : [], [.. Reasons(item, job, planned)]);
    }

    private static double? BetaOf(double chance) => chance is > 0 and < 1 ? -Normal.Quantile(chance) : null;

    private static double Independent(IReadOnlyList<BracketAnswer> brackets)
    {
        // Chances far below a rounding of one still add up.
        double fails = 0;
        foreach (var b in brackets) fails += b.ProbabilityOfFailure * (1 - fails);
        return fails;
    }

    private static IReadOnlyList<UnknownCounts> Unknowns(IReadOnlyList<BracketAnswer> acting)
    {
        var parts = acting.Select(b => new BracketOnWall(b.Odds!.MeanResistanceN, b.Odds.ResistanceCov, b.Odds.MeanActionN)).ToArray();
        var shared = new SharedCauses(LoadLaw.Lognormal, acting.Max(b => b.Odds!.ActionCov), ItemPlanner.BatchCov);
        return [.. InstallationSensitivity.Of([1.0], parts, shared).Where(i => i.Of is Unknown.Load or Unknown.Batch or Unknown.OwnResistance).Select(Counts)];
    }

    private static UnknownCounts Counts(Influence i) => i.Of switch
    {
        Unknown.Load => new("load", new Reason("unknown_load"), i.IfKnown),
        Unknown.Batch => new("batch", new Reason("unknown_batch"), i.IfKnown),
        _ => new("own_resistance", new Reason("unknown_own_resistance"), i.IfKnown),
    };

    private static IEnumerable<Reason> Helps(ItemAnswer item, PlanAnswer plan, IReadOnlyList<BracketAnswer> brackets, IReadOnlyList<UnknownCounts> unknowns, double chance)
    {
        foreach (var check in plan.Checks.Where(c => c.Items.Contains(item.Id)).Take(1)) yield return new("help_check", Said.Name("check." + check.Kind));
        if (chance < Ample * item.TargetProbability) { yield return new("help_ample"); yield break; }
        foreach (var unknown in unknowns.Where(u => u.IfKnown < WorthTesting * chance))
            yield return unknown.Of switch
            {
                "load" => new("help_load", Said.Percent(chance), Said.Percent(unknown.IfKnown)),
                "batch" => new("help_batch", Said.Percent(chance), Said.Percent(unknown.IfKnown)),
                _ => new(brackets.All(b => b.Basis == "trial") ? "help_more_tests" : "help_tests", Said.Percent(chance), Said.Percent(unknown.IfKnown)),
            };
        if (ProofOf.IfProved(brackets) is { } proved && proved < WorthTesting * brackets.Max(b => b.ProbabilityOfFailure))
            yield return new("help_proof", Said.Percent(brackets.Max(b => b.ProbabilityOfFailure)), Said.Percent(proved));
    }

    private static IEnumerable<Reason> Reasons(ItemAnswer item, Job job, bool planned)
    {
        if (!planned) { yield return new("certainty_nothing_planned"); yield break; }
        yield return new("certainty_gate");
        yield return new("certainty_given_build_up", Said.Percent(item.Brackets.Min(b => b.BuildUpProbability)));
        yield return new("certainty_period", Said.Plain(job.Settings.LifeYears));
        yield return new("certainty_batch_assumed", Said.Percent(ItemPlanner.BatchCov));
        if (item.Brackets.Any(b => b.Basis is "mechanics" or "assumed")) yield return new("certainty_scatter_assumed");
    }
}
