using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>
/// What is this wall? Walls drawn from the build-ups and read by the policy's own checks until none is worth its price, beside
/// a fixed routine of all checks. Front and void vary from wall to wall, and a tenth of the taps say anything, which no model knows.
/// </summary>
internal static class IdentityHouse
{
    private const int MostChecks = 8;

    private static readonly IReadOnlyList<BuildUp> Rows = BuildUps.OfKind("wall");

    public static IEnumerable<SimulatorRow> One(int i, int seed)
    {
        foreach (string way in new[] { "fixed routine", "policy" })
        {
            var house = new ReadWall(new Random(seed + 600000 + i), Rows);
            var (belief, minutes) = way == "policy" ? Policy(house) : Fixed(house);
            foreach (var exact in Exact(house, way, i, minutes)) yield return exact;
            bool right = WallChecks.WrongFixing(Choice(belief), house.Is) == 0;
            yield return new("identity", way, i, belief.BestFamily.Family == house.Is.Family, right, 0, 0, house.Done.Count, belief.BestFamily.Probability, minutes, 0);
        }
    }

    /// <summary>
    /// What can be known at all: the best choice under the simulator's own law, on the same readings and, after the fixed routine,
    /// on two more holes; stated: the chance that it suits.
    /// </summary>
    private static IEnumerable<SimulatorRow> Exact(ReadWall house, string way, int i, double minutes)
    {
        yield return Bound(house, "exact law, " + way, i, minutes);
        if (way == "policy") yield break;
        house = house.Copy();
        house.Do("hole");
        house.Do("hole");
        yield return Bound(house, "exact law, fixed routine and two more holes", i, minutes + (2 * RateTable.Value("minutes_hole")) + (2 * RateTable.Value("minutes_filler_hidden")));
    }

    private static SimulatorRow Bound(ReadWall house, string what, int i, double minutes)
    {
        double[] p = ExactIdentity.Posterior(Rows, house.Evidence.Readings);
        double Suits(BuildUp a) => p.Select((x, h) => WallChecks.WrongFixing(a, Rows[h]) == 0 ? x : 0).Sum();
        var choice = Rows.MaxBy(Suits)!;
        var family = Rows.Select((b, h) => (b.Family, P: p[h])).GroupBy(x => x.Family).MaxBy(g => g.Sum(x => x.P))!.Key;
        return new("identity", what, i, family == house.Is.Family, WallChecks.WrongFixing(choice, house.Is) == 0, 0, 0, house.Done.Count, Suits(choice), minutes, 0);
    }

    private static (WallBelief, double) Policy(ReadWall house)
    {
        double minutes = 0;
        var belief = WallModel.Infer(house.Evidence);
        for (int k = 0; k < MostChecks; k++)
        {
            var next = WallChecks.Next(belief, house.Site);
            if (next.Check.Length == 0) break;
            minutes += next.Minutes;
            house.Do(next.Check);
            belief = WallModel.Infer(house.Evidence);
        }
        return (belief, minutes);
    }

    private static (WallBelief, double) Fixed(ReadWall house)
    {
        string[] all = house.Site.HasOutlet ? ["tap", "detector", "magnet", "outlet", "hole", "hooked_wire", "stiff_wire"] : ["tap", "detector", "magnet", "hole", "hooked_wire", "stiff_wire"];
        foreach (string check in all) house.Do(check);
        double minutes = new[] { "minutes_tap", "minutes_detector", "minutes_magnet", "minutes_hole", "minutes_filler_hidden", "minutes_hook", "minutes_wire" }.Sum(RateTable.Value)
            + (house.Site.HasOutlet ? RateTable.Value("minutes_outlet") : 0);
        return (WallModel.Infer(house.Evidence), minutes);
    }

    /// <summary>The build-up to plan for: the least expected loss.</summary>
    private static BuildUp Choice(WallBelief belief)
    {
        var kept = belief.BuildUps.Where(b => b.Probability > 1e-4).ToList();
        return kept.MinBy(a => kept.Sum(h => h.Probability * WallChecks.WrongFixing(a.BuildUp, h.BuildUp)))!.BuildUp;
    }
}
