using System.Globalization;
using Pattress.Tests.Published;
using Pattress.Trials.Special;
using Pattress.Trials.Standards;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

/// <summary>Published values of the statistics of tests: Published/published_a.csv, one row a value.</summary>
public sealed class PublishedTrialsTests
{
    public static TheoryData<string, string, string, string, string, string> Rows()
    {
        var data = new TheoryData<string, string, string, string, string, string>();
        foreach (var r in CsvTable.Parse(PublishedFile("published_a.csv")).Rows)
            data.Add(r["id"], r["check"], r["arguments"], r["expected"], r["tolerance"], r["series"]);
        return data;
    }

    private static readonly Lazy<Dictionary<string, string>> Sources = new(() => SourcesOf("published_a.csv"));

    // The source of the first row of each id, without the words on which of its values it is.
    internal static Dictionary<string, string> SourcesOf(string file) =>
        CsvTable.Parse(PublishedFile(file)).Rows.GroupBy(r => r["id"]).ToDictionary(g => g.Key, g => g.First()["source"].Split(';')[0]);

    [Theory, MemberData(nameof(Rows))]
    public void Holds(string id, string check, string arguments, string expected, string tolerance, string series)
    {
        double? value = Value(check, [.. arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Number)], series);
        if (expected == "not_covered") { Assert.Null(value); return; }
        Assert.NotNull(value);
        Deviations.Note(Sources.Value[id], id, Number(expected), value.Value);
        double off = Math.Abs(value.Value - Number(expected));
        Assert.True(off <= Number(tolerance), $"{id} {check}: {value:R} instead of {expected}");
    }

    /// <summary>Sections A (107 entries) and B (29) are all used; single numbers left out are listed with their reason.</summary>
    [Fact]
    public void Nothing_is_left_out_silently()
    {
        Assert.Equal(107, Ids("published_a.csv").Count());
        Assert.Equal(29, Ids("published_b.csv").Count());
        Assert.All(CsvTable.Parse(PublishedFile("unused_ab.csv")).Rows, r => Assert.NotEmpty(r["reason"]));
    }

    private static IEnumerable<string> Ids(string file) => CsvTable.Parse(PublishedFile(file)).Rows.Select(r => r["id"]).Distinct();

    private static double? Value(string check, double[] a, string series) => check switch
    {
        _ when check.StartsWith("annexd", StringComparison.Ordinal) => AnnexD(check, a[0]),
        _ when check.StartsWith("strd", StringComparison.Ordinal) => Series(check["strd_".Length..], a, DataFile(series)),
        _ when check.StartsWith("weibull", StringComparison.Ordinal) => OfWeibull(check, series),
        "k_scatter_unknown" => ToleranceFactor.ScatterUnknown((int)a[0], a[1], a[2]),
        "k_scatter_known" => ToleranceFactor.ScatterKnown((int)a[0], a[1], a[2]),
        "k_approximate" => ToleranceFactor.Approximate((int)a[0], a[1], a[2]),
        "noncentral_t_quantile" => NoncentralT.Quantile(a[0], (int)a[1], a[2]),
        "en14358_simplified" => En14358_2016.Simplified((int)a[0]).Value?.Value,
        "dixon_critical" => Outliers.DixonCritical((int)a[0]),
        "grubbs_one_sided" => Outliers.GrubbsCritical((int)a[0], a[1], false),
        "grubbs_two_sided" => Outliers.GrubbsCritical((int)a[0], a[1], true),
        "success_run" => Counts.SuccessRun(a[0], a[1]),
        "clopper_pearson_upper" => Counts.UpperFailureShare((int)a[0], (int)a[1], a[2]),
        _ => Series(check, a, [.. series.Split(' ').Select(Number)]),
    };

    private static double? AnnexD(string check, double n)
    {
        int tests = double.IsInfinity(n) ? En1990_2002_AnnexD.Unlimited : (int)n;
        var scatter = check.Contains("unknown", StringComparison.Ordinal) ? Scatter.Unknown : Scatter.Known;
        var basis = check.EndsWith("table", StringComparison.Ordinal) ? Basis.Table : Basis.Formula;
        var found = check.Contains("design", StringComparison.Ordinal)
            ? En1990_2002_AnnexD.Design(tests, scatter, basis) : En1990_2002_AnnexD.Characteristic(tests, scatter, basis);
        return found.Value?.Value;
    }

    private static double? Series(string check, double[] a, double[] values) => check switch
    {
        "mean" => Summary.Of(values).Mean,
        "sd" => Summary.Of(values).StandardDeviation,
        "autocorrelation" => Summary.Autocorrelation(values),
        "log_mean" => Summary.Of(Characteristic.Logarithms(values)).Mean,
        "log_sd" => Summary.Of(Characteristic.Logarithms(values)).StandardDeviation,
        "characteristic_normal" => Characteristic.Value(values, a[0], StrengthLaw.Normal),
        "characteristic_lognormal" => Characteristic.Value(values, a[0], StrengthLaw.Lognormal),
        "grubbs_statistic" => Assert.Single(Outliers.Of(values), s => s.Test == "grubbs").Statistic,
        "grubbs_suspect" => Assert.Single(Outliers.Of(values), s => s.Test == "grubbs").Index,
        _ => throw new ArgumentException(check),
    };

    private static double OfWeibull(string check, string series)
    {
        Reached[] tests = [.. series.Split(' ').Select(t => new Reached(Number(t.TrimEnd('+')), !t.EndsWith('+')))];
        var fit = check.Contains("rank", StringComparison.Ordinal) ? Weibull.RankRegression(tests) : Weibull.Likeliest(tests);
        return check.EndsWith("shape", StringComparison.Ordinal) ? fit.Shape : fit.Scale;
    }

    private static double[] DataFile(string name) =>
        [.. PublishedFile($"data/{name}.txt").Split('\n').Where(l => l.Length > 0 && l[0] != '#').Select(Number)];

    internal static string PublishedFile(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Published", name));

    private static double Number(string text) =>
        text == "inf" ? double.PositiveInfinity : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
