using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>Shear by statics: slots at an angle, play, turned groups.</summary>
public class ShearMoreTests
{
    /// <summary>Whatever the slots, the forces balance the load: two sums and the moment about the origin.</summary>
    [Fact]
    public void Forces_of_any_group_balance()
    {
        var random = new Random(3);
        var f = new ShearForce[5];
        for (int n = 0; n < 300; n++)
        {
            ShearPoint[] points = [.. Enumerable.Range(0, 3 + random.Next(3)).Select(i => new ShearPoint(200 * random.NextDouble() - 50, 200 * random.NextDouble() + 30, 0.2 + 3 * random.NextDouble(), i % 2 == 0 ? null : 180 * random.NextDouble()))];
            double vx = random.NextDouble() - 0.5, vy = random.NextDouble() - 0.5, t = 60 * random.NextDouble() - 30;
            Assert.True(ShearGroup.TrySolve(points, vx, vy, t, f));
            var used = f.Take(points.Length).Select((g, i) => (F: g, P: points[i])).ToList();
            Assert.Equal(vx, used.Sum(u => u.F.X), 1e-9);
            Assert.Equal(vy, used.Sum(u => u.F.Y), 1e-9);
            Assert.Equal(t, used.Sum(u => u.P.X * u.F.Y - u.P.Y * u.F.X), 1e-7);
            // A slot carries nothing along itself.
            foreach (var (g, p) in used.Where(u => u.P.Slot != null))
                Assert.Equal(0, g.X * Math.Cos(p.Slot!.Value * Math.PI / 180) + g.Y * Math.Sin(p.Slot.Value * Math.PI / 180), 1e-9);
        }
    }

    /// <summary>Turning group, slots and load together turns the forces.</summary>
    [Fact]
    public void A_turned_group_gives_turned_forces()
    {
        ShearPoint[] points = [new(0, 0, 2), new(90, 10, 1, 35), new(20, 70, 1.5)];
        var (before, after) = (new ShearForce[3], new ShearForce[3]);
        Assert.True(ShearGroup.TrySolve(points, 40, -70, 900, before));
        double a = 0.7, c = Math.Cos(a), s = Math.Sin(a);
        ShearPoint[] turned = [.. points.Select(p => p with { X = c * p.X - s * p.Y, Y = s * p.X + c * p.Y, Slot = p.Slot + a * 180 / Math.PI })];
        Assert.True(ShearGroup.TrySolve(turned, c * 40 + s * 70, s * 40 - c * 70, 900, after));
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(c * before[i].X - s * before[i].Y, after[i].X, 1e-9);
            Assert.Equal(s * before[i].X + c * before[i].Y, after[i].Y, 1e-9);
        }
    }

    /// <summary>
    /// Statics: fixings at (0, 0) and (40, 30), 50 apart; 100 N along x through the origin and a twist of 1000: the first bears all of it
    /// and half of the couple 1000/50 = 20 across the line of both: (100 + 12, -16) is 113.14; the second's own share is 20.
    /// </summary>
    [Fact]
    public void With_play_the_couple_is_added_across_the_line()
    {
        ShearPoint[] points = [new(0, 0), new(40, 30)];
        Assert.Equal(Math.Sqrt(112 * 112 + 16 * 16), ShearGroup.WithPlay(points, 0, 100, 0, 1000), 1e-9);
        // With the twist alone each gets the couple.
        Assert.Equal(20, ShearGroup.WithPlay(points, 0, 0, 0, 1000), 1e-9);
        Assert.Equal(20, ShearGroup.WithPlay(points, 1, 0, 0, -1000), 1e-9);
        Assert.Equal(5, ShearGroup.WithPlay([new(0, 0), new(0, 0)], 0, 3, 4, 0), 1e-12);
    }

    /// <summary>The instantaneous centre does not care how group and load are turned or moved together.</summary>
    [Theory]
    [InlineData(0.4, 0, 0)]
    [InlineData(1.9, 300, -120)]
    [InlineData(-2.5, -40, 900)]
    public void Instantaneous_centre_turned_and_moved(double a, double x, double y)
    {
        Corner[] fixings = [new(0, 0), new(0, 76.2), new(60, 10), new(55, 90)];
        var at = new Corner(160, 30);
        double before = InstantaneousCentre.Coefficient(fixings, at, -90, SlipCurve.Aisc)!.Value, c = Math.Cos(a), s = Math.Sin(a);
        Corner Turned(Corner p) => new(x + c * p.X - s * p.Y, y + s * p.X + c * p.Y);
        double after = InstantaneousCentre.Coefficient([.. fixings.Select(Turned)], Turned(at), -90 + a * 180 / Math.PI, SlipCurve.Aisc)!.Value;
        Assert.Equal(before, after, 1e-8);
        Assert.InRange(before, 0.5, 4);
    }

    /// <summary>With more ranges than corners can be looked at, the answer says so, and no sampled stiffness goes past it.</summary>
    [Fact]
    public void Many_ranges_are_searched_and_said_to_be()
    {
        var random = new Random(8);
        var ranges = Enumerable.Range(0, 12).Select(i => new FixingRange(new(-70 + 28 * (i % 6), i < 6 ? -30 : 30, 800), 400, 1600)).ToList();
        var bed = new BedRange(1, 4);
        var load = new BracketLoad(200, 4000, 9000);
        var plate = Plate.Rectangle(-90, 90, -50, 50);
        var worst = StiffnessRange.Worst(plate, ranges, bed, load)!;
        Assert.False(worst.Exhaustive);
        Assert.True(StiffnessRange.Worst(plate, ranges.Take(10).ToList(), bed, load)!.Exhaustive);
        var tensions = new double[12];
        for (int n = 0; n < 400; n++)
        {
            FixingPoint[] points = [.. ranges.Select(r => r.Fixing with { Stiffness = random.Next(3) switch { 0 => 400, 1 => 1600, _ => 400 * Math.Pow(4, random.NextDouble()) } })];
            var a = ContactSolver.Solve(plate, points, new Bed(1 * Math.Pow(4, random.NextDouble())), load, tensions);
            Assert.True(a.PressureMax <= worst.PressureMax * (1 + 1e-6));
            for (int i = 0; i < 12; i++) Assert.True(tensions[i] <= worst.Tension[i] * (1 + 1e-6) + 1e-9);
        }
    }

    [Theory]
    [InlineData("""{"outline_mm":[[0,0],[100,0],[100,100],[0,100]],"holes_mm":[[[10,10],[40,10],[40,40],[10,40]],[[30,30],[60,30],[60,60],[30,60]]],"fixings":[{"x_mm":80,"y_mm":80}],"bed_n_per_mm3":2,"load":{"n_n":10}}""", "holes_overlap")]
    [InlineData("""{"outline_mm":[[0,0],[100,0],[100,100],[0,100]],"holes_mm":[[[90,10],[140,10],[140,40],[90,40]]],"fixings":[{"x_mm":80,"y_mm":80}],"bed_n_per_mm3":2,"load":{"n_n":10}}""", "hole_outside_outline")]
    public void Holes_in_the_wrong_place_are_refused(string json, string code) => Assert.Contains(BracketDocument.Answer(json).Problems, p => p.Code == code);
}
