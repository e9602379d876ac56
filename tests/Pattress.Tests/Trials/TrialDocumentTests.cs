using System.Text;
using System.Text.Json;
using Pattress.Trials.Documents;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

public sealed class TrialDocumentTests
{
    private static TrialAnswer Answer(string csv, TrialSettings? settings = null) =>
        Analysis.Of(Read(csv), settings ?? new()).Value ?? throw new InvalidOperationException("refused");

    private static TrialDocument Read(string csv)
    {
        var read = TrialDocument.Read(csv);
        Assert.Empty(read.Problems);
        return read.Value!;
    }

    /// <summary>Five pull tests in kN, statistics by numpy: m 4.2, s 0.316228; k(5, 90 %) = 3.3998 gives 3.24155 lognormal, 3.12482 normal.</summary>
    [Theory]
    [InlineData(StrengthLaw.Lognormal, 3241.55)]
    [InlineData(StrengthLaw.Normal, 3124.82)]
    public void The_worked_series(StrengthLaw law, double characteristic)
    {
        var kind = Assert.Single(Answer("kind,load_n\na,4.2 kN\na,3800\na,4600 N\na,4.0 kN\na,4400\n", new(0.05, 0.90, law)).Kinds);
        Assert.Equal(5, kind.Tests.Count);
        Assert.Equal(4200, kind.MeanN, 1e-9);
        Assert.Equal(316.228, kind.StandardDeviationN!.Value, 5e-4);
        Assert.Equal(0.316228 / 4.2, kind.Cov!.Value, 5e-7);
        Assert.Equal(characteristic, kind.Characteristic!.ValueN, 0.1); // the reference rounds k to 3.400
    }

    /// <summary>Further columns are kept as they are, quotes and all.</summary>
    [Fact]
    public void Further_columns_are_kept()
    {
        var document = Read("\uFEFFboard,kind,load_n,note\r\n# a comment\r\n12.5,a,100,\"cracked, then \"\"popped\"\"\"\r\n\r\n15,b,0.2 kN,\r\n");
        Assert.Equal(["board", "note"], document.FurtherColumns);
        Assert.Equal(["12.5", "cracked, then \"popped\""], document.Tests[0].Further);
        Assert.Equal((5, 200.0), (document.Tests[1].Line, document.Tests[1].LoadN));
    }

    [Theory]
    [InlineData("", "trial_empty", "line 1")]
    [InlineData("kind,load_n\n", "trial_empty", "line 1")]
    [InlineData("kind,load\na,1\n", "trial_no_column", "line 1, load_n")]
    [InlineData("load_n\n1\n", "trial_no_column", "line 1, kind")]
    [InlineData("kind,load_n,kind\na,1,b\n", "trial_column_twice", "line 1, kind")]
    [InlineData("kind,load_n\na,100\na\n", "trial_ragged", "line 3")]
    [InlineData("kind,load_n\na,100,200\n", "trial_ragged", "line 2")]
    [InlineData("kind,load_n\n,100\n", "trial_no_kind", "line 2, kind")]
    [InlineData("kind,load_n\na,-100\n", "trial_load_range", "line 2, load_n")]
    [InlineData("kind,load_n\na,0\n", "trial_load_range", "line 2, load_n")]
    [InlineData("kind,load_n\na,1e9\n", "trial_load_range", "line 2, load_n")]
    [InlineData("kind,load_n\na,12 kg\n", "quantity_wrong_unit", "line 2, load_n")]
    [InlineData("kind,load_n\na,strong\n", "quantity_not_a_number", "line 2, load_n")]
    [InlineData("kind,load_n\na,NaN\n", "quantity_not_a_number", "line 2, load_n")]
    [InlineData("kind,load_n\na,\n", "quantity_empty", "line 2, load_n")]
    [InlineData("kind,load_n\na,\"100\nb,200\n", "trial_bad_quote", "line 2")]
    [InlineData("kind,load_n,outcome\na,100,broke\n", "trial_outcome", "line 2, outcome")]
    [InlineData("kind,load_n,load_high_n\na,100,90\n", "trial_interval", "line 2, load_high_n")]
    public void Faults_are_named_with_their_line(string csv, string code, string path)
    {
        var read = TrialDocument.Read(csv);
        Assert.Null(read.Value);
        var problem = Assert.Single(read.Problems);
        Assert.Equal((code, path), (problem.Code, problem.Path));
        Assert.NotEmpty(problem.Allowed);
    }

