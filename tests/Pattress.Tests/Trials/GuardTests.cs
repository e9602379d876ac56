using Pattress.Trials.Shrinkage;

namespace Pattress.Tests.Trials;

public sealed class GuardTests
{
    private static readonly KindSeries[] Alike =
    [
        new("a", [6.0, 6.1, 5.95]), new("b", [6.05, 5.9]), new("c", [6.1, 6.15, 6.0]), new("d", [5.95, 6.05]), new("e", [6.0, 6.1, 6.05]), new("f", [5.9, 6.0]),
    ];

    [Fact]
    public void Kinds_alike_are_left_alone() => Assert.Empty(ShrinkageGuard.Conflicts(Alike));

    /// <summary>A kind far below the others is named, and they do not lift it.</summary>
    [Fact]
    public void A_kind_that_stands_out_is_named_and_not_lifted()
    {
        KindSeries[] kinds = [.. Alike, new("weak", [4.0, 4.1])];
        Assert.Equal(6, Assert.Single(ShrinkageGuard.Conflicts(kinds)).Kind);
        var fit = ShrunkKinds.Fit(kinds);
        Assert.True(ShrinkageGuard.Guarded(fit, 6, 0.05) <= fit.NextOf(6).Quantile(0.05));
        Assert.True(ShrinkageGuard.Guarded(fit, 6, 0.05) <= ShrunkKinds.Fit([kinds[6]]).NextOf(0).Quantile(0.05) + 1e-12);
    }

    /// <summary>Where one test may be spoilt: against a dense grid over both models by numpy, run with the tests.</summary>
    [Fact]
    public void A_doubted_test_is_weighed_by_its_odds()
    {
        foreach (var v in ScipyReferences.Of("doubted"))
        {
            var (kinds, which) = ShrinkageTests.Read(v.Arguments);
            var fit = ShrunkKinds.Fit(kinds, [new(0, kinds[0].Values.Count - 1)]);
            double ours = (which < 0 ? fit.NextOfNewKind : fit.NextOf(which)).Quantile(0.05);
            Assert.True(Math.Abs(ours - v.Expected) < 1e-6, $"kind {which} of {kinds.Length}: {ours:R}, dense grid {v.Expected:R}");
        }
    }

    /// <summary>One test far off is found whichever way it lies, and does not drag what is said of the other kinds with it.</summary>
    [Theory, InlineData(4.6), InlineData(7.4)]
    public void One_spoilt_test_does_not_speak_for_the_others(double spoilt)
    {
        KindSeries[] with = [new("a", [6.0, 6.1, 5.95, spoilt]), .. Alike[1..]];
        Assert.Equal(new DoubtedTest(0, 3), Assert.Single(OutlierGuard.Doubted(with)));
        Assert.InRange(ShrunkKinds.Fit(with, OutlierGuard.Doubted(with)).SpoiltChances[0], 0.5, 1);
        double clean = ShrunkKinds.Fit(Alike).NextOf(2).Quantile(0.05), plain = ShrunkKinds.Fit(with).NextOf(2).Quantile(0.05);
        double guarded = ShrunkKinds.Fit(with, OutlierGuard.Doubted(with)).NextOf(2).Quantile(0.05);
        Assert.True(Math.Abs(guarded - clean) < 0.3 * Math.Abs(plain - clean), $"{clean} without, {plain} with, {guarded} guarded");
    }

    [Fact]
    public void Tests_that_belong_are_not_doubted() => Assert.Empty(OutlierGuard.Doubted(Alike));

    /// <summary>The kind of a test that stands apart gets the lower value, with the test and with it weighed; a high one never lifts it.</summary>
    [Fact]
    public void A_high_test_does_not_lift_its_kind()
    {
        const string rest = "b,400\nb,410\nb,395\nc,420\nc,405\nc,415\nd,390\nd,400\nd,398\n";
        double Value(string csv) => Pattress.Trials.Documents.Analysis.Of(Pattress.Trials.Documents.TrialDocument.Read("kind,load_n\n" + csv + rest).Value!, new()).Value!.Kinds[0].Expected!.FractileN;
        Assert.True(Value("a,400\na,405\na,395\na,1600\n") <= Value("a,400\na,405\na,395\n"));
    }

    [Fact]
    public void Too_few_kinds_are_not_judged() => Assert.Empty(ShrinkageGuard.Conflicts([.. Alike[..2], new("weak", [4.0])]));
}
