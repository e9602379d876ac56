using System.Globalization;
using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>The line along which a magnet was drawn.</summary>
internal readonly record struct Sweep(Point From, Point To)
{
    /// <summary>How far beside its line or beyond its ends a hand may stray, mm (assumed).</summary>
    private const double Stray = 100;

    private double Length => Math.Sqrt(((To.X - From.X) * (To.X - From.X)) + ((To.Y - From.Y) * (To.Y - From.Y)));

    public void Check(Entry reading, ProblemList problems)
    {
        if (Length < 1) problems.Add("empty_sweep", reading["to_mm"]!.Path, Text(To), "a sweep from one place to another, at least 1 mm");
        else
        {
            foreach (var hit in reading.ItemsOf("hits_mm"))
            {
                if (!IsNear(hit.Point)) problems.Add("hit_outside_sweep", hit.Path, Text(hit.Point), $"within 100 mm of the sweep from {Text(From)} to {Text(To)}");
            }
        }
    }

    private bool IsNear(Point hit)
    {
        double ux = (To.X - From.X) / Length, uy = (To.Y - From.Y) / Length;
        double dx = hit.X - From.X, dy = hit.Y - From.Y;
        double along = (dx * ux) + (dy * uy), beside = (dx * uy) - (dy * ux);
        return along >= -Stray && along <= Length + Stray && Math.Abs(beside) <= Stray;
    }

    private static string Text(Point p) => string.Create(CultureInfo.InvariantCulture, $"[{p.X:0.##}, {p.Y:0.##}]");
}
