namespace Pattress.Walls;

/// <summary>What the next check on a wall could be for: a fixing has to be chosen for it.</summary>
/// <param name="Hidden">What hangs there will hide a thin hole.</param>
/// <param name="HasHole">A hole is there already, so that wires need none.</param>
/// <param name="HasOutlet">An outlet or light fitting could be opened.</param>
public sealed record CheckSite(bool Hidden, bool HasHole, bool HasOutlet)
{
    /// <summary>What else can be felt or heard here: <c>rattle</c> on a ceiling, <c>cold</c> on a wall to the outside; empty for neither.</summary>
    public string Also { get; init; } = "";
}

/// <summary>The next check on a wall in words and numbers.</summary>
/// <param name="Check">Id of the check, or empty: nothing is worth its price.</param>
/// <param name="Before">Chance that the choice made now suits the wall; <paramref name="After"/> expected after the check.</param>
public sealed record NextWallCheck(string Check, double Minutes, double Before, double After, double GainMinutes, Reason Why);

/// <summary>Checks that can be done on a wall, with prices from <c>rates.csv</c> and likelihoods from the wall's own model.</summary>
public static class WallChecks
{
    /// <summary>Hypotheses kept apart; the unlikelier ones are left out and the rest scaled up.</summary>
    private const int Most = 16;

    /// <summary>A check that is expected to raise the chance by less than one in a hundred is said with what follows it.</summary>
    private const double LeastGain = 0.01;

    /// <summary>Records of outcomes that are valued: what takes a few milliseconds.</summary>
    private const int MostRecords = 100_000;

    /// <summary>Fronts this near are held by the same fixing, mm.</summary>
    private const double SameFrontMm = 6;

    /// <summary>
    /// The best next check for a decision: the exact policy over all checks that are possible here (over the best of them, where
    /// the records would be too many). Build-ups that take the same fixing and sound alike are one hypothesis.
    /// <paramref name="loss"/> gives the loss in minutes of planning for the first build-up where the second is there; null: the
    /// price of a wrong fixing unless both take the same kinds of fixing.
    /// </summary>
    public static NextWallCheck Next(WallBelief belief, CheckSite site, Func<BuildUp, BuildUp, double>? loss = null, WallRates? rates = null)
    {
        var groups = Groups(belief);
        List<BuildUpBelief> rows = [.. groups.SelectMany(g => g)];
        double sum = rows.Sum(b => b.Probability);
        double[] prior = [.. groups.Select(g => g.Sum(b => b.Probability) / sum)];
        var decision = Decision(groups, loss ?? WrongFixing);
        var all = Offers(rows, site, rates ?? WallRates.Default);
        var offers = WorthNothing(prior, all, decision) ? [] : Few(prior, [.. all.Select(o => Grouped(o, groups))], decision);
        var choice = CheckPolicy.Next(prior, offers, decision);
        if (choice.Check < 0) return new("", 0, choice.Before, choice.After, 0, new("check_none", Said.Percent(choice.Before)));
        var offer = offers[choice.Check];
        double alone = choice.After;
        if (!site.HasHole && IsWire(offer) && offers.Find(o => o.Id == "hole") is { } hole) (offer, alone) = (hole, CheckPolicy.Alone(prior, hole, decision).After);
        double after = alone >= choice.Before + LeastGain ? alone : choice.AtEnd;
        return new(offer.Id, offer.Price, choice.Before, after, choice.Gain,
            new("check_" + offer.Id, Said.Percent(choice.Before), Said.Percent(after), Said.Minutes(offer.Price)));
    }

    /// <summary>Even if it told everything, no check would save as much as the cheapest of them costs: the policy's own answer, without weighing them.</summary>
    private static bool WorthNothing(double[] prior, List<CheckOffer> offers, CheckDecision decision)
    {
        double now = decision.Loss.Min(row => row.Select((l, h) => l * prior[h]).Sum()), known = prior.Select((p, h) => p * decision.Loss.Min(row => row[h])).Sum();
        return now - known <= offers.Min(o => o.Price);
    }

    /// <summary>A wire wants a hole, which is felt as it is drilled: without one the hole is the check.</summary>
    internal static bool IsWire(CheckOffer offer) => offer.Id is "hooked_wire" or "stiff_wire";

    private static List<List<BuildUpBelief>> Groups(WallBelief belief) =>
        [.. belief.BuildUps.Where(b => b.Probability > 1e-5)
            .GroupBy(b => (b.BuildUp.Family, b.BuildUp.Support, Holds(b.BuildUp), Softness(b.BuildUp), Math.Round(b.BuildUp.FrontMm / SameFrontMm)))
            .Select(g => g.ToList()).OrderByDescending(g => g.Sum(b => b.Probability)).Take(Most)];

