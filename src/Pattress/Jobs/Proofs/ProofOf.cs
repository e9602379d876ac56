using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Planning;
using Pattress.Trials.Installations;
using Pattress.Trials.Proof;

namespace Pattress.Jobs.Proofs;

/// <summary>Turns planned items into what has to be pulled, how hard, how long and with what.</summary>
public static class ProofOf
{
    /// <summary>Factor on the characteristic action (assumed, after BS 8539's gentler rate).</summary>
    public const double Factor = 1.25;

    private static readonly IReadOnlyList<(string Way, double MostN)> Ways =
        [.. CsvTable.FromEmbedded("data/trials/proof_ways.csv").Rows.Where(r => r["way"] != "bucket_on_arm").Select(r => (r["way"], r.Number("most_n")))];

    /// <summary>The proof of every item of a plan, in its order.</summary>
    public static IReadOnlyList<ItemProof> All(PlanAnswer plan, Job job) => [.. plan.Items.Select(i => Item(i, job))];

    /// <summary>The proof of one item.</summary>
    /// <param name="job">Its records of pulls are counted; those taken back are not.</param>
    public static ItemProof Item(ItemAnswer item, Job job)
    {
        ProofRecord[] records = [.. job.Proofs.Where(p => p.Fixture == item.Id && !p.Withdrawn && ProofGate.SpeaksOf(p, item))];
        var brackets = item.Brackets.Where(b => b is { Fixing: not null, Odds: not null }).ToList();
        string scope = brackets.Count == 0 || item.Verdict == Verdict.NotHere ? "nothing" : item.Class == ConsequenceClass.HoldsPerson ? "competent" : "each";
        return new(
            item.Id, item.Name, item.What, item.Wall, item.Verdict, item.Class, scope, brackets.Sum(b => b.Holes.Count),
            scope == "each" ? [.. brackets.SelectMany(Pulls)] : [], scope == "each" ? [.. brackets.Select(Hang).OfType<BracketHang>()] : [],
            scope == "each" ? Samples(brackets) : [], State(brackets, records), [.. Reasons(brackets, scope)]);
    }

    /// <summary>Chance of failure of the weakest bracket once a weight of the proof load has hung on it and held; null where nothing can be hung.</summary>
    public static double? IfProved(IReadOnlyList<BracketAnswer> brackets)
    {
        if (brackets.MaxBy(b => b.ProbabilityOfFailure) is not { } worst || Hang(worst) is not { } hang) return null;
        return After(worst, [new ProofRecord { Id = "", Fixture = "", Bracket = worst.Index, LoadN = hang.WeightN, Result = "held" }]);
    }

    private static IEnumerable<FixingPull> Pulls(BracketAnswer b)
    {
        double cap = Cap(b);
        for (int i = 0; i < b.Forces.Count; i++)
        {
            double action = b.Forces[i].TensionN * b.Odds!.CharacteristicShare;
            if (ProofPlan.InService(b.Forces.Count, action, cap, Factor).Value is { } plan)
                yield return new(b.Index, i, b.Forces[i].At, b.Fixing!, action, plan.LoadN, cap, plan.HoldSeconds, plan.MovementMm,
                    [.. Ways.Select(w => new PullWay(w.Way, w.MostN, w.MostN >= plan.LoadN))]);
        }
    }

    /// <summary>Design pull that the worst fixing could take along its load: its share of the utilisation.</summary>
    private static double Cap(BracketAnswer b) => b.Utilisation > 0 ? b.Forces.Max(f => f.TensionN) / b.Utilisation : 0;

    /// <summary>The weight at the bracket's arm that loads it as the service load does, times the factor.</summary>
    private static BracketHang? Hang(BracketAnswer b)
    {
        var odds = b.Odds!;
        double service = Service(b);
        double cap = b.Utilisation > 0 && odds.CharacteristicShare > 0 ? service / odds.CharacteristicShare / b.Utilisation : 0;
        return ProofPlan.InService(1, service, cap, Factor).Value is { } plan
            ? new(b.Index, b.Plate.ArmMm, plan.LoadN, plan.LoadN / Quantities.Units.Gravity, cap, plan.HoldSeconds, plan.MovementMm)
            : null;
    }

    private static double Service(BracketAnswer b) => Math.Max(b.Odds!.DownN, b.Odds.TurningNmm / Math.Max(1, b.Plate.ArmMm));

