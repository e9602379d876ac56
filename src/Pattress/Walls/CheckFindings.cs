namespace Pattress.Walls;

/// <summary>Checks whose findings are counts or depths, cut into a few outcomes that a fitter would tell apart.</summary>
internal static class CheckFindings
{
    /// <summary>Bounds between thicknesses of a hooked wire, mm.</summary>
    private static readonly double[] HookBounds = [11, 13.4, 16.5, 21, 28];

    /// <summary>Bounds between void depths of a stiff wire, mm.</summary>
    private static readonly double[] WireBounds = [3, 12, 30, 50, 75];

    /// <summary>Bounds between depths at which a hole meets masonry, mm.</summary>
    private static readonly double[] DepthBounds = [22, 34, 55];

    /// <summary>A metre of sweep: no hit, one or two, more.</summary>
    public static CheckOffer Magnet(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("magnet", price, ["none", "few", "many"], kept, b =>
        {
            double mean = rates.MagnetTrust * PerMetre(b.BuildUp, rates), none = Math.Exp(-mean), few = none * (mean + (mean * mean / 2));
            return [none, few, 1 - none - few];
        });

    /// <summary>A thin hole: up to the chuck, wood, steel or a dab at once, foam, laths, or masonry by depth, where that is noted, and by what its swarf tells.</summary>
    public static CheckOffer Hole(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("hole", price, ["chuck", "wood", "steel", "dab", "foam", "laths", .. Names("soft", DepthBounds), .. Names("hard", DepthBounds), "soft", "hard"], kept, b => Blur(HoleFindings(b, rates), rates.Misread));

    /// <summary>Five taps along a line: what three of them or more sound like, or nothing in common. How well this wall tells is not known.</summary>
    public static CheckOffer Taps(List<BuildUpBelief> kept, double price, WallRates rates)
    {
        var words = Likelihoods.Findings("tap");
        (double Share, double Strength)[] tells = [(rates.TellWell, 1), (1 - rates.TellWell - rates.TellPoor, rates.TellMiddlingStrength), (rates.TellPoor, rates.TellPoorStrength)];
        return Of("tap", price, [.. words, "mixed"], kept, b =>
        {
            double[] most = [.. words.Select(w => tells.Sum(t => t.Share * ThreeOfFive((t.Strength * Likelihoods.Word("tap", w, b.BuildUp.Family)) + ((1 - t.Strength) * Likelihoods.Mean("tap", w)))))];
            return [.. most, Math.Max(0, 1 - most.Sum())];
        });
    }

    private static double ThreeOfFive(double p) => p * p * p * ((10 * (1 - p) * (1 - p)) + (5 * p * (1 - p)) + (p * p));

    public static CheckOffer Hook(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("hooked_wire", price, Names("t", HookBounds), kept, b => b.BuildUp.HasVoid
            ? Blur(Cut(b.Board.MeanMm + b.InsulationMm, Wide(b.Board.SdMm, rates.HookSdMm), HookBounds), rates.Misread) : Anything(HookBounds, rates.MisreadRangeMm));

    public static CheckOffer Wire(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("stiff_wire", price, Names("v", WireBounds), kept, b => b.BuildUp.HasVoid
            ? Blur(Cut(b.Void.MeanMm, Wide(b.Void.SdMm, rates.WireSdMm), WireBounds), rates.Misread) : Stops(WireBounds, rates));

    private static CheckOffer Of(string id, double price, string[] outcomes, List<BuildUpBelief> kept, Func<BuildUpBelief, double[]> findings)
    {
        double[][] by = [.. kept.Select(findings)];
        return new(id, price, outcomes, [.. outcomes.Select((_, o) => by.Select(f => f[o]).ToArray())]);
    }

    private static string[] Names(string letter, double[] bounds) => [.. Enumerable.Range(0, bounds.Length + 1).Select(i => $"{letter}{i}")];

    private static double[] HoleFindings(BuildUpBelief belief, WallRates rates)
    {
        var b = belief.BuildUp;
        double share = b.Support == "none" ? 0 : b.SupportShare, rest = 1 - share, foam = b.InsulationMm > 0 ? 0.6 * rest : 0, laths = b.Family is "lath" or "lath_ceiling" ? 0.7 : 0;
        int depths = DepthBounds.Length + 1;
        double[] found = new double[8 + (2 * depths)];
        found[b.SupportMaterial switch { "steel" => 2, "dab" => 3, _ => 1 }] = share * (1 - laths);
        (found[4], found[5]) = (foam, laths);
        double left = 1 - (share * (1 - laths)) - foam - laths;
        if (belief.BehindAt is not { } at) found[0] += left;
        else
        {
            double soft = Likelihoods.Hole("swarf", "grey_white", b.Base), told = b.HasVoid ? rates.GapDepthTold : rates.MasonryDepthTold;
            var cut = Cut(at.MeanMm, Wide(at.SdMm, 2), DepthBounds);
            for (int i = 0; i < depths; i++) (found[6 + i], found[6 + depths + i]) = (left * told * soft * cut[i], left * told * (1 - soft) * cut[i]);
            (found[^2], found[^1]) = (left * (1 - told) * soft, left * (1 - told) * (1 - soft));
        }
        return found;
    }

    /// <summary>Mass of a normal between bounds.</summary>
    private static double[] Cut(double mean, double sd, double[] bounds) => Parts(bounds, x => Supports.Normal.Below((x - mean) / sd));

    /// <summary>A wire where there is nothing to measure: as likely one depth as another.</summary>
    private static double[] Anything(double[] bounds, double range) => Parts(bounds, x => x / range);

    /// <summary>A stiff wire without a void stops at once, or shows anything.</summary>
    private static double[] Stops(double[] bounds, WallRates r)
    {
        double[] at = Parts(bounds, x => (2 * Supports.Normal.Below(x / r.WireSdMm)) - 1), any = Anything(bounds, r.MisreadRangeMm);
        return [.. at.Zip(any, (a, b) => (r.WireStops * a) + ((1 - r.WireStops) * b))];
    }

    private static double[] Parts(double[] bounds, Func<double, double> below)
    {
        double[] parts = new double[bounds.Length + 1];
        double before = 0;
        for (int i = 0; i <= bounds.Length; i++)
        {
            double now = i == bounds.Length ? 1 : below(bounds[i]);
            (parts[i], before) = (now - before, now);
        }
        return parts;
    }

    private static double[] Blur(double[] found, double misread) => [.. found.Select(f => ((1 - misread) * f) + (misread / found.Length))];

    private static double Wide(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double PerMetre(BuildUp b, WallRates r) => b.Support switch
    {
        "steel_stud" => r.MagnetPerMSteel,
        "timber_stud" or "joist" or "batten" => b.Family is "lath" or "lath_ceiling" ? r.MagnetPerMLath : r.MagnetPerMTimber,
        _ => r.MagnetPerMOther,
    };
}
