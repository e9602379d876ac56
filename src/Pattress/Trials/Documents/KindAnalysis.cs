using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>Works one kind out.</summary>
internal static class KindAnalysis
{
    public static KindResult Of(IGrouping<string, TrialTest> group, TrialSettings settings, Expected? expected, bool standsOut)
    {
        TrialTest[] tests = [.. group];
        double[] loads = [.. tests.Select(t => t.CountedN)];
        var summary = Summary.Of(loads);
        var characteristic = CharacteristicOf(loads, settings);
        int stopped = tests.Count(t => !t.Failed);
        return new(group.Key, tests, stopped, summary.Mean, summary.StandardDeviation, summary.Cov, characteristic?.ValueN > 0 ? characteristic : null,
            Likeliest(tests), Suspects(tests, loads, settings), expected, [.. Reasons(tests, stopped, characteristic, standsOut)]);
    }

    private static CharacteristicLoad? CharacteristicOf(double[] loads, TrialSettings settings)
    {
        if (loads.Length < 2) return null;
        double k = ToleranceFactor.ScatterUnknown(loads.Length, 1 - settings.Fractile, settings.Confidence);
        string method = settings.Law == StrengthLaw.Normal ? "noncentral_t_normal" : "noncentral_t_lognormal";
        return new(Characteristic.Value(loads, k, settings.Law), k, method);
    }

    private static Weibull? Likeliest(TrialTest[] tests) =>
        tests.Where(t => t.Failed).Select(t => t.CountedN).Distinct().Count() < 2
            ? null : Weibull.Likeliest([.. tests.Select(t => new Reached(t.CountedN, t.Failed))]);

    private static IReadOnlyList<SuspectTest> Suspects(TrialTest[] tests, double[] loads, TrialSettings settings) =>
        [.. Outliers.Of(settings.Law == StrengthLaw.Normal ? loads : Characteristic.Logarithms(loads))
            .Select(s => new SuspectTest(tests[s.Index], s.Test, s.Statistic, s.Critical))];

    private static IEnumerable<Reason> Reasons(TrialTest[] tests, int stopped, CharacteristicLoad? characteristic, bool standsOut)
    {
        if (tests.Length == 1) yield return new("trial_one_test");
        if (tests.Length == 2) yield return new("trial_two_tests");
        if (characteristic?.ValueN <= 0) yield return new("trial_below_zero");
        if (stopped > 0) yield return new("trial_stopped", Said.Count(stopped));
        if (tests.Any(t => t.HighN is not null)) yield return new("trial_interval_middle");
        if (standsOut) yield return new("trial_stands_out");
    }
}
