using System.Globalization;

namespace Pattress.Bench;

/// <summary>One result of the simulator, a line of its files.</summary>
/// <param name="Ok">The first hole met the support; of other questions: what was stated was so.</param>
/// <param name="Usable">The first hole was clear of the support's edge; of other questions: the choice was right.</param>
/// <param name="Predicted">Chance stated before; NaN where none was.</param>
internal sealed record SimulatorRow(string Scenario, string Fitter, int Wall, bool Ok, bool Usable, int Holes, int Taps, int Sweeps, double Predicted, double Minutes, double Filler)
{
    /// <summary>Minutes of each thing done (assumed): tap, sweep, hole; filling of a hole that missed.</summary>
    private const double TapMin = 0.05, SweepMin = 0.5, HoleMin = 1.5, FillMin = 6;

    public static SimulatorRow Of(string scenario, string fitter, int wall, ZoneResult r) => new(scenario, fitter, wall, r.FirstHit, r.FirstUsable, r.Holes, r.Taps, r.Sweeps, r.Predicted,
        (r.Taps * TapMin) + (r.Sweeps * SweepMin) + (r.Holes * HoleMin) + ((r.Holes - 1) * FillMin), (r.Holes - 1) * FillMin);

    /// <summary>A chance that was stated, and whether it came so.</summary>
    public static SimulatorRow Stated(string scenario, string what, int wall, double predicted, bool found) => new(scenario, what, wall, found, found, 0, 0, 0, predicted, 0, 0);

    public string Line => string.Create(CultureInfo.InvariantCulture,
        $"{Scenario},{Fitter},{Wall},{(Ok ? 1 : 0)},{(Usable ? 1 : 0)},{Holes},{Taps},{Sweeps},{Predicted:0.#####},{Minutes:0.##},{Filler:0.##}");

    public static SimulatorRow Parse(string line)
    {
        string[] all = line.Split(','), p = [all[0], string.Join(',', all[1..^9]), .. all[^9..]];
        double N(int i) => double.Parse(p[i], CultureInfo.InvariantCulture);
        return new(p[0], p[1], (int)N(2), p[3] == "1", p[4] == "1", (int)N(5), (int)N(6), (int)N(7), N(8), N(9), N(10));
    }
}
