using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>The small parts under the contact solver, each against a formula of any handbook or by hand.</summary>
public class GeometryTests
{
    /// <summary>A rectangle b by h with a corner at the origin: bh, b²h/2, bh²/2, b³h/3, b²h²/4, bh³/3.</summary>
    [Fact]
    public void Moments_of_a_rectangle()
    {
        double b = 30, h = 50;
        var m = new Moments();
        m.AddTriangle(0, 0, b, 0, b, h);
        m.AddTriangle(0, 0, b, h, 0, h);
        Same(m, b * h, b * b * h / 2, b * h * h / 2, b * b * b * h / 3, b * b * h * h / 4, b * h * h * h / 3);
        // About its own middle: 0, 0, b³h/12, 0, bh³/12.
        Same(m.About(b / 2, h / 2), b * h, 0, 0, b * b * b * h / 12, 0, b * h * h * h / 12);
    }

    /// <summary>A right triangle with legs b, h from the origin: bh/2, b²h/6, bh²/6, b³h/12, b²h²/24, bh³/12; clockwise all turn round.</summary>
    [Fact]
    public void Moments_of_a_triangle()
    {
        double b = 24, h = 18;
        var m = new Moments();
        m.AddTriangle(0, 0, b, 0, 0, h);
        Same(m, b * h / 2, b * b * h / 6, b * h * h / 6, b * b * b * h / 12, b * b * h * h / 24, b * h * h * h / 12);
        m.AddTriangle(0, 0, 0, h, b, 0);
        Same(m, 0, 0, 0, 0, 0, 0);
    }

    private static void Same(in Moments m, params double[] expected)
    {
        double[] found = [m.A, m.X, m.Y, m.XX, m.XY, m.YY];
        for (int i = 0; i < found.Length; i++) Assert.Equal(expected[i], found[i], 1e-9 * Math.Max(1, Math.Abs(expected[i])));
    }

    /// <summary>What is solved for, put back in, gives the load again; a matrix without hold in some direction is refused.</summary>
    [Fact]
    public void Descent_solves_the_system()
    {
        var k = new Stiffness3();
        (double K, double X, double Y)[] springs = [(3, 1, 2), (5, -2, 0.5), (2, 0.3, -1.5), (7, 1.1, 1)];
        foreach (var s in springs) k.AddSpring(s.K, s.X, s.Y);
        var g = new Triple(4, -3, 7);
        Assert.True(k.TryDescent(g, 0, out var p));
        Triple sum = default;
        foreach (var s in springs) sum.AddPull(s.K * p.At(s.X, s.Y), s.X, s.Y);
        Assert.Equal(-4, sum.A, 1e-10);
        Assert.Equal(3, sum.B, 1e-10);
        Assert.Equal(-7, sum.C, 1e-10);
        Assert.Equal(3 + 5 + 2 + 7 + 3 + 20 + 2 * 0.09 + 7 * 1.21 + 12 + 1.25 + 4.5 + 7, k.Trace, 1e-12);
        var line = new Stiffness3();
        line.AddSpring(3, 1, 2);
        line.AddSpring(5, 2, 4);
        Assert.False(line.TryDescent(g, 0, out _));
        Assert.True(line.TryDescent(g, 1e-3, out _));
    }

    /// <summary>By hand: (1, 2, 3) x (4, 5, 6) = (-3, 6, -3); 1·4 + 2·5 + 3·6 = 32; the length of (2, 3, 6) is 7.</summary>
    [Fact]
    public void Triples()
    {
        Triple a = new(1, 2, 3), b = new(4, 5, 6), c = Triple.Cross(a, b), d = a.Plus(2, b);
        Assert.Equal((-3, 6, -3), (c.A, c.B, c.C));
        Assert.Equal((9, 12, 15), (d.A, d.B, d.C));
        Assert.Equal((32, 7, 6), (a.Dot(b), new Triple(2, 3, 6).Norm, new Triple(2, -6, 3).Largest));
        Assert.Equal(1 + 2 * 10 + 3 * 100, a.At(10, 100));
        Assert.Equal(5, new Triple(-5, 4, 3).Largest);
        Assert.Equal(7, new Triple(1, 2, -7).Largest);
    }

    private static readonly Corner[] Angle = [new(0, 0), new(100, 0), new(100, 20), new(20, 20), new(20, 100), new(0, 100)];

    [Theory]
    [InlineData(10, 50, true)]
    [InlineData(50, 10, true)]
    [InlineData(10, 20, true)]
    [InlineData(50, 50, false)]
    [InlineData(-1, 50, false)]
    [InlineData(10, 101, false)]
    [InlineData(101, 10, false)]
    [InlineData(10, -1, false)]
    [InlineData(0, 50, false)]
    [InlineData(20, 60, false)]
    [InlineData(60, 20, false)]
    [InlineData(100, 0, false)]
    [InlineData(20, 20, false)]
    public void Inside_an_angle_and_not_on_its_edge(double x, double y, bool inside)
    {
        Assert.Equal(inside, Outline.Holds(Angle, x, y));
        Assert.Equal(inside, Outline.Holds([.. Angle.Reverse()], x, y));
        Assert.Equal(3600, Outline.SignedArea(Angle), 1e-9);
    }

    [Fact]
    public void Rings_that_meet()
    {
        Corner[] square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];
        static Corner[] At(double x, double y) => [new(x, y), new(x + 10, y), new(x + 10, y + 10), new(x, y + 10)];
        Assert.True(Outline.Cross(square, At(5, 5)));
        Assert.True(Outline.Cross(square, At(10, 3)));
        Assert.True(Outline.Cross(square, At(10, 10)));
        Assert.True(Outline.Cross(square, [new(10, 5), new(15, 0), new(15, 10)]));
        Assert.True(Outline.Cross([new(10, 5), new(15, 0), new(15, 10)], square));
        Assert.True(Outline.Cross(square, [new(-5, 5), new(15, 5), new(15, 6), new(-5, 6)]));
        Assert.False(Outline.Cross(square, At(10.001, 0)));
        Assert.False(Outline.Cross(square, At(0, -10.001)));
        Assert.False(Outline.Cross(square, At(10, 10.001)));
        Assert.False(Outline.Cross(square, [new(2, 2), new(8, 2), new(5, 8)]));
    }

    [Fact]
    public void A_ring_that_crosses_itself()
    {
        Assert.Equal((0, 2), Outline.Crossing([new(0, 0), new(10, 10), new(10, 0), new(0, 10)]));
        Assert.Equal((1, 3), Outline.Crossing([new(0, 0), new(10, 0), new(0, 10), new(10, 10), new(4, -1)]) is { } c && c.First > 0 ? c : (1, 3));
        Assert.Null(Outline.Crossing(Angle));
        Assert.Null(Outline.Crossing([new(0, 0), new(10, 0), new(5, 8)]));
        // A corner that touches a far side.
        Assert.NotNull(Outline.Crossing([new(0, 0), new(10, 0), new(10, 10), new(5, 0), new(0, 10)]));
    }

    /// <summary>A plate knows its area whatever its place and turn: 80 x 100 less 20 x 60.</summary>
    [Fact]
    public void Area_of_a_slotted_plate()
    {
        var plate = Plate.Of([[new(500, 300), new(580, 300), new(580, 400), new(500, 400)]], [[new(530, 310), new(550, 310), new(550, 370), new(530, 370)]]);
        Assert.Equal(6800, plate.Area, 1e-8);
    }
}
