using Pattress.Jobs;
using Pattress.Walls;
using static Pattress.Walls.RateTable;

namespace Pattress.Planning.Views;

/// <summary>
/// Which check settles what a wall is: the exact policy over the checks that are possible here, for the decision at hand
/// (for which family of build-up the fixing is chosen). Losses and prices in minutes, damage included.
/// </summary>
internal static class WallChecks
{
    private const int MostFamilies = 8;

    /// <summary>Least share of a family that is worth telling apart.</summary>
    private const double LeastShare = 0.002;

    private static readonly string[] HoleFindings = ["support", "void", "dab", "masonry", "foam", "metal", "laths"];

    /// <summary>The best check, or null when none is worth its price.</summary>
    public static CheckToDo? Best(Wall wall, IReadOnlyList<Believed> believed, Point? at, IReadOnlyList<string> items)
    {
        var families = Families(believed);
        if (families.Count < 2) return null;
        var offers = Offers(wall, families);
        var choice = CheckPolicy.Next([.. families.Select(f => f.Share)], offers, Decision(families));
        if (choice.Check < 0) return null;
        var offer = offers[choice.Check];
        return new(offer.Id, wall.Id, at, items, new Reason("check_do_wall", Said.Name("check." + offer.Id), Said.Percent(choice.Before), Said.Percent(choice.After)),
            offer.Price, choice.Before, choice.After);
    }

    private sealed record Family(string Name, double Share, IReadOnlyList<Believed> Rows);

    private static List<Family> Families(IReadOnlyList<Believed> believed)
    {
        var all = believed.GroupBy(b => b.BuildUp.Family, StringComparer.Ordinal).Select(g => new Family(g.Key, g.Sum(b => b.Probability), [.. g]))
            .Where(f => f.Share >= LeastShare).OrderByDescending(f => f.Share).ThenBy(f => f.Name, StringComparer.Ordinal).Take(MostFamilies).ToList();
        double sum = all.Sum(f => f.Share);
        return [.. all.Select(f => f with { Share = f.Share / sum })];
    }

    /// <summary>A fixing chosen for the wrong wall costs its time and the making good.</summary>
    private static CheckDecision Decision(List<Family> families)
    {
        double wrong = Value("minutes_wrong_fixing");
        return new([.. families.Select(f => f.Name)], [.. families.Select((_, a) => families.Select((_, h) => a == h ? 0 : wrong).ToArray())]);
    }

    private static List<CheckOffer> Offers(Wall wall, List<Family> families)
    {
        var offers = new List<CheckOffer>
        {
            Word("tap", Value("minutes_tap"), families),
            Hole(Value("minutes_hole") + Value("minutes_filler_hidden"), families),
            Word("detector", Value("minutes_detector"), families),
        };
        if (wall.Services.Any(s => s.IsElectrical) && !wall.Readings.Any(r => r.Kind == "outlet" && !r.Withdrawn)) offers.Add(Word("outlet", Value("minutes_outlet"), families));
        if (wall.Kind == "ceiling" || wall.OtherSide == "outside") offers.Add(Word(wall.Kind == "ceiling" ? "rattle" : "cold", Value("minutes_tap"), families));
        return offers;
    }

    private static CheckOffer Word(string reading, double minutes, List<Family> families) => Normalised(
        reading, minutes, Likelihoods.Findings(reading), families, (finding, f) => Likelihoods.Word(reading, finding, f.Name));

    private static CheckOffer Hole(double minutes, List<Family> families) =>
        Normalised("hole", minutes, HoleFindings, families, (finding, f) => f.Rows.Sum(b => b.Probability * Feel(finding, b.BuildUp)) / f.Rows.Sum(b => b.Probability));

    /// <summary>What a thin hole meets: the support by its share, else what the void ends on; foam and laths on the way.</summary>
    private static double Feel(string finding, BuildUp b)
    {
        double support = b.SupportShare * Likelihoods.Hole("met", finding, b.SupportMaterial);
        string behind = b.InsulationMm > 0 ? "foam" : b.Family is "lath" or "lath_ceiling" ? "laths" : b.HasBase ? b.Base : "void";
        return support + (1 - b.SupportShare) * Likelihoods.Hole("met", finding, behind);
    }

    private static CheckOffer Normalised(string id, double minutes, IReadOnlyList<string> findings, List<Family> families, Func<string, Family, double> chance)
    {
        var rows = findings.Select(f => families.Select(h => chance(f, h)).ToArray()).ToArray();
        for (int h = 0; h < families.Count; h++)
        {
            double sum = rows.Sum(r => r[h]);
            foreach (var r in rows) r[h] /= sum;
        }
        return new(id, minutes, findings, rows);
    }
}
