using Pattress.Trials.Shrinkage;
using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>Works a document of tests out.</summary>
public static class Analysis
{
    private const int MostCompared = 30, MostIntervals = 4;

    /// <summary>The answer, or what is wrong with the settings.</summary>
    public static Outcome<TrialAnswer> Of(TrialDocument document, TrialSettings settings)
    {
        var problems = settings.Problems().ToList();
        return problems.Count > 0 ? Outcome<TrialAnswer>.Refused(problems) : Outcome<TrialAnswer>.Of(Worked(document, settings));
    }

    private static TrialAnswer Worked(TrialDocument document, TrialSettings settings)
    {
        var groups = document.Tests.GroupBy(t => t.Kind).ToList();
        var effects = new ConditionEffects(document);
        var together = Together(groups, effects);
        var conflicts = together is null ? [] : ShrinkageGuard.Conflicts(together.Kinds);
        var undoubted = together is { Doubted.Count: > 0 } ? ShrunkKinds.Fit(together.Kinds) : null;
        List<KindResult> kinds = [.. groups.Select((g, i) => KindAnalysis.Of(g, settings, ExpectedOf(together, undoubted, i, settings, conflicts), conflicts.Any(c => c.Kind == i)))];
        return new(settings, document.FurtherColumns, kinds, together is null ? null : From(together.NextOfNewKind, settings),
            together is null ? [] : [.. Compared(together)], [.. Reasons(together), .. OfTests(document.Tests), .. OfEffects(effects.All)]) { Notes = document.Notes, Effects = effects.All };
    }

    /// <summary>All kinds on the logarithms of their loads; null where too many tests are known only as an interval.</summary>
    private static ShrunkKinds? Together(IReadOnlyList<IGrouping<string, TrialTest>> groups, ConditionEffects effects) =>
        groups.Sum(g => g.Count(t => t.HighN is not null)) > MostIntervals ? null : Guarded([.. groups.Select(g => Series(g, effects))]);

    private static ShrunkKinds Guarded(IReadOnlyList<KindSeries> kinds) => ShrunkKinds.Fit(kinds, kinds.Sum(k => k.Intervals.Count) == 0 ? OutlierGuard.Doubted(kinds) : []);

    private static KindSeries Series(IGrouping<string, TrialTest> group, ConditionEffects effects) => new(group.Key,
        [.. group.Where(t => t.HighN is null).Select(t => Math.Log(t.LoadN) - effects.Shift(t))],
        [.. group.Where(t => t.HighN is not null).Select(t => new Between(Math.Log(t.LoadN) - effects.Shift(t), Math.Log(t.HighN!.Value) - effects.Shift(t)))]);

    /// <summary>A kind that stands out, or has a test that does, gets the lower of its values: nothing lifts it.</summary>
    private static Expected? ExpectedOf(ShrunkKinds? fit, ShrunkKinds? undoubted, int kind, TrialSettings settings, IReadOnlyList<KindConflict> conflicts)
    {
        if (fit is null) return null;
        var next = From(fit.NextOf(kind), settings);
        double lowest = next.FractileN;
        if (conflicts.Any(c => c.Kind == kind)) lowest = Math.Min(lowest, Math.Exp(ShrinkageGuard.Guarded(fit, kind, settings.Fractile)));
        if (undoubted is not null && fit.Doubted.Any(d => d.Kind == kind)) lowest = Math.Min(lowest, Math.Exp(undoubted.NextOf(kind).Quantile(settings.Fractile)));
        return next with { FractileN = lowest };
    }

    private static Expected From(Predictive p, TrialSettings settings) => new(Math.Exp(p.Quantile(0.5)), Math.Exp(p.Quantile(settings.Fractile)), Math.Exp(p.Quantile(1 - settings.Fractile)));

    private static IEnumerable<KindComparison> Compared(ShrunkKinds fit)
    {
        for (int a = 0; a < fit.Kinds.Count && fit.Kinds.Count <= MostCompared; a++)
            for (int b = a + 1; b < fit.Kinds.Count; b++)
            {
                var difference = fit.Difference(a, b);
                double chance = 1 - difference.Cdf(0);
                yield return new(fit.Kinds[a].Kind, fit.Kinds[b].Kind, chance, Math.Exp(difference.Quantile(0.05)), Math.Exp(difference.Quantile(0.95)), chance is > 0.95 or < 0.05);
            }
    }

    private static IEnumerable<Reason> Reasons(ShrunkKinds? fit)
    {
        if (fit is null) { yield return new("trial_intervals_many", Said.Count(MostIntervals)); yield break; }
        yield return new("trial_prior_assumed");
        if (fit.PriorMatters) yield return new("trial_few_kinds", Said.Count(fit.Kinds.Count));
        yield return new("trial_one_mechanism");
        if (fit.SpoiltChances.Count(c => c > 0.5) is > 0 and var apart) yield return new("trial_test_apart", Said.Count(apart));
    }

    private static IEnumerable<Reason> OfTests(IReadOnlyList<TrialTest> tests)
    {
        if (tests.Any(t => t.In == TestedIn.OrderOfMerit)) yield return new("trial_order_of_merit");
        if (tests.Any(t => t.In == TestedIn.Cantilever)) yield return new("trial_by_bracket_model");
    }

    private static IEnumerable<Reason> OfEffects(IReadOnlyList<ColumnEffect> effects)
    {
        if (effects.FirstOrDefault(e => e.Counts) is { } counts) yield return new("trial_freed_of_condition", Said.Words(counts.Column.Replace('_', ' ')), Said.Words(counts.Effect.Against));
    }
}