    private static IReadOnlyList<ProofSample> Samples(IReadOnlyList<BracketAnswer> brackets)
    {
        if (!brackets.All(InMasonry)) return [];
        int count = brackets.Sum(b => b.Holes.Count);
        double action = brackets.Max(b => b.Forces.Max(f => f.TensionN) * b.Odds!.CharacteristicShare);
        // A sample saves something only where it is fewer than all; of two that are as many the gentler one proves as much; none above what may harm.
        return [.. new[] { (ProofRate.FewHard, "few_hard"), (ProofRate.MoreGentle, "more_gentle") }
            .Select(r => (r.Item2, Plan: ProofPlan.Sample(count, action, r.Item1).Value)).Where(r => r.Plan is { } plan && plan.Count < count && plan.LoadN <= brackets.Min(Cap))
            .Select(r => new ProofSample(r.Item1, r.Plan!.Count, r.Plan.LoadN)).GroupBy(s => s.Count).Select(g => g.MinBy(s => s.LoadN)!)];
    }

    private static HoldsBy? HoldsBy(BracketAnswer b) => FixingCatalogue.FromEmbedded.Find(b.Fixing!)?.Kind.HoldsBy;

    private static bool InMasonry(BracketAnswer b) => HoldsBy(b) is Fixings.HoldsBy.Sleeve or Fixings.HoldsBy.ThreadInPlug;

    private static bool OnBoard(BracketAnswer b) => HoldsBy(b) is Fixings.HoldsBy.Wings or Fixings.HoldsBy.Plug or Fixings.HoldsBy.Friction;

    private static ProofState State(IReadOnlyList<BracketAnswer> brackets, IReadOnlyList<ProofRecord> records)
    {
        int failed = records.Count(r => r.Result != "held");
        var demands = records.Count == 0 ? new Reason("proof_none_yet") : ProofPlan.After(failed, records.Count);
        if (brackets.MaxBy(b => b.ProbabilityOfFailure) is not { } worst) return new(records.Count - failed, failed, demands, null, null);
        return new(records.Count - failed, failed, demands, worst.ProbabilityOfFailure, After(worst, [.. records.Where(r => r.Bracket == worst.Index)]));
    }

    /// <summary>What survived pulls leave of the chance that the worst fixing of a bracket fails: the strengths below the pull are gone.</summary>
    private static double? After(BracketAnswer b, IReadOnlyList<ProofRecord> records)
    {
        var odds = b.Odds!;
        if (records.Count == 0 || records.Any(r => r.Result != "held") || odds.MeanActionN <= 0 || odds.ActionCov <= 0) return null;
        double pulled = records.Min(r => Survived(b, r));
        return pulled > 0
            ? ProofLearning.FailureAfterSurvival(LognormalLaw.FromMean(odds.MeanResistanceN, odds.ResistanceCov), LognormalLaw.FromMean(odds.MeanActionN, odds.ActionCov), pulled)
            : null;
    }

    /// <summary>
    /// A survived pull as a load on the worst fixing: as many times the mean action as it is times the characteristic one, which
    /// errs low. A pull out of the wall says nothing of a fixing that works mainly in shear.
    /// </summary>
    private static double Survived(BracketAnswer b, ProofRecord record)
    {
        var worst = b.Forces.MaxBy(f => f.TensionN + f.ShearN)!;
        if (record.Hole is not null && worst.TensionN < worst.ShearN) return 0;
        double service = record.Hole is not null ? worst.TensionN * b.Odds!.CharacteristicShare : Service(b);
        return service > 0 ? record.LoadN / service * b.Odds!.MeanActionN : 0;
    }

    private static IEnumerable<Reason> Reasons(IReadOnlyList<BracketAnswer> brackets, string scope)
    {
        if (scope == "nothing") { yield return new("proof_nothing_planned"); yield break; }
        if (scope == "competent") yield return new("proof_competent_tester");
        yield return new("proof_factor_assumed");
        if (brackets.SelectMany(Pulls).Any(p => p.LoadN < Factor * p.ActionN * 0.999999)) yield return new("proof_capped");
        yield return new("proof_cap_is_design");
        if (brackets.Any(OnBoard)) yield return new(brackets.Where(OnBoard).All(b => b.Basis == "trial") ? "proof_board_on_trials" : "proof_board_sacrificial", Said.Count(ProofPlan.LeastSacrificial));
        if (brackets.All(InMasonry)) yield return new("proof_borrowed");
        yield return new("proof_no_foot_beside_hole");
        yield return new("proof_hold_assumed");
        yield return new("proof_says_nothing_of_creep");
    }
}
