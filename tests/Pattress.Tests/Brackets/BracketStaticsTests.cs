using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>Cases with an answer from statics or one line of algebra.</summary>
public class BracketStaticsTests
{
    private static readonly Plate Square = Plate.Rectangle(-50, 50, -50, 50);
    private readonly double[] _t = new double[8];

    private ContactAnswer Solve(Plate plate, Bed bed, BracketLoad load, params FixingPoint[] fixings) =>
        ContactSolver.Solve(plate, fixings, bed, load, _t);

    /// <summary>Two springs against each other: T = P k_b A / (k + k_b A).</summary>
    [Fact]
    public void Pre_tension_presses_the_plate_on()
    {
        var a = Solve(Square, new Bed(2), new(0, 0, 0), new FixingPoint(0, 0, 1000, 0, 300));
        Assert.Equal(300 * 20_000.0 / 21_000, _t[0], 1e-9);
        Assert.Equal(_t[0], a.Contact, 1e-9);
        Assert.Equal(10_000, a.Area, 1e-6);
    }

    /// <summary>Statics about the pivot: 200 x 100 + T x 20 = 30,000, so T = 500.</summary>
    [Fact]
    public void Yielding_fixing_hands_its_load_on()
    {
        var a = Solve(Plate.Rectangle(-30, 30, -5e-6, 5e-6), new Bed(1e12), new(0, 0, 30_000), new FixingPoint(0, 20, 100), new FixingPoint(0, 100, 100, 0, 0, 200));
        Assert.Equal(ContactStatus.Balanced, a.Status);
        Assert.Equal(200, _t[1], 1e-6);
        Assert.Equal(500, _t[0], 1e-3);
    }

    /// <summary>Plastic limit of a block pressed off its middle: p b (h - 2e).</summary>
    [Theory]
    [InlineData(0.98, ContactStatus.Balanced)]
    [InlineData(1.02, ContactStatus.Overloaded)]
    public void Crushing_board_carries_up_to_its_plastic_limit(double share, ContactStatus expected)
    {
        double limit = 0.5 * 100 * (100 - 2 * 20);
        var a = Solve(Square, new Bed(5, 0.5), new(-share * limit, 0, -share * limit * 20));
        Assert.Equal(expected, a.Status);
        if (expected == ContactStatus.Balanced)
        {
            Assert.Equal(0.5, a.PressureMax, 1e-9);
            Assert.Equal(share * limit, a.Contact, 1e-6);
        }
    }

    /// <summary>
    /// Statics: with the fixing at y = f the board can only push at y up to 50, so T (f - y) = N... has an answer or not.
    /// </summary>
    [Theory]
    [InlineData(0, 50, 0, 5000, ContactStatus.Balanced)]
    [InlineData(0, 50, 100, 5100, ContactStatus.Balanced)]
    [InlineData(0, 50, 100, 4900, ContactStatus.Mechanism)]
    [InlineData(0, 60, 100, 6500, ContactStatus.Balanced)]
    [InlineData(0, 60, 100, 5500, ContactStatus.Mechanism)]
    [InlineData(0, 49, 100, 6500, ContactStatus.Balanced)]
    [InlineData(0, 49, 100, 3000, ContactStatus.Balanced)]
    public void A_fixing_on_the_edge_or_outside_can_be_a_mechanism(double x, double y, double n, double my, ContactStatus expected) =>
        Assert.Equal(expected, Solve(Square, new Bed(2), new(n, 0, my), new FixingPoint(x, y, 1000)).Status);

    [Fact]
    public void Without_fixings_only_pressing_within_the_outline_is_carried()
    {
        Assert.Equal(ContactStatus.Mechanism, Solve(Square, new Bed(2), new(10, 0, 0)).Status);
        Assert.Equal(ContactStatus.Mechanism, Solve(Square, new Bed(2), new(-10, 0, 510)).Status);
        Assert.Equal(ContactStatus.Balanced, Solve(Square, new Bed(2), new(-10, 0, 490)).Status);
        Assert.Equal(ContactStatus.Balanced, Solve(Square, new Bed(2), new(0, 0, 0)).Status);
    }

    [Fact]
    public void All_fixings_yielded_is_overloaded()
    {
        var f = new FixingPoint(0, 0, 1000, 0, 0, 100);
        Assert.Equal(ContactStatus.Overloaded, Solve(Square, new Bed(2), new(150, 0, 0), f).Status);
        Assert.Equal(ContactStatus.Balanced, Solve(Square, new Bed(2), new(99, 0, 0), f).Status);
    }

    /// <summary>A frame is a square less a hole, and also four strips side by side.</summary>
    [Fact]
    public void A_hole_is_the_same_as_the_pieces_round_it()
    {
        var load = new BracketLoad(40, 900, 2500);
        FixingPoint[] fixings = [new(-35, -35, 700), new(38, 36, 900, 0.01), new(-30, 40, 500)];
        static Corner[] R(double l, double r, double b, double t) => [new(l, b), new(r, b), new(r, t), new(l, t)];
        var a = Solve(Plate.Of([R(-50, 50, -50, 50)], [R(-20, 25, -30, 20)]), new Bed(2), load, fixings);
        double[] first = [.. _t];
        var b = Solve(Plate.Of([R(-50, 50, -50, -30), R(-50, 50, 20, 50), R(-50, -20, -30, 20), R(25, 50, -30, 20)], []), new Bed(2), load, fixings);
        foreach (var (p, q) in first.Zip(_t)) Assert.Equal(p, q, 1e-8);
        Assert.Equal(a.Contact, b.Contact, 1e-8);
        Assert.Equal(a.Area, b.Area, 1e-5);
    }

    /// <summary>An angle (six corners, one of them inward) is two rectangles.</summary>
    [Fact]
    public void A_hollow_outline_is_the_same_as_its_convex_parts()
    {
        var load = new BracketLoad(-20, 700, 1800);
        FixingPoint[] fixings = [new(10, 80, 700), new(70, 10, 900)];
        var a = Solve(Plate.Of([new(0, 0), new(100, 0), new(100, 20), new(20, 20), new(20, 100), new(0, 100)]), new Bed(3), load, fixings);
        double[] first = [.. _t];
        var b = Solve(Plate.Of([[new(0, 0), new(100, 0), new(100, 20), new(0, 20)], [new(0, 20), new(20, 20), new(20, 100), new(0, 100)]], []), new Bed(3), load, fixings);
        foreach (var (p, q) in first.Zip(_t)) Assert.Equal(p, q, 1e-8);
        Assert.Equal(a.Contact, b.Contact, 1e-8);
        Assert.Equal(a.PressureMax, b.PressureMax, 1e-9);
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        var b = RandomBracket.Ordinary(1);
        b.Solve();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++) b.Solve();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    /// <summary>A thinner plate pries more; an unknown one counts as thin. The numbers are assumed, their order is not.</summary>
    [Fact]
    public void Prying_never_helps()
    {
        Assert.Equal(Prying.Factor(null), Prying.Factor(1));
        Assert.Equal(1, Prying.Factor(6));
        for (double t = 0.5; t < 6; t += 0.1) Assert.True(Prying.Factor(t) >= Prying.Factor(t + 0.1) && Prying.Factor(t) >= 1);
    }
}
