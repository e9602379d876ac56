using System.Globalization;
using Pattress.Trials.Installations;
using Pattress.Tests.Published;
using Pattress.Trials.Reliability;
using Pattress.Trials.Special;

namespace Pattress.Tests.Trials;

/// <summary>Published values of reliability: Published/published_b.csv, one row a value.</summary>
public sealed class PublishedReliabilityTests
{
    private const int Samples = 100_000;

    public static TheoryData<string, string, string, string, string> Rows()
    {
        var data = new TheoryData<string, string, string, string, string>();
        foreach (var r in CsvTable.Parse(PublishedTrialsTests.PublishedFile("published_b.csv")).Rows)
            data.Add(r["id"], r["check"], r["arguments"], r["expected"], r["tolerance"]);
        return data;
    }

    private static readonly Lazy<Dictionary<string, string>> Sources = new(() => PublishedTrialsTests.SourcesOf("published_b.csv"));

    [Theory, MemberData(nameof(Rows))]
    public void Holds(string id, string check, string arguments, string expected, string tolerance)
    {
        if (check.StartsWith("sampled", StringComparison.Ordinal)) { WithinSampling(id, arguments, Number(expected)); return; }
        double value = char.IsLetter(arguments[0]) ? OfState(check, arguments) : OfNumbers(check, [.. arguments.Split(' ').Select(Number)]);
        Deviations.Note(Sources.Value[id], id, Number(expected), value);
        Assert.True(Math.Abs(value - Number(expected)) <= Number(tolerance), $"{id} {check}: {value:R} instead of {expected}");
    }

    /// <summary>Four standard errors, which must themselves be below 2 % for the check to mean anything.</summary>
    private static void WithinSampling(string id, string names, double expected)
    {
        LimitState[] states = [.. names.Split(' ').Select(PublishedLimitStates.Of)];
        var s = ImportanceSampling.Probability(states, [.. states.SelectMany(Form.DesignPoints)], Samples, 7);
        Assert.True(s.StandardError < 0.02 * expected, $"{id}: standard error {s.StandardError} of {expected}");
        Assert.True(Math.Abs(s.Probability - expected) < 4 * s.StandardError, $"{id}: {s} instead of {expected}");
    }

    private static double OfState(string check, string names)
    {
        string[] name = names.Split(' '), what = check.Split(' ');
        var state = PublishedLimitStates.Of(name[0]);
        var point = Form.Nearest(state)!;
        return what[0] switch
        {
            "beta" => point.Beta,
            "first_order" => point.Probability,
            "alpha" => point.Alpha[int.Parse(what[1], CultureInfo.InvariantCulture)],
            "x" => point.X[int.Parse(what[1], CultureInfo.InvariantCulture)],
            "followed" => Sorm.At(state, point).Followed,
            "two_members" => SeriesSystem.TwoMembers(point, Form.Nearest(PublishedLimitStates.Of(name[1]))!),
            "warning" => ReliabilityOf.LimitState(state).Value!.Warnings.Contains(what[1]) ? 1 : 0,
            "mean_value_beta" => MeanValue(state),
            _ => throw new ArgumentException(check),
        };
    }

    /// <summary>First order about the means: g / |g'| there, which for normal variables is the middle of standard space.</summary>
    private static double MeanValue(LimitState state)
    {
        double[] middle = new double[state.Dimension];
        return state.At(middle) / Vectors.Length(state.Gradient(middle));
    }

    private static double OfNumbers(string check, double[] a) => check switch
    {
        "index_of_probability" => -Normal.Quantile(a[0]),
        "index_repeated" => SeriesSystem.Repeated(a[0], (int)a[1]),
        "normal_upper_tail" => Normal.UpperTail(a[0]),
        "design_normal" => Variable.Normal("R", 1, a[2]).At(-a[0] * a[1]),
        "design_lognormal_small" => Math.Exp(-a[0] * a[1] * a[2]),
        "two_lognormals" => BracketFailure.ReliabilityIndex(a[0], a[1], a[2], a[3]),
        "bivariate" => BivariateNormal.Cdf(a[0], a[1], a[2]),
        _ => throw new ArgumentException(check),
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