    [Fact]
    public void Every_fault_is_reported_at_once()
    {
        var read = TrialDocument.Read("kind,load_n\na,-1\n,5\nb,x\nc\n");
        Assert.Equal(["line 2, load_n", "line 3, kind", "line 4, load_n", "line 5"], read.Problems.Select(p => p.Path));
    }

    [Theory]
    [InlineData(0, 0.75)]
    [InlineData(0.6, 0.75)]
    [InlineData(0.05, 1)]
    [InlineData(double.NaN, 0.5)]
    public void Settings_outside_their_range_are_refused(double fractile, double confidence) =>
        Assert.Contains(Analysis.Of(Read("kind,load_n\na,1\n"), new(fractile, confidence)).Problems, p => p.Code == "out_of_range");

    [Fact]
    public void One_test_and_ties_get_honest_answers()
    {
        var answer = Answer("kind,load_n\none,300\ntied,200\ntied,200\ntied,200\n");
        Assert.Null(answer.Kinds[0].StandardDeviationN);
        Assert.Null(answer.Kinds[0].Characteristic);
        Assert.Contains(answer.Kinds[0].Reasons, r => r.Code == "trial_one_test");
        Assert.Equal(0, answer.Kinds[1].StandardDeviationN);
        Assert.All(answer.Kinds, k => Assert.InRange(k.Expected!.FractileN, 1, k.MeanN));
    }

    /// <summary>The invented bench: suspensions are counted, the table is in order, the JSON is what was worked out.</summary>
    [Fact]
    public void The_invented_bench()
    {
        var answer = Answer(Embedded.Text("data/trials/bench_invented.csv"));
        Assert.Equal(8, answer.Kinds.Count);
        Assert.Equal(28, answer.Comparisons.Count);
        Assert.Equal(1, answer.Kinds.Single(k => k.Kind == "bearer_plate").Stopped);
        var rows = TrialRow.Of(answer);
        Assert.Equal(rows.OrderByDescending(r => r.PredictiveFractileN), rows);
        using var json = JsonDocument.Parse(TrialJson.Write(answer));
        var kinds = json.RootElement.GetProperty("kinds");
        Assert.Equal(answer.Kinds[0].MeanN, kinds[0].GetProperty("mean_n").GetDouble());
        Assert.Equal(answer.Kinds[0].Expected!.FractileN, kinds[0].GetProperty("predictive").GetProperty("fractile_n").GetDouble());
        Assert.Equal(answer.Kinds[0].Characteristic!.ValueN, kinds[0].GetProperty("characteristic").GetProperty("value_n").GetDouble());
        Assert.Equal("12.5 mm gypsum board", kinds[0].GetProperty("tests")[0].GetProperty("further").GetProperty("board").GetString());
    }

    /// <summary>Every code that the answers and refusals use has its sentence.</summary>
    [Fact]
    public void Every_code_has_a_sentence()
    {
        var known = CsvTable.FromEmbedded("data/text/codes.trials.csv").Rows;
        Assert.All(known, r => Assert.NotEmpty(r["british"]));
        var codes = known.Select(r => r["code"]).ToHashSet();
        var used = Answer(Embedded.Text("data/trials/bench_invented.csv")) is var a ? a.Kinds.SelectMany(k => k.Reasons).Concat(a.Reasons) : [];
        Assert.All(used, r => Assert.Contains(r.Code, codes));
    }

    [Fact]
    public void A_long_file_is_read()
    {
        var csv = new StringBuilder("kind,load_n\n");
        for (int i = 0; i < 1_000_000; i++) csv.Append('k').Append(i % 7).Append(',').Append(300 + i * 37 % 101).Append('\n');
        var answer = Answer(csv.ToString());
        Assert.Equal(1_000_000, answer.Kinds.Sum(k => k.Tests.Count));
        Assert.All(answer.Kinds, k => Assert.InRange(k.Characteristic!.ValueN, 290, 350));
    }
}
