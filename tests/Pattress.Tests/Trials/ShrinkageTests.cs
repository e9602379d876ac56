using Pattress.Trials.Shrinkage;

namespace Pattress.Tests.Trials;

public sealed class ShrinkageTests
{
    private static readonly KindSeries[] Worked =
    [
        new("a", [1.1, 1.25, 1.18]), new("b", [0.92, 1.05]), new("c", [1.31, 1.22, 1.4, 1.28]), new("d", [0.75]), new("e", [1.02, 1.15, 1.08]),
    ];

    /// <summary>Published/shrinkage.csv; 2e-7 for the reference's own grid.</summary>
    [Fact]
    public void The_worked_case()
    {
        var fit = ShrunkKinds.Fit(Worked);
        foreach (var r in CsvTable.Parse(PublishedTrialsTests.PublishedFile("shrinkage.csv")).Rows)
        {
            bool isNew = r["kind"] == "new";
            int kind = isNew ? -1 : (int)r.Number("kind");
            double value = r["what"] switch
            {
                "own_mean" => Worked[kind].Values.Average(),
                "mean" => (isNew ? fit.CommonMean : fit.MeanOf(kind)).Mean,
                _ => (isNew ? fit.NextOfNewKind : fit.NextOf(kind)).Quantile(0.05),
            };
            Assert.True(Math.Abs(value - r.Number("expected")) < 2e-7, $"{r["kind"]} {r["what"]}: {value:R} instead of {r["expected"]}");
        }
    }

    /// <summary>Random benches against a dense grid by numpy, run with the tests.</summary>
    [Fact]
    public void Agrees_with_a_dense_grid()
    {
        foreach (var v in ScipyReferences.Of("shrinkage"))
        {
            var (kinds, which) = Read(v.Arguments);
            var fit = ShrunkKinds.Fit(kinds);
            double ours = (which < 0 ? fit.NextOfNewKind : fit.NextOf(which)).Quantile(0.05);
            Assert.True(Math.Abs(ours - v.Expected) < 1e-6, $"kind {which} of {kinds.Length}: {ours:R}, dense grid {v.Expected:R}");
        }
    }

    internal static (KindSeries[] Kinds, int Which) Read(double[] a)
    {
        var kinds = new List<KindSeries>();
        for (int at = 1; at < a.Length; at += 1 + (int)a[at])
            kinds.Add(new($"kind {kinds.Count}", a[(at + 1)..(at + 1 + (int)a[at])]));
        return ([.. kinds], (int)a[0]);
    }

    /// <summary>A kind's mean lies between its own and the common mean, and the fewer its tests the closer to the common one.</summary>
    [Fact]
    public void Few_tests_borrow_more()
    {
        var fit = ShrunkKinds.Fit([.. Worked, new("f", [0.75, 0.75, 0.75, 0.75])]);
        double common = fit.CommonMean.Mean, one = fit.MeanOf(3).Mean, four = fit.MeanOf(5).Mean;
        Assert.True(0.75 < four && four < one && one < common, $"{four} {one} {common}");
    }

    [Fact]
    public void Differences_are_antisymmetric_and_compare_kinds()
    {
        var fit = ShrunkKinds.Fit(Worked);
        Assert.Equal(fit.Difference(0, 3).Mean, -fit.Difference(3, 0).Mean, 1e-12);
        Assert.Equal(fit.MeanOf(0).Mean - fit.MeanOf(3).Mean, fit.Difference(0, 3).Mean, 1e-10);
        Assert.Equal(1, fit.Difference(2, 1).Cdf(0) + fit.Difference(1, 2).Cdf(0), 1e-12);
    }

    /// <summary>
    /// A test known to lie in a very narrow interval counts as that value; one in a wide interval is less certain.
    /// </summary>
    [Fact]
    public void Intervals_count_as_intervals()
    {
        double exact = ShrunkKinds.Fit(Worked).NextOf(3).Quantile(0.05);
        KindSeries[] narrow = [.. Worked[..3], new("d", [], new Between(0.75 - 1e-6, 0.75 + 1e-6)), Worked[4]];
        KindSeries[] wide = [.. Worked[..3], new("d", [], new Between(0.55, 0.95)), Worked[4]];
        Assert.Equal(exact, ShrunkKinds.Fit(narrow).NextOf(3).Quantile(0.05), 1e-6);
        Assert.True(ShrunkKinds.Fit(wide).MeanOf(3).StandardDeviation > ShrunkKinds.Fit(narrow).MeanOf(3).StandardDeviation);
    }

    [Fact]
    public void Refuses_what_it_cannot_use()
    {
        Assert.Throws<ArgumentException>(() => ShrunkKinds.Fit([]));
        Assert.Throws<ArgumentException>(() => ShrunkKinds.Fit([new("a", [])]));
        Assert.Throws<ArgumentException>(() => ShrunkKinds.Fit([new("a", [double.NaN])]));
        Assert.Throws<ArgumentException>(() => ShrunkKinds.Fit([new("a", [], new Between(2, 1))]));
    }

    /// <summary>Ties, one single test, and a large series: an answer, never NaN.</summary>
    [Fact]
    public void Odd_benches_have_an_answer()
    {
        KindSeries[][] benches =
        [
            [new("a", [1.0])], [new("a", [1.0, 1.0, 1.0]), new("b", [1.0, 1.0])],
            [new("a", [.. Enumerable.Range(0, 20_000).Select(i => Math.Sin(i))]), new("b", [0.5])],
            [.. Enumerable.Range(0, 300).Select(i => new KindSeries($"{i}", [Math.Cos(i)]))],
        ];
        foreach (var bench in benches)
        {
            double q = ShrunkKinds.Fit(bench).NextOf(0).Quantile(0.05);
            Assert.True(double.IsFinite(q) && q < 1.5, $"{q}");
        }
    }
}
