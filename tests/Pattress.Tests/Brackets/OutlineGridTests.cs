using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>
/// Rings with corners on a small grid, where sides touch, run along one another and meet at corners all the time, against fractions of
/// whole numbers: the two sides' own parameters, each from 0 to 1.
/// </summary>
public class OutlineGridTests
{
    private const int Grid = 4, Cases = 4000;

    private static (long X, long Y)[] Ring(Random random, int n) => [.. Enumerable.Range(0, n).Select(_ => ((long)random.Next(Grid + 1), (long)random.Next(Grid + 1)))];

    private static Corner[] Corners((long X, long Y)[] ring) => [.. ring.Select(p => new Corner(p.X, p.Y))];

    private static bool Meet((long X, long Y) a, (long X, long Y) b, (long X, long Y) c, (long X, long Y) d)
    {
        long rx = b.X - a.X, ry = b.Y - a.Y, sx = d.X - c.X, sy = d.Y - c.Y, det = rx * sy - ry * sx, qx = c.X - a.X, qy = c.Y - a.Y;
        if (det != 0)
        {
            // a + r s' = c + s t': both from 0 to 1.
            long t = qx * sy - qy * sx, u = qx * ry - qy * rx;
            if (det < 0) (t, u, det) = (-t, -u, -det);
            return t >= 0 && t <= det && u >= 0 && u <= det;
        }
        // Parallel: an end of one lies on the other.
        return On(a, b, c) || On(a, b, d) || On(c, d, a) || On(c, d, b);
    }

    // |ap| + |pb| = |ab| along one line, in whole numbers: p - a and b - p point the same way.
    private static bool On((long X, long Y) a, (long X, long Y) b, (long X, long Y) p)
    {
        long ux = p.X - a.X, uy = p.Y - a.Y, vx = b.X - p.X, vy = b.Y - p.Y;
        return ux * vy == uy * vx && ux * vx >= 0 && uy * vy >= 0;
    }

    [Fact]
    public void Rings_meet_where_fractions_say_so()
    {
        var random = new Random(6);
        int met = 0;
        for (int n = 0; n < Cases; n++)
        {
            var (a, b) = (Ring(random, 3), Ring(random, 3 + n % 2));
            bool expected = Enumerable.Range(0, a.Length).Any(i => Enumerable.Range(0, b.Length).Any(j => Meet(a[i], a[(i + 1) % a.Length], b[j], b[(j + 1) % b.Length])));
            met += expected ? 1 : 0;
            Assert.Equal(expected, Outline.Cross(Corners(a), Corners(b)));
        }
        Assert.InRange(met, Cases / 10, Cases - Cases / 50);
    }

    [Fact]
    public void A_ring_crosses_itself_where_fractions_say_so()
    {
        var random = new Random(7);
        int crossed = 0;
        for (int n = 0; n < Cases; n++)
        {
            var ring = Ring(random, 4 + n % 3);
            int k = ring.Length;
            (int, int)? expected = null;
            for (int i = 0; i < k && expected is null; i++)
                for (int j = i + 2; j < k && expected is null; j++)
                    if (!(i == 0 && j == k - 1) && Meet(ring[i], ring[(i + 1) % k], ring[j], ring[(j + 1) % k])) expected = (i, j);
            crossed += expected is null ? 0 : 1;
            Assert.Equal(expected, Outline.Crossing(Corners(ring)));
        }
        Assert.InRange(crossed, Cases / 10, Cases - Cases / 10);
    }

    /// <summary>Strictly inside a triangle: left of all three sides, or right of all three; its area by the shoelace.</summary>
    [Fact]
    public void Points_in_triangles()
    {
        var random = new Random(8);
        int inside = 0;
        for (int n = 0; n < Cases; n++)
        {
            var (t, p) = (Ring(random, 3), Ring(random, 1)[0]);
            long[] sides = [.. Enumerable.Range(0, 3).Select(i => (t[(i + 1) % 3].X - t[i].X) * (p.Y - t[i].Y) - (t[(i + 1) % 3].Y - t[i].Y) * (p.X - t[i].X))];
            bool expected = sides.All(s => s > 0) || sides.All(s => s < 0);
            inside += expected ? 1 : 0;
            Assert.Equal(expected, Outline.Holds(Corners(t), p.X, p.Y));
            Assert.Equal(Enumerable.Range(0, 3).Sum(i => t[i].X * t[(i + 1) % 3].Y - t[(i + 1) % 3].X * t[i].Y) / 2.0, Outline.SignedArea(Corners(t)));
        }
        Assert.True(inside > Cases / 50);
    }
}
