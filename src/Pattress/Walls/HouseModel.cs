namespace Pattress.Walls;

/// <summary>
/// A house has a memory: walls of one kind (by <see cref="WallEvidence.Kind"/> and other side) are mostly built one way. The
/// way is unknown; given it a wall is built so with <c>HouseSame</c>, of its family with <c>HouseFamily</c>, else by the
/// prior. Exact: O(walls x build-ups).
/// </summary>
public static class HouseModel
{
    /// <summary>A wall counts as moved by the others when its likeliest build-up's chance changes by this much.</summary>
    private const double Notable = 0.05;

    /// <summary>The belief of each wall given all walls, in the order given.</summary>
    public static IReadOnlyList<WallBelief> Infer(IReadOnlyList<WallEvidence> walls, WallRates? rates = null)
    {
        var use = rates ?? WallRates.Default;
        return Infer(walls, [.. walls.Select(w => new WallPosterior(w, use))], use);
    }

    /// <summary>The same from posteriors that are at hand; walls of different kinds do not touch each other.</summary>
    internal static IReadOnlyList<WallBelief> Infer(IReadOnlyList<WallEvidence> walls, WallPosterior[] all, WallRates use)
    {
        var beliefs = new WallBelief[walls.Count];
        foreach (var group in Enumerable.Range(0, walls.Count).GroupBy(i => KindOf(walls[i])))
            Group([.. group], walls, all, beliefs, use);
        return beliefs;
    }

    /// <summary>
    /// Which readings of one wall moved what it is believed to be, all walls known: log odds of its likeliest family with each
    /// reading less without it, greatest first. Readings beyond the first <see cref="MostExplained"/> are left out.
    /// </summary>
    /// <param name="only">Readings to explain; null: all.</param>
    public static IReadOnlyList<ReadingInfluence> Explain(IReadOnlyList<WallEvidence> walls, string wallId, WallRates? rates = null, IReadOnlyCollection<string>? only = null)
    {
        var use = rates ?? WallRates.Default;
        int at = walls.Select((w, i) => (w, i)).First(x => x.w.WallId == wallId).i;
        int[] group = [.. Enumerable.Range(0, walls.Count).Where(i => walls[i].Kind == walls[at].Kind && Role(walls[i]) == Role(walls[at]))];
        WallPosterior[] all = [.. walls.Select((w, i) => group.Contains(i) ? new WallPosterior(w, use) : null!)];
        double[][] factors = group.Length == 1 ? [] : [.. group.Select(i => Factors(all[i], use))];
        int own = Array.IndexOf(group, at);
        WallBelief Believe(WallEvidence e)
        {
            all[at] = new(e, use);
            return group.Length == 1 ? all[at].Belief(all[at].Prior) : One(group, own, walls, all, factors, use);
        }
        return WallExplain.Of(walls[at], Believe, only);
    }

    /// <summary>Most readings that are explained, one inference each.</summary>
    public const int MostExplained = WallExplain.Most;

    /// <summary>Walls of one kind inform each other.</summary>
    internal static (string Kind, string Role) KindOf(WallEvidence e) => (e.Kind, Role(e));

    /// <summary>Partitions, walls to the outside and to a neighbour are of different kinds.</summary>
    private static string Role(WallEvidence e) => e.OtherSide is "outside" or "neighbour" ? e.OtherSide : "room";

    private static void Group(int[] group, IReadOnlyList<WallEvidence> walls, WallPosterior[] all, WallBelief[] beliefs, WallRates rates)
    {
        if (group.Length == 1)
        {
            beliefs[group[0]] = all[group[0]].Belief(all[group[0]].Prior);
            return;
        }
        double[][] factors = [.. group.Select(i => Factors(all[i], rates))];
        for (int k = 0; k < group.Length; k++) beliefs[group[k]] = One(group, k, walls, all, factors, rates);
    }

    /// <summary>For each way the house may be built: P(this wall's readings | way), scaled.</summary>
    private static double[] Factors(WallPosterior w, WallRates r)
    {
        double any = w.Rows.Select((_, i) => w.Prior[i] * w.Likelihood[i]).Sum();
        var family = FamilyMeans(w);
        return [.. w.Rows.Select((b, i) => (r.HouseSame * w.Likelihood[i]) + (r.HouseFamily * family[b.Family]) + ((1 - r.HouseSame - r.HouseFamily) * any))];
    }

    /// <summary>P(readings | family), by the prior within it.</summary>
    private static Dictionary<string, double> FamilyMeans(WallPosterior w) =>
        w.Rows.Select((b, i) => (b.Family, P: w.Prior[i], L: w.Likelihood[i])).GroupBy(x => x.Family, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => g.Sum(x => x.P * x.L) / g.Sum(x => x.P), StringComparer.Ordinal);

    /// <summary>The wall's prior given the others: the posterior of the way from them, spread by the shares.</summary>
    private static WallBelief One(int[] group, int k, IReadOnlyList<WallEvidence> walls, WallPosterior[] all, double[][] factors, WallRates r)
    {
        var w = all[group[k]];
        double[] way = [.. w.Rows.Select((_, s) => w.Prior[s] * factors.Where((_, j) => j != k).Aggregate(1.0, (p, f) => p * f[s] / f.Max()))];
        double sum = way.Sum(), rest = 1 - r.HouseSame - r.HouseFamily;
        double[] prior = new double[way.Length];
        var byFamily = Enumerable.Range(0, way.Length).GroupBy(i => w.Rows[i].Family, StringComparer.Ordinal)
            .ToDictionary(g => g.Key, g => (Way: g.Sum(i => way[i]) / sum, Prior: g.Sum(i => w.Prior[i])), StringComparer.Ordinal);
        for (int i = 0; i < prior.Length; i++)
        {
            var (familyWay, familyPrior) = byFamily[w.Rows[i].Family];
            prior[i] = (r.HouseSame * way[i] / sum) + (r.HouseFamily * familyWay * w.Prior[i] / familyPrior) + (rest * w.Prior[i]);
        }
        return Shifted(w.Belief(prior), w.Belief(w.Prior), [.. group.Where((_, j) => j != k).Select(j => walls[j].WallId)]);
    }

    private static WallBelief Shifted(WallBelief together, WallBelief alone, IReadOnlyList<string> others)
    {
        var best = together.Best;
        double before = alone.BuildUps.First(b => b.BuildUp.Id == best.BuildUp.Id).Probability;
        if (Math.Abs(best.Probability - before) < Notable) return together;
        return together with { FromHouse = new(best.BuildUp.Id, before, best.Probability, new("house_moved", Said.Name(best.BuildUp.Id),
            Said.Percent(before), Said.Percent(best.Probability), Said.Words(string.Join(", ", others)))) };
    }
}
