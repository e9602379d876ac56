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
    private const int Most = 12;

    /// <summary>A check that is expected to raise the chance by less than one in a hundred does not help by itself.</summary>
    private const double LeastGain = 0.01;

    /// <summary>Checks weighed together.</summary>
    private const int MostOffers = 4;

    /// <summary>
    /// The best next check for a decision. <paramref name="loss"/> gives the loss in minutes of planning for the first
    /// build-up where the second is there; null: the price of a wrong fixing unless both take the same kinds of fixing.
    /// </summary>
    public static NextWallCheck Next(WallBelief belief, CheckSite site, Func<BuildUp, BuildUp, double>? loss = null, WallRates? rates = null)
    {
        var kept = belief.BuildUps.Where(b => b.Probability > 1e-4).Take(Most).ToList();
        double sum = kept.Sum(b => b.Probability);
        var offers = Offers(kept, site, rates ?? WallRates.Default);
        double[] prior = [.. kept.Select(b => b.Probability / sum)];
        var decision = Decision(kept, loss ?? WrongFixing);
        // A check that helps only together with another is not proposed, and few are kept, so that the records stay few.
        offers = [.. offers.Select(o => (Offer: o, Worth: CheckPolicy.Alone(prior, o, decision))).Where(o => o.Worth.After >= o.Worth.Before + LeastGain)
            .OrderByDescending(o => (o.Worth.After - o.Worth.Before) / o.Offer.Price).ThenBy(o => o.Offer.Id, StringComparer.Ordinal).Take(MostOffers).Select(o => o.Offer)];
        var choice = CheckPolicy.Next(prior, offers, decision);
        if (choice.Check < 0) return new("", 0, choice.Before, choice.After, 0, new("check_none", Said.Percent(choice.Before)));
        var offer = offers[choice.Check];
        return new(offer.Id, offer.Price, choice.Before, choice.After, choice.Gain,
            new("check_" + offer.Id, Said.Percent(choice.Before), Said.Percent(choice.After), Said.Minutes(offer.Price)));
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

    private static CheckDecision Decision(List<BuildUpBelief> kept, Func<BuildUp, BuildUp, double> loss) =>
        new([.. kept.Select(b => b.BuildUp.Id)], [.. kept.Select(a => kept.Select(h => loss(a.BuildUp, h.BuildUp)).ToArray())]);

    internal static List<CheckOffer> Offers(List<BuildUpBelief> kept, CheckSite site, WallRates rates)
    {
        double hole = RateTable.Value("minutes_hole") + RateTable.Value(site.Hidden ? "minutes_filler_hidden" : "minutes_filler");
        List<CheckOffer> offers =
        [
            Words(kept, "tap", RateTable.Value("minutes_tap"), rates),
            Words(kept, "detector", RateTable.Value("minutes_detector"), rates),
            CheckFindings.Magnet(kept, RateTable.Value("minutes_magnet"), rates),
            CheckFindings.Hole(kept, site.HasHole ? 0.2 : hole, rates),
            CheckFindings.Hook(kept, RateTable.Value("minutes_hook") + (site.HasHole ? 0 : hole), rates),
            CheckFindings.Wire(kept, RateTable.Value("minutes_wire") + (site.HasHole ? 0 : hole), rates),
        ];
        if (site.Also.Length > 0) offers.Add(Words(kept, site.Also, RateTable.Value("minutes_tap"), rates));
        if (site.HasOutlet) offers.Add(Words(kept, "outlet", RateTable.Value("minutes_outlet"), rates));
        return offers;
    }

    private static CheckOffer Words(List<BuildUpBelief> kept, string reading, double price, WallRates rates)
    {
        var findings = Likelihoods.Findings(reading);
        double strength = reading == "tap" ? rates.TellWell + (rates.TellMiddlingStrength * (1 - rates.TellWell - rates.TellPoor)) : 1;
        return new(reading, price, findings, [.. findings.Select(f => kept.Select(b =>
            (strength * Likelihoods.Word(reading, f, b.BuildUp.Family)) + ((1 - strength) * Likelihoods.Mean(reading, f))).ToArray())]);
    }
}