    /// <summary>The same check with the likelihoods of each group: the mean over its build-ups.</summary>
    private static CheckOffer Grouped(CheckOffer offer, List<List<BuildUpBelief>> groups)
    {
        double[] Means(double[] like)
        {
            int at = 0;
            return [.. groups.Select(g => g.Sum(b => b.Probability * like[at++]) / g.Sum(b => b.Probability))];
        }
        return offer with { Likelihood = [.. offer.Likelihood.Select(Means)] };
    }

    /// <summary>The checks that bring most for their price, as many as can be weighed together; the hole last, since others hang on it.</summary>
    private static List<CheckOffer> Few(double[] prior, List<CheckOffer> offers, CheckDecision decision)
    {
        var ordered = offers.Select(o => (Offer: o, Worth: CheckPolicy.Alone(prior, o, decision))).OrderByDescending(o => o.Offer.Id == "hole")
            .ThenByDescending(o => (o.Worth.After - o.Worth.Before) / o.Offer.Price).ThenBy(o => o.Offer.Id, StringComparer.Ordinal);
        List<CheckOffer> few = [];
        int records = 1;
        foreach (var (offer, _) in ordered)
        {
            int more = records * (offer.Likelihood.Length + 1);
            if (more > MostRecords) continue;
            records = more;
            few.Insert(0, offer);
        }
        return few;
    }

    /// <summary>Planning for one build-up where another is there: nothing lost where both are held by the same means.</summary>
    public static double WrongFixing(BuildUp planned, BuildUp real)
    {
        double wrong = RateTable.Value("minutes_wrong_fixing");
        if (planned.Id == real.Id) return 0;
        if (Holds(planned) != Holds(real)) return wrong;
        double front = Math.Abs(planned.FrontMm - real.FrontMm);
        return front <= 3 ? 0 : front <= 8 ? wrong / 4 : wrong / 2;
    }

    /// <summary>What a fixing holds in: the cavity behind a board, masonry straight away, or masonry through a gap.</summary>
    private static string Holds(BuildUp b) => b.Base is "timber" or "steel" or "hollow_steel" ? b.Base : !b.HasBase ? b.Family == "lath" ? "laths" : "cavity" : b.HasVoid ? b.InsulationMm > 0 ? "far_" : "gap_" + Softness(b) : Softness(b);

    private static string Softness(BuildUp b) => b.Base == "aerated_block" ? "soft" : "hard";

    private static CheckDecision Decision(List<List<BuildUpBelief>> groups, Func<BuildUp, BuildUp, double> loss) =>
        new([.. groups.Select(a => a[0].BuildUp.Id)], [.. groups.Select(a => groups.Select(h => h.Sum(b => b.Probability * loss(a[0].BuildUp, b.BuildUp)) / h.Sum(b => b.Probability)).ToArray())]);

    internal static List<CheckOffer> Offers(List<BuildUpBelief> kept, CheckSite site, WallRates rates)
    {
        double bored = RateTable.Value("minutes_hole") + RateTable.Value(site.Hidden ? "minutes_filler_hidden" : "minutes_filler");
        double hook = RateTable.Value("minutes_hook"), wire = RateTable.Value("minutes_wire"), first = site.HasHole ? 0 : bored;
        List<CheckOffer> offers =
        [
            CheckFindings.Taps(kept, RateTable.Value("minutes_tap"), rates),
            Words(kept, "detector", RateTable.Value("minutes_detector")),
            CheckFindings.Magnet(kept, RateTable.Value("minutes_magnet"), rates),
            CheckFindings.Hole(kept, bored, rates),
            CheckFindings.Hook(kept, hook + first, rates) with { PriceAfterLast = hook },
            CheckFindings.Wire(kept, wire + first, rates) with { PriceAfterLast = wire },
        ];
        if (site.Also.Length > 0) offers.Add(Words(kept, site.Also, RateTable.Value("minutes_tap")));
        if (site.HasOutlet) offers.Add(Words(kept, "outlet", RateTable.Value("minutes_outlet")));
        return offers;
    }

    private static CheckOffer Words(List<BuildUpBelief> kept, string reading, double price)
    {
        var findings = Likelihoods.Findings(reading);
        return new(reading, price, findings, [.. findings.Select(f => kept.Select(b => Likelihoods.Word(reading, f, b.BuildUp.Family)).ToArray())]);
    }
}
