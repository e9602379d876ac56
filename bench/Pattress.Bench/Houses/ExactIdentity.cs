using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>
/// The posterior over build-ups under the law by which <see cref="ReadWall"/> makes its readings, front and void summed over a
/// grid: what the readings can tell at most. Of the library it takes the tables and the normal distribution.
/// </summary>
internal static class ExactIdentity
{
    private const int Grid = 25;

    /// <summary>Midpoints of equal shares of a standard normal.</summary>
    private static readonly double[] Steps = [.. Enumerable.Range(0, Grid).Select(i => Quantile((i + 0.5) / Grid))];

    private static readonly string[] MetWords = ["support", "void", "dab", "masonry", "foam", "metal", "laths"], SwarfWords = ["white", "wood", "red", "grey", "grey_white", "foam", "bright", "black"];

    public static double[] Posterior(IReadOnlyList<BuildUp> rows, IReadOnlyList<WallReading> readings)
    {
        double[] joint = [.. rows.Select(b => b.Prior * Words(b, readings) * Depths(b, readings))];
        double sum = joint.Sum();
        return [.. joint.Select(j => j / sum)];
    }

    private static double Words(BuildUp b, IReadOnlyList<WallReading> readings)
    {
        var r = WallRates.Default;
        double Heard(double strength) => readings.OfType<TapHeard>().Aggregate(1.0, (p, t) => p * ((0.9 * Word("tap", t.Sound, b.Family, strength)) + (0.1 / Likelihoods.Findings("tap").Count)));
        double all = (r.TellWell * Heard(1)) + ((1 - r.TellWell - r.TellPoor) * Heard(r.TellMiddlingStrength)) + (r.TellPoor * Heard(r.TellPoorStrength));
        foreach (var w in readings.OfType<WordReading>()) all *= Word(w.Kind, w.Finding, b.Family, 1);
        double mean = ReadWall.PerMetre(b);
        foreach (var m in readings.OfType<MagnetDrawn>()) all *= Math.Exp(-mean) * Math.Pow(mean, m.Hits) / Enumerable.Range(1, m.Hits).Aggregate(1.0, (p, k) => p * k);
        return all;
    }

    private static double Word(string reading, string finding, string family, double strength)
    {
        double Weight(string f) => (strength * Likelihoods.Word(reading, f, family)) + ((1 - strength) * Likelihoods.Mean(reading, f));
        return Weight(finding) / Likelihoods.Findings(reading).Sum(Weight);
    }

    /// <summary>Mean over fronts and voids of the product of all readings of depth.</summary>
    private static double Depths(BuildUp b, IReadOnlyList<WallReading> readings)
    {
        List<WallReading> deep = [.. readings.Where(x => x is HoleFelt or HookedWire or StiffWire)];
        if (deep.Count == 0) return 1;
        double sum = 0;
        foreach (double s in Steps)
            foreach (double t in b.HasVoid ? Steps : [0])
            {
                double front = b.FrontMm + (b.FrontSdMm * s), room = b.HasVoid ? Math.Clamp(b.VoidMm + (b.VoidSdMm * t), b.VoidLeastMm, b.VoidMostMm) : 0, p = 1;
                foreach (var d in deep) p *= One(b, d, front, room);
                sum += p;
            }
        return sum / (b.HasVoid ? Grid * Grid : Grid);
    }

    private static double One(BuildUp b, WallReading reading, double front, double room)
    {
        double misread = b.HasVoid ? WallRates.Default.Misread : 1;
        return reading switch
        {
            HookedWire w => (misread * (w.ThicknessMm is >= 5 and <= 65 ? 1 / 60.0 : 0)) + ((1 - misread) * Normal.Density(w.ThicknessMm - front, 0.8)),
            StiffWire { VoidMm: 0 } => (1 - misread) * Normal.Below(-room / 3),
            StiffWire w => (misread * (w.VoidMm <= 100 ? 0.01 : 0)) + ((1 - misread) * Normal.Density(w.VoidMm - room, 3)),
            HoleFelt h => Hole(b, h, front, room),
            _ => 1,
        };
    }

    private static double Hole(BuildUp b, HoleFelt h, double front, double room)
    {
        double on = b.Support == "none" ? 0 : b.SupportShare, foam = b.InsulationMm > 0 ? 0.5 : 0, laths = b.Family == "lath" ? 0.7 * (1 - foam) : 0;
        double beside = (foam * Felt(h, "foam")) + (laths * Felt(h, "laths")) + ((1 - foam - laths) * Felt(h, b.HasBase ? b.Base : "void"));
        double straight = b.HasVoid ? 1 : WallRates.Default.MasonryDepthTold;
        if (h.SolidAtMm is { } at)
            return (on * straight * Felt(h, b.SupportMaterial) * Normal.Density(at - front, 2)) + (b.HasBase ? (1 - on) * straight * beside * Normal.Density(at - front - room, 2) : 0);
        return (on * (1 - straight) * Felt(h, b.SupportMaterial)) + ((1 - on) * (b.HasBase ? 1 - straight : 1) * beside);
    }

    private static double Felt(HoleFelt h, string really) => Share("met", h.Met!, really, MetWords) * Share("swarf", h.Swarf!, really, SwarfWords);

    private static double Share(string sort, string finding, string really, string[] all) => Likelihoods.Hole(sort, finding, really) / all.Sum(f => Likelihoods.Hole(sort, f, really));

    private static double Quantile(double p)
    {
        double low = -6, high = 6;
        for (int i = 0; i < 60; i++) (low, high) = Normal.Below((low + high) / 2) < p ? ((low + high) / 2, high) : (low, (low + high) / 2);
        return (low + high) / 2;
    }
}
