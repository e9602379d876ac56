using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>
/// Half of the walls are on dabs, half on studs; which is it, from a line of taps, then from one thin hole as well? Dabs stand
/// on a grid of 300 to 600 mm, 30 mm off it, 60 to 140 mm wide, which the model takes to be 100. All numbers assumed.
/// </summary>
internal static class DabHouse
{
    public static IEnumerable<SimulatorRow> One(int i, int seed, LineReader reader)
    {
        var random = new Random(seed + 300000 + i);
        var stud = new SimulatorWall(random, WallTrouble.Plain);
        bool dabs = random.NextDouble() < 0.5;
        if (stud.Window() is not { } zone) yield break;
        List<(double At, double Half)> grid = Grid(stud.Length, random);
        List<LineReading> seen = [];
        for (double x = zone.FromMm; x <= zone.ToMm; x += SimulatorFitters.TapStep) seen.Add(new Tap($"t{x}", x, dabs ? OnDabs(grid, x, random) : OnStuds(stud, x, random)));
        double solid = seen.Count(r => r is Tap { Sound: TapSound.Solid }), high = seen.Count(r => r is Tap { Sound: TapSound.High });
        yield return Row("by ear", i, high > (seen.Count - solid) / 2, dabs, double.NaN);
        var priors = LinePriors.Default with { DabShare = 0.5 };
        var belief = reader.Read(new(stud.Length, seen, [zone]), LineRates.Default, priors);
        yield return Row("posterior, taps", i, belief.DabProbability > 0.5, dabs, belief.DabProbability);
        double at = (zone.FromMm + zone.ToMm) / 2;
        seen.Add(new ThinHole("h", at, dabs ? Hole(grid, at, random) : stud.Probe(at) ? HoleMet.Support : HoleMet.Void));
        belief = reader.Read(new(stud.Length, seen, [zone]), LineRates.Default, priors);
        yield return Row("posterior, taps and a hole", i, belief.DabProbability > 0.5, dabs, belief.DabProbability);
    }

    /// <summary>Ok: it is on dabs; Usable: the word was right.</summary>
    private static SimulatorRow Row(string fitter, int i, bool says, bool dabs, double predicted) => new("dabs", fitter, i, dabs, says == dabs, 0, 17, 0, predicted, 0, 0);

    private static List<(double, double)> Grid(double length, Random random)
    {
        double pitch = new[] { 300.0, 400, 450, 600 }[random.Next(4)];
        List<(double, double)> grid = [];
        for (double x = pitch * random.NextDouble(); x < length; x += pitch) grid.Add((x + (60 * (random.NextDouble() + random.NextDouble() - 1)), 30 + (40 * random.NextDouble())));
        return grid;
    }

    private static TapSound OnDabs(List<(double At, double Half)> grid, double x, Random random)
    {
        bool on = grid.Any(d => Math.Abs(d.At - x) <= d.Half);
        double r = random.NextDouble();
        return on ? (r < 0.8 ? TapSound.Solid : TapSound.High) : r < 0.08 ? TapSound.Solid : r < 0.77 ? TapSound.High : TapSound.Hollow;
    }

    private static TapSound OnStuds(SimulatorWall wall, double x, Random random) => wall.Tap(x) ? TapSound.Solid : random.NextDouble() < 0.08 ? TapSound.High : TapSound.Hollow;

    private static HoleMet Hole(List<(double At, double Half)> grid, double at, Random random)
    {
        bool on = grid.Any(d => Math.Abs(d.At - at) <= d.Half);
        double r = random.NextDouble();
        return on ? (r < 0.85 ? HoleMet.Dab : HoleMet.Masonry) : r < 0.7 ? HoleMet.Masonry : r < 0.9 ? HoleMet.Void : HoleMet.Dab;
    }
}
