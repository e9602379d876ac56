using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>
/// A ceiling whose joists run either way, a support wanted in a window of 640 mm both ways. Taps along x; where they tell
/// little, along y too; at most two sweeps. Joists 400, 450 or 600 mm apart, 8 mm off, a tenth of ceilings without a pitch.
/// </summary>
internal static class CeilingHouse
{
    private const double Half = 22, Window = 640;

    private sealed record Ceiling(double X, double Y, bool AlongY, List<double> Joists, double FromX, double FromY, Random Random)
    {
        /// <summary>Joists are spaced along x (they run along y), or along y.</summary>
        public double Off(double x, double y) => Joists.Min(j => Math.Abs(j - (AlongY ? x : y))) - Half;

        public bool Tap(double x, double y) => Random.NextDouble() < 0.08 + (0.80 / (1 + Math.Exp((Off(x, y) - 6) / 7)));

        public bool Hits(double x, double y) => Off(x, y) <= 0;
    }

    public static IEnumerable<SimulatorRow> One(int i, int seed)
    {
        var c = Make(new Random(seed + 400000 + i));
        double midX = c.FromX + (Window / 2), midY = c.FromY + (Window / 2);
        List<(double X, double Y, bool Solid)> taps = [];
        for (double d = 0; d <= Window; d += 40) taps.Add((c.FromX + d, midY, c.Tap(c.FromX + d, midY)));
        int solid = taps.Count(t => t.Solid);
        bool turn = solid < 2 || solid > 8;
        List<(double X, double Y, bool Solid)> more = [.. taps];
        for (double d = 0; d <= Window; d += 40) more.Add((midX, c.FromY + d, c.Tap(midX, c.FromY + d)));
        yield return Row("tap, middle", i, c, ByHand(turn ? more : taps, turn, midX, midY), turn ? 34 : 17, double.NaN);
        var (at, stated, probability) = Best(c, taps);
        bool both = stated < 0.8;
        if (both) (at, stated, probability) = Best(c, more);
        yield return Row("posterior", i, c, at, both ? 34 : 17, stated);
        yield return SimulatorRow.Stated("ceiling", "joists along x", i, probability, !c.AlongY);
    }

    private static SimulatorRow Row(string fitter, int i, Ceiling c, (double X, double Y) at, int taps, double stated) =>
        new("ceiling", fitter, i, c.Hits(at.X, at.Y), c.Off(at.X, at.Y) <= -10, 1, taps, 0, stated, taps * 0.05, 0);

    private static Ceiling Make(Random r)
    {
        double x = 2500 + (2500 * r.NextDouble()), y = 2500 + (2500 * r.NextDouble());
        bool alongY = r.NextDouble() < 0.5, regular = r.NextDouble() < 0.9;
        double pitch = r.NextDouble() switch { < 0.5 => 600, < 0.85 => 400, _ => 450 };
        List<double> joists = [];
        for (double at = pitch * r.NextDouble(); at < (alongY ? x : y); at += regular ? pitch : 250 + (400 * r.NextDouble())) joists.Add(at + (16 * (r.NextDouble() + r.NextDouble() - 1)));
        return new(x, y, alongY, joists, 100 + ((x - Window - 200) * r.NextDouble()), 100 + ((y - Window - 200) * r.NextDouble()), r);
    }

    /// <summary>The middle of the longest run of solid taps, along y where x told nothing.</summary>
    private static (double X, double Y) ByHand(List<(double X, double Y, bool Solid)> taps, bool turned, double midX, double midY)
    {
        List<double> line = [.. taps.Skip(turned ? 17 : 0).Where(t => t.Solid).Select(t => turned ? t.Y : t.X).Order()];
        if (line.Count == 0) return (midX, midY);
        List<(double From, double To)> runs = [];
        foreach (double d in line)
            if (runs.Count > 0 && d - runs[^1].To <= 41) runs[^1] = (runs[^1].From, d);
            else runs.Add((d, d));
        var (from, to) = runs.MaxBy(r => r.To - r.From);
        return turned ? (midX, (from + to) / 2) : ((from + to) / 2, midY);
    }

    /// <summary>The likeliest place of both lines, with its chance, and the chance that the joists run along x.</summary>
    private static ((double X, double Y) At, double Stated, double AlongX) Best(Ceiling c, List<(double X, double Y, bool Solid)> taps)
    {
        double midX = c.FromX + (Window / 2), midY = c.FromY + (Window / 2);
        List<LineReading> x = [.. taps.Select((t, k) => new Tap($"t{k}", t.X, t.Solid ? TapSound.Solid : TapSound.Hollow, t.Y))];
        List<LineReading> y = [.. taps.Select((t, k) => new Tap($"t{k}", t.Y, t.Solid ? TapSound.Solid : TapSound.Hollow, t.X))];
        var priors = LinePriors.Default with { TimberWidthMm = 2 * Half };
        var belief = SupportModel.Infer(new(c.X, x, [new(c.FromX, c.FromX + Window)]) { IsCeiling = true, OtherWay = new(c.Y, y, [new(c.FromY, c.FromY + Window)]) { IsCeiling = true } }, null, priors);
        var (a, b) = (belief.Zones[0], belief.OtherWay!.Zones[0]);
        double turned = b.Probability * belief.ParallelProbability;
        return turned > a.Probability ? ((midX, b.BestMm), turned, belief.ParallelProbability) : ((a.BestMm, midY), a.Probability, belief.ParallelProbability);
    }
}
