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

    /// <summary>A thin hole: up to the chuck, wood or steel or a dab at once, masonry by depth, foam, laths.</summary>
    public static CheckOffer Hole(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("hole", price, ["chuck", "support", "foam", "laths", "masonry_22", "masonry_34", "masonry_55", "masonry_far"], kept, b => Blur(HoleFindings(b), rates.Misread));

    public static CheckOffer Hook(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("hooked_wire", price, Names("t", HookBounds), kept, b => Blur(Cut(b.Board.MeanMm + b.InsulationMm, Wide(b.Board.SdMm, rates.HookSdMm), HookBounds, b.BuildUp.HasVoid), rates.Misread));

    public static CheckOffer Wire(List<BuildUpBelief> kept, double price, WallRates rates) =>
        Of("stiff_wire", price, Names("v", WireBounds), kept, b => Blur(Cut(b.Void.MeanMm, Wide(b.Void.SdMm, rates.WireSdMm), WireBounds, b.BuildUp.HasVoid), rates.Misread));

    private static CheckOffer Of(string id, double price, string[] outcomes, List<BuildUpBelief> kept, Func<BuildUpBelief, double[]> findings)
    {
        double[][] by = [.. kept.Select(findings)];
        return new(id, price, outcomes, [.. outcomes.Select((_, o) => by.Select(f => f[o]).ToArray())]);
    }

    private static string[] Names(string letter, double[] bounds) => [.. Enumerable.Range(0, bounds.Length + 1).Select(i => $"{letter}{i}")];

    private static double[] HoleFindings(BuildUpBelief belief)
    {
        var b = belief.BuildUp;
        double share = b.Support == "none" ? 0 : b.SupportShare, rest = 1 - share, foam = b.InsulationMm > 0 ? 0.6 : 0, laths = b.Family is "lath" or "lath_ceiling" ? 0.7 : 0;
        double[] found = new double[8];
        (found[1], found[2], found[3]) = (share * (1 - laths), foam * rest, laths);
        double left = 1 - found[1] - found[2] - found[3];
        if (belief.BehindAt is not { } at) found[0] += left;
        else
        {
            var cut = Cut(at.MeanMm, Wide(at.SdMm, 2), DepthBounds, true);
            for (int i = 0; i < cut.Length; i++) found[4 + i] = left * cut[i];
        }
        return found;
    }

    /// <summary>Mass of a normal between bounds; where there is nothing to measure all goes to the first.</summary>
    private static double[] Cut(double mean, double sd, double[] bounds, bool there)
    {
        double[] parts = new double[bounds.Length + 1];
        double before = 0;
        for (int i = 0; i <= bounds.Length; i++)
        {
            double below = i == bounds.Length ? 1 : there ? Supports.Normal.Below((bounds[i] - mean) / sd) : 1;
            (parts[i], before) = (below - before, below);
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
