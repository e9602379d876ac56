using Pattress.Actions;

namespace Pattress.Tests.Beams;

public class StaticsTests
{
    [Fact]
    public void Wires_agree_with_the_table()
    {
        foreach (var row in CsvTable.Parse(File.ReadAllText("Published/published_i_wire.csv")).Rows)
        {
            var c = row["case"].Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => BeamText.N(p[1]));
            double value = row["method"] == "wire" ? Statics.WireTension(c["W"], c["angle"])
                : row["quantity"] == "T" ? Statics.WireHook(c["W"], c["apart"], c["sag"]).Size
                : Statics.WireHook(c["W"], c["apart"], c["sag"]).Across;
            PublishedBeamTests.Check(row, value);
        }
    }

    /// <summary>Energy balance of a falling weight, any strength-of-materials text: twice when let go, and 1 + sqrt(1 + 2h/d).</summary>
    [Theory]
    [InlineData(0, 3, 2)]
    [InlineData(12, 3, 4)]
    [InlineData(4, 1, 4)]
    public void A_snatched_weight_counts_more(double drop, double deflection, double expected) =>
        Assert.Equal(expected, Statics.DynamicFactor(drop, deflection), 1e-12);

    /// <summary>Statics: a third from the left hook leaves two thirds there; beyond a hook the other lifts.</summary>
    [Fact]
    public void Two_hooks_share_by_levers()
    {
        Assert.Equal((60.0, 30.0), Statics.TwoHooks(90, 0, 300, 100));
        Assert.Equal((-30.0, 120.0), Statics.TwoHooks(90, 0, 300, 400));
    }

    /// <summary>Statics: D-PIV-1 of the check list, 200 N at 150 mm over 100 mm.</summary>
    [Fact]
    public void Weight_off_the_wall_pulls_at_the_top() => Assert.Equal(300, Statics.PullAtTop(200, 150, 100), 1e-12);

    /// <summary>Statics: a swung arm keeps its moment and turns it.</summary>
    [Fact]
    public void Swung_arm_twists_instead_of_pulling()
    {
        var straight = Statics.Arm(200, 500, 40, 0);
        var aside = Statics.Arm(200, 500, 40, 90);
        Assert.Equal((240, 110_000.0), (straight.Down, straight.Moment));
        Assert.Equal(0, aside.Moment, 1e-9);
        Assert.Equal(110_000, aside.Twist, 1e-9);
        Assert.Equal(110_000, Math.Sqrt(Math.Pow(Statics.Arm(200, 500, 40, 37).Moment, 2) + Math.Pow(Statics.Arm(200, 500, 40, 37).Twist, 2)), 1e-6);
    }

    [Fact]
    public void Impossible_figures_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.DynamicFactor(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.WireTension(10, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Statics.TwoHooks(10, 5, 5, 5));
    }
}
