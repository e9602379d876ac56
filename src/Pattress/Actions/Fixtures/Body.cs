using Pattress.Jobs;

namespace Pattress.Actions.Fixtures;

/// <summary>
/// A stiff thing on several brackets. Forces along the surface are shared by the elastic vector method; what turns it
/// off the surface is resisted about the edge on which it bears (every bracket pulls in proportion to its height above that edge),
/// or, where it bears nowhere, by the brackets in proportion to their distance from the middle. What the brackets'
/// spread cannot resist goes into the plates in equal parts.
/// </summary>
/// <param name="brackets">Middles of the plates, mm.</param>
/// <param name="armMm">How far in front of the surface the thing sits on its brackets.</param>
/// <param name="bearsAtY">Height of the lower edge that bears on the wall, or null.</param>
internal sealed class Body(IReadOnlyList<Point> brackets, double armMm, double? bearsAtY = null) : ICarrier
{
    // Levers of less than a millimetre resist nothing, mm².
    private const double Spread = 1;

    private readonly double _cx = brackets.Average(b => b.X), _cy = brackets.Average(b => b.Y);

    public IReadOnlyList<Wrench> Carry(Push push)
    {
        var shear = Shear(push);
        var pull = Pull(push);
        // Moments about the middle of the brackets, less what the shears at their own arms take up.
        double mx = push.Force.Z * (push.X - _cx) - push.Force.X * (push.Out - armMm);
        double my = push.Force.Z * (push.Y - _cy) - push.Force.Y * (push.Out - armMm);
        double restX = (mx - Sum(pull, b => b.X - _cx)) / brackets.Count;
        double restY = bearsAtY == null ? (my - Sum(pull, b => b.Y - _cy)) / brackets.Count : 0;
        double twist = _polar > Spread ? 0 : Twist(push) / brackets.Count;
        return [.. brackets.Select((_, i) => new Wrench(pull[i], restX - shear[i].X * armMm, restY - shear[i].Y * armMm,
            shear[i].X, shear[i].Y, twist))];
    }

    private readonly double _polar = brackets.Sum(b => Squared(b.X - brackets.Average(o => o.X)) + Squared(b.Y - brackets.Average(o => o.Y)));

    private double Twist(Push p) => (p.X - _cx) * p.Force.Y - (p.Y - _cy) * p.Force.X;

    private Point[] Shear(Push p)
    {
        double turn = _polar > Spread ? Twist(p) / _polar : 0;
        return [.. brackets.Select(b => new Point(p.Force.X / brackets.Count - turn * (b.Y - _cy), p.Force.Y / brackets.Count + turn * (b.X - _cx)))];
    }

    private double[] Pull(Push p)
    {
        double[] pull = bearsAtY is { } edge ? AboutEdge(p, edge) : AboutMiddle(p);
        double sideways = Squares(b => b.X - _cx);
        if (sideways <= Spread) return pull;
        double mx = p.Force.Z * (p.X - _cx) - p.Force.X * (p.Out - armMm) - Sum(pull, b => b.X - _cx);
        return [.. brackets.Select((b, i) => pull[i] + mx * (b.X - _cx) / sideways)];
    }

    private double[] AboutMiddle(Push p)
    {
        double upright = Squares(b => b.Y - _cy);
        double my = p.Force.Z * (p.Y - _cy) - p.Force.Y * (p.Out - armMm);
        return [.. brackets.Select(b => p.Force.Z / brackets.Count + (upright > Spread ? my * (b.Y - _cy) / upright : 0))];
    }

    // Nothing is pulled when the thing is pressed on; and an edge only pushes, so the brackets pull at least what is pulled outwards.
    private double[] AboutEdge(Push p, double edge)
    {
        double my = p.Force.Z * (p.Y - edge) - p.Force.Y * (p.Out - armMm), squares = Squares(b => Above(b, edge));
        double[] pull = [.. brackets.Select(b => my > 0 && squares > 0 ? my * Above(b, edge) / squares : 0)];
        double missing = Math.Max(0, p.Force.Z - pull.Sum()) / brackets.Count;
        return [.. pull.Select(n => n + missing)];
    }

    private static double Above(Point b, double edge) => Math.Max(0, b.Y - edge);

    private double Squares(Func<Point, double> lever) => brackets.Sum(b => Squared(lever(b)));

    private double Sum(double[] pull, Func<Point, double> lever) => brackets.Select((b, i) => pull[i] * lever(b)).Sum();

    private static double Squared(double v) => v * v;
}
