using Pattress.Jobs;
using Pattress.Jobs.Certain;
using Pattress.Trials.Documents;

namespace Pattress.Tests.Trials;

/// <summary>The user's own tests as a series: running results, in and out as CSV, claims typed in.</summary>
public class OwnSeriesTests
{
    private const string Size = "strap_toggle.medium";

    private static Job With(params double[] loads) => new()
    {
        Trials = [.. loads.Select((l, i) => new OwnTest { Id = $"t{i}", Fixing = Size, Load = "tension", LoadN = l, BoardMm = 12.5, Outcome = i == 1 ? "stopped" : "failed", Moisture = "dry", On = "2025-03-14", Note = "a, \"b\"" })],
    };

    /// <summary>By hand: 400, 500, 600 have mean 500 and s = 100.</summary>
    [Fact]
    public void The_running_result()
    {
        var result = Assert.Single(OwnSeries.Running(With(400, 500, 600)));
        Assert.Equal((3, 500, 100, 400), (result.Count, result.MeanN, result.SdN!.Value, result.LowestN));
        Assert.Equal("own_tests_missing", result.Says.Code);
        Assert.Equal(2, result.Says.Values[0].Number);
        Assert.Equal("own_tests_enough", Assert.Single(OwnSeries.Running(With(400, 500, 600, 450, 550))).Says.Code);
    }

    [Fact]
    public void A_test_taken_back_does_not_count()
    {
        var job = With(400, 500, 600);
        Assert.Equal(2, OwnSeries.Running(job with { Trials = [.. job.Trials.Select((t, i) => t with { Withdrawn = i == 0 })] })[0].Count);
    }

    [Fact]
    public void What_goes_out_as_csv_comes_back_the_same()
    {
        var job = With(400.5, 500, 600);
        int id = 0;
        var read = OwnSeries.Read(OwnSeries.Csv(job), () => $"t{id++}");
        Assert.Empty(read.Problems);
        Assert.Equal(job.Trials, read.Value!);
        Assert.True(TrialDocument.Read(OwnSeries.Csv(job)).Ok);
    }

    [Theory]
    [InlineData("kind,load_n\nno_such.size,100\n", "unknown_fixing")]
    [InlineData("kind,load_n\nstrap_toggle.medium,-1\n", "trial_load_range")]
    [InlineData("kind,load_n,test\nstrap_toggle.medium,100,cantilever\n", "own_tests_merit")]
    public void What_is_no_test_of_a_known_size_is_refused(string csv, string code) =>
        Assert.Equal(code, Assert.Single(OwnSeries.Read(csv, () => "x").Problems).Code);

    [Fact]
    public void Claims_typed_in_are_compared_by_the_same_door()
    {
        var compared = ClaimsCompared.Of(new("a", "25 kg", "tension", "recommended", null, "12.5 mm"), new("b", "0.3 kN", "tension", "recommended", null, "12.5 mm")).Value!;
        // The same basis: the ratio of the claims is the ratio of the means.
        Assert.Equal(25 * 9.80665 / 300, compared.Claims[0].MeanN!.Value / compared.Claims[1].MeanN!.Value, 9);
        Assert.True(compared.ChanceStronger < 0.5);
        Assert.Contains(compared.Reasons, r => r.Code == "claims_factor_differs");
        Assert.NotEmpty(ClaimsCompared.Of(new("a", "strong"), new("b", "1 kN")).Problems);
    }
}
