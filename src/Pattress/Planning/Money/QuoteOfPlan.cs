using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning.Money;

/// <summary>Counts the work of a plan: what is ready or waits for a check is priced, what cannot be hung here is not.</summary>
public static class QuoteOfPlan
{
    public static QuoteCase Case(Job job, PlanAnswer plan, FixingCatalogue catalogue)
    {
        var items = plan.Items.Where(i => i.Verdict != Verdict.NotHere).ToList();
        var used = items.SelectMany(i => i.Brackets).Where(b => b.Fixing is not null).GroupBy(b => b.Fixing!, StringComparer.Ordinal)
            .OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => (Size: catalogue.Find(g.Key)!, Count: g.Sum(b => b.Count))).ToList();
        return new(
            Steps(job, plan, items, used),
            [.. used.Select(u => new QuoteMaterial(u.Size.Id, Spare(u.Count, job.Settings.Buying.SparePercent), u.Size.Pack, u.Size.PackPrice))],
            job.Settings.Quote, job.Settings.MinutePrice);
    }

    private static List<QuoteStep> Steps(Job job, PlanAnswer plan, List<ItemAnswer> items, List<(FixingSize Size, int Count)> used)
    {
        if (items.Count == 0) return [];
        int walls = items.Select(i => i.Wall).Distinct(StringComparer.Ordinal).Count(), fixings = used.Sum(u => u.Count);
        int wide = items.SelectMany(i => i.Brackets).SelectMany(b => b.Holes).Count(h => h.DiameterMm > OrderOfWork.ExploreMm);
        double each = fixings == 0 ? 0 : used.Sum(u => u.Count * u.Size.Minutes) / fixings;
        var terms = job.Settings.Quote;
        QuoteStep Step(string name, int count, double otherwise = 0) => new(name, count, WorkMinutes.Of(name, job.Actuals, otherwise));
        return
        [
            Step("set_up", walls), .. plan.Checks.Where(c => c.Items.Any(id => items.Any(i => i.Id == id)))
                .GroupBy(c => c.Kind, StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => new QuoteStep("check." + g.Key, g.Count(), g.Average(c => c.Minutes))),
            Step("mark", items.Sum(i => i.Brackets.Count)), Step("explore", wide), Step("drill_and_set", fixings, each),
            Step("hang", items.Count), Step("prove", items.Count), Step("clean", walls),
            Step("travel", terms.Visits, terms.TravelMinutes), Step("stairs", terms.Floors * terms.Visits),
        ];
    }

    private static int Spare(int count, int percent) => Buying.BuyingChoice.WithSpare(count, percent);
}
