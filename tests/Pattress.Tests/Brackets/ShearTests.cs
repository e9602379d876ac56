using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

public class ShearTests
{
    private readonly ShearForce[] _f = new ShearForce[4];

    /// <summary>Statics: a slot along x carries nothing along x, so the round hole takes all of it.</summary>
    [Fact]
    public void A_slot_carries_nothing_along_itself()
    {
        ShearPoint[] points = [new(0, 0), new(0, 100, 1, 0)];
        Assert.True(ShearGroup.TrySolve(points, 80, 60, 0, _f));
        Assert.Equal(0, _f[1].X, 1e-9);
        Assert.Equal(80, _f[0].X, 1e-9);
        Assert.Equal(60, _f[0].Y + _f[1].Y, 1e-9);
    }

    [Fact]
    public void What_slides_or_turns_freely_is_said()
    {
        Assert.False(ShearGroup.TrySolve([new(0, 0, 1, 0), new(0, 100, 1, 0)], 10, 0, 0, _f));
        Assert.False(ShearGroup.TrySolve([new(20, 0)], 0, 10, 0, _f));
        Assert.True(ShearGroup.TrySolve([new(20, 0)], 0, 10, 200, _f));
        Assert.Equal(10, _f[0].Size, 1e-6);
        Assert.False(ShearGroup.TrySolve([], 1, 0, 0, _f));
        Assert.True(ShearGroup.TrySolve([new(0, 0), new(10, 0)], 0, 0, 0, _f));
    }

    [Fact]
    public void A_stiffer_fixing_draws_the_shear()
    {
        Assert.True(ShearGroup.TrySolve([new(-50, 0, 3), new(50, 0, 1)], 0, -100, 2500, _f));
        Assert.Equal(-75, _f[0].Y, 1e-9);
        Assert.Equal(-25, _f[1].Y, 1e-9);
    }

    /// <summary>Statics: 100 N down midway between two fixings 100 mm apart; the first alone, steadied by the other, gets 50; all of it counts.</summary>
    [Fact]
    public void With_play_one_fixing_may_get_it_all()
    {
        ShearPoint[] points = [new(-50, 0), new(50, 0)];
        Assert.Equal(100, ShearGroup.WithPlay(points, 0, 0, -100, 0), 1e-9);
        Assert.Equal(140, ShearGroup.WithPlay(points, 0, 0, -100, 9000), 1e-9);
    }

    /// <summary>The elastic method is known to be conservative beside the instantaneous centre (AISC Manual Part 7).</summary>
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 4)]
    [InlineData(4, 6)]
    [InlineData(6, 4)]
    public void Elastic_method_is_on_the_safe_side(int n, double inches)
    {
        double e = inches * 25.4;
        var fixings = Enumerable.Range(0, n).Select(i => new Corner(0, (i - (n - 1) / 2.0) * 76.2)).ToArray();
        var forces = new ShearForce[n];
        Assert.True(ShearGroup.TrySolve([.. fixings.Select(f => new ShearPoint(f.X, f.Y))], 0, -1, -e, forces));
        double centre = InstantaneousCentre.Coefficient(fixings, new(e, 0), -90, SlipCurve.Aisc)!.Value;
        Assert.True(SlipCurve.Aisc.Share(SlipCurve.Aisc.LastSlip) / forces.Max(f => f.Size) <= centre * (1 + 1e-9));
    }

    /// <summary>A force through the middle of the group loads all alike, each to its share at the last slip.</summary>
    [Fact]
    public void A_central_force_uses_every_fixing_fully()
    {
        Corner[] fixings = [new(0, 0), new(0, 80), new(60, 0), new(60, 80)];
        double c = InstantaneousCentre.Coefficient(fixings, new(30, 40), 17, SlipCurve.Aisc)!.Value;
        Assert.Equal(4 * Math.Pow(1 - Math.Exp(-3.4), 0.55), c, 1e-6);
        Assert.Null(InstantaneousCentre.Coefficient([], default, 0, SlipCurve.Aisc));
    }
}
