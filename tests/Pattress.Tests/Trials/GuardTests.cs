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

    [Fact]
    public void Too_few_kinds_are_not_judged() => Assert.Empty(ShrinkageGuard.Conflicts([.. Alike[..2], new("weak", [4.0])]));
}
